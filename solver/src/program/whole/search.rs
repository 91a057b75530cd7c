//! One objective within rows. From the node of the greatest bound the search goes down, one variable more at 1 each time,
//! until nothing is left below: that finds points. Then it takes the greatest bound again: that proves them.

use std::rc::Rc;

use crate::program::relaxation::{Relaxation, Without};
use crate::program::row::Row;
use crate::program::tolerance::{WHOLE, WHOLE_SUM};

/// A program of one objective.
pub(super) struct Search {
    pub(super) objective: Vec<i64>,
    pub(super) rows: Vec<Row>,
    /// Variables to branch on before the others.
    pub(super) first: Vec<usize>,
    /// For each variable, the earliest objective that it is worth something to, of this one and those before.
    pub(super) counts_from: Vec<usize>,
}

/// The best so far.
pub(super) struct Best {
    pub(super) point: Vec<bool>,
    pub(super) worth: i64,
    /// No point is worth more.
    pub(super) bound: i64,
    /// Relaxations solved.
    pub(super) nodes: usize,
}

/// What is left to look at.
struct Node {
    /// The relaxation that it comes from, and what is decided beyond that; none at the root.
    from: Option<(Rc<Relaxation>, usize, bool)>,
    bound: i64,
}

/// What is left of a node, by one more variable.
struct Children {
    without: Node,
    with: Node,
}

impl Node {
    fn relaxation(&self, search: &Search, objective: &[f64]) -> Result<Relaxation, Without> {
        match &self.from {
            Some((parent, variable, is_in)) => parent.fixed(*variable, f64::from(u8::from(*is_in))),
            None => Relaxation::of(objective, &vec![(0.0, 1.0); objective.len()], &search.rows),
        }
    }
}

impl Search {
    /// Every row holds at the point.
    fn holds(&self, point: &[bool]) -> bool {
        let left = |row: &Row| -> f64 {
            row.terms.iter().map(|(variable, factor)| if point[*variable] { *factor } else { 0.0 }).sum()
        };
        self.rows.iter().all(|row| left(row) <= row.most + WHOLE)
    }

    /// The best point, or the best that `nodes` relaxations find, from `start`, which keeps every row.
    pub(super) fn solve(&self, start: &[bool], nodes: usize) -> Best {
        let mut best = Best { point: start.to_vec(), worth: worth(&self.objective, start), bound: 0, nodes: 0 };
        let as_values: Vec<f64> = start.iter().map(|is_in| f64::from(u8::from(*is_in))).collect();
        let rows_of = self.rows_of_variables();
        self.take(self.gathered(&as_values, &rows_of), &mut best);
        let mut open = vec![Node { from: None, bound: self.most_by_rows() }];
        let mut below = None;
        let mut unanswered = i64::MIN;
        while let Some(node) = below.take().or_else(|| take_best(&mut open)) {
            if node.bound <= best.worth {
                continue;
            }
            if best.nodes >= nodes {
                open.push(node);
                break;
            }
            best.nodes += 1;
            match self.look_at(&node, &rows_of, &mut best) {
                Ok(Some(children)) => {
                    open.push(children.without);
                    below = Some(children.with);
                }
                Ok(None) | Err(Without::Feasible) => {}
                Err(Without::Answer) => unanswered = unanswered.max(node.bound),
            }
        }
        best.bound = open.iter().map(|node| node.bound).fold(unanswered.max(best.worth), i64::max);
        best
    }

    /// What no point is worth more than, without any relaxation: of variables of which a row allows one alone, each counted
    /// with the first such row, only the one that is worth most counts.
    fn most_by_rows(&self) -> i64 {
        let mut is_counted = vec![false; self.objective.len()];
        let mut most = 0;
        for row in self.rows.iter().filter(|row| row.most <= 1.0 && row.terms.iter().all(|(_, factor)| *factor >= 1.0))
        {
            let mut of_row = 0;
            for (variable, _) in &row.terms {
                if !std::mem::replace(&mut is_counted[*variable], true) {
                    of_row = of_row.max(self.objective[*variable]);
                }
            }
            most += of_row;
        }
        let others = self.objective.iter().zip(is_counted).filter(|(_, is_counted)| !is_counted);
        most + others.map(|(worth, _)| (*worth).max(0)).sum::<i64>()
    }

