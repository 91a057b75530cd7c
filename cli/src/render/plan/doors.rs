//! Doorways: the leaf square to the wall with the quarter circle of its own length, the way drawings of buildings show
//! it (ISO 7519, from memory); a leaf that slides beside the wall; openings.

use elbowroom_model::{Door, Hinge, Point, Swings, WallItem};

use super::figure::Figure;
use super::frame::way;
use super::outline::THICKNESS;
use crate::drawing::{Dash, Fill, Path, Pen, Tone, hand};

/// How thick a leaf is drawn, mm.
const LEAF: f64 = 40.0;

/// In so many lines words keep off the sweep of a leaf.
const STEPS: u32 = 6;

/// A doorway with its door.
pub(super) fn door(figure: &mut Figure<'_>, item: &WallItem, door: &Door) {
    jambs(figure, item);
    match (door.swings, door.hinge) {
        (Swings::Folds, _) => folding(figure, item),
        (Swings::Slides | Swings::Pocket, _) | (_, None) => sliding(figure, item),
        (swings, Some(hinge)) => {
            hinged(figure, item, &Leaf { hinge, outward: swings == Swings::Out, opens_to: door.opens_to() })
        }
    }
}

/// A doorway with no door: both faces of the wall, broken.
pub(super) fn opening(figure: &mut Figure<'_>, item: &WallItem) {
    jambs(figure, item);
    let Some((left, right)) = figure.shown.brief().room.ends(item) else { return };
    let out = figure.outward(item) * THICKNESS;
    for shift in [Point::default(), out] {
        let line = [left + shift, right + shift].map(|at| figure.frame.at(at));
        figure.put(Path::line(line, Pen::of(hand::FITTINGS, Tone::Grey).broken(Dash::Dashed)));
    }
}

/// A leaf that swings.
struct Leaf {
    hinge: Hinge,
    outward: bool,
    /// Degrees.
    opens_to: f64,
}

fn hinged(figure: &mut Figure<'_>, item: &WallItem, leaf: &Leaf) {
    let Leaf { hinge, outward, opens_to } = *leaf;
    let Some((left, right)) = figure.shown.brief().room.ends(item) else { return };
    let out = figure.outward(item);
    let (into, face) = if outward { (out, out * THICKNESS) } else { (-out, Point::default()) };
    let (pivot, other) = match hinge {
        Hinge::Left => (left + face, right + face),
        Hinge::Right => (right + face, left + face),
    };
    let width = (other - pivot).norm();
    let along = (other - pivot).unit().unwrap_or_default();
    let square = figure.frame.at(pivot + into * width);
    let (out_to, thick) = rests(into, along, opens_to);
    let leaf = [pivot, pivot + out_to * width, pivot + out_to * width + thick * LEAF, pivot + thick * LEAF];
    let leaf = figure.frame.all(&leaf);
    let (tip, end) = (figure.frame.at(pivot + out_to * width), figure.frame.at(other));
    let radius = figure.frame.length(width);
    // On the sheet y runs down, so a turn that is clockwise there is counter-clockwise on the plan.
    let (first, second) = (way(into), way(along));
    let clockwise = first.x * second.y - first.y * second.x > 0.0;
    figure.labels.mind_ring(&leaf);
    swept(figure, pivot, [out_to, along].map(|way| way * width));
    if opens_to > 90.0 {
        figure.put(Path::arc(tip, square, radius, clockwise, Pen::ink(hand::FITTINGS)));
    }
    figure.put(Path::arc(square, end, radius, clockwise, Pen::ink(hand::FITTINGS)));
    figure.put(Path::ring(leaf, Some(Pen::ink(hand::FITTINGS)), Fill::Tone(Tone::Paper)));
}

/// Words had better keep off the line along which the end of a leaf swings: minded in short steps.
fn swept(figure: &mut Figure<'_>, pivot: Point, [from, to]: [Point; 2]) {
    let at = |step: u32| {
        let share = f64::from(step) / f64::from(STEPS);
        let way = (from * (1.0 - share) + to * share).unit().unwrap_or_default();
        figure.frame.at(pivot + way * from.norm())
    };
    for step in 0..STEPS {
        figure.labels.mind([at(step), at(step + 1)]);
    }
}

/// The way a leaf points where it rests, and the way of its thickness: square to the wall, or turned further.
fn rests(into: Point, along: Point, opens_to: f64) -> (Point, Point) {
    if opens_to <= 90.0 {
        return (into, along);
    }
    let (sine, cosine) = opens_to.to_radians().sin_cos();
    (along * cosine + into * sine, along * sine - into * cosine)
}

/// Both halves of a leaf that folds, half open.
fn folding(figure: &mut Figure<'_>, item: &WallItem) {
    let Some((left, right)) = figure.shown.brief().room.ends(item) else { return };
    let (along, into) = (right - left, -figure.outward(item));
    // Each half is as long as half the doorway: half open they make an equilateral triangle.
    let fold = left + along * 0.25 + into * (along.norm() * 0.75_f64.sqrt() / 2.0);
    let halves = [left, fold, left + along * 0.5].map(|at| figure.frame.at(at));
    figure.labels.mind_ring(&halves);
    figure.put(Path::line(halves, Pen::ink(0.35)));
}

/// A leaf half way across its doorway, just outside the wall's middle.
fn sliding(figure: &mut Figure<'_>, item: &WallItem) {
    let Some((left, right)) = figure.shown.brief().room.ends(item) else { return };
    let (half, out) = ((right - left) * 0.5, figure.outward(item));
    let near = left + half + out * (THICKNESS / 2.0 - LEAF / 2.0);
    let leaf = [near, near + half, near + half + out * LEAF, near + out * LEAF];
    let leaf = figure.frame.all(&leaf);
    figure.put(Path::ring(leaf, Some(Pen::ink(hand::FITTINGS)), Fill::Tone(Tone::Paper)));
    let track = [left, right].map(|at| figure.frame.at(at + out * (THICKNESS / 2.0)));
    figure.put(Path::line(track, Pen::of(hand::FITTINGS, Tone::Grey).broken(Dash::Dashed)));
}

/// Both sides of an opening in a wall.
fn jambs(figure: &mut Figure<'_>, item: &WallItem) {
    let Some((left, right)) = figure.shown.brief().room.ends(item) else { return };
    let out = figure.outward(item) * THICKNESS;
    for side in [left, right] {
        let line = [side, side + out].map(|at| figure.frame.at(at));
        figure.put(Path::line(line, Pen::ink(0.35)));
    }
}
