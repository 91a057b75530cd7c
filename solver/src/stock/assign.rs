//! The assignment, step by step: must-haves by priority, then points.

use super::fit::{Stage, stage, stages, stages_as_asked};
use super::nearest::{nearest_of, nearest_seat};
use super::short::{Shortage, why_none};
use super::statement::{Refusals, Statement};
use super::{Asked, Asking, Assignment, By, Chosen, Fulfilled, Furnished, Nearest, Owned, Proven, Served, SetsAsked};
use crate::best_by;
use crate::program::whole::{Step, Whole};

/// The best assignment that `work` for each part of each step finds, in the unit of [`Whole::solve`].
#[must_use]
pub fn assign(rooms: &[Asking], stock: &[Owned], work: u64) -> Assignment {
    let stated = Statement::of(rooms, stock, Refusals::All);
    let solved = solve(rooms, &stated, &vec![false; stated.variables()], work);
    let mut served: Vec<Vec<Option<usize>>> = rooms.iter().map(|asking| vec![None; asking.asked().len()]).collect();
    for (one, _) in stated.uses.iter().zip(&solved.point).filter(|(_, is_in)| **is_in) {
        served[one.room][one.asked] = Some(one.row);
    }
    let rooms_found = (0..rooms.len()).filter_map(|room| furnished(rooms, stock, room, &served));
    let (rooms, sets) = (rooms_found.collect(), SetsAsked::default());
    Assignment { rooms, must: solved.must, points: solved.points, sets, nodes: solved.nodes }
}

/// What all steps gave.
pub(super) struct Solved {
    pub(super) point: Vec<bool>,
    pub(super) must: Vec<Served>,
    pub(super) points: Proven,
    pub(super) nodes: usize,
    pub(super) work: u64,
}

/// The priorities of the rooms, the first one first.
pub(super) fn priorities(rooms: &[Asking]) -> Vec<u32> {
    let mut priorities: Vec<u32> = rooms.iter().map(|asking| asking.priority).collect();
    priorities.sort_unstable();
    priorities.dedup();
    priorities
}

/// Solves the steps one after the other, each keeping what those before it reached, from `start`: must-haves, then points.
pub(super) fn solve(rooms: &[Asking], stated: &Statement, start: &[bool], work: u64) -> Solved {
    solve_for(rooms, stated, points(rooms, stated, &priorities(rooms)), start, work)
}

/// The same with `last` in place of the points.
pub(super) fn solve_for(rooms: &[Asking], stated: &Statement, last: Vec<i64>, start: &[bool], work: u64) -> Solved {
    let priorities = priorities(rooms);
    let counts = |priority: u32| {
        let uses = stated.uses.iter().map(move |one| i64::from(one.must && rooms[one.room].priority == priority));
        filled(uses, stated.variables())
    };
    let mut objectives: Vec<Vec<i64>> = priorities.iter().map(|priority| counts(*priority)).collect();
    objectives.push(last);
    let first = (stated.uses.len()..stated.variables()).collect();
    let program = Whole { variables: stated.variables(), objectives, rows: stated.rows.clone(), first };
    // What a start may not hold any more is left out of it: nothing at all keeps every row.
    let nothing = vec![false; stated.variables()];
    let start = if stated.is_kept_by(start) { start } else { &nothing };
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

/// How many times the points of a room count.
pub(super) fn weight(rooms: &[Asking], room: usize, priorities: &[u32]) -> i64 {
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
    let option = best_option(asking, &asked, rows, stock).filter(|_| staged);
    let nearest = if staged { None } else { nearest_seat(rooms, stock, room, served) };
    let fulfilled = asked.into_iter().zip(rows).enumerate().map(|(place, (asked, row))| {
        let by = match row {
            Some(row) => By::Stock { row: *row },
            None if !staged && !heads.contains(&place) => By::NotStaged,
            None => why_none(&Shortage { rooms, stock, room, served, option }, place, &asked),
        };
        let nearest = if by == By::NoneFits { nearest_in(asking, (place, &asked), option, stock) } else { None };
        Fulfilled { asked, by, nearest }
    });
    Some(Furnished { option, nearest, asked: fulfilled.collect() })
}

/// The best option that all these rows fit in, side by side; of equal ones the first.
fn best_option(asking: &Asking, asked: &[Asked], rows: &[Option<usize>], stock: &[Owned]) -> Option<Chosen> {
    let fits = |stage: &Stage<'_>| {
        let mut served = asked.iter().zip(rows).filter_map(|(asked, row)| Some((asked, (*row)?, stock.get((*row)?)?)));
        served.all(|(asked, row, owned)| stage.takes(asked, row, &owned.piece))
    };
    let fitting = asking.room.places().zip(stages(&asking.room)).filter(|(_, stage)| fits(stage));
    best_by(fitting, |(_, stage)| stage.option.score).map(|(chosen, _)| chosen)
}

/// What comes nearest to what is asked for, beside what stands in `option`, or in any where nothing does.
fn nearest_in(asking: &Asking, asked: (usize, &Asked), option: Option<Chosen>, stock: &[Owned]) -> Option<Nearest> {
    let (place, asked) = asked;
    let stages: Vec<Stage<'_>> = match option {
        Some(chosen) => stage(&asking.room, chosen).into_iter().collect(),
        None => stages_as_asked(&asking.room).collect(),
    };
    nearest_of(stages.into_iter(), place, asked, stock, &|_, _| true)
}
