//! Programs whose every variable is 0 or 1: branch and bound over relaxations, with a bound that is proven.
//!
//! Variables that share no row, not even over others, are solved apart. Objectives are whole numbers, so a relaxation's
//! optimum is rounded down to the next of them. Work is counted in nodes, never in time: the same program gives the same
//! answer everywhere.

use super::once;
use super::row::Row;

/// How far from 0 and 1 a value may lie and still be taken for it.
const WHOLE: f64 = 1e-6;
/// How far an optimum may lie above a whole number and still be taken for it: rounding of sums of some thousands.
const ROUNDING: f64 = 1e-4;

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
    /// Step by step, what it is worth, and what no point is worth more than that keeps the steps before.
    pub steps: Vec<Step>,
    /// Relaxations solved.
    pub nodes: usize,
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
    /// The best point, or the best that `nodes` relaxations for each step of each part find, from `start`, which keeps
    /// every row.
    #[must_use]
    pub fn solve(&self, start: &[bool], nodes: usize) -> Chosen {
        let steps = vec![Step::default(); self.objectives.len()];
        let mut chosen = Chosen { point: start.to_vec(), steps, nodes: 0 };
        for part in self.parts() {
            let found = part.of(self, start).solve(nodes);
            for (place, variable) in part.variables.iter().enumerate() {
                chosen.point[*variable] = found.point[place];
            }
            for (all, step) in chosen.steps.iter_mut().zip(&found.steps) {
                all.worth += step.worth;
                all.bound += step.bound;
            }
            chosen.nodes += found.nodes;
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
    fn solve(mut self, nodes: usize) -> Chosen {
        let mut chosen = Chosen { point: self.start, steps: Vec::new(), nodes: 0 };
        for aim in self.aims {
            self.program.objective = aim;
            let found = self.program.solve(&chosen.point, nodes);
            let terms = self.program.objective.iter().enumerate().filter(|(_, worth)| **worth != 0);
            let kept: Vec<_> = terms.map(|(variable, worth)| (variable, *worth as f64)).collect();
            if !kept.is_empty() {
                self.program.rows.push(Row::at_least(kept, found.worth as f64));
            }
            chosen.point = found.point;
            chosen.steps.push(Step { worth: found.worth, bound: found.bound });
            chosen.nodes += found.nodes;
        }
        chosen
    }
}

/// One objective within rows.
struct Search {
    objective: Vec<i64>,
    rows: Vec<Row>,
    first: Vec<usize>,
}

/// The best so far.
struct Best {
    point: Vec<bool>,
    worth: i64,
    bound: i64,
    nodes: usize,
}

impl Search {
    /// Worth of a point.
    fn worth(&self, point: &[bool]) -> i64 {
        self.objective.iter().zip(point).map(|(worth, is_in)| if *is_in { *worth } else { 0 }).sum()
    }

    /// Every row holds at the point.
    fn holds(&self, point: &[bool]) -> bool {
        let left = |row: &Row| -> f64 {
            row.terms.iter().map(|(variable, factor)| if point[*variable] { *factor } else { 0.0 }).sum()
        };
        self.rows.iter().all(|row| left(row) <= row.most + WHOLE)
    }

    fn solve(&self, start: &[bool], nodes: usize) -> Best {
        let mut best = Best { point: start.to_vec(), worth: self.worth(start), bound: 0, nodes: 0 };
        let free: Vec<(f64, f64)> = vec![(0.0, 1.0); self.objective.len()];
        let mut open = vec![Node { bounds: free, bound: self.objective.iter().map(|worth| (*worth).max(0)).sum() }];
        while let Some(node) = take_best(&mut open) {
            if node.bound <= best.worth || best.nodes >= nodes {
                open.push(node);
                break;
            }
            best.nodes += 1;
            self.look_at(node, &mut best, &mut open);
        }
        best.bound = open.iter().map(|node| node.bound).max().unwrap_or(best.worth).max(best.worth);
        best
    }

    /// Solves the relaxation of a node, notes what it shows, and opens what is left of it.
    fn look_at(&self, node: Node, best: &mut Best, open: &mut Vec<Node>) {
        let objective: Vec<f64> = self.objective.iter().map(|worth| *worth as f64).collect();
        let Some((optimum, point)) = once::maximise(&objective, &node.bounds, &self.rows) else { return };
        let bound = node.bound.min((optimum + ROUNDING).floor() as i64);
        if bound <= best.worth {
            return;
        }
        for rounded in [self.nearest(&point), self.gathered(&point, &node.bounds)] {
            if self.holds(&rounded) && self.worth(&rounded) > best.worth {
                best.worth = self.worth(&rounded);
                best.point = rounded;
            }
        }
        let Some(variable) = self.to_branch_on(&point) else { return };
        for value in [0.0, 1.0] {
            let mut bounds = node.bounds.clone();
            bounds[variable] = (value, value);
            open.push(Node { bounds, bound });
        }
    }

    fn nearest(&self, point: &[f64]) -> Vec<bool> {
        point.iter().map(|value| *value > 0.5).collect()
    }

    /// A point gathered one variable after the other, the likeliest first, as long as every row holds.
    fn gathered(&self, point: &[f64], bounds: &[(f64, f64)]) -> Vec<bool> {
        let mut order: Vec<usize> = (0..point.len()).collect();
        let is_first = |variable: usize| self.first.contains(&variable);
        order.sort_by(|one, other| {
            let likely = point[*other].total_cmp(&point[*one]);
            is_first(*other).cmp(&is_first(*one)).then(likely).then(self.objective[*other].cmp(&self.objective[*one]))
        });
        let mut of_variable: Vec<Vec<(usize, f64)>> = vec![Vec::new(); point.len()];
        for (place, row) in self.rows.iter().enumerate() {
            row.terms.iter().for_each(|(variable, factor)| of_variable[*variable].push((place, *factor)));
        }
        let mut slack: Vec<f64> = self.rows.iter().map(|row| row.most + WHOLE).collect();
        let mut gathered = vec![false; point.len()];
        for variable in order {
            let fits = of_variable[variable].iter().all(|(row, factor)| *factor <= 0.0 || *factor <= slack[*row]);
            if fits && bounds[variable].1 > 0.0 && (self.objective[variable] > 0 || point[variable] > 0.5) {
                gathered[variable] = true;
                of_variable[variable].iter().for_each(|(row, factor)| slack[*row] -= factor);
            }
        }
        gathered
    }

    /// The variable that is least decided, those to branch on first before the others.
    fn to_branch_on(&self, point: &[f64]) -> Option<usize> {
        let undecided = |variable: &usize| (WHOLE..=1.0 - WHOLE).contains(&point[*variable]);
        let middle = |one: &usize, other: &usize| (point[*one] - 0.5).abs().total_cmp(&(point[*other] - 0.5).abs());
        let first = self.first.iter().copied().filter(undecided).min_by(middle);
        first.or_else(|| (0..point.len()).filter(undecided).min_by(middle))
    }
}

/// What is left to look at.
struct Node {
    bounds: Vec<(f64, f64)>,
    bound: i64,
}

/// The node of the greatest bound, of equal ones the one opened last.
fn take_best(open: &mut Vec<Node>) -> Option<Node> {
    let place = open.iter().enumerate().max_by_key(|(place, node)| (node.bound, *place))?.0;
    Some(open.remove(place))
}
