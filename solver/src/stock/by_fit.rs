//! Who gets what where fit is asked of the solver: sets that no option of a room holds, since each option is for one share
//! of the floor among its pieces, and a deeper sofa may stand beside a smaller table.
//!
//! The program is solved as if every piece that is as asked for had a place ([`hope`](super::hope)). Each set that it then
//! builds on is solved in its room. One that fits becomes an answer of the room; of one that does not, a part that cannot
//! stand is cut off, with everything that is no smaller. So it goes on until nothing is built on hope: what then is served
//! is the most that can be.

use std::collections::BTreeMap;
use std::sync::Arc;

use rayon::prelude::*;

use super::assign::{Solved, assign, solve_for};
use super::hope::{are_alike, is_no_smaller};
use super::set::{Asks, Fits, Pick, Set};
use super::statement::Statement;
use super::{Asking, Assignment, Owned, Served, SetsAsked, StockRoom};
use crate::Limits;

/// How far the work goes, counted and never timed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Effort {
    /// For each part of each step of a program, in the unit of [`Whole::solve`](crate::program::whole::Whole::solve).
    pub work: u64,
    /// Sets that are solved before no more are asked.
    pub sets: usize,
}

/// The rooms with the sets that were found to fit, and who gets what of them.
#[derive(Debug, Clone)]
pub struct Staged {
    /// The bookings, in the order given.
    pub rooms: Vec<Asking>,
    /// Who gets what.
    pub found: Assignment,
}

/// The best assignment where fit is asked of the solver: of must-haves as many as any sets serve that fit; then of points as
/// many as the options and the sets found allow. Nothing is asked where every must-have is served without.
#[must_use]
pub fn assign_by_fit(rooms: &[Asking], stock: &[Owned], limits: &Limits, effort: Effort) -> Staged {
    let found = assign(rooms, stock, effort.work);
    if lacks_nothing(rooms, &found) {
        return Staged { rooms: rooms.to_vec(), found };
    }
    let mut search = Search::of(rooms, stock, limits);
    let at_most = search.run(&found, effort);
    if search.asked.fitting == 0 {
        let found = search.told(found, &at_most);
        return Staged { rooms: search.rooms, found };
    }
    let found = assign(&search.rooms, stock, effort.work);
    let found = search.told(found, &at_most);
    Staged { rooms: search.rooms, found }
}

/// Every must-have is served, and every room that anything fits in is staged.
fn lacks_nothing(rooms: &[Asking], found: &Assignment) -> bool {
    let is_staged = |(asking, one): (&Asking, &super::Furnished)| one.option.is_some() || asking.room.has_no_option();
    found.must.iter().all(|served| served.count.found == served.of as i64)
        && rooms.iter().zip(&found.rooms).all(is_staged)
}

struct Search<'a> {
    stock: &'a [Owned],
    limits: &'a Limits,
    rooms: Vec<Asking>,
    /// Of each booking, the first of the same room.
    first: Vec<usize>,
    /// By the first booking of a room, the sets that do not fit there.
    refused: BTreeMap<usize, Vec<Set>>,
    /// What was asked, each with the first booking of its room.
    known: Vec<(usize, Set)>,
    asked: SetsAsked,
}

impl<'a> Search<'a> {
    fn of(rooms: &[Asking], stock: &'a [Owned], limits: &'a Limits) -> Self {
        let first = (0..rooms.len()).map(|place| {
            let is_same = |other: &Asking| is_same_room(&other.room, &rooms[place].room);
            rooms.iter().position(is_same).unwrap_or(place)
        });
        Self {
            stock,
            limits,
            first: first.collect(),
            rooms: rooms.to_vec(),
            refused: BTreeMap::new(),
            known: Vec::new(),
            asked: SetsAsked::default(),
        }
    }

