//! The screen that the main seat faces stands on the seat's axis.

use elbowroom_model::{Brief, Clearance, Point};

use super::measure::{Lengths, Measure};
use super::watched::Watched;
use crate::verify::breach::Wrong;
use crate::verify::checked_layout::CheckedLayout;

const RULE: Clearance = Clearance::ScreenAxis;

pub(super) fn measures(scene: &CheckedLayout<'_>) -> Vec<Measure> {
    let wanted = scene.rule(RULE);
    if wanted <= 0.0 {
        return Vec::new();
    }
    let faced = Watched::all(scene).into_iter().filter(|watched| !watched.beside);
    let measure = |watched: Watched<'_>| {
        let wanted = scene.brief.screen_axis(faces_fire(scene.brief, watched.run.out));
        let given = watched.run.aside(watched.screen().middle).abs();
        let between = [watched.media.thing(), watched.seat.thing()];
        Measure::at_most(RULE, Wrong::ScreenOffAxis, &between, &Lengths { wanted, given })
    };
    faced.map(measure).collect()
}

/// Within so much of straight on one faces a fire: 10 degrees.
const STRAIGHT_ON: f64 = -0.984_807_753;

/// Whether whoever looks so faces a fire that is minded.
fn faces_fire(brief: &Brief, out: Point) -> bool {
    let fires = brief.room.items.iter().filter(|item| brief.wishes.draw_to(&item.kind));
    fires.filter_map(|item| brief.room.wall(item.wall)).any(|wall| wall.inward().dot(out) < STRAIGHT_ON)
}
