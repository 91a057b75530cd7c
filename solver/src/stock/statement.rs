//! The whole as a program of yes and no: a variable for each pattern of a room, and one for each piece
//! of the stock in each place where it fits.

use std::collections::BTreeMap;

use super::fit::{Pattern, patterns, points};
use super::hope::hopes;
use super::pick::{Pick, RefusedSet};
use super::refused;
use super::{Asking, Assignment, By, Owned};
use crate::program::Row;

/// A row of the stock in a place that is asked for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Use {
    pub(super) room: usize,
    /// Place in what the room asks for.
    pub(super) asked: usize,
    /// Row of the stock.
    pub(super) row: usize,
    /// How many of it stand there.
    pub(super) count: u32,
    /// It must be served.
    pub(super) must: bool,
    /// What it brings.
    pub(super) points: i64,
}

/// Which sets that were asked of the solver are kept out.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Refusals {
    /// All that are not known to fit: what is served fits.
    All,
    /// Those that are proven not to fit: what no assignment serves more than.
    Decided,
}

/// The program and what its variables mean: first the uses, then the patterns.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Statement {
    pub(super) uses: Vec<Use>,
    /// Room and pattern.
    pub(super) choices: Vec<(usize, usize)>,
    /// Patterns of each room.
    pub(super) patterns: Vec<Vec<Pattern>>,
    /// Of each room, how many of its patterns are known; those behind them are only hoped for.
    known: Vec<usize>,
    /// The places of what each room asks for that it is staged about.
    pub(super) heads: Vec<Vec<usize>>,
    pub(super) rows: Vec<Row>,
}

impl Statement {
    /// States who could get what.
    pub(super) fn of(rooms: &[Asking], stock: &[Owned], refusals: Refusals) -> Self {
        let patterns: Vec<Vec<Pattern>> = rooms.iter().map(|asking| patterns(asking, stock)).collect();
        let known = patterns.iter().map(Vec::len).collect();
        Self::of_patterns(rooms, stock, patterns, known).but_for(rooms, stock, refusals)
    }

    /// States who could get what, and who might get what is as asked for though no option holds it.
    pub(super) fn hoping(rooms: &[Asking], stock: &[Owned], refusals: Refusals) -> Self {
        let mut all: Vec<Vec<Pattern>> = rooms.iter().map(|asking| patterns(asking, stock)).collect();
        let known = all.iter().map(Vec::len).collect();
        for (asking, patterns) in rooms.iter().zip(&mut all) {
            let hopes = hopes(asking, stock, patterns);
            patterns.extend(hopes);
        }
        Self::of_patterns(rooms, stock, all, known).but_for(rooms, stock, refusals)
    }

    /// But for the sets that are refused to each room.
    fn but_for(mut self, rooms: &[Asking], stock: &[Owned], refusals: Refusals) -> Self {
        let is_kept = |refused: &&RefusedSet| refused.is_decided || refusals == Refusals::All;
        let mut cuts: Vec<Row> = Vec::new();
        for (room, asking) in rooms.iter().enumerate() {
            let of_room = self.uses.iter().enumerate().filter(|(_, one)| one.room == room);
            let uses: Vec<(usize, Pick)> =
                of_room.map(|(place, one)| (place, Pick { asked: one.asked, row: one.row })).collect();
            let kept = asking.room.refused.iter().filter(is_kept);
            cuts.extend(kept.map(|set| refused::row(set, uses.iter().copied(), stock)));
        }
        self.rows.extend(cuts);
        self
    }

    fn of_patterns(rooms: &[Asking], stock: &[Owned], patterns: Vec<Vec<Pattern>>, known: Vec<usize>) -> Self {
        let heads = rooms.iter().map(Asking::main_seats).collect();
        let uses = uses(rooms, stock, &patterns);
        let mut stated = Self { uses, choices: Vec::new(), patterns, known, heads, rows: Vec::new() };
        for (room, patterns) in stated.patterns.iter().enumerate() {
            stated.choices.extend((0..patterns.len()).map(|pattern| (room, pattern)));
        }
        stated.one_pattern_a_room(rooms.len());
        stated.as_sets(rooms);
        stated.one_piece_a_place();
        stated.within_patterns();
        stated.no_more_than_there_are(rooms, stock);
        stated
    }

