//! A room out of any bytes, a byte a decision, so that files that are like each other are rooms like each other.
#![allow(dead_code, reason = "each suite uses its own part")]

use super::plan::{At, Plan, PlanPiece, Side, What};

/// Main seats: one of them stands in every room.
const MAIN: [&str; 3] = ["sofa", "corner-sofa", "day-bed"];
/// What else may stand there; `none` twice, so that half of the rooms are small.
const OTHERS: [&str; 18] = [
    "none",
    "coffee-table",
    "media-unit",
    "armchair",
    "side-table",
    "bookcase",
    "sideboard",
    "none",
    "desk",
    "dining-table",
    "floor-lamp",
    "rug",
    "wall-screen",
    "cabinet",
    "bench",
    "plant",
    "pouf",
    "open-floor",
];
/// Clearances that a room may set by itself.
const CLEARANCES: [&str; 7] =
    ["walkway", "passage", "seat_to_table", "door_landing", "storage_front", "radiator_clear", "fire_clear"];
/// Wishes that it may set.
const WISHES: [&str; 7] = ["view", "entrance", "openness", "talk", "daylight", "screen", "fireside"];
/// Pieces beside the main seat, at most: a solve stays short.
const MOST_OTHERS: usize = 4;

/// Decisions as the bytes have them, and the first of each once they have run out.
struct Decisions<'a>(&'a [u8]);

impl Decisions<'_> {
    fn one_of(&mut self, count: usize) -> usize {
        let Some((first, rest)) = self.0.split_first() else { return 0 };
        self.0 = rest;
        usize::from(*first) % count
    }

    fn yes(&mut self) -> bool {
        self.one_of(2) == 1
    }

    /// From `low` to `high` mm, in steps of 10 mm where there are no more than a byte has.
    fn length(&mut self, low: f64, high: f64) -> f64 {
        let steps = ((high - low) / 10.0).min(255.0);
        let step = (high - low) / steps;
        low + (self.one_of(steps as usize + 1) as f64 * step / 10.0).round() * 10.0
    }

    /// A part of `length` with this much to either side, mm; `None` where there is no place for it.
    fn along(&mut self, length: f64, width: f64) -> Option<f64> {
        let spare = length - width;
        let share = self.one_of(256) as f64 / 255.0;
        (spare >= 0.0).then(|| (spare * share / 10.0).floor() * 10.0)
    }
}

/// The room that the bytes are; not every one is a sound file.
pub(crate) fn plan(bytes: &[u8]) -> Plan {
    let decisions = &mut Decisions(bytes);
    let mut plan = Plan::of(&outline(decisions));
    plan.profile = ["easy", "snug", "wheelchair"][decisions.one_of(3)];
    plan.measured_within = [0.0, 5.0, 20.0][decisions.one_of(3)];
    let main = PlanPiece::of(MAIN[decisions.one_of(MAIN.len())]);
    plan = plan.piece(asked(main, decisions).also("name", "main seat"));
    for place in 0..decisions.one_of(MOST_OTHERS + 1) {
        let kind = OTHERS[decisions.one_of(OTHERS.len())];
        if kind != "none" {
            let piece = asked(PlanPiece::of(kind), decisions).also("name", format!("piece {place}"));
            let piece = if decisions.yes() { piece.also("needed", false) } else { piece };
            let turned = kind == "armchair" && decisions.yes();
            plan = plan.piece(if turned { piece.also("turned", "either") } else { piece });
        }
    }
    for place in 0..1 + decisions.one_of(4) {
        plan = with_item(plan, place, decisions);
    }
    if decisions.one_of(4) == 1 {
        plan = with_post(plan, decisions);
    }
    for _ in 0..decisions.one_of(3) {
        let (key, figure) = (CLEARANCES[decisions.one_of(CLEARANCES.len())], decisions.length(0.0, 1500.0));
        plan = plan.clear(key, figure);
    }
    for _ in 0..decisions.one_of(3) {
        let (key, weight) = (WISHES[decisions.one_of(WISHES.len())], decisions.one_of(6) as f64);
        plan.wishes.retain(|(other, _)| *other != key);
        plan.wishes.push((key, weight));
    }
    plan
}

/// A rectangle, with a corner taken off it, cut into it, or two sides out of square.
fn outline(decisions: &mut Decisions<'_>) -> Vec<At> {
    let (w, d) = (decisions.length(2400.0, 7000.0), decisions.length(2200.0, 5500.0));
    let shape = decisions.one_of(4);
    let (x, y) = (decisions.length(100.0, 1900.0), decisions.length(100.0, 1700.0));
    match shape {
        0 => vec![(0.0, 0.0), (w, 0.0), (w, -d), (0.0, -d)],
        1 => vec![(0.0, 0.0), (w, 0.0), (w, -d), (x, -d), (x, -d + y), (0.0, -d + y)],
        2 => vec![(0.0, 0.0), (w - x, 0.0), (w, -y), (w, -d), (0.0, -d)],
        _ => vec![(0.0, 0.0), (w, -y / 4.0), (w - x / 4.0, -d), (0.0, -d)],
    }
}

/// With a width of its own, or as its kind usually is.
fn asked(piece: PlanPiece, decisions: &mut Decisions<'_>) -> PlanPiece {
    match decisions.one_of(4) {
        0 | 1 => piece,
        2 => {
            let width = decisions.length(300.0, 2800.0);
            piece.range("width", width, width)
        }
        _ => {
            let least = decisions.length(300.0, 2200.0);
            let most = least + decisions.length(10.0, 1200.0);
            piece.range("width", least, most)
        }
    }
}

/// With something on a wall, where that wall has a place for it.
fn with_item(plan: Plan, place: usize, decisions: &mut Decisions<'_>) -> Plan {
    let wall = decisions.one_of(plan.walls.len());
    let what = match decisions.one_of(if place == 0 { 2 } else { 6 }) {
        0 => What::Door {
            hinge: [Some(Side::Left), Some(Side::Right), None][decisions.one_of(3)],
            leads_to: ["entrance", "kitchen"][place.min(1)],
        },
        1 => What::Opening { leads_to: "dining", stance: ["open", "away", "none"][decisions.one_of(3)] },
        2 | 3 => What::Window {
            sill: decisions.length(0.0, 1200.0),
            head: 2100.0,
            view: ["plain", "liked", "avoided"][decisions.one_of(3)],
            must_reach: decisions.yes(),
        },
        4 => What::Radiator { depth: decisions.length(50.0, 200.0), keep_clear: decisions.length(0.0, 200.0) },
        _ => What::Fireplace { depth: decisions.length(100.0, 500.0), keep_clear: decisions.length(0.0, 900.0) },
    };
    let width = decisions.length(600.0, 2400.0);
    match decisions.along(plan.length(wall), width) {
        Some(at) => plan.hold(wall, &format!("item {place}"), at, width, what),
        None => plan,
    }
}

/// With a post somewhere on the floor.
fn with_post(plan: Plan, decisions: &mut Decisions<'_>) -> Plan {
    let low = (decisions.length(200.0, 3000.0), -decisions.length(500.0, 3000.0));
    let (width, depth) = (decisions.length(50.0, 700.0), decisions.length(50.0, 450.0));
    plan.block("post", low, (low.0 + width, low.1 + depth))
}
