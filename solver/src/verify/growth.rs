//! No size can grow by a hand's breadth while all else stays: else the largest size was not found.

use elbowroom_model::{Brief, Dimension, Piece};

use super::breach::Breach;
use super::resized::grown;
use super::scene::{InPlace, Scene};
use super::{sizes, standing, table, turning, ways};
use crate::arrangement::Arrangement;
use crate::layout::{Layout, Placed};

/// How much no size may grow, mm (result format, rule 9).
const BY: f64 = 20.0;

/// Sizes that can grow by 20 mm with all else as it is (for a seat's depth its table moves along) and break no rule.
/// Sizes in steps and sizes that are tied to another are left out. Empty where every size is the largest.
#[must_use]
pub fn growth(brief: &Brief, layout: &Layout, arrangement: &Arrangement) -> Vec<Breach> {
    let scene = Scene::of(brief, layout, arrangement);
    let mut breaches = Vec::new();
    for piece in scene.pieces.iter().filter(|piece| is_free(brief, piece)) {
        for dimension in piece.piece.dimensions() {
            let fits = |layout: &Layout| fits(brief, layout, arrangement);
            if room_to_grow(piece, dimension).is_some() && larger(&scene, layout, piece, dimension, BY).iter().any(fits)
            {
                breaches.push(Breach::new("growth", &[piece.name(), dimension.key()], BY, "can be larger in its"));
            }
        }
    }
    breaches
}

/// `layout` with every size let out that can still grow by 20 mm with all else as it is. A search leaves such a size where
/// it was cut short, or where it holds what no rule of the result asks for (a second seat beside the middle of the main
/// one).
#[must_use]
pub fn let_out(brief: &Brief, layout: &Layout, arrangement: &Arrangement) -> Layout {
    let mut found = layout.clone();
    for _ in 0..MOST_LET_OUT {
        match first_larger(brief, &found, arrangement) {
            Some(larger) => found = larger,
            None => break,
        }
    }
    found
}

/// Sizes of one layout that are let out at most: a hand's breadth at a time they would take as long as they are wide.
const MOST_LET_OUT: usize = 24;

/// A size is let out by this less than would fit within the slack of the rules, mm.
const TO_SPARE: f64 = 1.0;

/// The layout with the first size let out that can be, as far as halving finds.
fn first_larger(brief: &Brief, layout: &Layout, arrangement: &Arrangement) -> Option<Layout> {
    let scene = Scene::of(brief, layout, arrangement);
    let fits = |layout: &Layout| fits(brief, layout, arrangement);
    for piece in scene.pieces.iter().filter(|piece| is_free(brief, piece)) {
        for dimension in piece.piece.dimensions() {
            let ways = |by: f64| larger(&scene, layout, piece, dimension, by);
            let Some(way) = room_to_grow(piece, dimension).and_then(|_| ways(BY).iter().position(fits)) else {
                continue;
            };
            let way_by = |by: f64| ways(by).into_iter().nth(way);
            let mut by = room_to_grow(piece, dimension).unwrap_or(BY);
            while by > BY && !way_by(by).is_some_and(|layout| fits(&layout)) {
                by = (by / 2.0).max(BY);
            }
            return way_by(by - TO_SPARE);
        }
    }
    None
}

/// A piece whose sizes are neither in steps nor tied.
fn is_free(brief: &Brief, piece: &InPlace<'_>) -> bool {
    let tied = |other: &Piece| other.alike == Some(piece.placed.piece);
    piece.piece.steps.is_empty()
        && !piece.piece.square
        && !piece.is_rug()
        && piece.piece.alike.is_none()
        && !brief.pieces.iter().any(tied)
}

/// How far a dimension is below its most, mm, where that is [`BY`] or more.
fn room_to_grow(piece: &InPlace<'_>, dimension: Dimension) -> Option<f64> {
    let most = piece.piece.range(dimension).map(|range| range.most)?;
    let left = most - piece.placed.size.get(dimension)?;
    (left >= BY).then_some(left)
}

/// The layouts in which the piece is larger by `by` in one dimension.
fn larger(scene: &Scene<'_>, layout: &Layout, piece: &InPlace<'_>, dimension: Dimension, by: f64) -> Vec<Layout> {
    let side = table::side_of_seat(scene, piece);
    let moves = piece.piece.kind.is_seat() && dimension == Dimension::Depth;
    let tables = if moves { table::tables_of(scene, piece) } else { Vec::new() };
    let with = |larger: Placed| {
        let mut layout = layout.clone();
        for placed in &mut layout.placed {
            if tables.contains(&placed.piece) {
                placed.anchor = placed.anchor + piece.placed.facing * by;
            }
            if placed.piece == larger.piece {
                *placed = larger.clone();
            }
        }
        layout
    };
    grown(piece.placed, dimension, by, side).into_iter().map(with).collect()
}

fn fits(brief: &Brief, layout: &Layout, arrangement: &Arrangement) -> bool {
    let scene = Scene::of(brief, layout, arrangement);
    // The cheap rules first: most growths break one of them.
    sizes::breaches(&scene, layout).is_empty()
        && standing(&scene).is_empty()
        && table::out_of_place(&scene).is_empty()
        && turning::breaches(&scene, layout).is_empty()
        && ways::too_narrow(&scene, layout).is_empty()
}
