//! Tall storage does not loom beside a seat.

use elbowroom_model::Term;

use super::asked::{Asked, Way};
use super::plan_term::{PlanTerm, TermContext};
use crate::arrangement::Role;
use crate::rules::{CostSlot, Pose, With};

/// Storage higher than this is tall, mm: over the head of one who sits (common practice, no source).
const TALL: f64 = 1200.0;

/// Tall storage keeps away from the ends of a seat.
#[derive(Debug)]
pub(super) struct BesideStorage;

impl PlanTerm for BesideStorage {
    fn between(&self, _context: &TermContext<'_>, first: &Pose, second: &Pose) -> Vec<Asked> {
        beside(first, second).into_iter().chain(beside(second, first)).collect()
    }
}

fn beside(storage: &Pose, seat: &Pose) -> Option<Asked> {
    let is_tall = storage.piece.kind.is_storage() && storage.piece.height > TALL;
    // One reads by a bookcase.
    if !is_tall
        || !seat.piece.kind.is_seat()
        || seat.role == Role::Apart
        || storage.wall().is_none()
        || storage.wall() != seat.wall()
    {
        return None;
    }
    let ends = [seat.along(), -seat.along()].map(|towards| {
        let clear = storage.main().furthest(-towards).from(seat.main().furthest(towards)).along(towards);
        Way::pays_for_lack(storage, CostSlot::Other, Term::BesideStorage, &clear)
    });
    Some(Asked::one_of(Term::BesideStorage, storage, With::Piece(seat.id), ends.into()))
}
