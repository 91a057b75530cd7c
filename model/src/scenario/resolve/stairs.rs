//! Stairs that come up into the room: where one steps off them, and how they are the way in.

use crate::article::the;
use crate::opening::LeadsTo;
use crate::report::Report;
use crate::room::{FixedId, Room};
use crate::used_at::UsedAt;
use crate::used_floor::UsedFloor;

/// Tells at which edge one steps off stairs where the file does not say, and what to write where they are the only way in.
pub(super) fn tell(room: &Room, report: &mut Report<'_>) {
    let stairs: Vec<FixedId> = (0..room.fixed.len()).map(FixedId).filter(|id| is_guessed(room, *id)).collect();
    for id in &stairs {
        let told = step_off(&room.fixed[id.0].name, room.used_floor(*id), report);
        report.notice(told);
    }
    let leads_in = |item: &crate::room::WallItem| item.kind.leads_to().is_some_and(LeadsTo::is_entrance);
    if let Some(first) = stairs.first().filter(|_| !room.items.iter().any(leads_in)) {
        report.notice(format!(
            "Ways start at doorways: where one comes into the room by {0}, draw the well as a notch of the walls in place of {0}, \
             with an `opening` that leads to the entrance in the wall at its head.",
            the(&room.fixed[first.0].name)
        ));
    }
}

/// Used at its shortest edge, which only stairs are, by their kind and no word of the file.
fn is_guessed(room: &Room, id: FixedId) -> bool {
    room.fixed.get(id.0).is_some_and(|thing| thing.used_at == UsedAt::Shortest && thing.use_depth.is_some())
}

fn step_off(name: &str, floor: Option<UsedFloor>, report: &Report<'_>) -> String {
    let Some(floor) = floor else {
        return format!("No edge of {} has floor before it: nothing is kept clear there.", the(name));
    };
    let middle = floor.middle();
    format!(
        "One steps off {} at the end about x {}, y {}: {} of floor before it stays clear and can be reached. Where it is another \
         edge, `used_at: [x, y]` is a place at it.",
        the(name),
        report.words(middle.x),
        report.words(middle.y),
        report.words(floor.depth)
    )
}
