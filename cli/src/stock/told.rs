//! What is told of an assignment, from the bookings as they came in, the store and what the solver found.

use elbowroom_solver::stock::{Asked, Asking, Assignment, By, Fulfilled, Tried};

use super::days::written;
use super::store::Store;
use crate::result::stock::{Arrangement, AskedResult, BookingResult, FORMAT, OneMoreResult, PickedPiece, StockResult};
use crate::words::answer::title;

/// A booking as it came in, for who has a room to show for it.
pub(crate) struct BookedRoom<'a> {
    /// Its line as far as it is known without the assignment.
    pub room: BookingResult,
    /// What the solver was asked; `None` where the room is at fault.
    pub asking: Option<&'a Asking>,
}

/// What is told of `assignment`, whose rooms are those of `bookings` that have an asking, in their order.
pub(crate) fn told(
    bookings: Vec<BookedRoom<'_>>,
    store: &Store,
    assignment: &Assignment,
    one_more: Tried,
) -> StockResult {
    let mut furnished = assignment.rooms.iter();
    let rooms = bookings.into_iter().map(|booking| {
        let Some((asking, furnished)) = booking.asking.and_then(|asking| Some((asking, furnished.next()?))) else {
            return booking.room;
        };
        let option = furnished.option.and_then(|option| asking.answer.options.get(option));
        let arrangement = option.map(|option| Arrangement {
            rank: option.rank,
            key: option.key.clone(),
            title: title(&asking.answer.brief, option),
        });
        let asked = furnished.asked.iter().map(|Fulfilled { asked, by }| AskedResult {
            names: names(asking, asked),
            must: asked.must,
            piece: piece(*by, asked.pieces.len(), store),
            by: *by,
        });
        BookingResult { arrangement, asked: asked.collect(), ..booking.room }
    });
    StockResult {
        format: FORMAT,
        proven: assignment.is_proven(),
        must: assignment.must.clone(),
        points: assignment.points,
        rooms: rooms.collect(),
        one_more: OneMoreResult { like: like(&one_more, store), tried: one_more },
    }
}

/// What the row of the stock is called that one more would be like.
fn like(tried: &Tried, store: &Store) -> Option<String> {
    let row = tried.best.as_ref()?.like?;
    store.owned.get(row).map(|owned| owned.piece.name.clone())
}

/// What is asked for, in the room's own words.
fn names(asking: &Asking, asked: &Asked) -> Vec<String> {
    asked.pieces.iter().map(|id| asking.answer.asked.piece_name(*id).to_owned()).collect()
}

fn piece(by: By, count: usize, store: &Store) -> Option<PickedPiece> {
    let By::Stock { row } = by else { return None };
    let (owned, kept) = (store.owned.get(row)?, store.kept.get(row)?);
    let size = [Some(owned.piece.width), owned.piece.return_length, Some(owned.piece.depth)];
    Some(PickedPiece {
        line: owned.piece.line,
        name: owned.piece.name.clone(),
        count,
        size: size.into_iter().flatten().collect(),
        place: kept.place.clone(),
        value: kept.value,
    })
}

/// A span of days as written.
pub(crate) fn written_days(days: Option<elbowroom_solver::stock::Days>) -> (Option<String>, Option<String>) {
    (days.map(|days| written(days.from)), days.map(|days| written(days.to)))
}
