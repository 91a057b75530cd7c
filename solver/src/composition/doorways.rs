//! Doorways as one meets them: nobody sits close before one with their back to it, or in the straight way from one to the
//! other, or at the leaf of a door, and no cupboard stands where an open leaf hides it.

use elbowroom_model::{Clearance, ItemId, Point, Term};

use super::asked::{Asked, Way};
use super::floor_before::{not_before, out_of};
use super::plan_term::{PlanTerm, TermContext};
use crate::arrangement::Role;
use crate::geometry::Convex;
use crate::routes::entrances;
use crate::rules::{CostSlot, LinearOutline, Pose, RuleContext, With, beyond};
use crate::site::{Swing, WallPlace};

/// So near to a doorway a seat has whoever comes in at its neck, mm (common practice, no source). Doorways have landings;
/// what this asks for most is a wide opening, which has none.
const AT_THE_NECK: f64 = 1000.0;

/// A leaf that stands open hides the floor so far beside its hinge, mm: a cupboard's breadth (common practice, no source).
const HIDDEN: f64 = 600.0;

/// Seats and storage about doorways.
#[derive(Debug)]
pub(super) struct AboutDoorways;

impl PlanTerm for AboutDoorways {
    fn alone(&self, context: &TermContext<'_>, pose: &Pose) -> Vec<Asked> {
        let room = &context.room;
        let mut found = Vec::new();
        if pose.role == Role::MainSeat || pose.role.is_second_seat() {
            found.extend(across_openings(room, pose));
            found.extend(room.site.swings.iter().filter(|swing| !swing.goes_on).map(|swing| by_door(pose, swing)));
        }
        if pose.role.is_second_seat() || pose.role == Role::Apart {
            found.extend(out_of_ways(room, pose));
        }
        if pose.piece.kind.is_storage() {
            found.extend(room.site.swings.iter().filter(|swing| !swing.goes_on).map(|swing| behind_leaf(pose, swing)));
        }
        found
    }
}

/// Doorways and openings, each with its place.
fn doorways<'a>(room: &'a RuleContext<'_>) -> impl Iterator<Item = (ItemId, WallPlace)> + 'a {
    let leads = room.brief.room.items().filter(|(_, item)| item.kind.leads_to().is_some());
    leads.filter_map(|(id, _)| Some((id, room.site.place_of(room.brief, id)?)))
}

/// No seat is close before a doorway that it turns its back on, or at a price.
fn across_openings(room: &RuleContext<'_>, pose: &Pose) -> Vec<Asked> {
    let asked = |(id, place)| not_before(pose, id, &place, AT_THE_NECK, Term::AcrossOpening);
    doorways(room).filter_map(asked).collect()
}

/// Out of each straight way from an entrance to another doorway, or at a price.
fn out_of_ways(room: &RuleContext<'_>, pose: &Pose) -> Vec<Asked> {
    let entrances = entrances(room.brief);
    let pairs = entrances.iter().flat_map(|from| doorways(room).map(move |(to, _)| (*from, to)));
    // From one entrance to another counts once.
    let pairs = pairs.filter(|(from, to)| from != to && !(entrances.contains(to) && to < from));
    let asked = |(from, to): (ItemId, ItemId)| {
        let lane = LinearOutline::fixed(&lane(room, from, to)?);
        let out = |towards: &Point| Way::of(beyond(&lane, pose.main(), *towards, 0.0));
        let ways = lane.normals.iter().map(out).chain([Way::flat(Term::InWay)]).collect();
        Some(Asked::one_of(Term::InWay, pose, With::Item(to), ways))
    };
    pairs.filter_map(asked).collect()
}

/// The floor straight from the middle of one doorway to that of the other, a passage wide.
fn lane(room: &RuleContext<'_>, from: ItemId, to: ItemId) -> Option<Convex> {
    let half = room.brief.rules.get(Clearance::Passage) / 2.0;
    let [one, other] = [from, to].map(|id| room.site.place_of(room.brief, id));
    let (one, other) = (one?, other?);
    let middles = [one, other].map(|place| (place.left + place.right) * 0.5);
    let way = middles[1] - middles[0];
    let aside = way.unit()?.left() * half;
    // Two doorways in one wall have no floor straight between them.
    let has_floor = one.inward.dot(way) > half && other.inward.dot(-way) > half;
    let [from, to] = middles;
    has_floor.then(|| Convex::counter_clockwise([from - aside, to - aside, to + aside, from + aside]))
}

/// Room to come in beside where a leaf sweeps, on any side of it.
fn by_door(pose: &Pose, swing: &Swing) -> Asked {
    let term = if pose.role == Role::MainSeat { Term::ByDoor } else { Term::SecondByDoor };
    let swept = LinearOutline::fixed(&floor_at_hinge(swing, swing.along * swing.radius));
    let clear = |towards: Point| pose.main().furthest(-towards).from(swept.furthest(towards)).along(towards);
    let ways = [swing.along, -swing.along, swing.inward, -swing.inward]
        .map(|towards| Way::pays_for_lack(pose, CostSlot::Other, term, &clear(towards)));
    Asked::one_of(term, pose, With::Item(swing.item), ways.into())
}

/// Not where a leaf that stands open hides it, or at a price.
fn behind_leaf(pose: &Pose, swing: &Swing) -> Asked {
    out_of(pose, &floor_at_hinge(swing, -swing.along * HIDDEN), Term::BehindLeaf, swing.item)
}

/// The floor from the hinge so far aside, as deep as the leaf is wide.
fn floor_at_hinge(swing: &Swing, aside: Point) -> Convex {
    let (hinge, inward) = (swing.hinge, swing.inward * swing.radius);
    Convex::counter_clockwise([hinge, hinge + aside, hinge + aside + inward, hinge + inward])
}