    /// Asks until nothing is built on hope or the effort is spent, and says what no assignment serves more than.
    fn run(&mut self, start: &Assignment, effort: Effort) -> Vec<Served> {
        let mut undecided_before: Option<Vec<Served>> = None;
        loop {
            let (stated, solved) = self.hoped(start, effort.work);
            let mut sets = self.built_on_hope(&stated, &solved);
            let at_most = || undecided_before.clone().unwrap_or_else(|| solved.must.clone());
            if sets.is_empty() {
                return at_most();
            }
            // A program that is not solved to its end may build on what is known already.
            sets.retain(|set| !self.known.contains(set));
            if sets.is_empty() || self.asked.solved >= effort.sets {
                self.asked.spent = true;
                return at_most();
            }
            self.known.extend(sets.iter().cloned());
            if self.ask(sets) > 0 {
                undecided_before.get_or_insert(solved.must);
            }
        }
    }

    /// What would be served if all that is as asked for fitted, but for what was refused; and as little as can be built on
    /// that.
    fn hoped(&self, start: &Assignment, work: u64) -> (Statement, Solved) {
        let none: &[Set] = &[];
        let refused = self.first.iter().map(|first| self.refused.get(first).map_or(none, Vec::as_slice));
        let stated = Statement::hoping(&self.rooms, self.stock, &refused.collect::<Vec<_>>());
        let staged = stated.choices.iter().map(|choice| if stated.is_hoped_for(choice.0, choice.1) { 1 } else { 2 });
        let staged = std::iter::repeat_n(0, stated.uses.len()).chain(staged).collect();
        let solved = solve_for(&self.rooms, &stated, staged, &stated.as_found(start), work);
        (stated, solved)
    }

    /// The sets that are built on hope, each with the first booking of its room, once.
    fn built_on_hope(&self, stated: &Statement, solved: &Solved) -> Vec<(usize, Set)> {
        let is_in = |variable: usize| solved.point.get(variable).copied().unwrap_or(false);
        let mut sets: Vec<Vec<Pick>> = vec![Vec::new(); self.rooms.len()];
        for (_, one) in stated.uses.iter().enumerate().filter(|(place, _)| is_in(*place)) {
            sets[one.room].push(Pick { asked: one.asked, row: one.row });
        }
        let chosen = stated.choices.iter().enumerate().filter(|(place, _)| is_in(stated.uses.len() + place));
        let hoped: Vec<usize> =
            chosen.filter(|(_, choice)| stated.is_hoped_for(choice.0, choice.1)).map(|(_, choice)| choice.0).collect();
        let smallest: Vec<(usize, Set)> = hoped
            .into_iter()
            .map(|room| (self.first[room], self.as_small_as_is_free(stated, room, &mut sets)))
            .collect();
        let mut once: Vec<(usize, Set)> = Vec::new();
        for one in smallest {
            if !once.contains(&one) {
                once.push(one);
            }
        }
        once
    }

    /// The set of a room with each piece as small as is free: what is smaller fits where anything does.
    fn as_small_as_is_free(&self, stated: &Statement, room: usize, sets: &mut [Set]) -> Set {
        for place in 0..sets[room].len() {
            let pick = sets[room][place];
            let count = |one: &&super::statement::Use| one.room == room && one.asked == pick.asked;
            for one in stated.uses.iter().filter(count) {
                let now = sets[room][place].row;
                let both = self.stock.get(now).zip(self.stock.get(one.row));
                let is_smaller = both.is_some_and(|(now, other)| {
                    is_no_smaller(&now.piece, &other.piece) && !are_alike(&now.piece, &other.piece)
                });
                if is_smaller && self.is_free(room, one.row, one.count, sets) {
                    sets[room][place].row = one.row;
                }
            }
        }
        let first_alike = |pick: &Pick| {
            let is_like = |owned: &Owned| self.stock.get(pick.row).is_some_and(|it| are_alike(&it.piece, &owned.piece));
            Pick { row: self.stock.iter().position(is_like).unwrap_or(pick.row), ..*pick }
        };
        sets[room].iter().map(first_alike).collect()
    }

