//! Prose of plans.

use elbowroom_model::Brief;
use elbowroom_model::article::the;
use elbowroom_solver::answer::RankedOption;
use elbowroom_solver::judge::JudgedRoom;
use elbowroom_solver::routes::Route;

use super::answer;

/// Over the sizes.
pub(crate) fn sizes(unit: &str) -> String {
    format!("Sizes as planned and drawn, {unit}")
}

/// The same, of the room as it stands.
pub(crate) fn sizes_as_they_stand(unit: &str) -> String {
    format!("Sizes as they stand, {unit}")
}

/// Over the ways.
pub(crate) fn ways(unit: &str) -> String {
    format!("Ways, {unit}: width, and what is needed")
}

/// Over what each sign means.
pub(crate) const SIGNS: &str = "Signs";
/// Over what the numbers on the plan stand for.
pub(crate) const NUMBERS: &str = "Numbers on the plan";
/// Over the notices.
pub(crate) const CAUTIONS: &str = "Before you buy or build";
/// Sign: a leaf.
pub(crate) const SWING: &str = "door leaf and its swing";
/// Of the line from which on the ceiling falls toward a wall.
pub(crate) fn ceiling_falls(from: &str, to: &str) -> String {
    format!("ceiling falls, {from} to {to}")
}

/// Sign: a landing.
pub(crate) const LANDING: &str = "landing, kept free";
/// Sign: a zone.
pub(crate) const KEEP_CLEAR: &str = "kept clear of heat or fire";
/// Sign: a way.
pub(crate) const WAY: &str = "way, by its letter";
/// Sign: a pinch.
pub(crate) const PINCH: &str = "where that way is narrowest";
/// Sign: a line of sight.
pub(crate) const SIGHT: &str = "sight line, seat to liked window";
/// Sign: the circle that a wheelchair turns in.
pub(crate) const TURN: &str = "room to turn a wheelchair";
/// Sign: a gap.
pub(crate) const GAP: &str = "clear gap";
/// Sign: a socket.
pub(crate) const SOCKET: &str = "socket";
/// Sign: where something breaks a rule.
pub(crate) const BROKEN: &str = "breaks a rule, by its number";
/// Sign: a seat place.
pub(crate) const SEAT: &str = "seat place, and the way it faces";
/// Under the line that tells whether a printer kept to the size.
pub(crate) const CHECK_LINE: &str = "100 mm on paper: measure it; print at actual size";
/// At the arrow.
pub(crate) const NORTH: &str = "N";
/// Of wall thicknesses, which nobody measured.
pub(crate) const WALLS: &str = "Inside faces of walls are as measured; their thickness is not.";

/// Which option of how many.
pub(crate) fn option(option: &RankedOption, of: usize) -> String {
    format!("Option {} of {of}", option.rank)
}

/// The room as it stands, and how much of it is broken.
pub(crate) fn as_it_stands(broken: usize) -> String {
    format!("As it stands: {}", super::judge::how_many(broken))
}

/// Broken things that no sheet has room for.
pub(crate) fn more_broken(more: usize) -> String {
    format!("and {more} more, which `elbowroom judge` tells")
}

/// Room and option over the answer.
pub(crate) fn headed(room: &str, which: &str) -> String {
    format!("{room}. {which}")
}

/// The answer in one line: what stands where, and how large the main seat may be.
pub(crate) fn answer(title: &str, most: Option<&str>) -> String {
    most.map_or_else(|| title.to_owned(), |most| format!("{title}; {most}"))
}

/// How large a piece is planned, and how large it may be beside the others as planned; once where that is the same: it may be
/// owned, or give way to what another plan would hold smaller.
pub(crate) fn at_most(name: &str, planned: &str, most: &str, unit: &str) -> String {
    if planned == most {
        return format!("{name} {planned} {unit}");
    }
    format!("{name} {planned}, room for up to {most} {unit}")
}

/// The size of what is round, by its diameter.
pub(crate) fn across(diameter: &str) -> String {
    format!("\u{2300} {diameter}")
}

/// Where a corner of a piece stands: how far square out from each of two walls.
pub(crate) fn from_walls(told: [(&str, &str); 2]) -> String {
    let [one, other] = told.map(|(wall, out)| match out {
        "0" => format!("against {}", the(wall)),
        out => format!("{out} from {}", the(wall)),
    });
    format!("{one}, {other}")
}

