//! What to heed where children live: of the pieces asked for, and of where they stand in each option.

use elbowroom_model::{Brief, ItemId, ItemKind, Piece, PieceId};

use crate::answer::RankedOption;
use crate::cautions::Caution;
use crate::geometry::{Segment, gap_to_segment};
use crate::layout::Placed;
use crate::routes::ShapeId;

/// Storage from this height on can tip over when a child climbs it, mm: chests of drawers are about so high (common practice,
/// no source; CPSC's warnings name dressers and bookcases).
const TIPS: f64 = 600.0;
/// A child who stands on a piece so near to a window reaches it, mm (common practice, no source).
const REACH: f64 = 600.0;
/// A sill so high above what a child stands on keeps it in, mm: the height of a guard (Approved Document K, from memory).
const GUARD: f64 = 1_100.0;
/// A table whose top is no higher has its corners at a small child's head, mm (common practice, no source).
const LOW: f64 = 600.0;

/// Something to heed where children live.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum ForChildren {
    /// Pieces that can tip over when they are climbed.
    Tips(Vec<PieceId>),
    /// Cords of lamps, screens and blinds.
    Cords,
    /// Pieces that a child climbs to a window from.
    Climbable {
        /// The window.
        window: ItemId,
        /// The pieces, in the order of the brief.
        from: Vec<ClimbedFrom>,
    },
    /// A low table where a way is narrowest, in options of these ranks.
    TableInWay {
        /// The table.
        table: PieceId,
        /// The options.
        ranks: Vec<usize>,
    },
}

/// A piece that a child climbs to a window from, in options of these ranks.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct ClimbedFrom {
    /// The piece.
    pub piece: PieceId,
    /// The options.
    pub ranks: Vec<usize>,
}

impl ForChildren {
    /// Whether it says all that a caution says, and more closely.
    pub(crate) const fn says(&self, caution: Caution) -> bool {
        matches!((self, caution), (Self::Tips(_), Caution::TipOver) | (Self::Climbable { .. }, Caution::Children))
    }

    /// What of it is to be heeded in the options of these ranks, or in all of them; `None`: nothing.
    pub(crate) fn of(&self, shown: &[usize]) -> Option<Self> {
        let among = |ranks: &[usize]| {
            let ranks: Vec<usize> = ranks.iter().filter(|rank| shown.contains(rank)).copied().collect();
            (!ranks.is_empty()).then_some(ranks)
        };
        match self {
            Self::Tips(_) | Self::Cords => Some(self.clone()),
            Self::Climbable { window, from } => {
                let each = from.iter().filter_map(|one| Some(ClimbedFrom { ranks: among(&one.ranks)?, ..one.clone() }));
                let from: Vec<ClimbedFrom> = each.collect();
                (!from.is_empty()).then_some(Self::Climbable { window: *window, from })
            }
            Self::TableInWay { table, ranks } => Some(Self::TableInWay { table: *table, ranks: among(ranks)? }),
        }
    }
}

/// All that is to be heeded of `options`; nothing where the brief does not say that children live here.
pub(crate) fn for_children(brief: &Brief, options: &[RankedOption]) -> Vec<ForChildren> {
    if brief.household.children != Some(true) {
        return Vec::new();
    }
    let stands_and_tips = |piece: &Piece| piece.screen.is_some() || (piece.kind.is_storage() && piece.height >= TIPS);
    let tips = |piece: &Piece| !piece.kind.hangs() && stands_and_tips(piece);
    let tipping: Vec<PieceId> = brief.pieces().filter(|(_, piece)| tips(piece)).map(|(id, _)| id).collect();
    let tipping = (!tipping.is_empty()).then_some(ForChildren::Tips(tipping));
    let tables = brief.pieces().filter_map(|(id, piece)| table_in_way(piece, id, options));
    let windows = brief.room.items().filter(|(_, item)| matches!(item.kind, ItemKind::Window(_)));
    let climbable = windows.filter_map(|(window, _)| {
        let from = brief.pieces().filter_map(|(piece, _)| climbed_from(brief, piece, window, options));
        let from: Vec<ClimbedFrom> = from.collect();
        (!from.is_empty()).then_some(ForChildren::Climbable { window, from })
    });
    tipping.into_iter().chain(climbable).chain(tables).chain([ForChildren::Cords]).collect()
}

fn climbed_from(brief: &Brief, piece: PieceId, window: ItemId, options: &[RankedOption]) -> Option<ClimbedFrom> {
    let is_below = |option: &&RankedOption| {
        option.layout.of(piece).is_some_and(|placed| reaches(brief, placed, window).unwrap_or(false))
    };
    let ranks: Vec<usize> = options.iter().filter(is_below).map(|option| option.rank).collect();
    (!ranks.is_empty()).then_some(ClimbedFrom { piece, ranks })
}

/// Whether one who stands on the piece reaches the window; `None` where there is no such piece or window.
fn reaches(brief: &Brief, placed: &Placed, window: ItemId) -> Option<bool> {
    let (piece, item) = (brief.piece(placed.piece)?, brief.room.item(window)?);
    let ItemKind::Window(opening) = &item.kind else { return None };
    let (left, right) = brief.room.ends(item)?;
    let near = |part| gap_to_segment(part, Segment::new(left, right)).clear <= REACH;
    let guarded = opening.sill - piece.height >= GUARD;
    Some(piece.kind.is_solid() && !piece.kind.hangs() && !guarded && placed.parts().iter().any(near))
}

fn table_in_way(piece: &Piece, table: PieceId, options: &[RankedOption]) -> Option<ForChildren> {
    if !piece.kind.traits().is_surface || piece.height > LOW {
        return None;
    }
    let is_table = |shape: &ShapeId| matches!(shape, ShapeId::Part { piece, .. } if *piece == table);
    let is_by = |option: &&RankedOption| {
        option.routes.iter().any(|route| route.pinch.is_some_and(|pinch| pinch.between.iter().any(is_table)))
    };
    let ranks: Vec<usize> = options.iter().filter(is_by).map(|option| option.rank).collect();
    (!ranks.is_empty()).then_some(ForChildren::TableInWay { table, ranks })
}
