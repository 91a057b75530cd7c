//! Programs whose every variable is 0 or 1: branch and bound over relaxations, with a bound that is proven.
//!
//! Variables that share no row, not even over others, are solved apart. Objectives are whole numbers, so a relaxation's
//! optimum is rounded down to the next of them. Work is counted, never timed: the same program gives the same answer
//! everywhere.

mod search;

use self::search::{Search, worth};
use super::row::Row;

/// What a relaxation costs whatever its size, in the unit of [`Whole::solve`].
const LEAST_WORK: u64 = 1_000_000;
/// The first relaxation of a step is solved from nothing: its size counts so many times more.
const OF_THE_FIRST: u64 = 10;

/// A program over 0 and 1: maximise the first objective within the rows, then the second without losing of the first, and
/// so on.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Whole {
    /// How many variables there are.
    pub variables: usize,
    /// Step by step, the worth of each variable, a whole number.
    pub objectives: Vec<Vec<i64>>,
    /// What must hold.
    pub rows: Vec<Row>,
    /// Variables to branch on before the others.
    pub first: Vec<usize>,
}

/// What was found.
#[derive(Debug, Clone, PartialEq)]
pub struct Chosen {
    /// The point, each variable in it or not.
    pub point: Vec<bool>,
    /// Step by step, what the point is worth, and what no point is worth more than that keeps the steps before.
    pub steps: Vec<Step>,
    /// Relaxations solved.
    pub nodes: usize,
    /// What they cost, in the unit of [`Whole::solve`].
    pub work: u64,
}

/// How a step came out.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Step {
    /// Worth of the point.
    pub worth: i64,
    /// No point is worth more.
    pub bound: i64,
}

impl Whole {
    /// The best point, or the best that `work` for each step of each part finds, from `start`, which keeps every row.
    ///
    /// A relaxation counts as its variables times its rows, and a million more: some nanoseconds each; the size
    /// counts eleven times for the first of a step. One is solved in any case.
    #[must_use]
    pub fn solve(&self, start: &[bool], work: u64) -> Chosen {
        let steps = vec![Step::default(); self.objectives.len()];
        let mut chosen = Chosen { point: start.to_vec(), steps, nodes: 0, work: 0 };
        for part in self.parts() {
            let found = part.of(self, start).solve(work);
            for (place, variable) in part.variables.iter().enumerate() {
                chosen.point[*variable] = found.point[place];
            }
            for (all, step) in chosen.steps.iter_mut().zip(&found.steps) {
                all.worth += step.worth;
                all.bound += step.bound;
            }
            chosen.nodes += found.nodes;
            chosen.work += found.work;
        }
        chosen
    }

    /// Variables that rows tie together, part by part, in the order of their first variables.
    fn parts(&self) -> Vec<Part> {
        let mut head: Vec<usize> = (0..self.variables).collect();
        for row in &self.rows {
            let mut terms = row.terms.iter().map(|(variable, _)| *variable);
            let Some(first) = terms.next() else { continue };
            for variable in terms {
                let (one, other) = (head_of(&mut head, first), head_of(&mut head, variable));
                head[one.max(other)] = one.min(other);
            }
        }
        let mut parts: Vec<Part> = Vec::new();
        let mut part_of = vec![None; head.len()];
        for variable in 0..head.len() {
            let of = head_of(&mut head, variable);
            let part = *part_of[of].get_or_insert_with(|| {
                parts.push(Part::default());
                parts.len() - 1
            });
            parts[part].variables.push(variable);
        }
        for (place, row) in self.rows.iter().enumerate() {
            let first = row.terms.first().map(|(variable, _)| head_of(&mut head, *variable));
            if let Some(part) = first.and_then(|first| part_of[first]) {
                parts[part].rows.push(place);
            }
        }
        parts
    }
}

fn head_of(head: &mut [usize], variable: usize) -> usize {
    let mut at = variable;
    while head[at] != at {
        head[at] = head[head[at]];
        at = head[at];
    }
    at
}

/// Variables and rows that have nothing to do with the others.
#[derive(Debug, Default)]
struct Part {
    variables: Vec<usize>,
    rows: Vec<usize>,
}

impl Part {
    fn of(&self, whole: &Whole, start: &[bool]) -> Apart {
        let mut place_of = vec![None; whole.variables];
        for (place, variable) in self.variables.iter().enumerate() {
            place_of[*variable] = Some(place);
        }
        let row = |row: &usize| {
            let terms = whole.rows[*row].terms.iter();
            let terms = terms.filter_map(|(variable, factor)| Some((place_of[*variable]?, *factor)));
            Row::at_most(terms, whole.rows[*row].most)
        };
        let worths = |objective: &Vec<i64>| self.variables.iter().map(|variable| objective[*variable]).collect();
        let aims: Vec<Vec<i64>> = whole.objectives.iter().map(worths).collect();
        Apart {
            program: Search {
                objective: Vec::new(),
                rows: self.rows.iter().map(row).collect(),
                counts_from: vec![usize::MAX; self.variables.len()],
                first: whole.first.iter().filter_map(|variable| place_of[*variable]).collect(),
            },
            aims,
            start: self.variables.iter().map(|variable| start[*variable]).collect(),
        }
    }
}

/// A part as a program of its own.
struct Apart {
    program: Search,
    aims: Vec<Vec<i64>>,
    start: Vec<bool>,
}

impl Apart {
    fn solve(mut self, work: u64) -> Chosen {
        let mut chosen = Chosen { point: self.start, steps: Vec::new(), nodes: 0, work: 0 };
        for (step, aim) in self.aims.iter().enumerate() {
            for (from, _) in self.program.counts_from.iter_mut().zip(aim).filter(|(_, worth)| **worth > 0) {
                *from = step.min(*from);
            }
            self.program.objective.clone_from(aim);
            let size = self.program.objective.len() as u64 * self.program.rows.len() as u64;
            let (first, each) = (OF_THE_FIRST * size, LEAST_WORK + size);
            let nodes = usize::try_from(work.saturating_sub(first) / each).unwrap_or(usize::MAX).max(1);
            let found = self.program.solve(&chosen.point, nodes);
            let terms = self.program.objective.iter().enumerate().filter(|(_, worth)| **worth != 0);
            let kept: Vec<_> = terms.map(|(variable, worth)| (variable, *worth as f64)).collect();
            if !kept.is_empty() {
                self.program.rows.push(Row::at_least(kept, found.worth as f64));
            }
            chosen.point = found.point;
            chosen.steps.push(Step { worth: found.worth, bound: found.bound });
            chosen.nodes += found.nodes;
            // A step that nothing was solved for costs nothing.
            chosen.work += if found.nodes == 0 { 0 } else { first + found.nodes as u64 * each };
        }
        // A step that is not proven may be worth more at the point of a later one, which keeps it and searches on.
        for (step, aim) in chosen.steps.iter_mut().zip(&self.aims) {
            step.worth = worth(aim, &chosen.point);
        }
        chosen
    }
}
