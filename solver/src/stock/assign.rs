//! The assignment, step by step: must-haves by priority, then points.

use elbowroom_model::PieceKind;

use super::fit::has_place;
use super::nearest::nearest;
use super::statement::Statement;
use super::{Asking, Assignment, By, Fulfilled, Furnished, Owned, Proven, Served};
use crate::answer::RankedOption;
use crate::program::whole::{Step, Whole};

/// The best assignment that `work` for each part of each step finds, in the unit of [`Whole::solve`].
#[must_use]
pub fn assign(rooms: &[Asking], stock: &[Owned], work: u64) -> Assignment {
    let stated = Statement::of(rooms, stock);
    let solved = solve(rooms, &stated, &vec![false; stated.variables()], work);
    let mut served: Vec<Vec<Option<usize>>> = rooms.iter().map(|asking| vec![None; asking.asked().len()]).collect();
    for (one, _) in stated.uses.iter().zip(&solved.point).filter(|(_, is_in)| **is_in) {
        served[one.room][one.asked] = Some(one.row);
    }
    let rooms_found = (0..rooms.len()).filter_map(|room| furnished(rooms, stock, room, &served));
    Assignment { rooms: rooms_found.collect(), must: solved.must, points: solved.points, nodes: solved.nodes }
}

/// What all steps gave.
pub(super) struct Solved {
    pub(super) point: Vec<bool>,
    pub(super) must: Vec<Served>,
    pub(super) points: Proven,
    pub(super) nodes: usize,
    pub(super) work: u64,
}

/// Solves the steps one after the other, each keeping what those before it reached, from `start`.
pub(super) fn solve(rooms: &[Asking], stated: &Statement, start: &[bool], work: u64) -> Solved {
    let mut priorities: Vec<u32> = rooms.iter().map(|asking| asking.priority).collect();
    priorities.sort_unstable();
    priorities.dedup();
    let counts = |priority: u32| {
        let uses = stated.uses.iter().map(move |one| i64::from(one.must && rooms[one.room].priority == priority));
        filled(uses, stated.variables())
    };
    let mut objectives: Vec<Vec<i64>> = priorities.iter().map(|priority| counts(*priority)).collect();
    objectives.push(points(rooms, stated, &priorities));
    let first = (stated.uses.len()..stated.variables()).collect();
    let program = Whole { variables: stated.variables(), objectives, rows: stated.rows.clone(), first };
    let chosen = program.solve(start, work);
    let must = priorities.iter().zip(&chosen.steps).map(|(priority, step)| {
        let of = rooms.iter().filter(|asking| asking.priority == *priority);
        let of = of.map(|asking| asking.asked().iter().filter(|asked| asked.must).count()).sum();
        Served { priority: *priority, of, count: proven(*step) }
    });
    let points = proven(chosen.steps.last().copied().unwrap_or_default());
    Solved { must: must.collect(), points, nodes: chosen.nodes, work: chosen.work, point: chosen.point }
}

/// Points of everything: those of a room of the last priority once, of the one before it twice, and so on; and the score
/// of the arrangement that is chosen.
fn points(rooms: &[Asking], stated: &Statement, priorities: &[u32]) -> Vec<i64> {
    let weight = |room: usize| weight(rooms, room, priorities);
    let uses = stated.uses.iter().map(|one| one.points * weight(one.room));
    let choices = stated.choices.iter().map(|(room, pattern)| stated.patterns[*room][*pattern].score * weight(*room));
    filled(uses.chain(choices), stated.variables())
}

fn weight(rooms: &[Asking], room: usize, priorities: &[u32]) -> i64 {
    let place = priorities.iter().rev().position(|priority| *priority == rooms[room].priority);
    place.map_or(1, |place| place as i64 + 1)
}

fn filled(worths: impl Iterator<Item = i64>, variables: usize) -> Vec<i64> {
    let mut objective: Vec<i64> = worths.collect();
    objective.resize(variables, 0);
    objective
}

fn proven(step: Step) -> Proven {
    Proven { found: step.worth, at_most: step.bound }
}

/// The room at `room`, by the rows that serve all rooms.
fn furnished(rooms: &[Asking], stock: &[Owned], room: usize, served: &[Vec<Option<usize>>]) -> Option<Furnished> {
    let (asking, rows) = (rooms.get(room)?, served.get(room)?);
    let (asked, heads) = (asking.asked(), asking.main_seats());
    let staged = heads.is_empty() || heads.iter().any(|head| rows.get(*head).is_some_and(Option::is_some));
    let fits = |option: &RankedOption| {
        let mut served = rows.iter().zip(&asked).filter_map(|(row, asked)| Some((asked, stock.get((*row)?)?)));
        served.all(|(asked, owned)| has_place(asking, option, asked, &owned.piece))
    };
    let option = asking.answer.options.iter().position(fits).filter(|_| staged);
    let fulfilled = asked.iter().zip(rows).enumerate().map(|(place, (asked, row))| {
        let by = match row {
            Some(row) => By::Stock { row: *row },
            None if !staged && !heads.contains(&place) => By::NotStaged,
            None => why_none(asking, asked, option, stock),
        };
        Fulfilled { asked: asked.clone(), by }
    });
    let nearest = if staged { None } else { nearest(rooms, stock, room, served) };
    Some(Furnished { option, nearest, asked: fulfilled.collect() })
}

/// Why nothing serves what is asked for: beside what stands in `option`, or in any where nothing does.
fn why_none(asking: &Asking, asked: &super::Asked, option: Option<usize>, stock: &[Owned]) -> By {
    let options = &asking.answer.options;
    if options.is_empty() {
        return if asking.answer.undecided() == 0 { By::NoOption } else { By::NotDecided };
    }
    let kind: Option<PieceKind> = asking.piece(asked).map(|piece| piece.kind);
    if !stock.iter().any(|owned| Some(owned.piece.kind) == kind && owned.piece.count > 0) {
        return By::NoneOfKind;
    }
    let options = option.and_then(|option| options.get(option..=option)).unwrap_or(options);
    let fits = |owned: &Owned| options.iter().any(|option| has_place(asking, option, asked, &owned.piece));
    let enough = |owned: &&Owned| owned.piece.count as usize >= asked.pieces.len();
    if stock.iter().filter(enough).any(fits) { By::AllTaken } else { By::NoneFits }
}
