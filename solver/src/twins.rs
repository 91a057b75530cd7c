//! Options that turn out to be one: where a piece that an arrangement names found no room, what stands is the arrangement
//! without it. It is told once, by what stands.

use std::borrow::Cow;

use elbowroom_model::Brief;

use crate::arrangement::{Choices, Enumeration};
use crate::candidate::Planned;
use crate::refusal::Refusal;

/// What is told of the arrangements that were searched.
pub(crate) struct Distinct<C> {
    /// Each with decisions of its own, all of which its layout bears out.
    pub(crate) candidates: Vec<C>,
    /// None of them among the candidates.
    pub(crate) refused: Vec<Refusal>,
    /// Arrangements that are told as another.
    pub(crate) twins: usize,
}

/// Each option once: of those that come to the same the largest by `told_size`, and where all are as large the first.
pub(crate) fn told_once<'a, C: AsRef<Planned<'a>> + AsMut<Planned<'a>>>(
    enumeration: &'a Enumeration,
    brief: &Brief,
    candidates: Vec<C>,
    refused: Vec<Refusal>,
    told_size: impl Fn(&C) -> f64,
) -> Distinct<C> {
    let searched = candidates.len() + refused.len();
    let mut groups: Vec<(Choices, C)> = Vec::with_capacity(candidates.len());
    for candidate in candidates {
        let Planned { arrangement, plan, .. } = candidate.as_ref();
        let choices = arrangement.choices_in(&plan.layout);
        match groups.iter_mut().find(|(known, _)| known.are_same_as(&choices, brief)) {
            Some((_, best)) if told_size(&candidate) > told_size(best) => *best = candidate,
            Some(_) => {}
            None => groups.push((choices, candidate)),
        }
    }
    let mut renamed = Vec::new();
    let mut candidates = Vec::with_capacity(groups.len());
    for (choices, mut candidate) in groups {
        let planned = candidate.as_mut();
        planned.arrangement = match enumeration.with_choices(brief, &choices) {
            Some(arrangement) => Cow::Borrowed(arrangement),
            None => {
                let arrangement = enumeration.renamed(brief, &planned.arrangement, choices, &renamed);
                renamed.push(arrangement.key.clone());
                Cow::Owned(arrangement)
            }
        };
        candidates.push(candidate);
    }
    // What one arrangement did not find within the work allowed, or could not, another found by leaving more out.
    let is_found =
        |refusal: &Refusal| candidates.iter().any(|candidate| candidate.as_ref().arrangement.key == refusal.key);
    let refused: Vec<Refusal> = refused.into_iter().filter(|refusal| !is_found(refusal)).collect();
    let twins = searched - candidates.len() - refused.len();
    Distinct { candidates, refused, twins }
}
