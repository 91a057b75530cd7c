//! How far a screen may stand from the axis of the main seat, in a room with something else to turn to.

use crate::focus::SCREEN_BESIDE;
use crate::report::Report;
use crate::room::Room;
use crate::rules::{Clearance, Rules};
use crate::scenario::document::Document;
use crate::wishes::Wishes;

/// Where the seats may turn to a fire the screen may stand beside it, unless the file says how
/// far.
pub(super) fn widened(
    document: &Document,
    room: &Room,
    wishes: &Wishes,
    rules: Rules,
    report: &mut Report<'_>,
) -> Rules {
    let given = document
        .clearances
        .iter()
        .any(|rows| rows.figures.iter().any(|(rule, figure)| *rule == Clearance::ScreenAxis && figure.is_some()));
    let has_screen = document
        .pieces
        .iter()
        .flatten()
        .flatten()
        .any(|row| row.kind.is_some_and(crate::kind::PieceKind::carries_screen));
    if given || !has_screen || !room.draws(wishes) {
        return rules;
    }
    report.notice(format!(
        "Where the main seat faces the fire the screen may stand beside that, up to {} from the seat's axis: common practice, no source. `screen_axis` under `clearances` sets another figure.",
        report.words(SCREEN_BESIDE)
    ));
    rules.with(Clearance::ScreenAxis, SCREEN_BESIDE, "common practice, no source: beside a fire that the seat faces")
}
