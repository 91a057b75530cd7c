//! Nobody on the main seat turns the head far to see the screen.

use elbowroom_model::Rule;

use super::measure::Measure;
use super::seat_front::main_front;
use super::watched::Watched;
use crate::verify::breach::Wrong;
use crate::verify::checked_layout::CheckedLayout;

/// How far a sitter turns the head at ease, degrees: Architectural Institute of Japan, handbook 3, 1980, page 42 (published,
/// second-hand); NUREG-0700 rev. 3, 11.3.1.2-2 has 35, 15 preferred.
const AT_EASE: f64 = 45.0;

/// How far the main run of a corner sofa turns to a screen that its return faces, degrees: NUREG-0700 rev. 3, 11.3.1.2-2,
/// where the head may turn (published).
const FROM_MAIN_RUN: f64 = 60.0;

/// How far ahead of the main run's front such a screen lies, mm (common practice).
const AHEAD: f64 = 500.0;

/// The share of its run's width that the sitter who is asked sits off the middle.
const OFF_MIDDLE: f64 = 1.0 / 6.0;

pub(super) fn measures(scene: &CheckedLayout<'_>) -> Vec<Measure> {
    let measure = |watched: &Watched<'_>| {
        let between = [watched.media.thing(), watched.seat.thing()];
        Measure::of_no_length(Rule::ScreenTurn, Wrong::ScreenTurned, &between, short_by(watched))
    };
    Watched::all(scene).iter().map(measure).collect()
}

fn short_by(watched: &Watched<'_>) -> f64 {
    let (run, screen) = (watched.run, watched.screen().middle);
    let aside = run.aside(screen).abs() + run.length * OFF_MIDDLE;
    let from_run = aside - AT_EASE.to_radians().tan() * run.ahead(screen);
    if !watched.beside {
        return from_run;
    }
    let main = main_front(watched.seat.placed);
    let (ahead, aside) = (main.ahead(screen), main.aside(screen).abs());
    let from_main = aside - FROM_MAIN_RUN.to_radians().tan() * ahead;
    from_run.max(from_main).max(AHEAD - ahead)
}
