//! A prepared program put to HiGHS as one who knows it would: a binary for a stand only where there are several and for an
//! alternative only where there is a choice, rows switched off by no more than the other stands or alternatives leave, and options
//! that proved best for programs of this kind. Tried and slower: a row let go of by each other alternative by as much as that one
//! needs (tighter, but denser), a cutoff instead of a row for what must be beaten, restarts, cuts at nodes.

use super::milp::{LIMIT, answer};
use super::prepared::{Prepared, single};
use super::ranges::Ranges;
use elbowroom_solver::program::Row;
use elbowroom_solver::search::{Choice, Stated};
use highs::{Col, Model, RowProblem, Sense};

/// Bounds that differ by less are the same, mm.
const SAME: f64 = 1e-6;

/// The best value of what `stated` says that is above `least`, proven by HiGHS; none where nothing is.
///
/// # Panics
///
/// Where HiGHS neither proves an optimum nor that there is none.
pub(crate) fn best(stated: &Stated, least: f64) -> Option<f64> {
    let prepared = Prepared::of(stated)?;
    let (program, weights) = Writer::of(&prepared).written(least);
    let mut model = program.optimise(Sense::Minimise);
    model.make_quiet();
    set_options(&mut model);
    answer(&model.solve(), &weights).map(|value| stated.constant + value)
}

fn set_options(model: &mut Model) {
    model.set_option("threads", 1);
    model.set_option("parallel", "off");
    model.set_option("time_limit", LIMIT);
    model.set_option("mip_rel_gap", 1e-6);
    model.set_option("mip_abs_gap", 1e-6);
    model.set_option("mip_pscost_minreliable", 0);
    model.set_option("mip_heuristic_effort", 0.0);
    for off in [
        "mip_allow_restart",
        "mip_allow_cut_separation_at_nodes",
        "mip_detect_symmetry",
        "mip_heuristic_run_feasibility_jump",
        "mip_heuristic_run_rins",
        "mip_heuristic_run_rens",
        "mip_heuristic_run_root_reduced_cost",
    ] {
        model.set_option(off, false);
    }
}

/// Columns with what they take from a row.
type Terms = Vec<(Col, f64)>;

struct Writer<'p> {
    prepared: &'p Prepared,
    bounds: Ranges,
    program: RowProblem,
    /// What a unit of each column is worth.
    weights: Vec<f64>,
    columns: Vec<Col>,
    /// For each state; none where it is no choice.
    stands: Vec<Option<Col>>,
}

impl<'p> Writer<'p> {
    fn of(prepared: &'p Prepared) -> Self {
        let (columns, stands) = (Vec::new(), vec![None; prepared.within.len()]);
        let bounds = Ranges(prepared.stated.bounds.clone());
        Self { prepared, bounds, program: RowProblem::default(), weights: Vec::new(), columns, stands }
    }

    fn written(mut self, least: f64) -> (RowProblem, Vec<f64>) {
        let Stated { objective, constant, bounds, always, ways, choices, .. } = &self.prepared.stated;
        for (weight, (low, high)) in objective.iter().zip(bounds) {
            self.columns.push(self.program.add_column(-weight, *low..=*high));
            self.weights.push(*weight);
        }
        if least > f64::NEG_INFINITY {
            let worth: Terms = self.columns.iter().copied().zip(objective.iter().copied()).collect();
            self.program.add_row(least - constant.., worth);
        }
        for row in always {
            self.row(row, Vec::new(), 0.0);
        }
        for ways in ways.iter().filter(|ways| ways.len() > 1) {
            self.stands_of(ways);
        }
        for choice in choices.iter().filter(|choice| !is_bound(choice)) {
            self.choice(choice);
        }
        (self.program, self.weights)
    }

    fn binary(&mut self, worth: f64) -> Col {
        self.weights.push(worth);
        self.program.add_integer_column(-worth, 0.0..=1.0)
    }

    /// The row with these columns besides.
    fn row(&mut self, row: &Row, mut besides: Terms, more: f64) {
        besides.retain(|(_, coefficient)| *coefficient != 0.0);
        besides.extend(row.terms.iter().map(|(variable, coefficient)| (self.columns[*variable], *coefficient)));
        self.program.add_row(..=row.most + more, besides);
    }

    /// One of the stands of a piece, and what each holds by bounds: in one row over all of them.
    fn stands_of(&mut self, ways: &[usize]) {
        let stands: Vec<Col> = ways.iter().map(|_| self.binary(0.0)).collect();
        ways.iter().zip(&stands).for_each(|(state, stand)| self.stands[*state] = Some(*stand));
        self.program.add_row(1.0..=1.0, stands.iter().map(|stand| (*stand, 1.0)).collect::<Terms>());
        let choices = &self.prepared.stated.choices;
        let bounded = choices.iter().filter(|choice| is_bound(choice) && ways.contains(&choice.when[0]));
        let rows = bounded.filter_map(single).flatten();
        let mut variables: Vec<usize> = rows.map(|row| row.terms[0].0).collect();
        variables.sort_unstable();
        variables.dedup();
        for variable in variables {
            let within = |state: &usize| self.ranges(*state).0[variable];
            let each: Vec<(f64, f64)> = ways.iter().map(within).collect();
            let (column, (low, high)) = (self.columns[variable], self.bounds.0[variable]);
            let over = |side: fn(&(f64, f64)) -> f64| {
                let terms = stands.iter().zip(&each).map(|(stand, range)| (*stand, -side(range)));
                terms.chain([(column, 1.0)]).collect::<Terms>()
            };
            if each.iter().any(|range| range.1 < high - SAME) {
                self.program.add_row(..=0.0, over(|range| range.1));
            }
            if each.iter().any(|range| range.0 > low + SAME) {
                self.program.add_row(0.0.., over(|range| range.0));
            }
        }
    }

