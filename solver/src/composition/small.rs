//! Lamps, side tables and what legs go up on: at the end of a seat, close to it, one of a kind at an end.

use elbowroom_model::{Term, tables};

use super::asked::{Asked, Way};
use super::heart::middle;
use super::plan_term::{PlanTerm, TermContext};
use crate::arrangement::Relation;
use crate::rules::{CostSlot, Linear, Pose, With, beyond};

/// A table stands at this share of the seat's depth from its back, where an arm reaches; a lamp further back, so that it lights
/// the page over the shoulder (common practice, no source).
const TABLE: f64 = 1.0 / 3.0;
const LAMP: f64 = 0.2;

/// What legs go up on, or one more sits on, stands further forward: half beside the seat's front edge, out of the lamp's place, to be
/// drawn before the seat or up to the group (common practice, no source).
const FEET: f64 = 0.8;

/// What stands at a seat's end.
#[derive(Debug)]
pub(super) struct AtSeatsEnd;

impl PlanTerm for AtSeatsEnd {
    fn between(&self, _context: &TermContext<'_>, first: &Pose, second: &Pose) -> Vec<Asked> {
        let ends = at_end(first, second).into_iter().chain(at_end(second, first)).flatten();
        ends.chain(two_of_a_kind(first, second)).collect()
    }
}

fn at_end(pose: &Pose, seat: &Pose) -> Option<Vec<Asked>> {
    let Relation::Beside { seat: id, left } = pose.stand.relation else { return None };
    let place = (id == seat.id).then(|| Place::of(pose, seat, left))?;
    let with = With::Piece(seat.id);
    let mut found = vec![
        Asked::always(Term::AtEnd, pose, with, Way::pays(pose, CostSlot::Near, Term::AtEnd, &place.clear)),
        Asked::always(
            Term::AlongEnd,
            pose,
            with,
            Way::pays_either_way(pose, CostSlot::Along, Term::AlongEnd, &place.along),
        ),
    ];
    // A cup is put down first where most sit.
    if pose.piece.kind.traits().is_surface && seat.role.is_second_seat() {
        found.push(Asked::always(Term::BySecondSeat, pose, with, Way::flat(Term::BySecondSeat)));
    }
    Some(found)
}

/// Where something stands at the end of a seat.
struct Place {
    /// From the end to its near side.
    clear: Linear,
    /// Its middle from where it belongs along the end.
    along: Linear,
}

impl Place {
    fn of(pose: &Pose, seat: &Pose, left: bool) -> Self {
        let share = share_of_depth(pose);
        let side = if left { seat.left() } else { -seat.left() };
        let facing = seat.stand.facing;
        let offset = middle(pose).from(&seat.anchor);
        if let Some(run) = seat.return_at(side) {
            let clear = offset.along(facing).plus(&run.length, -1.0).plus(&pose.depth(), -0.5);
            return Self { clear, along: run.off_back(&offset).plus(&run.depth, -share) };
        }
        let (from, to) = seat.stretch();
        let outer = if seat.along().dot(side) > 0.0 { to } else { Linear::default().plus(&from, -1.0) };
        let clear = match seat.stand.turn {
            // What stands square beside a chair that is turned comes nearest to it with a corner.
            Some(_) => pose.main().furthest(-side).from(&seat.anchor).along(side).plus(&outer, -1.0),
            None => offset.along(side).plus(&outer, -1.0).plus(&pose.width(), -0.5),
        };
        Self { clear, along: offset.along(facing).plus(&seat.depth(), -share) }
    }
}

/// How far forward along a seat's end its middle belongs, as a share of the seat's depth from its back.
const fn share_of_depth(pose: &Pose) -> f64 {
    let traits = pose.piece.kind.traits();
    match (traits.is_surface, traits.moves_aside) {
        (true, _) => TABLE,
        (false, true) => FEET,
        (false, false) => LAMP,
    }
}

fn two_of_a_kind(first: &Pose, second: &Pose) -> Option<Asked> {
    let end = |pose: &Pose| match pose.stand.relation {
        Relation::Beside { seat, left } => Some((seat, left)),
        _ => None,
    };
    let (one, other) = (end(first)?, end(second)?);
    if first.piece.kind != second.piece.kind {
        return None;
    }
    let gap = tables::price(Term::TwoAtEnd).free;
    let towards = [first.along(), -first.along(), first.stand.facing, -first.stand.facing];
    let apart = |towards| beyond(first.main(), second.main(), towards, gap);
    let free = towards.into_iter().filter(|_| one != other).map(apart);
    Some(Asked::or_flat(Term::TwoAtEnd, second, With::Piece(first.id), free))
}
