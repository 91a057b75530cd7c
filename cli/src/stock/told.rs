//! What is told of an assignment, from the bookings as they came in, the store and what the solver found.

use elbowroom_model::{PieceKind, Unit};
use elbowroom_solver::answer::Answer;
use elbowroom_solver::stock::{Asked, Asking, Assignment, By, Fulfilled, Furnished, Move, Nearest, Tried};

use super::carried::{carried, size};
use super::days::written;
use super::store::Store;
use crate::result::stock::{
    Arrangement, AskedResult, BookingResult, FORMAT, NearestPiece, NotStageable, OneMoreResult, PickedPiece,
    StockResult,
};
use crate::words::answer::title;
use crate::words::stock as words;

/// A booking as it came in, for who has a room to show for it.
pub(crate) struct BookedRoom<'a> {
    /// Its line as far as it is known without the assignment.
    pub room: BookingResult,
    /// What the solver was asked; `None` where the room is at fault.
    pub asking: Option<&'a Asking>,
}

/// What was found: who gets what, each room planned with what it gets, and what one more piece would bring.
pub(crate) struct Found {
    /// Who gets what.
    pub assignment: Assignment,
    /// Each room planned again, in the assignment's order.
    pub plans: Vec<Option<Answer>>,
    /// What is carried on which day.
    pub moves: Vec<Move>,
    /// What one more piece would bring.
    pub one_more: Tried,
}

/// What is told of what was `found` for the `bookings` that have an asking, in their order, lengths in `unit`.
pub(crate) fn told(bookings: Vec<BookedRoom<'_>>, store: &Store, found: &Found, unit: Unit) -> StockResult {
    let assignment = &found.assignment;
    let mut furnished = assignment.rooms.iter().zip(&found.plans);
    let with_asking = bookings.iter().enumerate().filter(|(_, booking)| booking.asking.is_some());
    let places: Vec<usize> = with_asking.map(|(place, _)| place).collect();
    let rooms = bookings.into_iter().map(|booking| {
        let Some((asking, (furnished, plan))) = booking.asking.and_then(|asking| Some((asking, furnished.next()?)))
        else {
            return booking.room;
        };
        let arrangement = arrangement(asking, furnished, plan.as_ref());
        let not_stageable = not_stageable(&booking.room, asking, furnished, store, unit);
        let asked = furnished.asked.iter().map(|Fulfilled { asked, by, nearest }| AskedResult {
            names: names(asking, asked),
            must: asked.must,
            piece: piece(*by, asked.pieces.len(), store),
            in_place_of: in_place_of(asking, asked, *by, store),
            nearest: nearest.and_then(|nearest| nearest_piece(nearest, store)),
            by: *by,
        });
        BookingResult { arrangement, not_stageable, asked: asked.collect(), ..booking.room }
    });
    StockResult {
        format: FORMAT,
        proven: assignment.is_proven(),
        must: assignment.must.clone(),
        points: assignment.points,
        sets: assignment.sets,
        rooms: rooms.collect(),
        carried: carried(&found.moves, store, &places),
        one_more: OneMoreResult { like: like(&found.one_more, store), tried: found.one_more.clone() },
        notices: Vec::new(),
    }
}

/// The arrangement that the pieces of a room stand in: that of the plan made with them.
fn arrangement(asking: &Asking, furnished: &Furnished, plan: Option<&Answer>) -> Option<Arrangement> {
    let as_asked = asking.room.furnishing(furnished.option?)?;
    let plan = plan?;
    let option = plan.options.first()?;
    Some(Arrangement {
        rank: as_asked.keyed(&option.key).map(|option| option.rank),
        of: plan.options.len(),
        key: option.key.clone(),
        title: title(&plan.brief, option),
        score: option.score,
    })
}

/// Why nothing goes out to a room that something would fit in.
fn not_stageable(
    room: &BookingResult,
    asking: &Asking,
    furnished: &Furnished,
    store: &Store,
    unit: Unit,
) -> Option<NotStageable> {
    if furnished.option.is_some() || asking.room.has_no_option() {
        return None;
    }
    let mains = asking.main_seats();
    let main = furnished.asked.get(*mains.first()?)?;
    let nearest = furnished.nearest.and_then(|nearest| nearest_piece(nearest, store));
    let kinds = mains.iter().filter_map(|place| Some(asking.room.kinds_of(&furnished.asked.get(*place)?.asked.pieces)));
    let mut seats: Vec<String> = Vec::new();
    for kind in kinds.flatten().map(PieceKind::words) {
        if !seats.contains(&kind) {
            seats.push(kind);
        }
    }
    let days = room.from.as_deref().zip(room.to.as_deref());
    let miss = nearest.as_ref().map(|nearest| words::miss(&nearest.name, nearest.miss, unit));
    Some(NotStageable { sentence: words::not_stageable(&seats, main.by, days, miss.as_deref()), nearest })
}

/// A piece that comes nearest, by its row of the list.
fn nearest_piece(nearest: Nearest, store: &Store) -> Option<NearestPiece> {
    let owned = store.owned.get(nearest.row)?;
    Some(NearestPiece { line: owned.piece.line, name: owned.piece.name.clone(), miss: nearest.miss })
}

/// What stands in for another kind: `a sofa in place of the corner sofa`; `None` where the kind asked for serves.
fn in_place_of(asking: &Asking, asked: &Asked, by: By, store: &Store) -> Option<String> {
    let By::Stock { row } = by else { return None };
    let (piece, stands_in) = asking.room.piece_of(&asked.pieces, store.owned.get(row)?.piece.kind)?;
    let wanted = asking.room.kinds_of(&asked.pieces).first().copied()?;
    stands_in.then(|| words::in_place_of(piece.kind, wanted, asked.pieces.len()))
}

/// What the row of the stock is called that one more would be like.
fn like(tried: &Tried, store: &Store) -> Option<String> {
    let row = tried.best.as_ref()?.like?;
    store.owned.get(row).map(|owned| owned.piece.name.clone())
}

/// What is asked for, in the room's own words.
fn names(asking: &Asking, asked: &Asked) -> Vec<String> {
    asked.pieces.iter().map(|id| asking.room.answer.asked.piece_name(*id).to_owned()).collect()
}

fn piece(by: By, count: usize, store: &Store) -> Option<PickedPiece> {
    let By::Stock { row } = by else { return None };
    let (owned, kept) = (store.owned.get(row)?, store.kept.get(row)?);
    let sides = [Some(owned.piece.width), owned.piece.return_length, Some(owned.piece.depth)];
    Some(PickedPiece {
        line: owned.piece.line,
        name: owned.piece.name.clone(),
        count,
        size: sides.into_iter().flatten().collect(),
        sizes: size(&owned.piece),
        place: kept.place.clone(),
        value: kept.value,
    })
}

/// A span of days as written.
pub(crate) fn written_days(days: Option<elbowroom_solver::stock::Days>) -> (Option<String>, Option<String>) {
    (days.map(|days| written(days.from)), days.map(|days| written(days.to)))
}