    /// Whether the pattern of a choice is only hoped for.
    pub(super) fn is_hoped_for(&self, room: usize, pattern: usize) -> bool {
        self.known.get(room).is_some_and(|known| pattern >= *known)
    }

    /// How many variables there are.
    pub(super) fn variables(&self) -> usize {
        self.uses.len() + self.choices.len()
    }

    /// The point of an assignment, each room in the best pattern for what it got.
    pub(super) fn as_found(&self, found: &Assignment) -> Vec<bool> {
        let row_of = |room: usize, asked: usize| match found.rooms.get(room)?.asked.get(asked)?.by {
            By::Stock { row } => Some(row),
            _ => None,
        };
        let mut point: Vec<bool> = self.uses.iter().map(|one| row_of(one.room, one.asked) == Some(one.row)).collect();
        point.resize(self.variables(), false);
        for (room, patterns) in self.patterns.iter().enumerate() {
            let holds = |pattern: &Pattern| {
                let mut rows = pattern.rows.iter().enumerate();
                rows.all(|(asked, rows)| row_of(room, asked).is_none_or(|row| rows.binary_search(&row).is_ok()))
            };
            let holding = patterns.iter().enumerate().filter(|(_, pattern)| holds(pattern));
            let best = holding.max_by_key(|(_, pattern)| pattern.score).map(|(place, _)| place);
            let heads = self.heads.get(room).map_or(&[][..], Vec::as_slice);
            let best = best.filter(|_| heads.is_empty() || heads.iter().any(|head| row_of(room, *head).is_some()));
            if let Some(choice) = best.and_then(|best| self.choice(room, best)) {
                point[choice] = true;
            }
        }
        point
    }

    /// Whether a point keeps every row.
    pub(super) fn is_kept_by(&self, point: &[bool]) -> bool {
        let is_in = |variable: usize| point.get(variable).copied().unwrap_or(false);
        let sum = |row: &Row| row.terms.iter().filter(|(variable, _)| is_in(*variable)).map(|(_, factor)| factor).sum();
        self.rows.iter().all(|row| {
            let sum: f64 = sum(row);
            sum <= row.most
        })
    }

    /// The variable of a room's pattern.
    fn choice(&self, room: usize, pattern: usize) -> Option<usize> {
        self.choices.iter().position(|choice| *choice == (room, pattern)).map(|place| self.uses.len() + place)
    }

    fn one_pattern_a_room(&mut self, rooms: usize) {
        for room in 0..rooms {
            let choices = self.choices.iter().enumerate().filter(|(_, choice)| choice.0 == room);
            let terms: Vec<_> = choices.map(|(place, _)| (self.uses.len() + place, 1.0)).collect();
            if terms.len() > 1 {
                self.rows.push(Row::at_most(terms, 1.0));
            }
        }
    }

    fn one_piece_a_place(&mut self) {
        for (_, uses) in self.by_place() {
            self.rows.push(Row::at_most(uses.into_iter().map(|place| (place, 1.0)), 1.0));
        }
    }

    /// Nothing stands in a room, and none of its arrangements counts, without a main seat.
    fn as_sets(&mut self, rooms: &[Asking]) {
        let by_place = self.by_place();
        let mut rows = Vec::new();
        for room in 0..rooms.len() {
            let Some(heads) = self.heads.get(room).filter(|heads| !heads.is_empty()) else { continue };
            let seated: Vec<(usize, f64)> = heads
                .iter()
                .filter_map(|head| by_place.get(&(room, *head)))
                .flatten()
                .map(|one| (*one, -1.0))
                .collect();
            let of_room = by_place.range((room, 0)..(room + 1, 0));
            let others = of_room.filter(|((_, asked), _)| !heads.contains(asked)).map(|(_, uses)| uses.clone());
            let choices = self.choices.iter().enumerate().filter(|(_, choice)| choice.0 == room);
            let choices: Vec<usize> = choices.map(|(place, _)| self.uses.len() + place).collect();
            for together in others.chain([choices]).filter(|together| !together.is_empty()) {
                let terms = together.into_iter().map(|one| (one, 1.0)).chain(seated.iter().copied());
                rows.push(Row::at_most(terms, 0.0));
            }
        }
        self.rows.extend(rows);
    }