    /// Notes a point that keeps every row and is worth more than the best so far.
    fn take(&self, point: Vec<bool>, best: &mut Best) {
        let worth = worth(&self.objective, &point);
        if worth > best.worth && self.holds(&point) {
            (best.worth, best.point) = (worth, point);
        }
    }

    /// Solves the relaxation of a node, notes what it shows, and says what is left of it.
    fn look_at(
        &self,
        node: &Node,
        rows_of: &[Vec<(usize, f64)>],
        best: &mut Best,
    ) -> Result<Option<Children>, Without> {
        let objective: Vec<f64> = self.objective.iter().map(|worth| *worth as f64).collect();
        let solved = node.relaxation(self, &objective)?;
        let bound = node.bound.min((solved.worth(&objective) + WHOLE_SUM).floor() as i64);
        if bound <= best.worth {
            return Ok(None);
        }
        for rounded in [nearest(solved.point()), self.gathered(solved.point(), rows_of)] {
            self.take(rounded, best);
        }
        let solved = Rc::new(solved);
        let child = |variable, is_in| Node { from: Some((Rc::clone(&solved), variable, is_in)), bound };
        let variable = self.to_branch_on(solved.point());
        Ok(variable.map(|variable| Children { without: child(variable, false), with: child(variable, true) }))
    }

    /// For each variable the rows that it stands in, with its factor.
    fn rows_of_variables(&self) -> Vec<Vec<(usize, f64)>> {
        let mut rows_of = vec![Vec::new(); self.objective.len()];
        for (place, row) in self.rows.iter().enumerate() {
            row.terms.iter().for_each(|(variable, factor)| rows_of[*variable].push((place, *factor)));
        }
        rows_of
    }

    /// A point gathered one variable after the other, as long as every row holds: those that the relaxation takes whole,
    /// then those of the earliest objective, the likeliest first.
    fn gathered(&self, point: &[f64], rows_of: &[Vec<(usize, f64)>]) -> Vec<bool> {
        let mut order: Vec<usize> = (0..point.len()).collect();
        let mut is_first = vec![false; point.len()];
        self.first.iter().for_each(|variable| is_first[*variable] = true);
        let key = |variable: usize| {
            let left_over = point[variable] < 1.0 - WHOLE;
            (!is_first[variable], left_over, if left_over { self.counts_from[variable] } else { 0 })
        };
        order.sort_by(|one, other| {
            let likely = point[*other].total_cmp(&point[*one]);
            key(*one).cmp(&key(*other)).then(likely).then(self.objective[*other].cmp(&self.objective[*one]))
        });
        let mut slack: Vec<f64> = self.rows.iter().map(|row| row.most + WHOLE).collect();
        let mut gathered = vec![false; point.len()];
        for variable in order {
            let fits = rows_of[variable].iter().all(|(row, factor)| *factor <= 0.0 || *factor <= slack[*row]);
            if fits && (self.counts_from[variable] < usize::MAX || point[variable] > 0.5) {
                gathered[variable] = true;
                rows_of[variable].iter().for_each(|(row, factor)| slack[*row] -= factor);
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

/// Worth of a point by `objective`.
pub(super) fn worth(objective: &[i64], point: &[bool]) -> i64 {
    objective.iter().zip(point).map(|(worth, is_in)| if *is_in { *worth } else { 0 }).sum()
}

fn nearest(point: &[f64]) -> Vec<bool> {
    point.iter().map(|value| *value > 0.5).collect()
}

/// The node of the greatest bound, of equal ones the one opened last.
fn take_best(open: &mut Vec<Node>) -> Option<Node> {
    let place = open.iter().enumerate().max_by_key(|(place, node)| (node.bound, *place))?.0;
    Some(open.remove(place))
}
