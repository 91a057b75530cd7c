//! The floor before doors that one pulls open, and beside their latches, where a profile or the file asks for it.

use std::fmt::Write;

use crate::opening::{Door, Hinge, ItemKind, Swings};
use crate::report::Report;
use crate::room::{Wall, WallItem};
use crate::rules::{Clearance, Rules};
use crate::scenario::tolerance::TOUCHING;

/// Tells once which doors are pulled from inside and what that asks for, and where a wall ends too near to a latch.
pub(super) fn tell<'a>(
    items: impl Iterator<Item = &'a WallItem>,
    walls: &[Wall],
    rules: &Rules,
    report: &mut Report<'_>,
) {
    let (beside, deep) = (rules.get(Clearance::LatchSide), rules.get(Clearance::PullSide));
    if beside <= 0.0 || deep <= 0.0 {
        return;
    }
    let pulled: Vec<(&WallItem, f64)> =
        items.filter_map(|item| Some((item, wall_beside_latch(item, walls)?))).collect();
    if pulled.is_empty() {
        return;
    }
    let names: Vec<&str> = pulled.iter().map(|(item, _)| item.name.as_str()).collect();
    let mut told = format!(
        "A door that swings in is pulled open from inside, so {} beside its latch and {} before it stay free: {}. Source: {}. \
         `latch_side: 0` under `clearances` leaves this out.",
        report.words(beside),
        report.words(deep),
        names.join(", "),
        rules.figure(Clearance::LatchSide).source
    );
    for (item, wall) in pulled.iter().filter(|(_, wall)| *wall < beside - TOUCHING) {
        let _ = write!(
            told,
            " Beside the latch of {} the wall ends after {}, which no furniture can mend.",
            item.name,
            report.words(*wall)
        );
    }
    report.notice(told);
}

/// From the latch of a door that swings in to the end of its wall, mm; `None` of all else.
fn wall_beside_latch(item: &WallItem, walls: &[Wall]) -> Option<f64> {
    let ItemKind::Door(Door { swings: Swings::In, hinge, .. }) = &item.kind else { return None };
    let length = walls.get(item.wall.0)?.length();
    Some(match (*hinge)? {
        Hinge::Left => length - item.at - item.width,
        Hinge::Right => item.at,
    })
}
