//! What a term asks of a plan, as the search takes it: rows that hold a variable of the piece to what the term costs.

use elbowroom_model::{Price, Rule, Term, tables};

use super::term_cost::TermCost;
use crate::program::Row;
use crate::rules::{Alternative, Cause, CostSlot, Linear, Pose, Requirement, TOLERANCE, With};

/// What one term asks of a piece: the cheapest of some ways counts.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Asked {
    /// The term.
    pub(crate) term: Term,
    cause: Cause,
    ways: Vec<Way>,
    /// Ways that count where a plan is told, and that the search leaves aside: it would weigh them at every turn for what moves
    /// next to nothing.
    told_too: Vec<Way>,
}

/// One way to meet a term.
#[derive(Debug, Clone, PartialEq, Default)]
pub(super) struct Way {
    /// Where these hold it can be taken.
    rows: Vec<Row>,
    costs: Vec<Cost>,
    flat: f64,
}

/// A variable costs at least so much a millimetre of `off`.
#[derive(Debug, Clone, PartialEq)]
struct Cost {
    slot: CostSlot,
    variable: usize,
    off: Linear,
    cost: f64,
}

impl Way {
    /// Where these rows hold nothing is to be paid.
    pub(super) fn free(rows: Vec<Row>) -> Self {
        Self { rows, ..Self::default() }
    }

    /// What meets a requirement of rows alone, for nothing.
    pub(super) fn of(alternative: Alternative) -> Self {
        Self::free(alternative.rows)
    }

    /// To be paid once.
    pub(super) fn flat(term: Term) -> Self {
        Self { flat: tables::price(term).flat, ..Self::default() }
    }

    /// `slot` of `pose` pays for `over`, by the price of `term`.
    pub(super) fn pays(pose: &Pose, slot: CostSlot, term: Term, over: &Linear) -> Self {
        Self::pays_by(pose, slot, tables::price(term), over)
    }

    /// The same by a price of its own.
    pub(super) fn pays_by(pose: &Pose, slot: CostSlot, price: Price, over: &Linear) -> Self {
        let Price { cost, free, steep, far, .. } = price;
        let variable = pose.variables.terms[slot];
        let mut costs = vec![Cost { slot, variable, off: over.clone().shifted(-free), cost }];
        if let Some(steep) = steep {
            // Both slopes meet at `far`.
            let from = far - (far - free) * cost / steep;
            costs.push(Cost { slot, variable, off: over.clone().shifted(-from), cost: steep });
        }
        Self { costs, ..Self::default() }
    }

    /// `slot` of `pose` pays for what is lacking to what `term` has free.
    pub(super) fn pays_for_lack(pose: &Pose, slot: CostSlot, term: Term, given: &Linear) -> Self {
        let Price { cost, free, .. } = tables::price(term);
        let lack = Linear::constant(free).plus(given, -1.0);
        Self::pays_by(pose, slot, Price { cost, ..Price::default() }, &lack)
    }

    /// The same for `off` either way.
    pub(super) fn pays_either_way(pose: &Pose, slot: CostSlot, term: Term, off: &Linear) -> Self {
        Self::pays(pose, slot, term, off).and(Self::pays(pose, slot, term, &Linear::default().plus(off, -1.0)))
    }

    /// Both at once.
    pub(super) fn and(mut self, other: Self) -> Self {
        self.rows.extend(other.rows);
        self.costs.extend(other.costs);
        self.flat += other.flat;
        self
    }

    fn alternative(&self) -> Alternative {
        let paid = |cost: &Cost| Linear::variable(cost.variable).plus(&cost.off, -cost.cost).at_least(0.0);
        let rows = self.rows.iter().cloned().chain(self.costs.iter().map(paid)).collect();
        Alternative::at_cost(rows, self.flat)
    }

    /// What it costs at a point of the program, and by how much what costs most is off, mm; `None` where it cannot be taken.
    fn cost_at(&self, values: &[f64]) -> Option<(f64, f64)> {
        if self.rows.iter().any(|row| row.excess(values) > TOLERANCE) {
            return None;
        }
        let mut slots: Vec<(CostSlot, f64, f64)> = Vec::new();
        for Cost { slot, off, cost, .. } in &self.costs {
            let (off, paid) = (off.at(values), (cost * off.at(values)).max(0.0));
            match slots.iter_mut().find(|(known, ..)| known == slot) {
                // The steeper slope starts further out: the flatter one tells how far beyond what is free.
                Some(known) => (known.1, known.2) = (known.1.max(paid), known.2.max(off)),
                None => slots.push((*slot, paid, off)),
            }
        }
        let most = slots.iter().max_by(|one, other| one.1.total_cmp(&other.1)).map_or(0.0, |(_, _, off)| *off);
        Some((slots.iter().map(|(_, paid, _)| paid).sum::<f64>() + self.flat, most))
    }
}

impl Asked {
    /// One of these ways is taken.
    pub(super) fn one_of(term: Term, pose: &Pose, with: With, ways: Vec<Way>) -> Self {
        Self { term, cause: Cause { rule: Rule::Centring, piece: pose.id, with }, ways, told_too: Vec::new() }
    }

    /// Met for nothing in one of these ways, or paid for once.
    pub(super) fn or_flat(term: Term, pose: &Pose, with: With, free: impl IntoIterator<Item = Alternative>) -> Self {
        let ways = free.into_iter().map(Way::of).chain([Way::flat(term)]).collect();
        Self::one_of(term, pose, with, ways)
    }

    /// A plan that was found is also told by the cheapest of these.
    pub(super) fn told_too(self, told_too: Vec<Way>) -> Self {
        Self { told_too, ..self }
    }

    /// This way is taken.
    pub(super) fn always(term: Term, pose: &Pose, with: With, way: Way) -> Self {
        Self::one_of(term, pose, with, vec![way])
    }

    /// As the search takes it.
    pub(crate) fn requirement(&self) -> Requirement {
        Requirement { cause: self.cause, alternatives: self.ways.iter().map(Way::alternative).collect() }
    }

    /// What it costs at a point of the program.
    pub(super) fn told(&self, values: &[f64]) -> Option<TermCost> {
        let costs = self.ways.iter().chain(&self.told_too).filter_map(|way| way.cost_at(values));
        let (cost, off) = costs.min_by(|one, other| one.0.total_cmp(&other.0))?;
        Some(TermCost { term: self.term, piece: self.cause.piece, with: self.cause.with, off, cost })
    }
}
