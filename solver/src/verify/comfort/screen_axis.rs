//! The screen that the main seat faces stands on the seat's axis.

use elbowroom_model::Clearance;

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
        let given = watched.run.aside(watched.screen().middle).abs();
        let between = [watched.media.thing(), watched.seat.thing()];
        Measure::at_most(RULE, Wrong::ScreenOffAxis, &between, &Lengths { wanted, given })
    };
    faced.map(measure).collect()
}