    /// Whether so many of a row are left on every day of a booking beside what all `sets` take.
    fn is_free(&self, room: usize, row: usize, count: u32, sets: &[Set]) -> bool {
        let (Some(owned), Some(asking)) = (self.stock.get(row), self.rooms.get(room)) else { return false };
        let begins = self.rooms.iter().map(|it| it.days.from).chain(owned.away.iter().map(|away| away.days.from));
        let mut days = begins.filter(|day| asking.days.hold(*day)).chain([asking.days.from]);
        days.all(|day| {
            let there = self.rooms.iter().zip(sets).filter(|(it, _)| it.days.hold(day));
            let used: u32 = there.map(|(it, set)| used(it, set, row)).sum();
            used + count <= owned.there_on(day)
        })
    }

    /// Asks the solver of these, side by side; how many were not decided.
    fn ask(&mut self, sets: Vec<(usize, Set)>) -> usize {
        let (rooms, stock, limits) = (&self.rooms, self.stock, self.limits);
        let answers: Vec<(usize, Fits, usize)> = sets
            .into_par_iter()
            .with_max_len(1)
            .map(|(first, set)| {
                let (fits, solved) = Asks { asking: &rooms[first], stock, limits }.ask(&set);
                (first, fits, solved)
            })
            .collect();
        let mut not_decided = 0;
        for (first, fits, solved) in answers {
            self.asked.solved += solved;
            match fits {
                Fits::Yes(found) => {
                    self.asked.fitting += 1;
                    self.add(first, &|room| room.sets.push((*found).clone()));
                }
                Fits::No(core) => self.refused.entry(first).or_default().push(core),
                Fits::NotDecided(set) => {
                    not_decided += 1;
                    self.refused.entry(first).or_default().push(set);
                }
            }
        }
        self.asked.not_decided += not_decided;
        not_decided
    }

    /// Changes the room of all bookings of it.
    fn add(&mut self, first: usize, change: &dyn Fn(&mut StockRoom)) {
        let mut changed: Vec<(Arc<StockRoom>, Arc<StockRoom>)> = Vec::new();
        for (asking, _) in self.rooms.iter_mut().zip(&self.first).filter(|(_, of)| **of == first) {
            let known = changed.iter().find(|(was, _)| Arc::ptr_eq(was, &asking.room)).map(|(_, now)| Arc::clone(now));
            let now = known.unwrap_or_else(|| {
                let mut room = StockRoom::clone(&asking.room);
                change(&mut room);
                Arc::new(room)
            });
            changed.push((std::mem::replace(&mut asking.room, Arc::clone(&now)), now));
        }
    }

    /// The assignment with what was asked, and with what can be at most by the solver.
    fn told(&self, found: Assignment, at_most: &[Served]) -> Assignment {
        let mut all_before = true;
        let must = found.must.iter().zip(at_most).map(|(served, bound)| {
            // Where less of a priority is served than can be, nothing is known of the next.
            let most = if all_before { bound.count.at_most } else { served.of as i64 };
            let mut told = *served;
            told.count.at_most = most.max(served.count.found);
            all_before &= told.count.is_proven();
            told
        });
        Assignment { must: must.collect(), sets: self.asked, ..found }
    }
}

/// Whether two bookings are of one room, or of rooms that are alike.
fn is_same_room(one: &Arc<StockRoom>, other: &Arc<StockRoom>) -> bool {
    Arc::ptr_eq(one, other) || (one.answer.asked == other.answer.asked && one == other)
}

/// How many of a row a set takes.
fn used(asking: &Asking, set: &Set, row: usize) -> u32 {
    let asked = asking.asked();
    let of = set.iter().filter(|pick| pick.row == row).filter_map(|pick| asked.get(pick.asked));
    u32::try_from(of.map(|asked| asked.pieces.len()).sum::<usize>()).unwrap_or(u32::MAX)
}
