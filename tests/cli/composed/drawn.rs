//! Ordinary rooms, drawn: a door, a window, often a second doorway, now and then a fire, a radiator or a corner.
//!
//! Each number is one room, always the same: what is hard about it is drawn too.

use elbowroom_model::scenario;

use super::briefs::Furnishing;
use crate::support::plan::{At, Plan, Side, What};
use crate::support::varied::Draw;

/// Where the numbers of the rooms start: far from those that other suites draw from.
const SEED: u64 = 7_000_000;
/// A jamb is so far from a corner, at least, mm.
const JAMB: f64 = 100.0;

/// So many sound rooms, with their names; a room in which neither furnishing is a sound file is drawn anew.
pub(super) fn rooms(count: usize) -> Vec<(String, Plan)> {
    let drawn = (0..).map(|number: u64| (format!("d{number:03}"), room(&mut Draw(SEED + number))));
    let is_sound = |plan: &Plan| scenario::read(&Furnishing::Sofa.in_plan(plan.clone()).text(), None).is_ok();
    drawn.filter(|(_, plan)| is_sound(plan)).take(count).collect()
}

fn room(draw: &mut Draw) -> Plan {
    let mut plan = Plan::of(&outline(draw));
    plan.measured_within = 5.0;
    plan.wishes.push(("view", 4.0));
    let mut free: Vec<usize> = (0..plan.walls.len()).filter(|wall| plan.length(*wall) > 1500.0).collect();
    let hinge = if draw.one_in(2) { Side::Left } else { Side::Right };
    plan =
        on_a_wall(plan, draw, &mut free, "hall door", 830.0, What::Door { hinge: Some(hinge), leads_to: "entrance" });
    plan = lit(plan, draw, &mut free);
    plan = match draw.from(0, 9) {
        0..4 => {
            let door = What::Door { hinge: None, leads_to: "kitchen" };
            on_a_wall(plan, draw, &mut free, "kitchen door", 830.0, door)
        }
        4..6 => {
            let opening = What::Opening { leads_to: "dining", stance: "open" };
            on_a_wall(plan, draw, &mut free, "dining opening", 1600.0, opening)
        }
        _ => plan,
    };
    if draw.from(0, 9) < 3 {
        let stove = What::Fireplace { depth: 350.0, keep_clear: 600.0 };
        plan = on_a_wall(plan, draw, &mut free, "stove", 1300.0, stove);
    }
    plan
}

/// A rectangle; every fifth time with a corner taken out of it.
fn outline(draw: &mut Draw) -> Vec<At> {
    let (w, d) = (length(draw, 3300, 6500), length(draw, 3000, 5500));
    if !draw.one_in(5) {
        return vec![(0.0, 0.0), (w, 0.0), (w, -d), (0.0, -d)];
    }
    let (cut_w, cut_d) = (length(draw, 600, 1500), length(draw, 600, 1500));
    vec![(0.0, 0.0), (w, 0.0), (w, -d + cut_d), (w - cut_w, -d + cut_d), (w - cut_w, -d), (0.0, -d)]
}

/// In steps of 50 mm.
fn length(draw: &mut Draw, least: u64, most: u64) -> f64 {
    draw.from(least / 50, most / 50) as f64 * 50.0
}

/// A window, every third time with a radiator under it.
fn lit(plan: Plan, draw: &mut Draw, free: &mut Vec<usize>) -> Plan {
    let width = length(draw, 1000, 2400);
    let sill = if draw.one_in(2) { 450.0 } else { 900.0 };
    let window = What::Window { sill, head: 2100.0, view: "liked", must_reach: false };
    let before: Vec<usize> = free.clone();
    let plan = on_a_wall(plan, draw, free, "bay", width, window);
    let wall = before.into_iter().find(|wall| !free.contains(wall));
    let bay = wall.and_then(|wall| Some((wall, plan.walls[wall].holds.last()?.clone())));
    match bay {
        Some((wall, bay)) if draw.one_in(3) => {
            plan.hold(wall, "radiator", bay.at, bay.width, What::Radiator { depth: 100.0, keep_clear: 100.0 })
        }
        _ => plan,
    }
}

/// The plan with something on a wall of its own, as wide as asked or as the wall lets it be; the plan as it is where no
/// wall is left.
fn on_a_wall(plan: Plan, draw: &mut Draw, free: &mut Vec<usize>, name: &str, width: f64, what: What) -> Plan {
    if free.is_empty() {
        return plan;
    }
    let wall = free.remove(draw.from(0, free.len() as u64 - 1) as usize);
    let room = plan.length(wall) - 2.0 * JAMB;
    let width = width.min(room - 2.0 * JAMB);
    let at = JAMB + draw.from(0, ((room - width) / 10.0) as u64) as f64 * 10.0;
    plan.hold(wall, name, at, width, what)
}
