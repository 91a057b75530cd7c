//! A dining table stands clear of the seating: chairs are drawn back from it, and people pass.

use elbowroom_model::Term;

use super::asked::{Asked, Way};
use super::plan_term::{PlanTerm, TermContext};
use crate::rules::{CostSlot, Pose, With};

/// A dining table keeps away from seats.
#[derive(Debug)]
pub(super) struct DiningBySeat;

impl PlanTerm for DiningBySeat {
    fn between(&self, _context: &TermContext<'_>, first: &Pose, second: &Pose) -> Vec<Asked> {
        by_seat(first, second).into_iter().chain(by_seat(second, first)).collect()
    }
}

/// Clear of it on one of its four sides.
fn by_seat(table: &Pose, seat: &Pose) -> Option<Asked> {
    if !table.piece.kind.is_dined_at() || !seat.piece.kind.is_seat() {
        return None;
    }
    let towards = [seat.along(), -seat.along(), seat.stand.facing, -seat.stand.facing];
    let ways = towards.map(|towards| {
        // Of all its parts: behind a return is as near as behind the main run.
        let clear = |part: &crate::rules::LinearOutline| {
            table.main().furthest(-towards).from(part.furthest(towards)).along(towards)
        };
        let each =
            seat.parts.iter().map(|part| Way::pays_for_lack(table, CostSlot::Other, Term::DiningBySeat, &clear(part)));
        each.fold(Way::default(), Way::and)
    });
    Some(Asked::one_of(Term::DiningBySeat, table, With::Piece(seat.id), ways.into()))
}
