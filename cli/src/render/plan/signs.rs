//! Small signs that the plan and its key share.

use elbowroom_model::Point;

use super::figure::Figure;
use crate::drawing::{At, Dash, Fill, Mark, Path, Pen, Step, Tone, hand};

/// The line of a way.
pub(super) const WAY: Pen = Pen::of(hand::OUTLINES, Tone::Blue).broken(Dash::Dashed);
/// A line of sight.
pub(super) const SIGHT: Pen = Pen::of(hand::FITTINGS, Tone::Green).broken(Dash::Chain);
/// The circle that a wheelchair turns in: the only dotted line.
pub(super) const TURN: Pen = Pen::of(hand::WALLS, Tone::Ink).broken(Dash::Dotted);
/// The line between what breaks a rule and what it is broken against: heavier than all others, since it is what a sheet of a room
/// as it stands is drawn for.
const BROKEN: Pen = Pen::of(0.8, Tone::Vermilion);
/// The line of a pinch.
pub(super) const PINCH: Pen = Pen::of(hand::OUTLINES, Tone::Vermilion);

/// A socket on a wall at `place`, drawn `into` the room.
pub(super) fn socket(figure: &mut Figure<'_>, place: Point, into: At, radius: f64) {
    let at = figure.frame.at(place);
    figure.put(half_disc(at, into, radius));
}

/// Half a disc, its flat side at `at`, round toward `into`.
pub(super) fn half_disc(at: At, into: At, radius: f64) -> Path {
    let side = into.right() * radius;
    let steps = vec![Step::Move(at + side), Step::Arc { radius, clockwise: false, to: at - side }, Step::Close];
    Path { steps, pen: None, fill: Fill::Tone(Tone::Ink) }
}

/// A seat place: a ring with a stroke the way it faces.
pub(super) fn seat(at: At, facing: At) -> [Mark; 2] {
    const RADIUS: f64 = 0.9;
    let ring = Path::circle(at, RADIUS, Some(Pen::ink(hand::FITTINGS)), Fill::Tone(Tone::Paper));
    let stroke = Path::line([at + facing * RADIUS, at + facing * (RADIUS + 1.3)], Pen::ink(hand::OUTLINES));
    [ring.into(), stroke.into()]
}

/// The circle that a wheelchair turns in, with a cross at its centre.
pub(super) fn turning(centre: At, radius: f64) -> Vec<Mark> {
    let arm = (radius * 0.3).min(1.5);
    let across = [At::new(arm, 0.0), At::new(0.0, arm)]
        .map(|arm| Path::line([centre - arm, centre + arm], Pen::ink(hand::FITTINGS)));
    std::iter::once(Path::circle(centre, radius, Some(TURN), Fill::None)).chain(across).map(Mark::from).collect()
}

/// What breaks a rule: a thick line with a dot at each end; one dot where both ends are one place.
pub(super) fn broken([from, to]: [At; 2]) -> Vec<Mark> {
    let dot = |at: At| Path::circle(at, 0.9, None, Fill::Tone(Tone::Vermilion)).into();
    vec![Path::line([from, to], BROKEN).into(), dot(from), dot(to)]
}

/// A pinch: a line with a full arrow head at each end.
pub(super) fn pinch([from, to]: [At; 2]) -> Vec<Mark> {
    let way = (to - from).unit();
    let length = (to - from).length();
    let head = (length / 3.0).min(1.8);
    let arrow = |tip: At, back: At| {
        let foot = tip + back * head;
        let side = back.right() * (head * 0.4);
        Path::ring([tip, foot + side, foot - side], None, Fill::Tone(Tone::Vermilion))
    };
    vec![Path::line([from, to], PINCH).into(), arrow(from, way).into(), arrow(to, way * -1.0).into()]
}
