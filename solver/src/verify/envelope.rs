//! The safe envelope: pieces no larger than laid out keep every least gap and every route.

use elbowroom_model::{Dimension, Piece};

use super::breach::Breach;
use super::checked_layout::CheckedLayout;
use super::checked_room::CheckedRoom;
use super::comfort::{self, Eased};
use super::resized::resized;
use super::tolerance::SLACK;
use super::{standing, ways};
use crate::arrangement::Arrangement;
use crate::layout::{Layout, Size};

/// Sets of sizes that are tried for one seed.
const SETS: usize = 8;

/// Rules that break when pieces shrink toward their back edge and centre line (a corner sofa toward its corner, a table
/// toward its seat's side): all at their least, then sets drawn from `seed`. Empty where the promise holds.
#[must_use]
pub fn envelope(checked: &CheckedRoom<'_>, layout: &Layout, arrangement: &Arrangement, seed: u64) -> Vec<Breach> {
    let whole = CheckedLayout::of(checked, layout, arrangement);
    let eased = Eased::of(layout, &comfort::measures_when_smaller(&whole));
    let mut draw = Draw(seed);
    let mut breaches = Vec::new();
    for set in 0..SETS {
        let shrunk = shrunk(&whole, layout, |least, size| match set {
            0 => least,
            1 => {
                if draw.share() < 0.5 {
                    least
                } else {
                    size
                }
            }
            _ => least + (size - least) * draw.share(),
        });
        let scene = CheckedLayout::of(checked, &shrunk, arrangement);
        breaches.extend(standing(&scene));
        breaches.extend(eased.breaches(&comfort::measures_when_smaller(&scene)));
        // The mouths stay where the layout has them.
        breaches.extend(ways::too_narrow(&scene, layout));
    }
    breaches
}

/// The layout with every size between its least and what it is, as `choose` says.
fn shrunk(scene: &CheckedLayout<'_>, layout: &Layout, mut choose: impl FnMut(f64, f64) -> f64) -> Layout {
    let mut shrunk = layout.clone();
    for piece in scene.pieces.iter().filter(|piece| !piece.is_flat()) {
        let size = smaller(piece.piece, piece.placed.size, &mut choose);
        let side = super::table::side_of_seat(scene, piece);
        if let Some(placed) = shrunk.placed.iter_mut().find(|placed| placed.piece == piece.placed.piece) {
            *placed = resized(placed, size, side);
        }
    }
    shrunk
}

fn smaller(piece: &Piece, size: Size, choose: &mut impl FnMut(f64, f64) -> f64) -> Size {
    let mut smaller = size;
    let steps = piece.steps.iter().filter(|step| step.width <= size.width + SLACK && step.depth <= size.depth + SLACK);
    let steps: Vec<_> = steps.collect();
    // What comes in steps is one of them.
    let last = steps.len().checked_sub(1);
    if let Some(step) = last.and_then(|last| steps.get(choose(0.0, last as f64).round() as usize)) {
        return smaller.with(Dimension::Width, step.width).with(Dimension::Depth, step.depth);
    }
    for dimension in piece.dimensions() {
        // A U keeps its width: a narrower one would bring its second return nearer to what stands in its bay.
        if dimension == Dimension::Width && piece.second_return.is_some() {
            continue;
        }
        if let (Some(range), Some(present)) = (piece.range(dimension), size.get(dimension)) {
            smaller = smaller.with(dimension, choose(range.least.min(present), present));
        }
    }
    if piece.square {
        let side = smaller.width.min(smaller.depth);
        smaller = smaller.with(Dimension::Width, side).with(Dimension::Depth, side);
    }
    smaller
}

/// Shares of one, drawn by a linear congruential generator (Knuth's MMIX constants): the same on every machine.
struct Draw(u64);

impl Draw {
    fn share(&mut self) -> f64 {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        // The upper 53 bits fit a float exactly.
        (self.0 >> 11) as f64 / (1_u64 << 53) as f64
    }
}