/// A piece at the largest that fits beside the others.
pub(crate) fn largest(name: &str, size: &str) -> String {
    format!("{name} up to {size}")
}

/// Sign: where a piece stands.
pub(crate) const FROM_WALLS: &str = "to set out, from the walls";
/// Where a way ends before what one steps into.
pub(crate) const STEP_IN: &str = "step in here";

/// A clearance that matters.
pub(crate) fn clear_between(from: &str, to: &str, clear: &str) -> String {
    format!("{clear} between {} and {}", the(from), the(to))
}

/// The narrowest place of a way, between what stands along it.
pub(crate) fn narrowest_place([one, other]: [&str; 2], [from, to]: [&str; 2], width: &str) -> String {
    let way = format!("where the way from {} to {} is narrowest", the(from), the(to));
    format!("{}, {way}", clear_between(one, other, width))
}

/// A doorway that is narrower than all inside.
pub(crate) fn narrowest_doorway(door: &str, width: &str) -> String {
    format!("{width} in the doorway: {} is the narrowest place of the ways", the(door))
}

/// From the sweep of a leaf to a piece.
pub(crate) fn leaf_to(door: &str, piece: &str, clear: &str) -> String {
    format!("{clear} from the swing of {} to {}", the(door), the(piece))
}

/// What the drawing is, with room to write a date.
pub(crate) fn imprint(scale: &str) -> String {
    format!("{scale}. elbowroom {}. Date: ____________", env!("CARGO_PKG_VERSION"))
}

/// Scale, paper, unit.
pub(crate) fn scale(scale: &str, paper: &str, unit: &str) -> String {
    let unit = if unit == "in" { "feet and inches, pieces in inches" } else { unit };
    format!("Scale {scale} on {paper}, lengths in {unit}")
}

/// A way: its letter, its ends, its figures.
pub(crate) fn way(brief: &Brief, letter: &str, route: &Route, width: &str, needs: &str) -> String {
    format!("{letter}  {} to {}: {width} ({needs})", route.from.name(brief), route.to.name(brief))
}

/// The same of a way at whose end one steps in past a table.
pub(crate) fn way_that_steps_in(way: &str) -> String {
    format!("{way}, then step in past the table")
}

/// What the drawing is, for whoever cannot see it.
pub(crate) fn title(brief: &Brief, option: &RankedOption) -> String {
    format!("Plan of {}, option {}: {}", brief.room.name, option.rank, answer::title(brief, option))
}

/// The same of the room as it stands.
pub(crate) fn title_as_it_stands(room: &JudgedRoom) -> String {
    format!("Plan of {}, as it stands: {}", room.brief.room.name, answer::title(&room.brief, room))
}

/// What it shows, for whoever cannot see it.
pub(crate) fn description(sizes: &[String], ways: &[String]) -> String {
    format!("Pieces: {}. Ways: {}.", sizes.join("; "), ways.join("; "))
}

/// Between the dimensions of a size.
pub(crate) const TIMES: &str = " \u{d7} ";

/// A number and what it stands for.
pub(crate) fn numbered(number: usize, words: &str) -> String {
    format!("{number}  {words}")
}

/// A door, a window or an opening, with its width.
pub(crate) fn opening(name: &str, width: &str) -> String {
    format!("{name} {width}")
}

/// The circle that a wheelchair turns in, with its diameter.
pub(crate) fn turning(diameter: &str) -> String {
    format!("turning circle {diameter}")
}

/// A window that is worth facing.
pub(crate) fn liked(name: &str, width: &str) -> String {
    format!("{name} {width}, liked view")
}

/// A piece with its size, and how it is turned.
pub(crate) fn sized(name: &str, size: &str, turned: Option<String>) -> String {
    let turned = turned.map(|turned| format!(", {turned}"));
    format!("{name}  {size}{}", turned.unwrap_or_default())
}

#[cfg(test)]
mod tests {
    use super::from_walls;

    #[test]
    fn a_corner_is_told_by_how_far_it_is_from_two_walls() {
        let told = from_walls([("east wall", "6"), ("garden wall", "106")]);
        assert_eq!(told, "6 from the east wall, 106 from the garden wall");
        let told = from_walls([("east wall", "0"), ("garden wall", "106")]);
        assert_eq!(told, "against the east wall, 106 from the garden wall");
    }
}
