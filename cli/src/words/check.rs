//! Prose of what `check` tells.

use elbowroom_model::on_plan::on_plan;
use std::fmt::Write;

use elbowroom_model::Turned;
use elbowroom_model::article::the;
use elbowroom_model::{Pair, Room, Survey};

use super::figures::area;
use crate::words::tolerance::NO_MISFIT;

/// Over the walls.
pub(crate) const WALLS: &str = "Walls, clockwise";
/// Over what the walls hold.
pub(crate) const ITEMS: &str = "On the walls (from the wall's left end, as you face it from inside)";
/// Over what stands off the walls.
pub(crate) const FIXED: &str = "Fixed";
/// Over how the survey closed.
pub(crate) const SURVEY: &str = "How the measurements close";
/// Over the wishes.
pub(crate) const WISHES: &str = "Wishes, 0 to 5";
/// Of a rule that nobody asked for.
pub(crate) const NOT_IN_FORCE: &str = "not in force";
/// Of a measurement that does not agree with the others.
pub(crate) const LIKELY_SLIP: &str = "likely a slip: measure it again";

/// Where plans aim at the most of every piece.
pub(crate) const AIMED_AT_LARGEST: &str = "Plans aim at the most of every piece, unless it says otherwise.";
/// Of a piece whose usual sizes plans aim at.
pub(crate) const AIMED_AT_USUAL: &str = "aimed at: what is usual";
/// Of a piece whose most plans aim at.
pub(crate) const AIMED_AT_ITS_MOST: &str = "aimed at: its most";

/// Of a piece with sizes that plans aim at.
pub(crate) fn aimed_at(sizes: &str) -> String {
    format!("aimed at: {sizes}")
}

/// Of a U with two returns alike.
pub(crate) const TWO_RETURNS: &str = "two returns alike";

/// Of two sofas that are to stand to each other so.
pub(crate) const fn paired(pair: Pair) -> Option<&'static str> {
    match pair {
        Pair::Either => None,
        Pair::Facing => Some("the two facing each other"),
        Pair::Corner => Some("the two at a right angle"),
    }
}

/// A screen that is wider than the piece that carries it may be.
pub(crate) fn wider_than_its_piece(width: &str) -> String {
    format!("which is {width} wide, wider than its piece may be")
}

/// Of a chair that stands turned, or may.
pub(crate) fn may_turn(turned: Turned) -> Option<String> {
    match turned {
        Turned::No => None,
        Turned::Yes => Some("turned toward the others".to_owned()),
        Turned::Either => Some("may be turned toward the others".to_owned()),
    }
}

/// Of a piece that stands at a wall.
pub(crate) fn stands_at_wall(wall: &str, from: &str, off: &str, held: bool) -> String {
    let from = format!("{from} from the left end of {}, {off} off it", the(wall));
    format!("stands {from}{}", stays(held))
}

/// Of a piece that stands anywhere.
pub(crate) fn stands_at_place(at: &str, facing: f64, held: bool) -> String {
    format!("stands with the middle of its back at {at}, facing {}{}", degrees(facing), stays(held))
}

const fn stays(held: bool) -> &'static str {
    if held { ", and stays there" } else { "" }
}

/// Of a piece that others may stand in for.
pub(crate) fn stand_ins(stand_ins: &[String]) -> String {
    format!("where a stock has none, {}", stand_ins.join(" or "))
}

/// Of a piece of a group of its own.
pub(crate) fn of_group(group: &str) -> String {
    format!("of the group `{group}`")
}

/// Of a wall at which some kinds must not stand.
pub(crate) fn kept_free(kinds: &str) -> String {
    format!("kept free of: {kinds}")
}

/// Of a wall toward which the ceiling falls.
pub(crate) fn falls([from, over, to]: &[String; 3]) -> String {
    format!("the ceiling falls from {from}, {over} out, to {to}")
}

