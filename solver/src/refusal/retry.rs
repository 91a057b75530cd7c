//! Solving again with something changed.

use elbowroom_model::Brief;

use crate::arrangement::{Arrangement, enumerate};
use crate::routes::{Floor, shapes_of_room, work_of_routes};
use crate::search::{Aim, Easing, Effort, RoomContext, search};
use crate::site::Site;

/// Nodes that one arrangement may take at most when all that is asked is whether it fits.
const NODES: usize = 500;

/// Whether `arrangement` has any layout under `brief`, and the programs that took.
pub(super) fn fits(brief: &Brief, arrangement: &Arrangement) -> (bool, usize) {
    let site = Site::of(brief);
    let (room, floor) = (RoomContext::of(brief, &site), Floor::of(brief, &site));
    let searched = search(&room, &floor, arrangement, any(None));
    (searched.found.is_some(), searched.programs)
}

/// Whether `arrangement` has any layout in its room, comfort aside.
pub(crate) fn has_a_layout(room: &RoomContext<'_>, floor: &Floor, arrangement: &Arrangement) -> bool {
    search(room, floor, arrangement, any(None)).found.is_some()
}

/// Asks for any layout, with one rule left aside.
pub(super) const fn any(without: Option<elbowroom_model::Rule>) -> Effort<'static> {
    Effort { without, easing: Easing::Ignored, ..Effort::of(Aim::Any, NODES) }
}

/// What all remedies of one room may take, in programs of a room with four pieces, so that hostile rooms end too.
const WORK: usize = 200_000;

/// Looking over the arrangements takes about a program for so many pieces each before one wall or item, whether any of
/// them is then solved or not.
const PLACES_LIKE_A_PROGRAM: usize = 20;

/// Counts the work of looking for remedies, in programs.
#[derive(Debug, Default)]
pub(super) struct Retries {
    work: std::cell::Cell<usize>,
}

impl Retries {
    /// How many arrangements fit under `brief`, counted up to `enough`; those that cheap bounds drop there are out, and
    /// none is looked at once the work allowed is done.
    pub(super) fn how_many_fit(&self, brief: &Brief, enough: usize) -> usize {
        if self.is_done() {
            return 0;
        }
        self.took(brief.room.walls.len() * shapes_of_room(brief) * brief.pieces.len() / PLACES_LIKE_A_PROGRAM);
        let site = Site::of(brief);
        let (room, floor) = (RoomContext::of(brief, &site), Floor::of(brief, &site));
        // A program costs about the square of the number of pieces, and the routes beside it what they take.
        let weight = (brief.pieces.len() / 4).pow(2).max(1) * work_of_routes(brief);
        let fits = |arrangement: &&Arrangement| {
            if self.is_done() {
                return false;
            }
            let searched = search(&room, &floor, arrangement, any(None));
            self.took(searched.programs * weight);
            searched.found.is_some()
        };
        enumerate(brief, &site).arrangements.iter().filter(fits).take(enough).count()
    }

    fn took(&self, programs: usize) {
        self.work.set(self.work.get() + programs);
    }

    fn is_done(&self) -> bool {
        self.work.get() > WORK
    }
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
