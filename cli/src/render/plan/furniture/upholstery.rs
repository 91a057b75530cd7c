//! What one sits on: arms, backs, seat cushions, rounded corners; returns with their backs, a chaise with none.

use elbowroom_model::{Point, SeatForm};

use super::axes::Axes;
use super::pens::{OUTLINE, WITHIN, body, line};
use super::plain;
use crate::drawing::{Fill, Path, Tone};
use crate::render::plan::figure::Figure;
use crate::render::plan::shown::PieceShown;

/// Radius of the outer corners, mm.
const CORNER: f64 = 70.0;
/// Radius of the corners of a cushion, mm.
const CUSHION_CORNER: f64 = 45.0;
/// Between two cushions, half of it, mm.
const SEAM: f64 = 8.0;
/// How deep a back is, as a share of the depth, and within which lengths, mm.
const BACK: (f64, f64, f64) = (0.2, 110.0, 220.0);
/// The same of an arm, as a share of the width.
const ARM: (f64, f64, f64) = (0.12, 70.0, 170.0);
/// A cushion is about so wide where nobody says how many there are, mm.
const CUSHION: f64 = 700.0;

/// A stretch that one sits along.
struct Run {
    axes: Axes,
    facing: Point,
    has_back: bool,
    /// An arm at its left end, at its right end, as one sits.
    arms: [bool; 2],
    /// What another run takes of its left end, of its right end, mm.
    corners: [f64; 2],
}

/// What has neither arms nor back: its outline.
pub(super) fn padded(figure: &mut Figure<'_>, piece: PieceShown<'_>) {
    let ring = plain::ring(figure, piece);
    body(figure, piece);
    let radius = figure.frame.length(CORNER);
    figure.put(Path::rounded(&ring, radius, Some(OUTLINE), Fill::Tone(Tone::Seat)));
}

/// The outline, then each run.
pub(super) fn draw(figure: &mut Figure<'_>, piece: PieceShown<'_>) {
    padded(figure, piece);
    for run in runs(piece) {
        frame_of(figure, &run, piece);
        cushions(figure, &run, piece);
    }
}

/// The main run, and each return.
fn runs(piece: PieceShown<'_>) -> Vec<Run> {
    let (parts, facing) = (piece.parts(), piece.placed.facing);
    let Some((main, returns)) = parts.split_first() else { return Vec::new() };
    let axes = Axes::of(main, facing);
    let mut first = Run { axes, facing, has_back: true, arms: [true; 2], corners: [0.0; 2] };
    let mut runs = Vec::new();
    for (place, (part, (_, towards))) in returns.iter().zip(piece.placed.returns()).enumerate() {
        // Of two returns the first is the chaise.
        let has_back = place > 0 || !piece.piece.chaise;
        let is_left = towards.dot(facing.left()) < 0.0;
        let of_return = Axes::of(part, towards);
        let end = usize::from(!is_left);
        first.arms[end] = false;
        first.corners[end] = of_return.depth;
        // Its end by the main run is its right one where it lies at the left.
        let mut arms = [false; 2];
        arms[usize::from(!is_left)] = has_back;
        runs.push(Run { axes: of_return, facing: towards, has_back, arms, corners: [0.0; 2] });
    }
    runs.insert(0, first);
    runs
}

/// The share of a length within two others.
fn share(length: f64, (share, least, most): (f64, f64, f64)) -> f64 {
    (length * share).clamp(least, most).min(length / 3.0)
}

fn back_of(run: &Run, piece: PieceShown<'_>) -> f64 {
    if run.has_back { share(piece.placed.size.depth, BACK) } else { 0.0 }
}

fn arms_of(run: &Run, piece: PieceShown<'_>) -> [f64; 2] {
    let wide = share(piece.placed.size.width, ARM);
    run.arms.map(|is_there| if is_there { wide } else { 0.0 })
}

/// The lines of back and arms.
fn frame_of(figure: &mut Figure<'_>, run: &Run, piece: PieceShown<'_>) {
    let (axes, back) = (&run.axes, back_of(run, piece));
    let half = axes.width / 2.0;
    let [left, right] = arms_of(run, piece);
    if back > 0.0 {
        line(figure, [axes.at(half, back), axes.at(-half, back)]);
    }
    let arm = |across: f64| [axes.at(across, back), axes.at(across, axes.depth)];
    if left > 0.0 {
        line(figure, arm(half - left));
    }
    if right > 0.0 {
        line(figure, arm(right - half));
    }
}

/// A cushion for each place; one in each corner.
fn cushions(figure: &mut Figure<'_>, run: &Run, piece: PieceShown<'_>) {
    let (axes, back) = (&run.axes, back_of(run, piece));
    let [left, right] = arms_of(run, piece);
    let [left_corner, right_corner] = run.corners;
    let (high, low) = (axes.width / 2.0 - left, right - axes.width / 2.0);
    let (from, to) = (low + right_corner, high - left_corner);
    let count = count(figure, run, piece, to - from);
    let mut ends: Vec<f64> = (0..=count).map(|place| from + (to - from) * place as f64 / count as f64).collect();
    if right_corner > 0.0 {
        ends.insert(0, low);
    }
    if left_corner > 0.0 {
        ends.push(high);
    }
    let radius = figure.frame.length(CUSHION_CORNER);
    for pair in ends.windows(2) {
        let ring = axes.rectangle([pair[0] + SEAM, pair[1] - SEAM], [back + SEAM, axes.depth - SEAM]);
        let ring = figure.frame.all(&ring);
        figure.put(Path::rounded(&ring, radius, Some(WITHIN), Fill::None));
        if let [_, start, end, _] = ring.as_slice() {
            figure.labels.mind([*start, *end]);
        }
    }
}

/// How many sit along a stretch so long; a day bed has one mattress.
fn count(figure: &Figure<'_>, run: &Run, piece: PieceShown<'_>, length: f64) -> usize {
    if piece.piece.kind.traits().seat == Some(SeatForm::DayBed) {
        return 1;
    }
    if piece.piece.kind.traits().seat != Some(SeatForm::Straight) {
        return (length / CUSHION).round().max(1.0) as usize;
    }
    let sits = |at: Point, facing: Point| facing.dot(run.facing) > 0.9 && run.axes.holds(at, 1.0);
    figure.plan.seats.iter().filter(|seat| sits(seat.at, seat.facing)).count().max(1)
}
