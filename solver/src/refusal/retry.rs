//! Solving again with something changed.

use elbowroom_model::Brief;

use crate::arrangement::{Arrangement, enumerate};
use crate::routes::Floor;
use crate::search::{Aim, Effort, RoomGround, search};
use crate::site::Site;

/// Nodes that one arrangement may take when all that is asked is whether it fits.
const NODES: usize = 2_000;

/// Whether `arrangement` has any layout under `brief`, and the programs that took.
pub(super) fn fits(brief: &Brief, arrangement: &Arrangement) -> (bool, usize) {
    let site = Site::of(brief);
    let (room, floor) = (RoomGround::of(brief, &site), Floor::of(brief, &site));
    let searched = search(&room, &floor, arrangement, any(None));
    (searched.found.is_some(), searched.programs)
}

/// Asks for any layout, with one rule left aside.
pub(super) const fn any(without: Option<crate::rules::RuleName>) -> Effort<'static> {
    Effort { aim: Aim::Any, to_beat: f64::NEG_INFINITY, nodes: NODES, without }
}

/// How many arrangements fit under `brief`, counted up to `enough`; those that cheap bounds drop there are out.
pub(super) fn how_many_fit(brief: &Brief, enough: usize) -> usize {
    let site = Site::of(brief);
    let (room, floor) = (RoomGround::of(brief, &site), Floor::of(brief, &site));
    let enumeration = enumerate(brief, &site);
    let fit = enumeration
        .arrangements
        .iter()
        .filter(|arrangement| search(&room, &floor, arrangement, any(None)).found.is_some());
    fit.take(enough).count()
}

/// The value nearest to `now` in `now..=extreme` (or down to it) for which `holds`, within `step`; `extreme` is known to hold.
pub(super) fn nearest(now: f64, extreme: f64, step: f64, holds: impl Fn(f64) -> bool) -> f64 {
    let (mut fails, mut good) = (now, extreme);
    while (good - fails).abs() > step {
        let middle = f64::midpoint(fails, good);
        if holds(middle) {
            good = middle;
        } else {
            fails = middle;
        }
    }
    good
}
