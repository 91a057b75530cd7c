//! Words of the way in.

use elbowroom_model::way_in::{LandingTurn, Way};
use elbowroom_solver::way_in::{Asks, Assumed, Pose};

use super::figures::counted;

/// Of a pose in which a piece gets in.
pub(crate) const GETS_IN: &str = "gets in";
/// Of a piece of many sizes, none of which gets in.
pub(crate) const NONE_GETS_IN: &str = "Not even its least sizes get in.";

/// A point by its place on the way.
pub(crate) fn at(way: &Way, place: usize) -> &str {
    way.points.get(place).map_or("", |point| point.name.as_str())
}

/// What is taken for granted of pieces that are carried.
pub(crate) const fn assumed(assumed: Assumed) -> &'static str {
    match assumed {
        Assumed::TwoRuns => {
            "A corner sofa is taken to come as two runs, the corner counted in both: ask whether it parts."
        }
        Assumed::RolledRugs => "Rugs are taken to come rolled, and are not checked.",
        Assumed::UsualHeights => "Where the list gives no height, what is usual for the kind is taken: measure it.",
        Assumed::UsualProfiles => {
            "Where the list gives no `arm height`, `seat height` or `back thickness`, arms 18 cm above a seat 43 cm high and a \
             back 15 cm thick at its top are taken (common practice): measure them."
        }
    }
}

/// The head of the page.
pub(crate) fn summary(name: &str, points: usize, unit: &str) -> String {
    format!("The way in, {name}: {}, from the street on, {unit}", counted(points, "point", "points"))
}

/// Of a piece that no door stops.
pub(crate) fn rolled(name: &str) -> String {
    format!("{name} comes rolled")
}

/// A part and whether it gets in.
pub(crate) fn verdict(name: &str, sides: &str, gets_in: bool) -> String {
    format!("{name}, {sides}: {}", if gets_in { "gets in" } else { "does not get in" })
}

/// A way to hold it.
pub(crate) const fn pose(pose: Pose) -> &'static str {
    match pose {
        Pose::Upright => "upright",
        Pose::Lying => "lying",
        Pose::OnEnd => "on end",
        Pose::Tilted => "tilted",
        Pose::EndTurned => "end turned",
    }
}

/// Of a pose in which it gets in, and how narrowly.
pub(crate) fn gets_in_with(spare: &str, at: &str) -> String {
    format!("gets in, with {spare} to spare at {at}")
}

/// Where it fails.
pub(crate) fn misses(by: &str, asks: Asks, at: &str) -> String {
    let what = match asks {
        Asks::Width => "too wide at",
        Asks::Height => "too high at",
        Asks::Turn => "too long to turn at",
        Asks::Length => "too long at",
        Asks::Headroom => "too high for the slope at",
    };
    format!("{by} {what} {at}").trim_start().to_owned()
}

/// Of a piece that gets in only by being turned over.
pub(crate) fn turned_over(poses: &[&str], tight: Option<(&str, &str)>) -> String {
    let mut told: Vec<&str> = Vec::new();
    for pose in poses {
        if told.last() != Some(pose) {
            told.push(pose);
        }
    }
    let tight = tight.map_or_else(String::new, |(spare, at)| format!(" Least to spare: {spare} at {at}."));
    format!("It gets in turned over on the way: {}.{tight}", told.join(", then "))
}

/// Of a piece that gets in without its legs alone.
pub(crate) fn legs_off(legs: &str) -> String {
    format!("Only with its legs off ({legs} lower): see first that they come off.")
}

/// Of a piece that would pass if it could be turned over.
pub(crate) fn cannot_turn_over(pose: &str, at: &str) -> String {
    format!("It would pass {at} {pose}, and there is no room to bring it into that pose on the way.")
}

/// The most that gets in.
pub(crate) fn most(width: &str, other: Option<&str>, depth: &str) -> String {
    let sizes = [Some(width), other, Some(depth)].into_iter().flatten().collect::<Vec<_>>().join(" x ");
    format!("Up to {sizes} gets in.")
}

fn under(ceiling: Option<&str>) -> String {
    ceiling.map_or_else(String::new, |ceiling| format!(", {ceiling} high"))
}

/// A doorway.
pub(crate) fn door(width: &str, height: Option<&str>, from: Option<&str>) -> String {
    let from = from.map_or_else(String::new, |from| format!(", turned into from a hall of {from}"));
    format!("door, {width} wide{}{from}", under(height))
}

/// A hall.
pub(crate) fn hall(width: &str, ceiling: Option<&str>) -> String {
    format!("hall, {width} wide{}", under(ceiling))
}

/// A turn.
pub(crate) fn turn(from: &str, to: &str, ceiling: Option<&str>) -> String {
    format!("turn from {from} into {to}{}", under(ceiling))
}

/// Stairs.
pub(crate) fn stairs(width: &str, headroom: &str, pitch: f64) -> String {
    format!("stairs, {width} wide, headroom {headroom}, {pitch:.0} degrees")
}

/// A landing.
pub(crate) fn landing(turn: LandingTurn, depth: &str, width: &str, ceiling: Option<&str>) -> String {
    let turn = match turn {
        LandingTurn::Quarter => "quarter",
        LandingTurn::Half => "half",
    };
    format!("{turn} turn on a landing {depth} deep and {width} wide{}", under(ceiling))
}

/// A lift.
pub(crate) fn lift([door, height, width, depth]: [&str; 4], ceiling: Option<&str>) -> String {
    format!("lift, door {door} x {height}, car {width} wide, {depth} deep{}", under(ceiling))
}