    /// What a stand leaves to all variables.
    fn ranges(&self, state: usize) -> &Ranges {
        self.prepared.within[state].as_ref().unwrap_or(&self.bounds)
    }

    /// All stands of the piece that this is a stand of.
    fn ways_of(&self, state: usize) -> &'p [usize] {
        self.prepared.stated.ways.iter().find(|ways| ways.contains(&state)).map_or(&[], |ways| &ways[..])
    }

    fn choice(&mut self, choice: &Choice) {
        if choice.alternatives.is_empty() {
            let stands = self.columns_of(&choice.when, 1.0);
            self.program.add_row(..=choice.when.len() as f64 - 1.0, stands);
        } else if let Some(rows) = single(choice) {
            for row in rows {
                let off = self.switched_off(row, &choice.when);
                self.row(row, off, 0.0);
            }
        } else {
            self.alternatives(choice);
        }
    }

    fn columns_of(&self, states: &[usize], coefficient: f64) -> Terms {
        states.iter().filter_map(|state| Some((self.stands[*state]?, coefficient))).collect()
    }

    /// What lets go of a row where a piece stands elsewhere: of two, what the second must let go of while the first stands as
    /// asked, and for each other stand of the first the most that is left.
    fn switched_off(&self, row: &Row, when: &[usize]) -> Terms {
        let excess = |ranges: Option<Ranges>| ranges.map_or(0.0, |ranges| ranges.most_excess(row));
        match *when {
            [] => Vec::new(),
            [state] => {
                let others = self.ways_of(state).iter().filter(|other| **other != state);
                others.filter_map(|o| Some((self.stands[*o]?, -self.ranges(*o).most_excess(row)))).collect()
            }
            [first, second, ..] => {
                let both = |a: usize, b: usize| excess(self.ranges(a).within(self.ranges(b)));
                let seconds =
                    self.ways_of(second).iter().map(|b| (*b, if *b == second { 0.0 } else { both(first, *b) }));
                let seconds: Vec<(usize, f64)> = seconds.collect();
                let firsts = self.ways_of(first).iter().filter(|a| **a != first).map(|a| {
                    let left = seconds.iter().map(|(b, off)| both(*a, *b) - off);
                    (*a, left.fold(0.0, f64::max))
                });
                let all = firsts.chain(seconds.iter().copied());
                all.filter_map(|(state, off)| Some((self.stands[state]?, -off))).collect()
            }
        }
    }

    /// One of several alternatives: each row is let go of by as much as each other alternative, or stand, needs.
    fn alternatives(&mut self, choice: &Choice) {
        let Choice { when, alternatives, costs } = choice;
        let picks: Vec<Col> = costs.iter().map(|cost| self.binary(-cost)).collect();
        let stands = self.columns_of(when, -1.0);
        let is_free = costs.iter().all(|cost| *cost == 0.0);
        let picked: Terms = picks.iter().map(|pick| (*pick, 1.0)).collect();
        if stands.len() < 2 {
            // None where the piece stands elsewhere.
            let asked = 1.0 - stands.len() as f64;
            self.program.add_row(asked..=asked, [&picked[..], &stands].concat());
        } else if is_free {
            // Any where one of the two stands elsewhere.
            self.program.add_row(1.0..=1.0, picked);
        } else {
            self.program.add_row(1.0 - stands.len() as f64.., [&picked[..], &stands].concat());
            for (pick, row) in
                picks.iter().zip(alternatives).flat_map(|(pick, rows)| rows.iter().map(|row| (*pick, row)))
            {
                let off = self.bounds.most_excess(row);
                self.row(row, vec![(pick, off)], off);
            }
            return;
        }
        let within = self.left_by(when, alternatives);
        let is_settled_by_stands = stands.len() > 1;
        for (pick, row) in picks.iter().zip(alternatives).flat_map(|(pick, rows)| rows.iter().map(|row| (*pick, row))) {
            let left = within.iter().flatten().map(|ranges| ranges.most_excess(row));
            let off = if stands.len() == 1 { self.bounds.most_excess(row) } else { left.fold(0.0, f64::max) };
            let mut besides = if is_settled_by_stands { self.switched_off(row, when) } else { Vec::new() };
            besides.push((pick, off));
            self.row(row, besides, off);
        }
    }

    /// What each alternative leaves to all variables while these stands stand; none where nothing.
    fn left_by(&self, when: &[usize], alternatives: &[Vec<Row>]) -> Vec<Option<Ranges>> {
        let all = when.iter().try_fold(self.bounds.clone(), |all, state| all.within(self.ranges(*state)));
        let always = &self.prepared.stated.always;
        let left = |rows: &Vec<Row>| {
            let mut ranges = all.clone()?;
            ranges.narrow(always.iter().chain(rows)).then_some(ranges)
        };
        alternatives.iter().map(left).collect()
    }
}

/// A bound of one variable under one stand.
fn is_bound(choice: &Choice) -> bool {
    choice.when.len() == 1 && single(choice).is_some_and(|rows| rows.iter().all(|row| row.terms.len() == 1))
}
