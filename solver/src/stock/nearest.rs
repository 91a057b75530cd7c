//! What comes nearest to a main seat that cannot be had.

use super::fit::furthest;
use super::{Asked, Asking, Nearest, Owned};
use crate::best_by;

/// The piece of the stock that misses least of being the main seat of the room at `room`, among those that are there on its
/// days, others being served as `served` says; `None` where none is there, or where none is kept out by its size.
pub(super) fn nearest(
    rooms: &[Asking],
    stock: &[Owned],
    room: usize,
    served: &[Vec<Option<usize>>],
) -> Option<Nearest> {
    let asking = rooms.get(room)?;
    let asked = asking.asked();
    let mut found = Vec::new();
    for place in asking.main_seats() {
        let Some(of) = asked.get(place) else { continue };
        for (row, owned) in stock.iter().enumerate() {
            let there = left(rooms, stock, row, asking, served);
            if (there as usize) < of.pieces.len() {
                continue;
            }
            let options = asking.answer.options.iter();
            let off = options.filter_map(|option| furthest(asking, option, of, &owned.piece));
            let least = best_by(off, |(_, by)| -by.abs());
            found.extend(least.map(|(dimension, by)| Nearest { asked: place, row, dimension, by }));
        }
    }
    best_by(found, |one| -one.by.abs())
}

/// How many of a row of the stock are left on every day of a booking.
fn left(rooms: &[Asking], stock: &[Owned], row: usize, asking: &Asking, served: &[Vec<Option<usize>>]) -> u32 {
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