/// Of a step in the floor.
pub(crate) fn step(name: &str, ends: &[String], height: Option<&str>) -> String {
    let height = height.map_or_else(String::new, |height| format!(", {height} high"));
    format!("{name}: a step{height}, line {}; nothing stands across it", ends.join(" to "))
}

/// Of a fixed thing that is used.
pub(crate) fn used(depth: &str) -> String {
    format!("used, {depth} of floor before it")
}

/// How far a leaf opens.
pub(crate) fn opens_to(angle: f64) -> String {
    format!("opens to {}", degrees(angle))
}

/// Over the pieces.
pub(crate) fn pieces(unit: &str) -> String {
    format!("Pieces, {unit}: least / usual / most")
}

/// Over the rules.
pub(crate) fn rules(profile: &str) -> String {
    format!("Rules in force (profile {profile})")
}

/// An angle.
pub(crate) fn degrees(angle: f64) -> String {
    let tenths = (angle * 10.0).round() / 10.0;
    format!("{tenths} deg")
}

/// The way one looks along when facing a wall.
pub(crate) fn bearing(bearing: f64) -> String {
    format!("facing it you look toward {}", degrees(bearing))
}

/// What was read, in short.
pub(crate) fn room_read(file: &str, room: &Room, tape: impl Fn(f64) -> String) -> String {
    let girth = room.walls.iter().map(elbowroom_model::Wall::length).sum();
    let mut text = format!(
        "{file}: {}, total wall length {}, measured within {}",
        area(room.area() / 1e6),
        tape(girth),
        tape(room.measured_within)
    );
    if let Some(ceiling) = room.ceiling {
        let _ = write!(text, ", ceiling {}", tape(ceiling));
    }
    if let Some(latitude) = room.latitude {
        let _ = write!(text, ", latitude {latitude}");
    }
    text
}

/// How the survey closed.
pub(crate) fn closure(survey: &Survey, tape: impl Fn(f64) -> String) -> String {
    let mut text = match survey.misclosure {
        Some(miss) if survey.spread => format!(
            "The walls miss closing by {} ({}); that was spread over them in \
             proportion to their lengths.",
            tape(miss.norm()),
            on_plan(miss, &tape)
        ),
        Some(_) => "The walls close.".to_owned(),
        None if !survey.residuals.is_empty() => {
            "The outline is the least-squares fit of all that was measured.".to_owned()
        }
        None => "The walls are given by coordinates: there is nothing to close.".to_owned(),
    };
    if survey.corner_misfit.abs() > NO_MISFIT {
        let _ = write!(text, " The corners missed their sum by {}; spread evenly.", degrees(survey.corner_misfit));
    }
    text
}

/// Over the way in.
pub(crate) fn way(unit: &str) -> String {
    format!("The way in, {unit}, from the street on")
}

/// Where the way is narrowest and lowest, and how much less each measure counts.
pub(crate) fn narrowest(at: &str, width: &str, lowest: Option<(&str, &str)>, within: Option<&str>) -> String {
    let lowest = lowest.map_or_else(String::new, |(at, height)| format!("; lowest {at}, {height}"));
    let within = within.map_or_else(String::new, |within| format!(" Each measure counts as {within} less."));
    format!("Narrowest {at}, {width}{lowest}.{within}")
}

/// Of a piece that passes everywhere.
pub(crate) fn gets_in(fixed: bool, rolled: bool) -> String {
    match (rolled, fixed) {
        (true, _) => "comes rolled, and is not checked",
        (false, true) => "gets in",
        (false, false) => "gets in at its most",
    }
    .to_owned()
}

/// Of a piece that does not pass everywhere.
pub(crate) fn does_not_get_in(misses: &str, fixed: bool, most: Option<&str>) -> String {
    match (fixed, most) {
        (true, _) => format!("does not get in: {misses}"),
        (false, Some(most)) => format!("at its most {misses}; up to {most} gets in"),
        (false, None) => format!("not even its least gets in; at its most {misses}"),
    }
}
