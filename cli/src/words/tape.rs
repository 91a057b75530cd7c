//! Prose of the tape sheet.

use elbowroom_model::Brief;
use elbowroom_model::article::the;
use elbowroom_solver::answer::RankedOption;

use super::answer;
use super::figures::counted;

/// Over what to have at hand.
pub(crate) const READY: &str = "Have ready";
/// What to have at hand beside tape.
pub(crate) const TOOLS: [&str; 4] = [
    "A tape measure that reaches across the room, and somebody for its other end.",
    "A true corner: a builder's square, or a large sheet of card. Set it against the wall for every length out from it; \
     over more than an arm's length trust the square check of the piece, not the eye.",
    "Pencil and scissors; boxes, a broom and a sheet to stand in for heights.",
    "The floor cleared. Try the tape where nobody looks first: it must come off without taking the finish with it.",
];
/// Over the points.
pub(crate) const POINTS: &str = "Points to measure from";
/// Over the distances that are checked first.
pub(crate) const CHECK: &str = "Check the room first";
/// Over from where to where.
pub(crate) const FROM_TO: &str = "from, to";
/// Of a distance across the room.
pub(crate) const DIAGONAL: &str = "diagonal";
/// Over the strokes.
pub(crate) const STROKES: &str = "Tape lines, in this order";
/// How strokes are told.
pub(crate) const ORDER: &str = "Mark all corners of a piece, try its square check, then lay its strips. Corner 1 is its back left as you stand before it and face \
                                its back; the others follow clockwise, seen from above. Lengths along a wall all run from the \
                                one point that is named, so that no error adds to the next.";
/// Over a corner.
pub(crate) const CORNER: &str = "corner";
/// Over the length along a wall.
pub(crate) const ALONG: &str = "along";
/// Over the length out from a wall.
pub(crate) const OUT: &str = "out";
/// Over the angle at which two lengths cross.
pub(crate) const CROSSING: &str = "crossing at";
/// Over a strip's corners.
pub(crate) const STRIP: &str = "strip";
/// Over a strip's length between corners.
pub(crate) const STROKE: &str = "long";
/// Over a strip's length to cut.
pub(crate) const CUT: &str = "cut";
/// Of lengths that cross sharply.
pub(crate) const SHARP: &str =
    "Two of these lengths cross at a sharp angle: a millimetre moves the mark by more. Take them twice.";
/// Over the circle that a wheelchair turns in.
pub(crate) const CIRCLE: &str = "Circle to turn a wheelchair in";
/// Its middle.
pub(crate) const CENTRE: &str = "centre";
/// Over cautions.
pub(crate) const CAUTIONS: &str = "Cautions and notices";
/// Cautions of laying out.
pub(crate) const CAUTIONS_OF_TAPE: [&str; 3] = [
    "Keep stacks low and steady, away from children, and nothing before a door that is a way out, not even for the test.",
    "Keep paper, card and boxes 3 ft (91 cm) from heaters and fires (CPSC, NFPA), and turn them off while you lay out.",
    "Take the tape up within the days that its maker names.",
];

/// Over the sheet.
pub(crate) fn title(room: &str) -> String {
    format!("Tape sheet: {room}")
}

/// The option that is laid out.
pub(crate) fn option(brief: &Brief, option: &RankedOption, options: usize) -> String {
    format!("Option {} of {options}: {}", option.rank, answer::title(brief, option))
}

/// What lengths are told in.
pub(crate) fn units(unit: &str) -> String {
    let (whole, step) = match unit {
        "mm" => ("millimetres", "a millimetre"),
        "m" => ("metres", "a millimetre"),
        "in" => ("inches", "an eighth of an inch"),
        _ => ("centimetres", "a millimetre"),
    };
    format!(
        "Lengths in {whole} ({unit}), to {step}. Full size, on the floor, with low-tack tape, before anything is bought."
    )
}

/// What tape to have.
pub(crate) fn tape(total: &str, rolls: usize, roll: &str, overlap: &str) -> String {
    let rolls = counted(rolls, "roll", "rolls");
    format!(
        "Low-tack tape, {total} in all: {rolls} of {roll}. Each strip is cut {overlap} longer than its line and rounded up, \
         so that strips cross at the corners."
    )
}

/// A point's name: A to Z, then AA, AB, ...
pub(crate) fn letter(place: usize) -> String {
    let one = |place: usize| char::from(b'A' + u8::try_from(place % 26).unwrap_or(0));
    match place / 26 {
        0 => one(place).to_string(),
        round => format!("{}{}", one(round - 1), one(place)),
    }
}

/// A corner of the room.
pub(crate) fn corner(ends: &str, starts: &str) -> String {
    format!("the corner between {} and {}", the(ends), the(starts))
}

/// A jamb.
pub(crate) fn jamb(item: &str, left: bool, along: &str, from: &str, wall: &str) -> String {
    let side = if left { "left" } else { "right" };
    format!("the {side} jamb of {} as you face it: {along} from {from} along {}", the(item), the(wall))
}

