//! Rooms that nobody here drew: eleven living rooms of real dwellings out of open data (`tests/data/rooms.md` names data
//! sets and licences), each with two briefs. Hinges are not in the sources: a hinged door is hung at the first jamb from
//! which its leaf swings in free of the walls.

use elbowroom_model::scenario;
use elbowroom_solver::Limits;
use elbowroom_solver::refusal::Remedy;
use serde_json::Value;

use crate::program::run_with;
use crate::support::checker;
use crate::support::plan::{At, Plan, PlanPiece, Side, What};
use crate::support::ranked::{brief_of, ranked, ranked_brief};
use crate::support::remedied::remedied;

const ROOMS: &str = include_str!(concat!(env!("CARGO_MANIFEST_DIR"), "/../tests/data/rooms.json"));
/// How far a door's end may lie off its wall in the data, mm.
const ON_THE_WALL: f64 = 1.0;

/// What one asks of each room.
#[derive(Debug, Clone, Copy)]
enum Wanted {
    /// To watch: a sofa, a table where it fits and a screen, at the snug clearances.
    Watching,
    /// To talk and read: a sofa and an armchair, shelves where they fit, at the easy clearances.
    Talking,
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
fn plan_of(room: &Value, wanted: Wanted) -> Plan {
    let mut corners: Vec<At> = room["polygon"].as_array().unwrap().iter().map(at).collect();
    corners.reverse();
    let mut plan = furnished(Plan::of(&corners), wanted);
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

fn furnished(plan: Plan, wanted: Wanted) -> Plan {
    match wanted {
        Wanted::Watching => Plan { profile: "snug", measured_within: 5.0, ..plan }
            .piece(PlanPiece::of("sofa"))
            .piece(PlanPiece::of("media-unit").also("screen", "40 in"))
            .piece(PlanPiece::of("coffee-table").also("needed", false)),
        Wanted::Talking => Plan { measured_within: 5.0, ..plan }
            .piece(PlanPiece::of("sofa"))
            .piece(PlanPiece::of("armchair"))
            .piece(PlanPiece::of("bookcase").also("needed", false)),
    }
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

/// What is wrong with the result of a room: rules that its options break, or remedies that do not help; empty where all
/// is well.
fn complaints(id: &str, plan: &Plan) -> Vec<String> {
    let text = plan.text();
    let brief = brief_of(&text);
    let answer = ranked(&text);
    let mut all = checker::complaints(&brief, &run_with(&["rank", "--json", "-"], text.as_bytes()).stdout);
    if answer.options.is_empty() {
        if answer.remedies.is_empty() {
            all.push("nothing fits and nothing helps".to_owned());
        }
        let helps = |remedy: &&Remedy| {
            let changed = remedied(&brief, remedy);
            changed.is_none_or(|brief| !ranked_brief(&brief, Limits::default()).options.is_empty())
        };
        let idle = answer.remedies.iter().filter(|remedy| !helps(remedy));
        all.extend(idle.map(|remedy| format!("it does not help: {remedy:?}")));
    }
    all.into_iter().map(|complaint| format!("{id}: {complaint}")).collect()
}

fn every_room(wanted: Wanted) -> Vec<String> {
    let rooms: Vec<Value> = serde_json::from_str(ROOMS).unwrap();
    assert_eq!(rooms.len(), 11);
    rooms.iter().flat_map(|room| complaints(room["id"].as_str().unwrap(), &plan_of(room, wanted))).collect()
}

#[test]
fn real_rooms_with_a_screen() {
    let complaints = every_room(Wanted::Watching);
    assert!(complaints.is_empty(), "{complaints:#?}");
}

#[test]
fn real_rooms_to_talk_in() {
    let complaints = every_room(Wanted::Talking);
    assert!(complaints.is_empty(), "{complaints:#?}");
}
