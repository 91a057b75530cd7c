//! A stated program made ready for a general solver, as one who knows them would: bounds narrowed by rows, stands and
//! alternatives that cannot be dropped, what holds anyway left out. It has the same optimum.
//!
//! What is left out must follow from what is kept, never from itself: so stands and pairs of them are judged by ranges that
//! rows give which all stay in the program, or that become bounds.

use super::ranges::Ranges;
use elbowroom_solver::program::Row;
use elbowroom_solver::search::{Choice, Stated};

/// Rounds at most; what is dropped in one lets others be dropped.
const ROUNDS: usize = 4;

/// Coefficients nearer to each other are one.
const SAME: f64 = 1e-9;

/// A program made ready.
#[derive(Debug, Clone)]
pub(crate) struct Prepared {
    /// The program that is left.
    pub(crate) stated: Stated,
    /// The ranges that each stand leaves to all variables; none where it cannot be.
    pub(crate) within: Vec<Option<Ranges>>,
}

impl Prepared {
    /// What is left of a program; none where nothing keeps it.
    pub(crate) fn of(stated: &Stated) -> Option<Self> {
        let states = stated.ways.iter().flatten().max().map_or(0, |last| last + 1);
        let bounds = Ranges(stated.bounds.clone());
        let mut prepared = Self { stated: stated.clone(), within: vec![Some(bounds); states] };
        for _ in 0..ROUNDS {
            let before = prepared.extent();
            prepared.narrow()?;
            prepared.settle_stands()?;
            prepared.settle_choices()?;
            if prepared.extent() == before {
                break;
            }
        }
        prepared.narrow()?;
        prepared.settle_stands()?;
        prepared.bound_costs();
        Some(prepared)
    }

    /// Stands, choices and alternatives that are left.
    fn extent(&self) -> [usize; 3] {
        let alternatives = self.stated.choices.iter().map(|choice| choice.alternatives.len());
        [self.stated.ways.iter().map(Vec::len).sum(), self.stated.choices.len(), alternatives.sum()]
    }

    /// Narrows the bounds by what always holds.
    fn narrow(&mut self) -> Option<()> {
        let mut ranges = self.bounds();
        if !ranges.narrow(self.stated.always.iter()) {
            return None;
        }
        self.stated.bounds = ranges.0;
        Some(())
    }

    fn bounds(&self) -> Ranges {
        Ranges(self.stated.bounds.clone())
    }

    /// Drops stands that cannot be; the only one left of a piece is no choice, and all together bound what they place.
    fn settle_stands(&mut self) -> Option<()> {
        for piece in 0..self.stated.ways.len() {
            let mut ways = std::mem::take(&mut self.stated.ways[piece]);
            let must_stand = !ways.is_empty();
            for &state in &ways {
                self.within[state] = self.within[state].take().and_then(|within| self.under(state, &within));
            }
            ways.retain(|state| self.within[*state].is_some());
            let about = Ranges::about(ways.iter().filter_map(|state| self.within[*state].clone()));
            if must_stand {
                self.stated.bounds = self.bounds().within(&about?)?.0;
            }
            if let [only] = ways[..] {
                self.stated.choices.iter_mut().for_each(|choice| choice.when.retain(|state| *state != only));
            }
            self.stated.ways[piece] = ways;
        }
        let stands = |choice: &Choice| choice.when.iter().all(|state| self.within[*state].is_some());
        self.stated.choices.retain(stands);
        Some(())
    }

    /// The ranges under a stand, by what it asks by itself; none where it cannot be.
    fn under(&self, state: usize, within: &Ranges) -> Option<Ranges> {
        let asked = self.stated.choices.iter().filter(|choice| choice.when == [state]);
        if asked.clone().any(|choice| choice.alternatives.is_empty()) {
            return None;
        }
        let asked = asked.filter_map(single).flatten();
        let mut ranges = within.within(&self.bounds())?;
        ranges.narrow(self.stated.always.iter().chain(asked)).then_some(ranges)
    }

    /// Reduces every choice; one that is none becomes rows.
    fn settle_choices(&mut self) -> Option<()> {
        let mut left: Vec<Choice> = Vec::new();
        for choice in std::mem::take(&mut self.stated.choices) {
            match self.reduced(choice)? {
                Left::Nothing => {}
                Left::Rows(when, rows) if when.is_empty() => self.stated.always.extend(rows),
                Left::Rows(when, rows) => left.extend(rows.into_iter().map(|row| Choice {
                    when: when.clone(),
                    alternatives: vec![vec![row]],
                    costs: vec![0.0],
                })),
                Left::Choice(choice) if left.contains(&choice) => {}
                Left::Choice(choice) => left.push(choice),
            }
        }
        self.stated.choices = left;
        Some(())
    }

