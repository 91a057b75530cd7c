//! Sizes beyond what people have: against the usual ones of the size table.

use elbowroom_model::PieceKind;
use elbowroom_model::tables::Tables;

use super::standing::{Sizes, Standing};
use super::{Mark, Odd, Scene};

/// How far over its usual size a piece may be.
const OVER: f64 = 1.1;
/// The same for a table before a corner sofa: it may fill the bay.
const TABLE_IN_BAY: f64 = 1.5;
/// Of a sofa's width, what its table may have.
const OF_SOFA: f64 = 2.0 / 3.0;
/// Figures are told to a thousandth and add up, mm.
const ROUNDED: f64 = 1.0;
/// What a table may be over its share of a sofa, mm: both come in whole centimetres in a shop.
const ROUNDED_SHARE: f64 = 5.0;

pub(super) fn odd(scene: &Scene) -> Vec<Odd> {
    let in_bay = scene.main().is_some_and(Standing::is_corner);
    let is_judged = |piece: &&Standing| {
        piece.is_seat() || piece.is_screen() || ["coffee-table", "side-table"].contains(&piece.kind.as_str())
    };
    let mut all = Vec::new();
    for piece in scene.pieces.iter().filter(is_judged) {
        let share = if in_bay && piece.kind == "coffee-table" { TABLE_IN_BAY } else { OVER };
        let over = over(piece, share).max(over_sofa(scene, piece));
        if over > 0.0 {
            all.push(Odd::of(Mark::Stretched, &[&piece.name], over));
        }
    }
    all
}

/// How far the piece's worst size is over `share` of what is usual, or over the least that it may have.
fn over(piece: &Standing, share: f64) -> f64 {
    let Ok(kind) = piece.kind.parse::<PieceKind>() else { return 0.0 };
    let usual = usual(kind);
    let (sizes, least) = (piece.sizes(), piece.least);
    let over = |size: f64, usual: f64, least: f64| size - (share * usual).max(least) - ROUNDED;
    let all = [
        over(sizes.width, usual.width, least.width),
        over(sizes.depth, usual.depth, least.depth),
        over(sizes.run, usual.run, least.run),
    ];
    all.into_iter().fold(0.0, f64::max)
}

/// How far a table is over its share of the sofa that it serves.
fn over_sofa(scene: &Scene, piece: &Standing) -> f64 {
    let sofa = scene.main().filter(|main| main.kind != "armchair" && piece.kind == "coffee-table");
    sofa.map_or(0.0, |sofa| piece.sizes().width - OF_SOFA * sofa.sizes().width - ROUNDED_SHARE)
}

fn usual(kind: PieceKind) -> Sizes {
    let sizes = Tables::built_in().expect("the tables are sound").sizes(kind);
    let run = sizes.return_length.map_or(0.0, |range| range.usual);
    Sizes { width: sizes.width.usual, depth: sizes.depth.usual, run }
}
