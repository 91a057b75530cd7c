//! The assignment, step by step: must-haves by priority, then points.

use elbowroom_model::PieceKind;

use super::fit::has_place;
use super::statement::{Statement, Use};
use super::{Asking, Assignment, By, Fulfilled, Furnished, Owned, Proven, Served};
use crate::answer::RankedOption;
use crate::program::whole::{Step, Whole};

/// The best assignment that `work` for each part of each step finds, in the unit of [`Whole::solve`].
#[must_use]
pub fn assign(rooms: &[Asking], stock: &[Owned], work: u64) -> Assignment {
    let stated = Statement::of(rooms, stock);
    let solved = solve(rooms, &stated, &vec![false; stated.variables()], work);
    let rooms_found = rooms.iter().enumerate().map(|(room, asking)| {
        furnished(
            asking,
            stock,
            stated.uses.iter().zip(&solved.point).filter(|(one, is_in)| **is_in && one.room == room),
        )
    });
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
    // A room of one pattern has no choice to make: what its arrangement scores is counted all the same.
    let weight = |room: usize| weight(rooms, room, &priorities);
    let certain: i64 = stated
        .patterns
        .iter()
        .enumerate()
        .filter(|(_, patterns)| patterns.len() == 1)
        .map(|(room, patterns)| patterns[0].score * weight(room))
        .sum();
    let Step { worth, bound } = chosen.steps.last().copied().unwrap_or_default();
    let points = Proven { found: worth + certain, at_most: bound + certain };
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

fn furnished<'a>(asking: &Asking, stock: &[Owned], uses: impl Iterator<Item = (&'a Use, &'a bool)>) -> Furnished {
    let asked = asking.asked();
    let mut rows = vec![None; asked.len()];
    uses.for_each(|(one, _)| rows[one.asked] = Some(one.row));
    let fits = |option: &RankedOption| {
        let mut served = rows.iter().zip(&asked).filter_map(|(row, asked)| Some((asked, stock.get((*row)?)?)));
        served.all(|(asked, owned)| has_place(asking, option, asked, &owned.piece))
    };
    let option = asking.answer.options.iter().position(fits);
    let fulfilled = asked.iter().zip(&rows).map(|(asked, row)| {
        let by = row.map_or_else(|| why_none(asking, asked, option, stock), |row| By::Stock { row });
        Fulfilled { asked: asked.clone(), by }
    });
    Furnished { option, asked: fulfilled.collect() }
}

/// Why nothing serves what is asked for.
fn why_none(asking: &Asking, asked: &super::Asked, option: Option<usize>, stock: &[Owned]) -> By {
    if asking.answer.options.is_empty() {
        return if asking.answer.undecided() == 0 { By::NoOption } else { By::NotDecided };
    }
    let kind: Option<PieceKind> = asking.piece(asked).map(|piece| piece.kind);
    if !stock.iter().any(|owned| Some(owned.piece.kind) == kind && owned.piece.count > 0) {
        return By::NoneOfKind;
    }
    let option = option.and_then(|option| asking.answer.options.get(option));
    let fits = |owned: &Owned| option.is_some_and(|option| has_place(asking, option, asked, &owned.piece));
    let enough = |owned: &&Owned| owned.piece.count as usize >= asked.pieces.len();
    if stock.iter().filter(enough).any(fits) { By::AllTaken } else { By::NoneFits }
}
