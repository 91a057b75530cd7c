//! A room solved for what a stock has.

use elbowroom_model::listing::ListedPiece;
use elbowroom_model::{Brief, Dimension, Piece, PieceKind, SizeRange};
use rayon::prelude::*;

use super::fit::seats_enough;
use super::{Owned, StockRoom};
use crate::answer::Answer;
use crate::way_in::of_a_list;
use crate::{Limits, Unwatched, rank};

/// The room of `brief` solved for what `stock` has. The way in holds no size, since each row of the stock is carried in at
/// its own height; and what may have any size that its kind is sold in may have those of the stock.
#[must_use]
pub fn room_for(brief: &Brief, stock: &[Owned], limits: &Limits) -> StockRoom {
    let furnishings = brief.other_furnishings();
    let solve = |brief: &Brief| rank(&offered(brief, stock), limits, &Unwatched);
    let (answer, others) = rayon::join(|| solve(brief), || furnishings.par_iter().map(solve).collect::<Vec<Answer>>());
    let gets_in = stock.iter().map(|owned| is_let_in(brief, &owned.piece));
    let gets_in = if brief.way.is_some() { gets_in.collect() } else { Vec::new() };
    StockRoom { answer, others, sets: Vec::new(), refused: Vec::new(), way: brief.way.clone(), gets_in }
}

/// Whether a piece of a list can be carried in; one of a kind that the room has no use for can.
fn is_let_in(brief: &Brief, listed: &ListedPiece) -> bool {
    let usual = height_of(brief, listed.kind);
    let carried = brief.way.as_ref().zip(usual).map(|(way, usual)| of_a_list(way, listed, usual));
    carried.is_none_or(|piece| piece.carried.gets_in)
}

/// The height of a piece of `kind` that gives none, as the room asks for one.
fn height_of(brief: &Brief, kind: PieceKind) -> Option<f64> {
    let mut all = brief.pieces.iter().flat_map(|piece| std::iter::once(piece).chain(&piece.instead));
    all.find(|piece| piece.kind == kind).map(Piece::own_height)
}

fn offered(brief: &Brief, stock: &[Owned]) -> Brief {
    let mut offered = brief.clone();
    offered.way = None;
    for id in brief.piece_ids() {
        let alike = brief.piece(id).and_then(|piece| piece.alike);
        let count = brief.pieces.iter().filter(|piece| alike.is_some() && piece.alike == alike).count().max(1);
        if let Some(piece) = offered.piece_mut(id).filter(|piece| piece.sold_sizes) {
            *piece = as_in_stock(piece, count, stock);
        }
    }
    offered
}

/// A piece that may have any size, in the sizes from the least to the most of those in stock; as it was where there are none.
fn as_in_stock(piece: &Piece, count: usize, stock: &[Owned]) -> Piece {
    let can_be = |owned: &&Owned| {
        owned.piece.kind == piece.kind && owned.piece.count as usize >= count && seats_enough(piece, &owned.piece)
    };
    let range = |dimension: Dimension, was: SizeRange| {
        let sizes = stock.iter().filter(can_be).filter_map(|owned| owned.piece.size(dimension));
        let ends = sizes.fold(None, |ends: Option<(f64, f64)>, size| {
            let (least, most) = ends.unwrap_or((size, size));
            Some((least.min(size), most.max(size)))
        });
        ends.map_or(was, |(least, most)| SizeRange { least, usual: was.usual.clamp(least, most), most })
    };
    if !stock.iter().any(|owned| can_be(&owned)) {
        return piece.clone();
    }
    let (width, depth) = (range(Dimension::Width, piece.width), range(Dimension::Depth, piece.depth));
    Piece { width, depth, steps: Vec::new(), ..piece.clone() }
}
