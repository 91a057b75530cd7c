//! Seats about a fire: those that face each other have it amid the floor between them, and none stands before it with its
//! back to it.

use elbowroom_model::{ItemId, ItemKind, Point, Term};

use super::asked::{Asked, Way};
use super::floor_before::{not_before, out_of};
use super::heart::middle_of_front;
use super::plan_term::{PlanTerm, TermContext};
use crate::arrangement::Role;
use crate::geometry::Convex;
use crate::rules::{CostSlot, Linear, Pose, RuleContext, With};
use crate::site::WallPlace;

/// A fire is beside a seat where the cosine between the ways that the two face is less than this: 15 degrees.
const SQUARE: f64 = 0.26;

/// So far into the room one gathers before a fire, mm (common practice, no source).
const HEARTH: f64 = 2600.0;

/// The second seats, and the dining table, about a fire.
#[derive(Debug)]
pub(super) struct AboutFire;

impl PlanTerm for AboutFire {
    fn alone(&self, context: &TermContext<'_>, pose: &Pose) -> Vec<Asked> {
        let room = &context.room;
        if pose.piece.kind.is_dined_at() {
            return fires(room).map(|(id, place)| out_of(pose, &hearth(&place), Term::DiningAtFire, id)).collect();
        }
        if !pose.role.is_second_seat() {
            return Vec::new();
        }
        let wished = room.brief.wishes.are_for_the_fire();
        let term = if wished { Term::BackToWishedFire } else { Term::BackToFire };
        let backs = |(id, place)| not_before(pose, id, &place, HEARTH, term);
        let mut found: Vec<Asked> = fires(room).filter_map(backs).collect();
        if let Some(main) = context.heart.main.filter(|_| pose.role == Role::Opposite && pose.stand.turn.is_none()) {
            found.extend(
                fires_beside(room, main.stand.facing).take(1).map(|(id, place)| amid(room, [main, pose], id, &place)),
            );
        }
        found
    }
}

/// The floor where one gathers before a fire.
fn hearth(WallPlace { left, right, inward }: &WallPlace) -> Convex {
    let out = *inward * HEARTH;
    Convex::counter_clockwise([*left, *right, *right + out, *left + out])
}

/// The fires of a room, each with the place of its mouth.
fn fires<'a>(room: &'a RuleContext<'_>) -> impl Iterator<Item = (ItemId, WallPlace)> + 'a {
    let fires = room.brief.room.items().filter(|(_, item)| matches!(item.kind, ItemKind::Fireplace(_)));
    fires.filter_map(|(id, _)| Some((id, room.site.mouth_of(room.brief, id)?)))
}

/// The fires that a seat which faces so has at its side.
pub(super) fn fires_beside<'a>(
    room: &'a RuleContext<'_>,
    facing: Point,
) -> impl Iterator<Item = (ItemId, WallPlace)> + 'a {
    fires(room).filter(move |(_, place)| place.inward.dot(facing).abs() < SQUARE)
}

/// The fire lies amid the floor between two fronts that face each other.
fn amid(room: &RuleContext<'_>, seats: [&Pose; 2], fire: ItemId, place: &WallPlace) -> Asked {
    let [main, other] = seats;
    let facing = main.stand.facing;
    let [front, its] = seats.map(|seat| middle_of_front(seat).along(facing));
    let between = Linear::default().plus(&front, 0.5).plus(&its, 0.5);
    let off = between.shifted(-((place.left + place.right) * 0.5).dot(facing));
    let term = if room.brief.wishes.are_for_the_fire() { Term::FireAmid } else { Term::FocusAmid };
    Asked::always(term, other, With::Item(fire), Way::pays_either_way(other, CostSlot::Along, term, &off))
}
