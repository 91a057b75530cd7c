//! Chains of pieces that bar a way from one doorway to another, kept while an arrangement is searched.
//!
//! A chain that closes between two walls parts the doorways on either side of it wherever its pieces stand: in every layout
//! in which they back the same walls one of its gaps must open. So what one layout taught is asked of all others as soon as
//! these pieces stand, long before a whole layout could be found barred again. Chains before the front of a piece are not
//! kept: what they part moves with the piece.

use elbowroom_model::PieceId;
use elsa::FrozenVec;
use smallvec::SmallVec;

use super::cells::StandKey;
use super::node::{Decided, Node};
use crate::rules::Requirement;

/// So many are kept at most: each is looked at whenever its pieces stand.
const MOST_BARRIERS: usize = 96;

/// A chain that bars a way between two doorways.
#[derive(Debug)]
pub(super) struct Barrier {
    /// How its pieces stand.
    pub(super) stands: SmallVec<[StandKey; 3]>,
    /// One of its gaps must open.
    pub(super) requirement: Requirement,
}

/// A barrier whose pieces can stand as they did.
pub(super) struct Barring<'p> {
    pub(super) states: SmallVec<[(PieceId, usize); 3]>,
    pub(super) requirement: &'p Requirement,
}

impl Barring<'_> {
    /// Whether they do under this node.
    pub(super) fn stands_in<E>(&self, node: &Node<'_, E>) -> bool {
        self.states.iter().all(|(piece, state)| node.decided[piece.0] == Decided::Stands(*state))
    }
}

/// What has been learned of one arrangement.
#[derive(Default)]
pub(super) struct Barriers(FrozenVec<Box<Barrier>>);

impl Barriers {
    /// Keeps a barrier, where it is not known yet and there is room for it.
    pub(super) fn learn(&self, barrier: Barrier) -> Option<&Barrier> {
        let is_known = |known: &Barrier| known.stands == barrier.stands && known.requirement == barrier.requirement;
        if self.0.len() >= MOST_BARRIERS || self.0.iter().any(is_known) {
            return None;
        }
        Some(self.0.push_get(Box::new(barrier)))
    }

    /// All of them, in the order in which they were learned.
    pub(super) fn iter(&self) -> impl Iterator<Item = &Barrier> {
        self.0.iter()
    }
}

#[cfg(test)]
mod tests {
    use elbowroom_model::{Clearance, PieceId};

    use super::{Barrier, Barriers, MOST_BARRIERS};
    use crate::rules::{Cause, Requirement, With};

    fn barrier(piece: usize) -> Barrier {
        let cause = Cause { rule: Clearance::Walkway.into(), piece: PieceId(piece), with: With::Itself };
        Barrier { stands: Default::default(), requirement: Requirement { cause, alternatives: Vec::new() } }
    }

    #[test]
    fn what_is_known_is_not_kept_again_and_no_more_than_may_be_looked_at() {
        let barriers = Barriers::default();
        assert!(barriers.learn(barrier(0)).is_some());
        assert!(barriers.learn(barrier(0)).is_none());
        assert_eq!(
            (0..2 * MOST_BARRIERS).filter(|piece| barriers.learn(barrier(*piece)).is_some()).count(),
            MOST_BARRIERS - 1
        );
        assert_eq!(barriers.iter().count(), MOST_BARRIERS);
    }
}