/// Two points.
pub(crate) fn pair(from: usize, to: usize) -> String {
    format!("{} to {}", letter(from), letter(to))
}

/// What the diagonals say.
pub(crate) fn squareness(diagonals: &[f64], walls: usize, within: &str, tape: impl Fn(f64) -> String) -> String {
    let off = format!(
        "Where a length differs from this sheet by more than {within} the room is not the one that was measured: measure it \
         again before you mark anything."
    );
    match diagonals {
        _ if walls != 4 => off,
        [one, other] if (one - other).abs() < 0.5 => format!("Both diagonals are alike: the room is square. {off}"),
        [one, other] => {
            format!("The diagonals differ by {}: the room is out of square. {off}", tape((one - other).abs()))
        }
        _ => off,
    }
}

/// Over a piece.
pub(crate) fn piece(place: usize, name: &str) -> String {
    format!("{place}. {name}")
}

/// What to write beside the outline.
pub(crate) fn label(name: &str, size: &str) -> String {
    format!("Write on a strip inside it: {name}, {size}.")
}

/// Before corners by lengths along a wall.
pub(crate) fn along(from: usize, wall: &str) -> String {
    format!("From {} along {}, then square out from it:", letter(from), the(wall))
}

/// Over lengths from a point.
pub(crate) fn from(point: usize) -> String {
    format!("from {}", letter(point))
}

/// Before corners where two lengths cross.
pub(crate) fn crossing(first: usize, second: usize, left: bool) -> String {
    let (first, second) = (letter(first), letter(second));
    let side = if left { "left" } else { "right" };
    format!(
        "Where two lengths cross, from {first} and from {second}, on your {side} as you stand at {first} and look to {second}:"
    )
}

/// An angle.
pub(crate) fn angle(degrees: f64) -> String {
    format!("{degrees:.0} deg")
}

/// A corner's number, from its place.
pub(crate) fn number(place: usize) -> String {
    (place + 1).to_string()
}

/// What the small plan shows.
pub(crate) fn plan(numbers: &[String]) -> String {
    let plan = "Letters are points to measure from, small figures the corners of each piece. Not to scale: measure nothing on it.";
    if numbers.is_empty() { plan.to_owned() } else { format!("{plan} {}.", numbers.join("; ")) }
}

/// What the drawing of a piece shows.
pub(crate) const DIAGRAM: &str = "The room with this piece alone: its corners by their numbers, the points by their letters, and the way of \
                                  the tape to each corner.";

/// Over the drawing of a piece.
pub(crate) fn diagram(piece: &str) -> String {
    format!("Corners of {piece}")
}

/// A number on the small plan and what it stands for.
pub(crate) fn numbered(number: usize, text: &str) -> String {
    format!("{number} in a ring: {text}")
}

/// A strip by its corners.
pub(crate) fn strip(from: usize, to: usize) -> String {
    format!("{from}-{to}")
}

/// Two corners and how far apart they are.
pub(crate) fn check(one: usize, other: usize, length: &str) -> String {
    format!("{one} to {other} is {length}")
}

/// When a piece is square.
pub(crate) fn checks(checks: &[String]) -> String {
    format!("Square when {}.", checks.join(" and "))
}

/// What stands in for what lies flat.
pub(crate) fn flat() -> String {
    "It lies flat: spread a sheet.".to_owned()
}

/// What stands in for floor that stays open.
pub(crate) const OPEN_FLOOR: &str = "It is floor that stays open: tape its outline and put nothing in it.";

/// What stands in for a back.
pub(crate) fn back(height: &str, both: bool, returns: usize) -> String {
    let along = match (returns, both) {
        (0, _) => "along its back, from corner 1 to 2",
        (1, true) => "along both its backs",
        (1, false) => "along the back of the main run (the return has none)",
        (_, true) => "along all its backs",
        (_, false) => "along the backs of the main run and of the second return (the chaise has none)",
    };
    format!("For its height, boxes {along}, stacked to {height}.")
}

/// What stands in for a table or a chest.
pub(crate) fn block(height: &str, screen: Option<(String, String)>) -> String {
    let screen = screen.map_or_else(String::new, |(width, height)| {
        format!(" On it, a sheet of card of {width} x {height} for the screen.")
    });
    format!("For its height, boxes within it, stacked to {height}.{screen}")
}

/// What stands in for what is tall.
pub(crate) fn upright(height: &str) -> String {
    format!(
        "For its height, somebody holds a broom upright at its front corners, marked at {height}: stack nothing so high."
    )
}

/// How large the circle is, and what may stand in it.
pub(crate) fn circle(diameter: &str) -> String {
    format!("It is {diameter} across. Nothing stands in it but a coffee table, which can be moved, and a rug.")
}

/// How the circle is marked.
pub(crate) fn round(radius: &str, strips: usize, length: &str) -> String {
    format!(
        "Hold the tape's end on the centre, or a string of {radius}, and lay {strips} strips of {length} square across its other \
         end, evenly all round."
    )
}