    /// What is left of a choice; none where it has no way out and must hold.
    fn reduced(&mut self, mut choice: Choice) -> Option<Left> {
        let Some(ranges) = self.ranges_of(&choice) else { return dead(choice) };
        let mut ways: Vec<Way> = Vec::new();
        for (mut rows, cost) in std::mem::take(&mut choice.alternatives).into_iter().zip(&choice.costs) {
            let mut within = ranges.clone();
            if within.narrow(self.stated.always.iter().chain(&rows)) {
                rows.retain(|row| !ranges.keep(row));
                ways.push(Way { rows, cost: *cost, within });
            }
        }
        if ways.iter().any(|way| way.rows.is_empty() && way.cost <= 0.0) {
            return Some(Left::Nothing);
        }
        drop_implied(&mut ways);
        if choice.when.is_empty() {
            let about = Ranges::about(ways.iter().map(|way| way.within.clone()))?;
            self.stated.bounds = self.bounds().within(&about)?.0;
        }
        choice.costs = ways.iter().map(|way| way.cost).collect();
        choice.alternatives = ways.into_iter().map(|way| way.rows).collect();
        match (&mut choice.alternatives[..], &choice.costs[..]) {
            ([], _) => dead(choice),
            ([rows], [0.0]) => Some(Left::Rows(choice.when, std::mem::take(rows))),
            _ => Some(Left::Choice(choice)),
        }
    }

    /// The ranges while the stands of a choice stand, by what stays in the program whatever becomes of it.
    fn ranges_of(&self, choice: &Choice) -> Option<Ranges> {
        let mut ranges = self.bounds();
        if single(choice).is_none() || choice.when.len() > 1 {
            for state in &choice.when {
                ranges = ranges.within(self.within[*state].as_ref()?)?;
            }
        }
        ranges.narrow(self.stated.always.iter()).then_some(ranges)
    }

    /// What only costs need be no more than the dearest row asks.
    fn bound_costs(&mut self) {
        let ranges = self.bounds();
        let mut asked: Vec<Option<f64>> = self.stated.objective.iter().map(|w| (*w < 0.0).then_some(0.0)).collect();
        let choices = self.stated.choices.iter().flat_map(|choice| choice.alternatives.iter().flatten());
        for row in self.stated.always.iter().chain(choices) {
            for (variable, coefficient) in &row.terms {
                let low = ranges.0[*variable].0;
                let others = ranges.of(row).1 - (coefficient * low);
                let most = (others - row.most) / -coefficient;
                asked[*variable] = asked[*variable].filter(|_| *coefficient < 0.0).map(|so_far| so_far.max(most));
            }
        }
        for (bound, most) in self.stated.bounds.iter_mut().zip(asked) {
            bound.1 = most.map_or(bound.1, |most| bound.1.min(most.max(bound.0)));
        }
        let bounds = self.bounds();
        for within in self.within.iter_mut().flatten() {
            *within = within.within(&bounds).unwrap_or_else(|| bounds.clone());
        }
    }
}

/// What is left of a choice.
enum Left {
    Nothing,
    /// Rows that hold while these stands stand.
    Rows(Vec<usize>, Vec<Row>),
    Choice(Choice),
}

/// One alternative of a choice.
struct Way {
    rows: Vec<Row>,
    cost: f64,
    within: Ranges,
}

/// The rows of a choice that has one alternative, free of cost.
pub(crate) fn single(choice: &Choice) -> Option<&Vec<Row>> {
    match (&choice.alternatives[..], &choice.costs[..]) {
        ([rows], [0.0]) => Some(rows),
        _ => None,
    }
}

fn dead(choice: Choice) -> Option<Left> {
    let none = Choice { alternatives: Vec::new(), costs: Vec::new(), ..choice };
    (!none.when.is_empty()).then_some(Left::Choice(none))
}

/// Drops each alternative whose points all keep another one that costs no more.
fn drop_implied(ways: &mut Vec<Way>) {
    let mut at = 0;
    while at < ways.len() {
        let is_implied = ways.iter().enumerate().any(|(other, way)| other != at && includes(way, &ways[at]));
        if is_implied {
            ways.remove(at);
        } else {
            at += 1;
        }
    }
}

fn includes(wider: &Way, way: &Way) -> bool {
    let kept =
        |row: &Row| way.within.keep(row) || way.rows.iter().any(|own| own.most <= row.most + SAME && is_like(own, row));
    wider.cost <= way.cost && wider.rows.iter().all(kept)
}

/// The same left-hand side.
fn is_like(a: &Row, b: &Row) -> bool {
    let mut terms = a.terms.iter().zip(&b.terms);
    a.terms.len() == b.terms.len() && terms.all(|(a, b)| a.0 == b.0 && (a.1 - b.1).abs() <= SAME)
}
