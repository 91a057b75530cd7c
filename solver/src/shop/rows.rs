//! The pieces of a room that candidates can stand for: one row for each, or for several alike.

use elbowroom_model::listing::ListedPiece;
use elbowroom_model::{Brief, Dimension, Hand, Piece, PieceId, PieceKind, Sits, SitsFrom, SizeRange, screen_height};

/// A piece that the room asks for, or several alike.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Row {
    /// Places in the brief.
    pub pieces: Vec<PieceId>,
    /// What it is.
    pub kind: PieceKind,
    /// It must stand in the room.
    pub needed: bool,
}

/// The rows of `brief`, in its order.
pub(super) fn rows(brief: &Brief) -> Vec<Row> {
    let mut rows: Vec<Row> = Vec::new();
    for (id, piece) in brief.pieces().filter(|(_, piece)| !piece.kind.stays_open()) {
        match piece.alike.filter(|first| *first != id) {
            Some(first) => {
                if let Some(row) = rows.iter_mut().find(|row| row.pieces.first() == Some(&first)) {
                    row.pieces.push(id);
                }
            }
            None => rows.push(Row { pieces: vec![id], kind: piece.kind, needed: piece.needed }),
        }
    }
    rows
}

impl Row {
    /// The first of its pieces.
    #[must_use]
    pub fn piece<'a>(&self, brief: &'a Brief) -> Option<&'a Piece> {
        brief.piece(*self.pieces.first()?)
    }

    /// Whether so many of `candidate` are in hand, and its hand is one of those asked for.
    pub(super) fn can_be(&self, brief: &Brief, candidate: &ListedPiece) -> bool {
        candidate.kind == self.kind
            && self.enough(candidate)
            && self.piece(brief).is_some_and(|it| suits(it, candidate))
    }

    /// Whether there are as many of it as the row asks for.
    pub(super) fn enough(&self, candidate: &ListedPiece) -> bool {
        candidate.count as usize >= self.pieces.len()
    }
}

/// Whether a corner sofa of the candidate's hand is asked for, and of as many returns.
pub(super) fn suits(piece: &Piece, candidate: &ListedPiece) -> bool {
    let is_u = piece.second_return.is_some() == candidate.second_return.is_some();
    is_u && (piece.hands.is_empty() || !hands(piece, candidate).is_empty())
}

fn hands(piece: &Piece, candidate: &ListedPiece) -> Vec<Hand> {
    piece.hands.iter().copied().filter(|hand| candidate.hands.contains(hand)).collect()
}

/// How many sit on it: as many as the list says, where it is sold so.
fn sits(piece: &Piece, candidate: &ListedPiece) -> Sits {
    let told = candidate.seats.filter(|_| piece.kind.is_sold_by_places());
    told.map_or_else(|| piece.sits.clone(), |seats| Sits(vec![SitsFrom { seats, width: 0.0 }]))
}

/// `piece` as the candidate is: its sizes and no others.
pub(crate) fn stand_in(piece: &Piece, candidate: &ListedPiece) -> Piece {
    Piece {
        width: SizeRange::fixed(candidate.width),
        depth: SizeRange::fixed(candidate.depth),
        return_length: piece.return_length.and(candidate.return_length).map(SizeRange::fixed),
        second_return: piece.second_return.and(candidate.second_return).map(SizeRange::fixed),
        return_depth: piece.return_length.and(candidate.return_depth).map(SizeRange::fixed),
        steps: Vec::new(),
        square: false,
        height: candidate_height(piece, candidate),
        screen: candidate.screen.or(piece.screen),
        hands: hands(piece, candidate),
        chaise: candidate.chaise.unwrap_or(piece.chaise),
        seats: candidate.seats.or(piece.seats),
        sits: sits(piece, candidate),
        needed: true,
        ..piece.clone()
    }
}

/// Its height as [`Piece::height`] has it: what hangs keeps its middle where it was asked for.
fn candidate_height(piece: &Piece, candidate: &ListedPiece) -> f64 {
    match (piece.hung_centre(), candidate.screen.or(piece.screen)) {
        (Some(centre), Some(screen)) => centre - screen_height(screen) / 2.0,
        _ => candidate.height.filter(|_| !piece.kind.is_flat()).unwrap_or(piece.height),
    }
}

/// `piece` no larger in any way than the least of `candidates`: where not even this fits, none of them does.
pub(super) fn least_of(piece: &Piece, candidates: &[&ListedPiece]) -> Piece {
    let least = |of: fn(&ListedPiece) -> Option<f64>| candidates.iter().filter_map(|one| of(one)).reduce(f64::min);
    let fixed = |range: SizeRange, of: fn(&ListedPiece) -> Option<f64>| least(of).map_or(range, SizeRange::fixed);
    let height = least(|one| one.height).map_or(piece.height, |height| {
        if candidates.iter().any(|one| one.height.is_none()) { height.min(piece.height) } else { height }
    });
    let either = piece.hands.iter().copied().filter(|hand| candidates.iter().any(|one| one.hands.contains(hand)));
    Piece {
        width: fixed(piece.width, |one| one.size(Dimension::Width)),
        depth: fixed(piece.depth, |one| one.size(Dimension::Depth)),
        return_length: piece.return_length.map(|range| fixed(range, |one| one.size(Dimension::Return))),
        second_return: piece.second_return.map(|range| fixed(range, |one| one.size(Dimension::SecondReturn))),
        return_depth: least_return_depth(piece, candidates),
        steps: Vec::new(),
        square: false,
        height: if piece.kind.is_flat() || piece.kind.hangs() { piece.height } else { height },
        screen: None,
        hands: either.collect(),
        ..piece.clone()
    }
}

/// The least depth of a return among the candidates, where any has one of its own.
fn least_return_depth(piece: &Piece, candidates: &[&ListedPiece]) -> Option<SizeRange> {
    let has_own = piece.return_length.is_some() && candidates.iter().any(|one| one.return_depth.is_some());
    let depths = candidates.iter().filter_map(|one| one.size(Dimension::ReturnDepth));
    depths.reduce(f64::min).filter(|_| has_own).map(SizeRange::fixed)
}
