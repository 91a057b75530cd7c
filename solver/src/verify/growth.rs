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
            if below_most(piece.piece, piece.placed, dimension)
                && larger(&scene, layout, piece, dimension).iter().any(fits)
            {
                breaches.push(Breach::new("growth", &[piece.name(), dimension.key()], BY, "can be larger in its"));
            }
        }
    }
    breaches
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

fn below_most(piece: &Piece, placed: &Placed, dimension: Dimension) -> bool {
    let most = piece.range(dimension).map(|range| range.most);
    most.zip(placed.size.get(dimension)).is_some_and(|(most, size)| size + BY <= most)
}

/// The layouts in which the piece is larger by [`BY`] in one dimension.
fn larger(scene: &Scene<'_>, layout: &Layout, piece: &InPlace<'_>, dimension: Dimension) -> Vec<Layout> {
    let side = table::side_of_seat(scene, piece);
    let moves = piece.piece.kind.is_seat() && dimension == Dimension::Depth;
    let tables = if moves { table::tables_of(scene, piece) } else { Vec::new() };
    let with = |larger: Placed| {
        let mut layout = layout.clone();
        for placed in &mut layout.placed {
            if tables.contains(&placed.piece) {
                placed.anchor = placed.anchor + piece.placed.facing * BY;
            }
            if placed.piece == larger.piece {
                *placed = larger.clone();
            }
        }
        layout
    };
    grown(piece.placed, dimension, BY, side).into_iter().map(with).collect()
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
