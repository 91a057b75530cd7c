//! Candidates that a room cannot tell from each other: one sofa in six colours is solved once.

use std::collections::BTreeMap;

use elbowroom_model::listing::ListedPiece;

/// Candidates with those that are alike in all that a room, or the way in, sees of them taken as one.
pub(super) struct Alike<'a> {
    /// The first of each kind of them.
    pub(super) firsts: Vec<&'a ListedPiece>,
    /// For each candidate the place of its like among these.
    pub(super) places: Vec<usize>,
}

impl<'a> Alike<'a> {
    pub(super) fn of(candidates: &'a [ListedPiece]) -> Self {
        let mut alike = Self { firsts: Vec::new(), places: Vec::with_capacity(candidates.len()) };
        let mut of_size: BTreeMap<[u64; 2], Vec<usize>> = BTreeMap::new();
        for candidate in candidates {
            let same_size = of_size.entry([candidate.width, candidate.depth].map(f64::to_bits)).or_default();
            let is_like = |place: &&usize| alike.firsts.get(**place).is_some_and(|first| are_alike(first, candidate));
            let known = same_size.iter().find(is_like).copied();
            let place = known.unwrap_or(alike.firsts.len());
            if known.is_none() {
                same_size.push(place);
                alike.firsts.push(candidate);
            }
            alike.places.push(place);
        }
        alike
    }
}

/// Whether two candidates differ at most in their line, in what they are called and cost, and in how they are liked.
fn are_alike(one: &ListedPiece, other: &ListedPiece) -> bool {
    let ListedPiece { line, name, price, score, more, .. } = other.clone();
    *other == ListedPiece { line, name, price, score, more, ..one.clone() }
}
