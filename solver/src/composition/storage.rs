//! Storage stands by its group, along the wall of the screen, and where it is tall does not loom beside a seat.

use elbowroom_model::Term;

use super::asked::{Asked, Way};
use super::heart::middle;
use super::plan_term::{PlanTerm, TermContext};
use crate::arrangement::Role;
use crate::rules::{CostSlot, Pose, With};

/// Storage higher than this is tall, mm: over the head of one who sits (common practice, no source).
const TALL: f64 = 1200.0;

/// Storage is near the group, and where it is tall not at the ends of a seat.
#[derive(Debug)]
pub(super) struct BesideStorage;

impl PlanTerm for BesideStorage {
    fn alone(&self, context: &TermContext<'_>, pose: &Pose) -> Vec<Asked> {
        far_from_group(context, pose).into_iter().chain(apart_from_screen(context, pose)).collect()
    }

    fn between(&self, _context: &TermContext<'_>, first: &Pose, second: &Pose) -> Vec<Asked> {
        beside(first, second).into_iter().chain(beside(second, first)).collect()
    }
}

/// What holds books and games of the main group is in the same part of the room.
fn far_from_group(context: &TermContext<'_>, pose: &Pose) -> Option<Asked> {
    let is_of_main_group = pose.piece.kind.is_storage() && pose.piece.group.is_none();
    let main = context.heart.main.filter(|_| is_of_main_group)?;
    let to = middle(pose).from(&context.heart.middle(main));
    let away = |slot, along| Way::pays_either_way(pose, slot, Term::StorageFar, &to.along(along));
    let way = away(CostSlot::Near, main.stand.facing).and(away(CostSlot::Aside, main.left()));
    Some(Asked::always(Term::StorageFar, pose, With::Piece(main.id), way))
}

/// What is closed and what is watched stand along one wall, and leave the others to sit at. Where one dines, storage may serve
/// the table.
fn apart_from_screen(context: &TermContext<'_>, pose: &Pose) -> Option<Asked> {
    let is_of_main_group = pose.piece.kind.is_storage() && pose.piece.group.is_none();
    let screen = context.heart.screen.filter(|_| is_of_main_group)?;
    let dines = context.room.brief.pieces.iter().any(|piece| piece.kind.is_dined_at());
    let is_apart = !dines && pose.wall().is_some() && screen.wall().is_some() && pose.wall() != screen.wall();
    is_apart.then(|| Asked::always(Term::StorageApart, pose, With::Piece(screen.id), Way::flat(Term::StorageApart)))
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
