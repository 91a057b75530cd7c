//! Solving again with something changed.

use elbowroom_model::Brief;

use crate::arrangement::{Arrangement, enumerate};
use crate::routes::{Floor, shapes_of_room, work_of_routes};
use crate::search::{Aim, Easing, Effort, RoomContext, search};
use crate::site::Site;
use crate::stop::Stop;

/// Nodes that one arrangement may take at most when all that is asked is whether it fits.
const NODES: usize = 500;

/// Whether `arrangement` has any layout under `brief`, and the programs that took.
pub(super) fn fits(brief: &Brief, arrangement: &Arrangement, stop: Stop<'_>) -> (bool, usize) {
    let site = Site::of(brief);
    let (room, floor) = (RoomContext::of(brief, &site).until(stop), Floor::of(brief, &site));
    let searched = search(&room, &floor, arrangement, any(None));
    (searched.found.is_some(), searched.programs)
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

/// Whether a brief is answered with an option by one of these arrangements, and the programs that it took to know.
pub(crate) type IsOption<'f> = dyn Fn(&Brief, &[Arrangement]) -> (bool, usize) + 'f;

/// Counts the work of looking for remedies, in programs.
#[derive(Debug)]
pub(super) struct Retries<'s> {
    work: std::cell::Cell<usize>,
    stop: Stop<'s>,
}

impl<'s> Retries<'s> {
    /// Nothing done so far.
    pub(super) fn until(stop: Stop<'s>) -> Self {
        Self { work: std::cell::Cell::new(0), stop }
    }

    /// The arrangements that fit under `brief`, comfort aside, up to `enough` of them; those that cheap bounds drop there are
    /// out, and none is looked at once the work allowed is done.
    pub(super) fn that_fit(&self, brief: &Brief, enough: usize) -> Vec<Arrangement> {
        if self.is_done() {
            return Vec::new();
        }
        self.took(brief.room.walls.len() * shapes_of_room(brief) * brief.pieces.len() / PLACES_LIKE_A_PROGRAM);
        let site = Site::of(brief);
        let (room, floor) = (RoomContext::of(brief, &site).until(self.stop), Floor::of(brief, &site));
        let weight = weight(brief);
        let fits = |arrangement: &Arrangement| {
            if self.is_done() {
                return false;
            }
            let searched = search(&room, &floor, arrangement, any(None));
            self.took(searched.programs * weight);
            searched.found.is_some()
        };
        enumerate(brief, &site).arrangements.into_iter().filter(fits).take(enough).collect()
    }

    /// Whether one of these arrangements of `brief` makes an option, by `is_option`, which tells the programs that it took too.
    pub(super) fn has_option(&self, brief: &Brief, fitting: &[Arrangement], is_option: &IsOption<'_>) -> bool {
        if self.is_done() {
            return false;
        }
        let (is_one, programs) = is_option(brief, fitting);
        self.took(programs * weight(brief));
        is_one
    }

    fn took(&self, programs: usize) {
        self.work.set(self.work.get() + programs);
    }

    fn is_done(&self) -> bool {
        self.work.get() > WORK || self.stop.is_asked()
    }
}

/// A program costs about the square of the number of pieces, and the routes beside it what they take.
fn weight(brief: &Brief) -> usize {
    (brief.pieces.len() / 4).pow(2).max(1) * work_of_routes(brief)
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
