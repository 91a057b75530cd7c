//! Rooms of real dwellings out of open data (`tests/data/rooms.md` names data sets and licences). Hinges are not in the
//! sources: a hinged door is hung at the first jamb from which its leaf swings in free of the walls.

use elbowroom_model::scenario;
use serde_json::Value;

use super::plan::{At, Plan, Side, What};

const ROOMS: &str = include_str!(concat!(env!("CARGO_MANIFEST_DIR"), "/../tests/data/rooms.json"));
/// How far a door's end may lie off its wall in the data, mm.
const ON_THE_WALL: f64 = 1.0;

/// Every room by its id, with what `furnished` adds to it.
pub(crate) fn dwellings(furnished: impl Fn(Plan) -> Plan) -> Vec<(String, Plan)> {
    let rooms: Vec<Value> = serde_json::from_str(ROOMS).unwrap();
    assert_eq!(rooms.len(), 11);
    let told = |room: &Value| (room["id"].as_str().unwrap().to_owned(), plan_of(room, &furnished));
    rooms.iter().map(told).collect()
}

fn at(value: &Value) -> At {
    (value[0].as_f64().unwrap(), value[1].as_f64().unwrap())
}

/// The wall that holds the stretch from `one` to `other`, with the place of its left end along it.
fn wall_of(plan: &Plan, one: At, other: At) -> (usize, f64) {
    let place = |wall: usize, at: At| {
        let (from, to) = (plan.walls[wall].start, plan.walls[(wall + 1) % plan.walls.len()].start);
        let length = plan.length(wall);
        let (ux, uy) = ((to.0 - from.0) / length, (to.1 - from.1) / length);
        let (dx, dy) = (at.0 - from.0, at.1 - from.1);
        let (along, off) = (dx * ux + dy * uy, (dx * uy - dy * ux).abs());
        (off < ON_THE_WALL && along > -ON_THE_WALL && along < length + ON_THE_WALL).then_some(along)
    };
    let found =
        (0..plan.walls.len()).find_map(|wall| Some((wall, place(wall, one)?.min(place(wall, other)?).max(0.0))));
    found.unwrap_or_else(|| panic!("no wall holds {one:?} to {other:?}"))
}

fn width((one, other): (At, At)) -> f64 {
    (one.0 - other.0).hypot(one.1 - other.1)
}

/// The room as the data has it, with what is wanted in it.
fn plan_of(room: &Value, furnished: &impl Fn(Plan) -> Plan) -> Plan {
    let mut corners: Vec<At> = room["polygon"].as_array().unwrap().iter().map(at).collect();
    corners.reverse();
    let mut plan = furnished(Plan::of(&corners));
    for (place, window) in room["windows"].as_array().unwrap().iter().enumerate() {
        let ends = (at(&window["p0"]), at(&window["p1"]));
        let (wall, from) = wall_of(&plan, ends.0, ends.1);
        let what = What::Window {
            sill: window["sill_mm"].as_f64().unwrap_or(900.0),
            head: 2100.0,
            view: if place == 0 { "liked" } else { "plain" },
            must_reach: false,
        };
        plan = plan.hold(wall, &format!("window {}", place + 1), from, width(ends), what);
    }
    for (place, counter) in room["fixed"].as_array().into_iter().flatten().enumerate() {
        let side = |index: usize| counter["box"][index].as_f64().unwrap();
        plan = plan.block(&format!("counter {}", place + 1), (side(0), side(1)), (side(2), side(3)));
    }
    for (place, door) in room["doors"].as_array().unwrap().iter().enumerate() {
        plan = hung(plan, &format!("door {}", place + 1), door);
    }
    plan
}

/// The spaces that doors lead to, as the data names them.
fn leads_to(door: &Value) -> &'static str {
    const SPACES: [&str; 8] = ["entrance", "outside", "storage", "bedroom", "bathroom", "kitchen", "balcony", "hall"];
    let named = door["leads_to"].as_str().unwrap();
    SPACES.into_iter().find(|space| *space == named).unwrap_or("stairs")
}

fn hung(plan: Plan, name: &str, door: &Value) -> Plan {
    let ends = (at(&door["p0"]), at(&door["p1"]));
    let (wall, from) = wall_of(&plan, ends.0, ends.1);
    let leads_to = leads_to(door);
    if door["kind"] == "opening" {
        return plan.hold(wall, name, from, width(ends), What::Opening { leads_to, stance: "none" });
    }
    let jambs: &[Option<Side>] =
        if door["kind"] == "hinged" { &[Some(Side::Left), Some(Side::Right), None] } else { &[None] };
    let hung =
        |hinge: &Option<Side>| plan.clone().hold(wall, name, from, width(ends), What::Door { hinge: *hinge, leads_to });
    let sound = jambs.iter().map(hung).find(|plan| scenario::read(&plan.text(), None).is_ok());
    sound.unwrap_or_else(|| hung(&None))
}
