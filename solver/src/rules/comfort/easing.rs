//! Easing: where no layout keeps every rule of comfort, some are kept in part, as few as can be and as much as can be.

use crate::program::Row;
use crate::rules::{Alternative, CostSlot, Requirement, Variables};

/// What easing a rule costs: more than all terms of a plan together.
pub(crate) const EASED: f64 = 1e5;

/// What a millimetre that is lacking costs besides.
const LACKING: f64 = 4.0;

/// The same requirement with ways out: each of its alternatives short by something, at a cost.
pub(crate) fn may_be_eased(mut requirement: Requirement, variables: &Variables) -> Requirement {
    if !requirement.cause.rule.is_comfort() {
        return requirement;
    }
    let ways: Vec<Alternative> = short(&requirement, variables).map(|way| Alternative { cost: EASED, ..way }).collect();
    requirement.alternatives.extend(ways);
    requirement
}

/// The same requirement short by what a plan lacks, which bounds say.
pub(crate) fn eased(mut requirement: Requirement, variables: &Variables) -> Requirement {
    let ways: Vec<Alternative> = short(&requirement, variables).collect();
    // A round gap is short by the straight gaps beside it: those are among the other ways.
    requirement.alternatives.extend(ways);
    requirement
}

/// Each alternative of rows, short by one variable.
fn short<'r>(requirement: &'r Requirement, variables: &Variables) -> impl Iterator<Item = Alternative> + use<'r> {
    let lacking = variables.piece(requirement.cause.piece).map(|piece| piece.terms[CostSlot::Eased]);
    let short = move |row: &Row| {
        let lacking = lacking.map(|lacking| (lacking, -1.0 / LACKING));
        Row::at_most(row.terms.iter().copied().chain(lacking), row.most)
    };
    let own = |way: &'r Alternative| std::slice::from_ref(way);
    let finest = move |way: &'r Alternative| if way.finer.is_empty() { own(way) } else { &way.finer[..] };
    let ways = requirement.alternatives.iter().flat_map(finest).filter(|way| way.arc.is_none());
    ways.map(move |way| Alternative::of_rows(way.rows.iter().map(short).collect()))
}
