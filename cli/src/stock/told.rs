//! What is told of an assignment, from the bookings as they went in, the store and what the solver found.

use elbowroom_solver::stock::{Asking, Assignment, By, Tried};

use super::days::written;
use super::store::Store;
use crate::render::stock::told::{Arrangement, FORMAT, Told, ToldAsked, ToldPiece, ToldRoom};

/// A booking as it went in, for who has a room to show for it.
pub(crate) struct Went<'a> {
    /// Its line as far as it is known without the assignment.
    pub room: ToldRoom,
    /// What the solver was asked; `None` where the room is at fault.
    pub asking: Option<&'a Asking>,
}

/// What is told of `assignment`, whose rooms are those of `went` that have an asking, in their order.
pub(crate) fn told(went: Vec<Went<'_>>, store: &Store, assignment: &Assignment, one_more: Tried) -> Told {
    let mut furnished = assignment.rooms.iter();
    let rooms = went.into_iter().map(|went| {
        let Some((asking, furnished)) = went.asking.and_then(|asking| Some((asking, furnished.next()?))) else {
            return went.room;
        };
        let option = furnished.option.and_then(|option| asking.options.get(option));
        let arrangement = option.map(|option| Arrangement {
            rank: option.rank,
            key: option.key.clone(),
            title: option.title.clone(),
        });
        let asked = furnished.asked.iter().map(|one| ToldAsked {
            names: one.names.clone(),
            must: one.must,
            piece: piece(one.by, one.names.len(), store),
            short: short(one.by),
        });
        ToldRoom { arrangement, asked: asked.collect(), ..went.room }
    });
    Told {
        format: FORMAT,
        proven: assignment.is_proven(),
        must: assignment.must.clone(),
        points: assignment.points,
        rooms: rooms.collect(),
        one_more,
    }
}

fn piece(by: By, count: usize, store: &Store) -> Option<ToldPiece> {
    let By::Stock { row } = by else { return None };
    let (owned, kept) = (store.owned.get(row)?, store.kept.get(row)?);
    let size = [Some(owned.piece.width), owned.piece.return_length, Some(owned.piece.depth)];
    Some(ToldPiece {
        line: owned.piece.line,
        name: owned.piece.name.clone(),
        count,
        size: size.into_iter().flatten().collect(),
        place: kept.place.clone(),
        value: kept.value,
    })
}

const fn short(by: By) -> Option<&'static str> {
    match by {
        By::Stock { .. } => None,
        By::NoOption => Some("no_option"),
        By::NoneOfKind => Some("none_of_kind"),
        By::NoneFits => Some("none_fits"),
        By::AllTaken => Some("all_taken"),
    }
}

/// A span of days as written.
pub(crate) fn written_days(days: Option<elbowroom_solver::stock::Days>) -> (Option<String>, Option<String>) {
    (days.map(|days| written(days.from)), days.map(|days| written(days.to)))
}
