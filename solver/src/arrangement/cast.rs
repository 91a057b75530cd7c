//! Who plays which part: the main seat, the screen, the second seats in their rows.

use std::cmp::Ordering;

use elbowroom_model::SeatForm;
use elbowroom_model::{Brief, Piece, PieceId};

/// The parts of the pieces that make options.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Cast {
    /// The largest seat, by its place in the brief.
    pub(super) main: PieceId,
    /// The media unit or the screen on a wall that the seats turn to, by its place in the brief.
    pub(super) screen: Option<PieceId>,
    /// The other seats, those of one row together, largest first.
    pub(super) rows: Vec<Vec<PieceId>>,
}

impl Cast {
    /// The cast of a brief; `None` where it has no seat.
    pub(super) fn of(brief: &Brief) -> Option<Self> {
        Self::of_those(brief, |_| true)
    }

    /// The cast of those pieces that `stand`; `None` where no seat is among them.
    pub(super) fn of_those(brief: &Brief, stand: impl Fn(PieceId) -> bool) -> Option<Self> {
        let main = first_of(brief, |id, piece| piece.is_seat_of_main_group() && stand(id))?;
        let screen = first_of(brief, |id, piece| brief.is_watched(piece) && stand(id));
        let mut rows = rows(brief, main);
        for row in &mut rows {
            row.retain(|seat| stand(*seat));
        }
        rows.retain(|row| !row.is_empty());
        Some(Self { main, screen, rows })
    }
}

/// The foremost of the pieces that `wanted` admits.
fn first_of(brief: &Brief, wanted: impl Fn(PieceId, &Piece) -> bool) -> Option<PieceId> {
    let pieces = brief.pieces().filter(|(id, piece)| wanted(*id, piece));
    pieces.min_by(|(_, one), (_, other)| rank(one, other)).map(|(place, _)| place)
}

/// The seats beside the main one, those of one row of the file together.
fn rows(brief: &Brief, main: PieceId) -> Vec<Vec<PieceId>> {
    let mut rows: Vec<Vec<PieceId>> = Vec::new();
    for (place, piece) in brief.pieces() {
        if !piece.is_seat_of_main_group() || place == main {
            continue;
        }
        let row_of = |other: PieceId| brief.piece(other).and_then(|piece| piece.alike).unwrap_or(other);
        match rows.iter_mut().find(|row| piece.alike.is_some() && row.iter().all(|seat| row_of(*seat) == row_of(place)))
        {
            Some(row) => row.push(place),
            None => rows.push(vec![place]),
        }
    }
    let foremost = |row: &Vec<PieceId>| row.first().and_then(|seat| brief.piece(*seat));
    rows.sort_by(|one, other| match (foremost(one), foremost(other)) {
        (Some(one), Some(other)) => rank(one, other),
        _ => Ordering::Equal,
    });
    rows
}

/// What must stand goes first, then the larger kind, the larger screen, what may be larger: not what must, or a seat that
/// was bought would be another's second. Names settle what sizes do not, so that the order of the file settles nothing.
fn rank(one: &Piece, other: &Piece) -> Ordering {
    let sizes = |piece: &Piece| [piece.screen.unwrap_or(0.0), piece.width.most, piece.depth.most];
    let kind = |piece: &Piece| match piece.kind.traits().seat {
        Some(SeatForm::Corner) => 0,
        Some(SeatForm::Straight) => 1,
        Some(SeatForm::DayBed) => 2,
        Some(SeatForm::Single) | None => 3,
    };
    let larger = || sizes(other).iter().zip(sizes(one)).map(|(b, a)| b.total_cmp(&a)).find(|order| order.is_ne());
    (other.needed.cmp(&one.needed))
        .then_with(|| kind(one).cmp(&kind(other)))
        .then_with(|| larger().unwrap_or(Ordering::Equal))
        .then_with(|| one.name.cmp(&other.name))
}
