//! What comes nearest to what cannot be had.

use super::fit::{Stage, stages_as_asked};
use super::{Asked, Asking, Miss, Nearest, Owned};
use crate::best_by;

/// The piece of the stock that misses least of being the main seat of the room at `room`, among those that are there on its
/// days, others being served as `served` says; `None` where none is there, or where none is kept out by what it is.
pub(super) fn nearest_seat(
    rooms: &[Asking],
    stock: &[Owned],
    room: usize,
    served: &[Vec<Option<usize>>],
) -> Option<Nearest> {
    let asking = rooms.get(room)?;
    let asked = asking.asked();
    let is_there = |row: usize, of: &Asked| left(rooms, stock, row, asking, served) as usize >= of.pieces.len();
    let all = asking.main_seats().into_iter().filter_map(|place| Some((place, asked.get(place)?)));
    let all =
        all.filter_map(|(place, asked)| nearest_of(stages_as_asked(&asking.room), place, asked, stock, &is_there));
    best_by(all, |one| -far_off(one.miss))
}

/// The piece of the stock that misses least of being `asked`, which has that place in what the room asks for, in any of
/// these options; those that `may_be` alone.
pub(super) fn nearest_of<'a>(
    stages: impl Iterator<Item = Stage<'a>>,
    place: usize,
    asked: &Asked,
    stock: &[Owned],
    may_be: &dyn Fn(usize, &Asked) -> bool,
) -> Option<Nearest> {
    let stages: Vec<Stage<'_>> = stages.collect();
    let rows = stock.iter().enumerate().filter(|(row, _)| may_be(*row, asked));
    let found = rows.filter_map(|(row, owned)| {
        let misses = stages.iter().filter_map(|stage| stage.miss(asked, row, &owned.piece));
        let miss = best_by(misses, |miss| -far_off(*miss))?;
        Some(Nearest { asked: place, row, miss })
    });
    best_by(found, |one| -far_off(one.miss))
}

/// How far a piece is off, mm; what no centimetre mends is further off than any.
const fn far_off(miss: Miss) -> f64 {
    match miss {
        Miss::Size { by, .. } => by.abs(),
        Miss::Sill | Miss::Way => f64::MAX,
    }
}

/// How many of a row of the stock are left on every day of a booking.
pub(super) fn left(
    rooms: &[Asking],
    stock: &[Owned],
    row: usize,
    asking: &Asking,
    served: &[Vec<Option<usize>>],
) -> u32 {
    let Some(owned) = stock.get(row) else { return 0 };
    let in_rooms: Vec<(&Asking, u32)> =
        rooms.iter().zip(served).map(|(room, rows)| (room, used(room, rows, row))).collect();
    let begins = rooms.iter().map(|room| room.days.from).chain(owned.away.iter().map(|away| away.days.from));
    let days = begins.filter(|day| asking.days.hold(*day)).chain([asking.days.from]);
    let left_on = |day: i32| {
        let used: u32 = in_rooms.iter().filter(|(room, _)| room.days.hold(day)).map(|(_, count)| count).sum();
        owned.there_on(day).saturating_sub(used)
    };
    days.map(left_on).min().unwrap_or(0)
}

/// How many of a row stand in a room.
fn used(room: &Asking, rows: &[Option<usize>], row: usize) -> u32 {
    let asked: Vec<Asked> = room.asked();
    let of =
        asked.iter().zip(rows).filter(|(_, by)| **by == Some(row)).map(|(asked, _)| asked.pieces.len()).sum::<usize>();
    u32::try_from(of).unwrap_or(u32::MAX)
}
