//! What no assignment can better: where something was not decided, that may be more than was found.

use super::assign::{priorities, solve, weight};

use super::fit::points;
use super::hoped::{hoped, lacks_nothing};
use super::statement::{Refusals, Statement};
use super::{Asking, Assignment, Owned, Proven, Served};

/// The most that a room's arrangement brings.
const BEST_SCORE: i64 = 100;

/// The assignment with what can be at most, each set that is not known to be unfit counted as one that fits.
pub(super) fn told(rooms: &[Asking], stock: &[Owned], found: Assignment, work: u64) -> Assignment {
    let bounds = if lacks_nothing(rooms, &found) {
        found.must.clone()
    } else {
        hoped(rooms, stock, &found, Refusals::Decided, work).1.must
    };
    let mut all_before = true;
    let must = found.must.iter().zip(bounds).map(|(served, bound)| {
        // Where less of a priority is served than can be, nothing is known of the next.
        let most = if all_before { bound.count.at_most } else { served.of as i64 };
        let mut told = *served;
        let more = undecided_must(rooms, served.priority);
        told.count.at_most = (most + more).min(served.of as i64).max(served.count.found);
        all_before &= told.count.is_proven();
        told
    });
    let points = points_at_most(rooms, stock, &found, work);
    Assignment { must: must.collect(), points, ..found }
}

/// Must-haves of rooms of which nobody knows whether anything fits.
fn undecided_must(rooms: &[Asking], priority: u32) -> i64 {
    let rooms = rooms.iter().filter(|asking| asking.priority == priority && is_unknown(asking));
    rooms.map(|asking| asking.asked().iter().filter(|asked| asked.must).count() as i64).sum()
}

fn is_unknown(asking: &Asking) -> bool {
    asking.room.has_no_option() && asking.room.is_undecided()
}

/// The points, and what they can be at most.
fn points_at_most(rooms: &[Asking], stock: &[Owned], found: &Assignment, work: u64) -> Proven {
    let unknown: Vec<usize> = (0..rooms.len()).filter(|room| is_unknown(&rooms[*room])).collect();
    let of_unknown: i64 = unknown.iter().map(|room| most_of(rooms, stock, *room)).sum();
    let is_decided = |asking: &Asking| asking.room.refused.iter().all(|refused| refused.is_decided);
    let at_most = if rooms.iter().all(is_decided) {
        found.points.at_most
    } else {
        let stated = Statement::of(rooms, stock, Refusals::Decided);
        let solved = solve(rooms, &stated, &stated.as_found(found), work);
        let counts = |must: &[Served]| must.iter().map(|served| served.count.found).collect::<Vec<_>>();
        if counts(&solved.must) == counts(&found.must) {
            solved.points.at_most
        } else {
            // Points are only ever compared beside as many must-haves.
            (0..rooms.len()).filter(|room| !unknown.contains(room)).map(|room| most_of(rooms, stock, room)).sum()
        }
    };
    Proven { at_most: (at_most + of_unknown).max(found.points.found), ..found.points }
}

/// What a room can bring at the very most.
fn most_of(rooms: &[Asking], stock: &[Owned], room: usize) -> i64 {
    let asking = &rooms[room];
    let each = asking.asked().into_iter().map(|asked| {
        let worth = stock.iter().filter_map(|owned| {
            let (piece, stands_in) = asking.room.piece_of(&asked.pieces, owned.piece.kind)?;
            Some(points(piece, stands_in, &owned.piece) * asked.pieces.len() as i64)
        });
        worth.max().unwrap_or(0).max(0)
    });
    (each.sum::<i64>() + BEST_SCORE) * weight(rooms, room, &priorities(rooms))
}
