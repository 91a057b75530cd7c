//! What is carried on which day: out of the store, back, and from one room to the next.

use std::sync::Arc;

use super::{Asking, Assignment, By, Days};

/// Where a piece is carried from or to.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Stop {
    /// The store.
    Store,
    /// A room, by its place.
    Room(usize),
    /// Overnight on the van, from one room to the next.
    Van {
        /// Where it was collected, by its place.
        from: usize,
        /// Where it is due the day after, by its place.
        to: usize,
    },
}

/// Pieces that are carried on a day.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Move {
    /// When.
    pub day: i32,
    /// From where.
    pub from: Stop,
    /// To where.
    pub to: Stop,
    /// Row of the stock.
    pub row: usize,
    /// How many of it.
    pub count: u32,
    /// They stay where they are: the room is booked again the day after.
    pub stays: bool,
}

/// A row's pieces in a room.
struct Stay {
    room: usize,
    days: Days,
    count: u32,
    /// How many of them go on to another room, and not back to the store.
    going_on: u32,
}

/// All that is carried, by days: out on the first day of a booking and back on its last. A piece whose next booking begins
/// the day after is collected on that last day all the same, is on the van overnight, and comes straight there; or stays
/// where that is the same room.
#[must_use]
pub fn moves(rooms: &[Asking], stock: usize, found: &Assignment) -> Vec<Move> {
    let mut moves: Vec<Move> = (0..stock).flat_map(|row| of_row(rooms, found, row)).collect();
    moves.sort_unstable();
    moves
}

fn of_row(rooms: &[Asking], found: &Assignment, row: usize) -> Vec<Move> {
    let mut stays: Vec<Stay> = Vec::new();
    for (room, (asking, furnished)) in rooms.iter().zip(&found.rooms).enumerate() {
        let of_row = furnished.asked.iter().filter(|one| one.by == By::Stock { row });
        let count = u32::try_from(of_row.map(|one| one.asked.pieces.len()).sum::<usize>()).unwrap_or(u32::MAX);
        if count > 0 {
            stays.push(Stay { room, days: asking.days, count, going_on: 0 });
        }
    }
    stays.sort_by_key(|stay| (stay.days, stay.room));
    let mut moves = Vec::new();
    for place in 0..stays.len() {
        let (room, day, mut wanted) = (stays[place].room, stays[place].days.from, stays[place].count);
        let to = Stop::Room(room);
        // What stands in the room already comes before what stands in another.
        for same in [true, false] {
            let is_before = |before: &&mut Stay| {
                before.days.to.checked_add(1) == Some(day) && is_one_room(rooms, before.room, room) == same
            };
            for before in stays.iter_mut().filter(is_before) {
                let count = wanted.min(before.count - before.going_on);
                if count > 0 {
                    before.going_on += count;
                    wanted -= count;
                    let from = Stop::Room(before.room);
                    if same {
                        moves.push(Move { day, from, to, row, count, stays: true });
                    } else {
                        let van = Stop::Van { from: before.room, to: room };
                        moves.push(Move { day: before.days.to, from, to: van, row, count, stays: false });
                        moves.push(Move { day, from: van, to, row, count, stays: false });
                    }
                }
            }
        }
        if wanted > 0 {
            moves.push(Move { day, from: Stop::Store, to, row, count: wanted, stays: false });
        }
    }
    let back = stays.iter().filter(|stay| stay.going_on < stay.count).map(|stay| Move {
        day: stay.days.to,
        from: Stop::Room(stay.room),
        to: Stop::Store,
        row,
        count: stay.count - stay.going_on,
        stays: false,
    });
    moves.extend(back);
    moves
}

/// Whether two bookings are of one room.
fn is_one_room(rooms: &[Asking], one: usize, other: usize) -> bool {
    rooms.get(one).zip(rooms.get(other)).is_some_and(|(one, other)| Arc::ptr_eq(&one.room, &other.room))
}
