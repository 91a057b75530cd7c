//! The turning circle of rule 11: a free one that a disc reaches.

use elbowroom_model::{Brief, Clearance};
use serde_json::Value;

use super::disc::{Gate, Target, travels};
use super::plane::{P, to_shape, within};
use super::room::Ground;
use super::stand::Stand;
use super::walking::{bare, entrances, item_mouth};

/// Whether a free circle can be found that a disc as wide as a walkway reaches: its centre is tried every 50 mm.
pub(crate) fn turning(brief: &Brief, ground: &Ground, stands: &[Stand<'_>]) -> Option<String> {
    const GRID: f64 = 50.0;
    let diameter = brief.rules.turning_circle()?;
    let stays = |stand: &&Stand<'_>| stand.is_in_the_way() && !stand.moves_aside();
    let mut shapes = bare(brief, ground);
    shapes.extend(stands.iter().filter(stays).flat_map(Stand::parts));
    let (x, y) = ([1.0, 0.0], [0.0, 1.0]);
    let (across, up) = (super::plane::extent(&ground.outline, x), super::plane::extent(&ground.outline, y));
    let steps = |(from, to): (f64, f64)| (0..((to - from) / GRID) as usize).map(move |i| from + GRID * i as f64);
    let free = |p: &P| {
        // A place on the grid may lie off the best one.
        let enough = diameter / 2.0 - GRID;
        within(*p, &ground.outline) && shapes.iter().all(|shape| to_shape(*p, shape) >= enough)
    };
    let mut places = steps(across).flat_map(|x| steps(up).map(move |y| [x, y])).filter(free).peekable();
    if places.peek().is_none() {
        return Some("11 turning_circle: none is free".to_owned());
    }
    let doors: Vec<Gate> = entrances(brief)
        .map(|door| item_mouth(brief, ground, door).widened(brief.rules.get(Clearance::Walkway), None))
        .collect();
    let disc = (brief.rules.get(Clearance::Walkway) - 2.0 * GRID).min(diameter - 2.0 * GRID);
    let reached = |p: P| doors.is_empty() || doors.iter().any(|door| travels(&shapes, door, &Target::Place(p), disc));
    (!places.step_by(7).any(reached)).then(|| "11 turning_circle: none is reached".to_owned())
}

/// The circle that is told: as large as asked for, free, and reached.
pub(crate) fn told_circle(brief: &Brief, ground: &Ground, stands: &[Stand<'_>], told: &Value) -> Option<String> {
    const ROUNDED: f64 = 0.51;
    // The widths of ways are told within 5 mm.
    const TRAVELS_WITHIN: f64 = 5.0;
    let Some(diameter) = brief.rules.turning_circle() else {
        return (!told.is_null()).then(|| "turning_circle is told, and none is asked for".to_owned());
    };
    let figure = |value: &Value| value.as_f64().unwrap_or(f64::NAN);
    let centre = [figure(&told["centre"][0]), figure(&told["centre"][1])];
    if ![1.0, -1.0].iter().all(|sign| sign * (figure(&told["diameter"]) - diameter) < ROUNDED) {
        return Some(format!("turning_circle is not told at {diameter}: {told}"));
    }
    let stays = |stand: &&Stand<'_>| stand.is_in_the_way() && !stand.moves_aside();
    let mut shapes = bare(brief, ground);
    shapes.extend(stands.iter().filter(stays).flat_map(Stand::parts));
    let free = shapes.iter().map(|shape| to_shape(centre, shape)).fold(f64::INFINITY, f64::min);
    if !within(centre, &ground.outline) || free < diameter / 2.0 - ROUNDED {
        return Some(format!("the turning_circle that is told has {free:.1} about its centre"));
    }
    let walkway = brief.rules.get(Clearance::Walkway);
    let doors: Vec<Gate> =
        entrances(brief).map(|door| item_mouth(brief, ground, door).widened(walkway, None)).collect();
    let disc = walkway.min(diameter) - TRAVELS_WITHIN;
    let reached = doors.is_empty() || doors.iter().any(|door| travels(&shapes, door, &Target::Place(centre), disc));
    (!reached).then(|| "the turning_circle that is told is not reached".to_owned())
}
