//! Words of the way in.

use elbowroom_model::way_in::{LandingTurn, Way};
use elbowroom_solver::way_in::{Asks, Assumed, Legs, LookedFor, Pose};

use super::figures::counted;
use super::list::listed;

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
            "A corner sofa is taken to come apart into its runs, two or of a U three (common practice), the corner counted in \
             each that meets it: ask whether it parts."
        }
        Assumed::RolledRugs => "Rugs are taken to come rolled, and are not checked.",
        Assumed::UsualHeights => "Where the list gives no height, what is usual for the kind is taken: measure it.",
        Assumed::UsualSections => {
            "Where the list gives a seat no `arm height`, arms 20 cm above its `seat height` or 65 cm high are taken, and where it \
             gives no `back thickness`, a back 20 cm thick at its top (common practice, no source): measure them."
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

/// How it is held from point to point, what is the same told once.
fn in_turn(poses: &[&str]) -> String {
    let mut told: Vec<&str> = Vec::new();
    for pose in poses {
        if told.last() != Some(pose) {
            told.push(pose);
        }
    }
    told.join(", then ")
}

/// Of a piece whose list does not say what it looks like from its end, where that decides.
pub(crate) const fn by_usual_section(gets_in: bool) -> &'static str {
    if gets_in {
        "By a usual cross-section, not by its own: as the box round it, it does not get in. Measure its arms and its back first."
    } else {
        "By a usual cross-section, not by its own: measure its arms and its back."
    }
}

/// Of a piece that gets in without its legs alone, which come off.
pub(crate) fn legs_off(legs: &str) -> String {
    format!("Only with its legs off, {legs} lower.")
}

/// What would have to come off before a piece gets in.
pub(crate) struct Off<'a> {
    /// Its legs, and how high they are.
    pub(crate) legs: Option<(Legs, &'a str)>,
    /// Doors whose leaf is lifted off.
    pub(crate) doors: &'a [String],
    /// How much wider each is then.
    pub(crate) wider: &'a str,
    /// How it is held then; of several parts nothing.
    pub(crate) poses: &'a [&'a str],
    /// Where least is left, and how much.
    pub(crate) tight: Option<(&'a str, &'a str)>,
}

/// What would have to come off before a piece gets in, and how it does then.
pub(crate) fn would(off: &Off<'_>) -> String {
    let legs = off.legs.map(|(legs, high)| match legs {
        Legs::ComeOff(_) => format!("its legs off, {high} lower"),
        Legs::Listed(_) => format!("its legs off, {high} lower, if they come off"),
        Legs::UpTo(_) => format!("{high} or more off its height, if it has legs so high that come off"),
    });
    let doors = (!off.doors.is_empty()).then(|| {
        let leaves = if off.doors.len() == 1 { "the leaf" } else { "the leaves" };
        format!("{leaves} of {} off the hinges, {} wider (common practice)", listed(off.doors), off.wider)
    });
    let off_it = [legs, doors].into_iter().flatten().collect::<Vec<_>>().join(", and ");
    let held = if off.poses.is_empty() { String::new() } else { format!(" {}", in_turn(off.poses)) };
    let tight = off.tight.map_or_else(String::new, |(spare, at)| format!(", with {spare} to spare at {at}"));
    format!("With {off_it}, it gets in{held}{tight}.")
}

/// Where nothing helps that was looked for to come off; `None` where nothing was.
pub(crate) const fn nothing_off_helps(looked_for: LookedFor) -> Option<&'static str> {
    match (looked_for.legs, looked_for.leaves) {
        (true, true) => Some("Nor with its legs or the leaves of doors off, as far as is usual."),
        (true, false) => Some("Nor with its legs off, as far as is usual."),
        (false, true) => {
            Some("Nor with the leaves of doors off, as far as is usual. Whether it comes apart is not looked into.")
        }
        (false, false) => None,
    }
}

/// Of a piece that gets in only by being turned over.
pub(crate) fn turned_over(poses: &[&str], tight: Option<(&str, &str)>) -> String {
    let told = in_turn(poses);
    let tight = tight.map_or_else(String::new, |(spare, at)| format!(" Least to spare: {spare} at {at}."));
    format!("It gets in turned over on the way: {told}.{tight}")
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
