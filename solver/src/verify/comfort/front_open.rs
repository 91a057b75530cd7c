//! No wall and no fixed thing stands close before a seat's front.

use elbowroom_model::{Clearance, WallId};

use super::measure::{Lengths, Measure};
use super::seat_front::main_front;
use crate::answer::Thing;
use crate::geometry::Convex;
use crate::verify::breach::Wrong;
use crate::verify::checked_layout::{CheckedLayout, InPlace};

const RULE: Clearance = Clearance::FrontOpen;

/// So much of a front may have a wall before it, at each end, mm (common practice).
const AT_ENDS: f64 = 100.0;

/// The share of the figure that seats other than the main one need (composition: 450 of 900).
const OF_OTHERS: f64 = 0.5;

pub(super) fn measures(scene: &CheckedLayout<'_>) -> Vec<Measure> {
    if scene.rule(RULE) <= 0.0 {
        return Vec::new();
    }
    let mut standing = standing(scene);
    standing.extend(scene.checked.steps.iter().cloned());
    scene.seats().flat_map(|seat| of_seat(scene, seat, &standing)).collect()
}

fn of_seat(scene: &CheckedLayout<'_>, seat: &InPlace<'_>, standing: &[(Thing, Convex)]) -> Vec<Measure> {
    let Some(front) = main_front(seat.placed).less(AT_ENDS) else { return Vec::new() };
    let wanted = scene.rule(RULE) * if scene.is_main(seat) { 1.0 } else { OF_OTHERS };
    let measure = |(of, shape): &(Thing, Convex)| {
        let given = front.nearest_ahead(shape)?;
        Some(Measure::at_least(RULE, Wrong::FrontClosed, &[seat.thing(), *of], &Lengths { wanted, given }))
    };
    standing.iter().filter_map(measure).collect()
}

/// Walls as moved in, and what stands for good.
pub(super) fn standing(scene: &CheckedLayout<'_>) -> Vec<(Thing, Convex)> {
    let walls = scene.checked.walls.iter().enumerate();
    let walls = walls.map(|(place, wall)| (Thing::Wall(WallId(place)), wall.shape()));
    walls.chain(scene.checked.bodies.iter().cloned()).collect()
}