    /// Uses of each place that is asked for.
    fn by_place(&self) -> BTreeMap<(usize, usize), Vec<usize>> {
        let mut by_place: BTreeMap<_, Vec<usize>> = BTreeMap::new();
        for (place, one) in self.uses.iter().enumerate() {
            by_place.entry((one.room, one.asked)).or_default().push(place);
        }
        by_place
    }

    /// What stands in a room fits in the pattern that is chosen. Pieces that fit in the same patterns share a row: only
    /// one of them can stand in their place, so that says more than a row for each.
    fn within_patterns(&mut self) {
        let mut rows = Vec::new();
        for ((room, asked), uses) in self.by_place() {
            let Some(patterns) = self.patterns.get(room).filter(|patterns| patterns.len() > 1) else { continue };
            let mut alike: BTreeMap<Vec<usize>, Vec<usize>> = BTreeMap::new();
            for place in uses {
                let row = self.uses[place].row;
                let fits = |pattern: &Pattern| pattern.rows[asked].binary_search(&row).is_ok();
                let holding = patterns.iter().enumerate().filter(|(_, pattern)| fits(pattern)).map(|(place, _)| place);
                alike.entry(holding.collect()).or_default().push(place);
            }
            for (holding, uses) in alike.into_iter().filter(|(holding, _)| holding.len() < patterns.len()) {
                let chosen = holding.iter().filter_map(|pattern| Some((self.choice(room, *pattern)?, -1.0)));
                let terms = uses.into_iter().map(|place| (place, 1.0)).chain(chosen);
                rows.push(Row::at_most(terms, 0.0));
            }
        }
        self.rows.extend(rows);
    }

    /// On each day, no more of a row of the stock are in rooms than are there. Only days on which something begins can
    /// be the tightest.
    fn no_more_than_there_are(&mut self, rooms: &[Asking], stock: &[Owned]) {
        let mut of_row: BTreeMap<usize, Vec<usize>> = BTreeMap::new();
        for (place, one) in self.uses.iter().enumerate() {
            of_row.entry(one.row).or_default().push(place);
        }
        for (row, uses) in of_row {
            let Some(owned) = stock.get(row) else { continue };
            let begins = uses.iter().map(|place| rooms[self.uses[*place].room].days.from);
            let mut days: Vec<i32> = begins.chain(owned.away.iter().map(|away| away.days.from)).collect();
            days.sort_unstable();
            days.dedup();
            let mut rows: Vec<Row> = Vec::new();
            for day in days {
                let active = uses.iter().filter(|place| rooms[self.uses[**place].room].days.hold(day));
                let terms: Vec<_> = active.map(|place| (*place, f64::from(self.uses[*place].count))).collect();
                let there = f64::from(owned.there_on(day));
                if terms.iter().map(|(_, count)| count).sum::<f64>() > there {
                    rows.push(Row::at_most(terms, there));
                }
            }
            self.rows.extend(without_implied(rows));
        }
    }
}

/// Rows of which none says less than another does.
fn without_implied(rows: Vec<Row>) -> Vec<Row> {
    let implies =
        |one: &Row, other: &Row| one.most <= other.most && other.terms.iter().all(|term| one.terms.contains(term));
    let mut kept: Vec<Row> = Vec::new();
    for row in rows {
        if !kept.iter().any(|other| implies(other, &row)) {
            kept.retain(|other| !implies(&row, other));
            kept.push(row);
        }
    }
    kept
}

fn uses(rooms: &[Asking], stock: &[Owned], patterns: &[Vec<Pattern>]) -> Vec<Use> {
    let mut uses = Vec::new();
    for (room, asking) in rooms.iter().enumerate() {
        for (place, asked) in asking.asked().iter().enumerate() {
            let fits =
                |row: usize| patterns[room].iter().any(|pattern| pattern.rows[place].binary_search(&row).is_ok());
            let count = u32::try_from(asked.pieces.len()).unwrap_or(u32::MAX);
            for (row, owned) in stock.iter().enumerate().filter(|(row, owned)| fits(*row) && owned.piece.count >= count)
            {
                let Some((piece, stands_in)) = asking.room.piece_of(&asked.pieces, owned.piece.kind) else { continue };
                let points = points(piece, stands_in, &owned.piece) * i64::from(count);
                uses.push(Use { room, asked: place, row, count, must: asked.must, points });
            }
        }
    }
    uses
}
