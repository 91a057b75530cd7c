//! The least change of one wish that turns the order, in closed form.

use std::cmp::Ordering;

use elbowroom_model::Criterion;

use super::best_first::best_first;
use super::table::Table;
use super::tolerance::TIE;
use crate::best_by;

/// The largest wish.
const MOST: f64 = 5.0;

/// A wish is told in the coarsest of these steps (in so many to 1) that still turns the order.
const STEPS: [f64; 4] = [10.0, 100.0, 1_000.0, 100_000.0];

/// A change of one wish that turns the order.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Turn {
    /// The wish to change.
    pub criterion: Criterion,
    /// To this, 0 to 5.
    pub weight: f64,
    /// The option that then stands first.
    pub then_first: usize,
}

/// For the first of `best`: the least change that puts any other above it. For every other option: the least change
/// that puts it first.
///
/// What is set aside as the wishes stand is not in the table, and stays out of it where a lower wish would let it in again;
/// what a higher wish would set aside is not put first by it.
pub(super) fn turns(table: &Table, wishes: &[f64], best: &[usize]) -> Vec<Option<Turn>> {
    let Some(&first) = best.first() else { return Vec::new() };
    let sweeps: Vec<Sweep<'_>> = (0..table.criteria.len()).map(|column| Sweep::of(table, wishes, column)).collect();
    let turn = |option: usize| {
        let change = |sweep: &Sweep<'_>| match option == first {
            true => sweep.change_from(first),
            false => sweep.change_to(option),
        };
        let changes = sweeps.iter().filter_map(|sweep| Some((sweep, change(sweep)?)));
        let (sweep, change) = best_by(changes, |(_, change)| -change.by)?;
        let then_first = if option == first { sweep.leader(change.to)? } else { option };
        Some(Turn { criterion: table.criteria[sweep.column], weight: change.to, then_first })
    };
    (0..table.rows.len()).map(turn).collect()
}

/// A change of the wish that is swept.
#[derive(Clone, Copy)]
struct Change {
    /// How far the exact turning point lies from the present wish.
    by: f64,
    /// Beyond it, rounded away from the present wish.
    to: f64,
}

/// All wishes but one stand still; that one runs from 0 to 5.
struct Sweep<'a> {
    table: &'a Table,
    wishes: &'a [f64],
    column: usize,
    /// Sum of the wishes that stand still.
    still: f64,
    /// Each option's sum over the wishes that stand still.
    bases: Vec<f64>,
}

/// An open stretch of the swept wish; empty where it runs backward.
#[derive(Clone, Copy)]
struct Stretch {
    from: f64,
    to: f64,
}

impl Stretch {
    const ALL: Self = Self { from: f64::NEG_INFINITY, to: f64::INFINITY };
    const NONE: Self = Self { from: f64::INFINITY, to: f64::NEG_INFINITY };

    fn and(self, other: Self) -> Self {
        Self { from: self.from.max(other.from), to: self.to.min(other.to) }
    }
}

impl<'a> Sweep<'a> {
    fn of(table: &'a Table, wishes: &'a [f64], column: usize) -> Self {
        let still = |place: &usize| *place != column;
        let places = || (0..wishes.len()).filter(still);
        let bases = table.rows.iter().map(|row| places().map(|place| row[place] * wishes[place]).sum()).collect();
        let still = places().map(|place| wishes[place]).sum();
        Self { table, wishes, column, still, bases }
    }

    /// The least change that puts any other above `first`.
    fn change_from(&self, first: usize) -> Option<Change> {
        if self.alone() {
            return self.change_alone(|scores| scores.iter().any(|score| score - scores[first] > TIE));
        }
        let others = (0..self.table.rows.len()).filter(|rival| *rival != first);
        let where_ahead = |rival: usize| self.where_ahead(rival, first).and(self.where_let_in(rival));
        let changes = others.filter_map(|rival| self.change_into(where_ahead(rival)));
        best_by(changes, |change| -change.by)
    }

    /// The least change that puts `option` first.
    fn change_to(&self, option: usize) -> Option<Change> {
        if self.alone() {
            return self.change_alone(|scores| leads(scores, option));
        }
        let rivals = (0..self.table.rows.len()).filter(|rival| *rival != option);
        let where_first =
            rivals.map(|rival| self.where_ahead(option, rival)).fold(self.where_let_in(option), Stretch::and);
        self.change_into(where_first)
    }

    /// Where no must in the swept criterion sets the option aside.
    fn where_let_in(&self, option: usize) -> Stretch {
        Stretch { to: self.table.aside_from[option][self.column], ..Stretch::ALL }
    }

    /// There is no other wish: the swept one decides alone at any size, and at 0 all criteria count alike.
    fn alone(&self) -> bool {
        self.still <= 0.0
    }

    fn change_alone(&self, turned: impl Fn(&[f64]) -> bool) -> Option<Change> {
        let present = self.wishes[self.column];
        let to = if present > 0.0 { 0.0 } else { 1.0 / STEPS[0] };
        turned(&self.scores(to)).then_some(Change { by: (to - present).abs(), to })
    }

    /// Where `option` leads `rival` by more than a tie.
    fn where_ahead(&self, option: usize, rival: usize) -> Stretch {
        let (row, other) = (&self.table.rows[option], &self.table.rows[rival]);
        // lead of the still ones + lead in the swept one x wish > tie x (still + wish)
        let at_zero = self.bases[option] - self.bases[rival] - TIE * self.still;
        let slope = row[self.column] - other[self.column] - TIE;
        let crossing = -at_zero / slope;
        match slope.total_cmp(&0.0) {
            Ordering::Greater => Stretch { from: crossing, ..Stretch::ALL },
            Ordering::Less => Stretch { to: crossing, ..Stretch::ALL },
            Ordering::Equal if at_zero > 0.0 => Stretch::ALL,
            Ordering::Equal => Stretch::NONE,
        }
    }

    /// From the present wish into the stretch, rounded away from the present wish.
    fn change_into(&self, stretch: Stretch) -> Option<Change> {
        let present = self.wishes[self.column];
        let up = stretch.to > present;
        let edge = if up { stretch.from.max(present) } else { stretch.to };
        let beyond = |steps: &f64| {
            let whole = if up { (edge * steps).floor() + 1.0 } else { (edge * steps).ceil() - 1.0 };
            let to = whole / steps;
            (stretch.from < to && to < stretch.to && (0.0..=MOST).contains(&to)).then_some(to)
        };
        let to = STEPS.iter().find_map(beyond)?;
        Some(Change { by: (edge - present).abs(), to })
    }

    /// Who stands first with the swept wish at `to`, of those that it lets in.
    fn leader(&self, to: f64) -> Option<usize> {
        best_first(&self.scores(to)).into_iter().find(|option| to < self.table.aside_from[*option][self.column])
    }

    fn scores(&self, to: f64) -> Vec<f64> {
        let mut wishes = self.wishes.to_vec();
        wishes[self.column] = to;
        self.table.scores(&wishes)
    }
}

/// Whether the option leads every other by more than a tie.
fn leads(scores: &[f64], option: usize) -> bool {
    (0..scores.len()).all(|rival| rival == option || scores[option] - scores[rival] > TIE)
}
