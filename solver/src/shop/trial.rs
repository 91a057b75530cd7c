//! Whether anything fits once candidates stand in their places.

use elbowroom_model::{Brief, Dimension, SizeRange};

use super::node::NoSet;
use super::rows::Row;
use crate::arrangement::enumerate;
use crate::by_plan::by_plan;
use crate::routes::Floor;
use crate::search::{Aim, Easing, Effort, RoomContext, search};
use crate::site::Site;

/// Nodes that one arrangement may take when all that is asked is whether it fits.
const NODES: usize = 500;

/// `brief` with the pieces of `row` made into `piece`, each keeping its name.
pub(super) fn with(brief: &Brief, row: &Row, piece: &elbowroom_model::Piece) -> Brief {
    let mut changed = brief.clone();
    for id in &row.pieces {
        if let Some(place) = changed.piece_mut(*id) {
            *place = elbowroom_model::Piece { name: place.name.clone(), alike: place.alike, ..piece.clone() };
        }
    }
    changed
}

/// Whether any arrangement has a layout; a search that ends before it is done counts as one that has.
pub(crate) fn may_fit(brief: &Brief) -> bool {
    any(brief, true)
}

/// The score of the best option of a brief whose pieces are decided.
pub(crate) fn best_score(brief: &Brief) -> Result<f64, NoSet> {
    let found = by_plan(brief);
    let no_set = if found.is_undecided { NoSet::NotDecided } else { NoSet::DoesNotFit };
    found.options.first().map(|option| option.score).ok_or(no_set)
}

/// Whether any arrangement has a layout that was found.
pub(super) fn fits(brief: &Brief) -> bool {
    any(brief, false)
}

fn any(brief: &Brief, unknown: bool) -> bool {
    let site = Site::of(brief);
    let (room, floor) = (RoomContext::of(brief, &site), Floor::of(brief, &site));
    let effort = Effort { easing: Easing::Ignored, ..Effort::of(Aim::Any, NODES) };
    let enumeration = enumerate(brief, &site);
    if unknown && enumeration.beyond > 0 {
        return true;
    }
    enumeration.arrangements.iter().any(|arrangement| {
        let searched = search(&room, &floor, arrangement, effort);
        searched.found.is_some() || (unknown && !searched.is_complete)
    })
}

/// `brief` with one dimension of `row` given this range.
pub(super) fn with_range(brief: &Brief, row: &Row, dimension: Dimension, range: SizeRange) -> Brief {
    let mut changed = brief.clone();
    for id in &row.pieces {
        let Some(piece) = changed.piece_mut(*id) else { continue };
        if let Some(of_piece) = piece.range_mut(dimension) {
            *of_piece = range;
        }
    }
    changed
}
