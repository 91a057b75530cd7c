//! One arrangement as a plain program with choices, whole, so that another solver can be asked the same.
//!
//! Plain is what a general solver can be asked for: round gaps as the polygons around them, no ways through.

use super::aim::Aim;
use super::asked::Asked;
use super::barriers::Barriers;
use super::cell::Cell;
use super::effort::Effort;
use super::found::Searched;
use super::once::searched;
use super::problem::Problem;
use super::room_context::RoomContext;
use super::term_cells::TermCells;
use super::tree::Order;
use crate::arrangement::Arrangement;
use crate::program::Row;
use crate::routes::Floor;
use crate::rules::{Alternative, Requirement};

/// A program with choices: maximise `constant` and the objective.
#[derive(Debug, Clone, PartialEq)]
pub struct Stated {
    /// What each variable counts.
    pub objective: Vec<f64>,
    /// What the pieces count by standing at all.
    pub constant: f64,
    /// Bounds of each variable, mm.
    pub bounds: Vec<(f64, f64)>,
    /// Rows that hold whatever is chosen.
    pub always: Vec<Row>,
    /// For each piece the stands it chooses one from.
    pub ways: Vec<Vec<usize>>,
    /// What must hold besides.
    pub choices: Vec<Choice>,
}

/// One alternative at least must hold where all of some stands were chosen.
#[derive(Debug, Clone, PartialEq)]
pub struct Choice {
    /// The stands; none where it must hold in any case.
    pub when: Vec<usize>,
    /// Each a few rows that hold together; none where those stands cannot be chosen together.
    pub alternatives: Vec<Vec<Row>>,
    /// What taking each costs besides.
    pub costs: Vec<f64>,
}

/// What a plain program makes as large as it can be.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Sought {
    /// The sizes of its pieces, and where they leave a choice what settles ties.
    Largest,
    /// The sizes of its pieces alone.
    Sizes,
    /// The plan that composes best.
    Plan,
}

impl Sought {
    const fn aim(self) -> Aim<'static> {
        match self {
            Self::Largest | Self::Sizes => Aim::Together,
            Self::Plan => Aim::Plan,
        }
    }

    const fn asked(self) -> Asked<'static> {
        Asked::plain(self.aim(), !matches!(self, Self::Sizes))
    }
}

/// The plain program of `arrangement` for what is sought; `None` where a piece may be left out, which is no matter of
/// rows alone.
#[must_use]
pub fn stated(room: &RoomContext<'_>, arrangement: &Arrangement, sought: Sought) -> Option<Stated> {
    let terms = TermCells::default();
    let problem = Problem::of(room, arrangement, sought.asked(), &terms);
    if problem.ways.iter().any(|ways| ways.may_be_left_out) {
        return None;
    }
    let mut stated = Stated {
        objective: problem.objective(),
        constant: room.brief.piece_ids().map(|piece| problem.presence(piece)).sum(),
        bounds: problem.bounds(),
        always: Vec::new(),
        ways: problem.ways.iter().map(|ways| ways.states.clone()).collect(),
        choices: Vec::new(),
    };
    stated.take(problem.room(), &[]);
    for (piece, ways) in problem.ways.iter().enumerate() {
        for &state in &ways.states {
            stated.take(problem.alone(state), &[state]);
            problem.terms_alone(state).into_iter().for_each(|cell| stated.take(cell, &[state]));
            for &other in problem.ways[..piece].iter().flat_map(|ways| &ways.states) {
                stated.take(problem.between(other, state), &[other, state]);
                let terms = problem.terms_between(other, state).into_iter();
                terms.for_each(|cell| stated.take(cell, &[other, state]));
            }
        }
    }
    Some(stated)
}

/// The best layout of the plain program of `arrangement`, as the search finds it; none where none is better than `to_beat`.
#[must_use]
pub fn search_stated(
    room: &RoomContext<'_>,
    floor: &Floor,
    arrangement: &Arrangement,
    sought: Sought,
    nodes: usize,
    to_beat: f64,
) -> Searched {
    let terms = TermCells::default();
    let problem = Problem::of(room, arrangement, sought.asked(), &terms);
    let effort = Effort { to_beat, ..Effort::of(sought.aim(), nodes) };
    searched(&problem, floor, effort, Order::BestFirst, &Barriers::default())
}

impl Stated {
    /// What a cell asks while `states` stand; the only stand of a piece is no condition.
    fn take(&mut self, cell: &Cell, states: &[usize]) {
        let only = |state: &usize| self.ways.iter().any(|ways| ways[..] == [*state]);
        let when: Vec<usize> = states.iter().copied().filter(|state| !only(state)).collect();
        if cell.dead.is_some() {
            self.choices.push(Choice { when, alternatives: Vec::new(), costs: Vec::new() });
            return;
        }
        let rows = cell.always.iter().map(|(row, _)| row.clone());
        if when.is_empty() {
            self.always.extend(rows);
        } else {
            let each = rows.map(|row| Choice { when: when.clone(), alternatives: vec![vec![row]], costs: vec![0.0] });
            self.choices.extend(each);
        }
        let rows_of = |requirement: &Requirement| -> (Vec<Vec<Row>>, Vec<f64>) {
            let mut found: Vec<&Alternative> = Vec::new();
            for coarse in &requirement.alternatives {
                let each = if coarse.finer.is_empty() { std::slice::from_ref(coarse) } else { &coarse.finer[..] };
                for one in each {
                    if !found.iter().any(|other| other.is_nearly(one)) {
                        found.push(one);
                    }
                }
            }
            found.into_iter().map(|alternative| (alternative.rows.clone(), alternative.cost)).unzip()
        };
        let asked = cell.choices.iter();
        self.choices.extend(asked.map(|asked| {
            let (alternatives, costs) = rows_of(asked);
            Choice { when: when.clone(), alternatives, costs }
        }));
    }
}
