//! Where in a room something is broken.

use elbowroom_model::{Clearance, Point, Rule};

use super::judged_room::JudgedRoom;
use crate::answer::Thing;
use crate::geometry::{Convex, Segment, gap};
use crate::plan::{ZoneKind, zones};
use crate::site::{BodyId, Site};
use crate::verify::Breach;

/// Where a rule is broken: from what breaks it to what it is broken against, twice one place where the two lie on each other
/// or it is about one thing alone; of a way where it is narrowest. `None` for what is nowhere.
#[must_use]
pub fn spot(room: &JudgedRoom, breach: &Breach) -> Option<[Point; 2]> {
    if let Some(pinch) = pinch(room, breach) {
        return Some(pinch);
    }
    let shapes = |thing: &Thing| shapes(room, breach.rule, *thing);
    let (first, second) = (shapes(breach.between.first()?), breach.between.get(1).map(shapes).unwrap_or_default());
    let nearest = first.iter().flat_map(|one| second.iter().map(|other| gap(one, other)));
    let nearest = nearest.min_by(|one, other| one.clear.total_cmp(&other.clear));
    nearest.map(|gap| gap.at).or_else(|| first.first().map(|shape| [shape.middle(); 2]))
}

/// The narrowest place of the way that a breach is about.
fn pinch(room: &JudgedRoom, breach: &Breach) -> Option<[Point; 2]> {
    let [from, to] = *breach.between.first_chunk::<2>()?;
    let is_way = |route: &&crate::routes::Route| {
        let ends: [Thing; 2] = [route.from.into(), route.to.into()];
        ends == [from, to] || ends == [to, from]
    };
    let of_ways = matches!(breach.rule, Rule::Clearance(Clearance::Walkway | Clearance::Passage));
    let route = room.routes.iter().find(is_way).filter(|_| of_ways)?;
    route.pinch.as_ref().map(|pinch| pinch.at)
}

/// What a thing takes of the floor under a rule: of what a wall holds what the rule keeps free there, else its own place.
fn shapes(room: &JudgedRoom, rule: Rule, thing: Thing) -> Vec<Convex> {
    let site = Site::of(&room.brief);
    match thing {
        Thing::Piece(piece) => room.layout.of(piece).map_or_else(Vec::new, |placed| placed.parts()),
        Thing::Wall(wall) => {
            site.walls.iter().filter(|it| it.id == wall).map(|it| Segment::new(it.start, it.end).shape()).collect()
        }
        Thing::Fixed(fixed) => bodies(&site, BodyId::Fixed(fixed)),
        Thing::Item(item) => {
            let kind = match rule {
                Rule::DoorSwing => Some(ZoneKind::Swing),
                Rule::KeepClear => Some(ZoneKind::KeepClear),
                Rule::Clearance(Clearance::DoorLanding | Clearance::LatchSide) => Some(ZoneKind::Landing),
                _ => None,
            };
            let kept = zones(&site).into_iter().filter(|zone| zone.item == item && Some(zone.kind) == kind);
            let kept: Vec<Convex> = kept.map(|zone| Convex::counter_clockwise(zone.ring)).collect();
            if !kept.is_empty() {
                return kept;
            }
            let body = bodies(&site, BodyId::Item(item));
            if !body.is_empty() {
                return body;
            }
            let place = room.brief.room.items().find(|(id, _)| *id == item);
            let ends = place.and_then(|(_, item)| room.brief.room.ends(item));
            ends.map(|(left, right)| Segment::new(left, right).shape()).into_iter().collect()
        }
    }
}

fn bodies(site: &Site, id: BodyId) -> Vec<Convex> {
    site.bodies.iter().chain(&site.steps).filter(|body| body.id == id).map(|body| body.shape.clone()).collect()
}
