//! Load lists balance: what goes out comes back, and nothing is in two places on a day.

use std::sync::Arc;

use elbowroom_solver::stock::{Asking, By, Days, Move, Owned, Stop, assign, moves};
use proptest::prelude::*;

use super::{asking, drawn};
use crate::support::varied::Draw;

/// Work for each part of each step.
const WORK: u64 = 200_000_000;

/// Drawn bookings of solved rooms over some weeks, several of them one after the other.
fn drawn_bookings(draw: &mut Draw, solved: &[Asking]) -> Vec<Asking> {
    (0..draw.from(2, 8))
        .map(|_| {
            let from = draw.from(0, 6) as i32 * 4;
            let days = Days { from, to: from + [3, 3, 7, 9, 0][draw.from(0, 4) as usize] };
            Asking { days, ..solved[draw.from(0, solved.len() as u64 - 1) as usize].clone() }
        })
        .collect()
}

fn solved() -> &'static [Asking] {
    static SOLVED: std::sync::OnceLock<Vec<Asking>> = std::sync::OnceLock::new();
    SOLVED.get_or_init(|| (0..4).map(|number| asking(number, Days { from: 0, to: 0 }, 1)).collect())
}

/// How many of `row` come to `stop` less those that leave it, on the days that `holds`.
fn gained(all: &[Move], stop: Stop, row: usize, holds: impl Fn(i32) -> bool) -> i64 {
    let of = |one: &&Move| one.row == row && holds(one.day);
    let by = |one: &Move| i64::from(one.count) * (i64::from(one.to == stop) - i64::from(one.from == stop));
    all.iter().filter(of).map(by).sum()
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(60))]

    #[test]
    fn what_goes_out_comes_back_and_is_nowhere_twice(seed in 0_u64..1_000_000) {
        let mut draw = Draw(seed);
        let rooms = drawn_bookings(&mut draw, solved());
        let stock: Vec<Owned> = (0..12).map(|place| drawn(&mut draw, place)).collect();
        let found = assign(&rooms, &stock, WORK);
        let all = moves(&rooms, stock.len(), &found);
        prop_assert!(all.is_sorted());
        for (row, owned) in stock.iter().enumerate() {
            // All is back in the end.
            prop_assert_eq!(gained(&all, Stop::Store, row, |_| true), 0);
            for day in 0..60 {
                // What has left the store is never more than is owned.
                let out = -gained(&all, Stop::Store, row, |one| one <= day);
                prop_assert!((0..=i64::from(owned.piece.count)).contains(&out), "row {} on {}: {}", row, day, out);
            }
            for (room, asking) in rooms.iter().enumerate() {
                let of_row = found.rooms[room].asked.iter().filter(|one| one.by == By::Stock { row });
                let picked = of_row.map(|one| one.asked.pieces.len() as i64).sum::<i64>();
                let stop = Stop::Room(room);
                prop_assert_eq!(gained(&all, stop, row, |one| one <= asking.days.from.min(asking.days.to - 1)), if asking.days.from < asking.days.to { picked } else { 0 });
                for day in asking.days.from..asking.days.to {
                    prop_assert_eq!(gained(&all, stop, row, |one| one <= day), picked, "there on {}", day);
                }
                prop_assert_eq!(gained(&all, stop, row, |_| true), 0);
                // It comes on the first day and leaves on the last, but for what stays since the room is booked on.
                for one in all.iter().filter(|one| one.row == row) {
                    if one.to == stop {
                        prop_assert_eq!(one.day, asking.days.from);
                    }
                    if one.from == stop {
                        prop_assert_eq!(one.day, asking.days.to + i32::from(one.stays));
                    }
                    // A night on the van is one night.
                    if let Stop::Van { to, .. } = one.to {
                        prop_assert_eq!(one.day + 1, rooms[to].days.from);
                        prop_assert_eq!(gained(&all, one.to, row, |day| day <= one.day + 1), 0);
                    }
                    // What goes from a room to the same room is not carried.
                    if let (Stop::Room(from), Stop::Room(to)) = (one.from, one.to) {
                        prop_assert_eq!(one.stays, Arc::ptr_eq(&rooms[from].room, &rooms[to].room));
                    } else {
                        prop_assert!(!one.stays);
                    }
                }
            }
        }
    }
}

#[test]
fn what_a_room_has_already_stays_when_it_is_booked_on() {
    let first = solved().iter().find(|asking| !asking.room.has_no_option()).unwrap();
    let days = |from, to| Asking { days: Days { from, to }, ..first.clone() };
    let rooms = [days(4, 8), days(9, 12)];
    let mut draw = Draw(3);
    let stock: Vec<Owned> =
        (0..30).map(|place| drawn(&mut draw, place)).map(|one| Owned { away: Vec::new(), ..one }).collect();
    let found = assign(&rooms, &stock, WORK);
    let all = moves(&rooms, stock.len(), &found);
    let stays: Vec<&Move> = all.iter().filter(|one| one.stays).collect();
    assert!(!stays.is_empty() && stays.iter().all(|one| one.day == 9));
    // Nothing that stays is carried on that day.
    for one in &stays {
        assert!(!all.iter().any(|other| other.row == one.row && !other.stays && other.day == 8));
    }
}
