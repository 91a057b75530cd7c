//! The turning circle of rule 11: a free one that a disc reaches.

use elbowroom_model::{Brief, Clearance};
use serde_json::Value;

use super::disc::{Gate, Target, travels};
use super::plane::{P, extent, to_shape, within};
use super::room::Ground;
use super::stand::Stand;
use super::walking::{bare, entrances, item_mouth};

/// How far the places are apart that are tried for the centre of a circle, mm.
const GRID: f64 = 50.0;

/// Whether there may be a free circle that a disc as wide as a walkway reaches: its centre is tried every 50 mm, and a place
/// on the grid may lie off the best one.
pub(crate) fn turning(brief: &Brief, ground: &Ground, stands: &[Stand<'_>]) -> Option<String> {
    let floor = Floor::of(brief, ground, stands)?;
    let places = floor.places(floor.diameter / 2.0 - GRID);
    if places.is_empty() {
        return Some("11 turning_circle: none is free".to_owned());
    }
    let mut tried = places.into_iter().step_by(7);
    (!tried.any(|place| floor.reached(place, -2.0 * GRID))).then(|| "11 turning_circle: none is reached".to_owned())
}

/// Whether there is one for sure, with `spare` to all sides: what is tried is never too near to anything.
pub(crate) fn surely_turns(brief: &Brief, ground: &Ground, stands: &[Stand<'_>], spare: f64) -> bool {
    const FINE: f64 = 5.0;
    let Some(floor) = Floor::of(brief, ground, stands) else { return true };
    let radius = floor.diameter / 2.0 + spare;
    let steps = |from: f64| (0..(GRID / FINE) as usize).map(move |i| from - GRID / 2.0 + FINE * i as f64);
    let about = |[x, y]: P| steps(x).flat_map(move |x| steps(y).map(move |y| [x, y]));
    let held = |place: &P| about(*place).find(|place| floor.free(*place, radius));
    floor.places(radius - GRID).iter().filter_map(held).any(|place| floor.reached(place, 2.0 * spare))
}

/// What stands on the floor that a circle is looked for on.
struct Floor<'a> {
    brief: &'a Brief,
    ground: &'a Ground,
    shapes: Vec<Vec<P>>,
    diameter: f64,
}

impl<'a> Floor<'a> {
    /// `None` where no circle is asked for.
    fn of(brief: &'a Brief, ground: &'a Ground, stands: &[Stand<'_>]) -> Option<Self> {
        let diameter = brief.rules.turning_circle()?;
        let stays = |stand: &&Stand<'_>| stand.is_in_the_way() && !stand.moves_aside();
        let mut shapes = bare(brief, ground);
        shapes.extend(stands.iter().filter(stays).flat_map(Stand::parts));
        Some(Self { brief, ground, shapes, diameter })
    }

    /// The places of the grid that have so much free about them.
    fn places(&self, enough: f64) -> Vec<P> {
        let along = |axis: P| {
            let (from, to) = extent(&self.ground.outline, axis);
            (0..((to - from) / GRID) as usize).map(move |i| from + GRID * i as f64)
        };
        let all = along([1.0, 0.0]).flat_map(|x| along([0.0, 1.0]).map(move |y| [x, y]));
        all.filter(|place| self.free(*place, enough)).collect()
    }

    fn free(&self, place: P, enough: f64) -> bool {
        within(place, &self.ground.outline) && self.shapes.iter().all(|shape| to_shape(place, shape) >= enough)
    }

    /// Whether a disc so much wider than a walkway reaches it from an entrance, where there is one.
    fn reached(&self, place: P, wider: f64) -> bool {
        let walkway = self.brief.rules.get(Clearance::Walkway);
        let mut doors = entrances(self.brief).peekable();
        let disc = walkway.min(self.diameter) + wider;
        let passes = |gate: Gate| travels(&self.shapes, &gate, &Target::Place(place), disc);
        doors.peek().is_none()
            || doors.any(|door| passes(item_mouth(self.brief, self.ground, door).widened(walkway, None)))
    }
}

/// The circle that is told: as large as asked for, free, and reached.
pub(crate) fn told_circle(brief: &Brief, ground: &Ground, stands: &[Stand<'_>], told: &Value) -> Option<String> {
    const ROUNDED: f64 = 0.51;
    // The widths of ways are told within 5 mm.
    const TRAVELS_WITHIN: f64 = 5.0;
    let Some(floor) = Floor::of(brief, ground, stands) else {
        return (!told.is_null()).then(|| "turning_circle is told, and none is asked for".to_owned());
    };
    let figure = |value: &Value| value.as_f64().unwrap_or(f64::NAN);
    let centre = [figure(&told["centre"][0]), figure(&told["centre"][1])];
    if ![1.0, -1.0].iter().all(|sign| sign * (figure(&told["diameter"]) - floor.diameter) < ROUNDED) {
        return Some(format!("turning_circle is not told at {}: {told}", floor.diameter));
    }
    if !floor.free(centre, floor.diameter / 2.0 - ROUNDED) {
        return Some("the turning_circle that is told is not free".to_owned());
    }
    (!floor.reached(centre, -TRAVELS_WITHIN)).then(|| "the turning_circle that is told is not reached".to_owned())
}
