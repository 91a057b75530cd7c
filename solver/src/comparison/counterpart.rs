//! The same option in another answer of one room: seats and screen that stand in both stand alike, whatever else came or went.

use elbowroom_model::{Hand, PieceId, SecondPlace, WallId};

use super::side::{In, Side, are_of_one_row};
use crate::answer::{Answer, RankedOption};
use crate::arrangement::{SecondSeat, alike};

/// An option as another answer has it.
#[derive(Debug, Clone, PartialEq)]
pub struct Counterpart<'a> {
    /// There.
    pub option: &'a RankedOption,
    /// Seats and screens that stand here alone, by their places in the brief here.
    pub only_here: Vec<PieceId>,
    /// Seats and screens that stand there alone, by their places in the brief there.
    pub only_there: Vec<PieceId>,
}

impl Counterpart<'_> {
    /// The same stands in both.
    #[must_use]
    pub const fn is_whole(&self) -> bool {
        self.only_here.is_empty() && self.only_there.is_empty()
    }
}

/// The option of `there` that puts what stands in both as `here` does: the one with the least that came or went, and of
/// several the best. `None` where there is none.
#[must_use]
pub fn counterpart<'a>(here: Side<'_>, there: &'a Answer) -> Option<Counterpart<'a>> {
    let found = there.options.iter().filter_map(|option| against(here, Side { brief: &there.brief, option }));
    found.min_by_key(|found| found.only_here.len() + found.only_there.len())
}

/// One option against the other; `None` where they are two arrangements.
fn against<'a>(here: Side<'_>, there: Side<'a>) -> Option<Counterpart<'a>> {
    if !is_main_seat_alike(here, there) {
        return None;
    }
    let [here_seats, there_seats] = [here, there].map(|side| side.option.choices.seats());
    let mut unmatched = there_seats;
    let mut only_here = Vec::new();
    for seat in here_seats {
        let twin = unmatched.iter().position(|other| stand_alike(here.of(seat), there.of(*other)));
        match twin {
            Some(place) => {
                unmatched.remove(place);
            }
            None => only_here.push(seat.piece),
        }
    }
    let mut only_there: Vec<PieceId> = unmatched.iter().map(|seat| seat.piece).collect();
    // One that stands in both, elsewhere, makes another arrangement.
    let moved = |one: &PieceId| only_there.iter().any(|other| are_of_one_row(here.of(*one), there.of(*other)));
    if only_here.iter().any(moved) {
        return None;
    }
    only_here = by_name(here, there, only_here);
    only_there = by_name(there, here, only_there);
    let screens = [here, there].map(|side| side.option.choices.media_wall);
    match screens {
        [None, None] => {}
        [Some(one), Some(other)] if is_same_wall(here.of(one), there.of(other)) => {}
        [Some(_), Some(_)] => return None,
        [Some(_), None] => only_here.extend(screen(here)),
        [None, Some(_)] => only_there.extend(screen(there)),
    }
    Some(Counterpart { option: there.option, only_here, only_there })
}

/// `only`, with those of them that others of one row stand in for called by a name that nothing bears there: of two armchairs
/// of which one is left it is the second that went, whichever side it stood on; where none has its name any more, the last.
fn by_name(here: Side<'_>, there: Side<'_>, only: Vec<PieceId>) -> Vec<PieceId> {
    let borne = |seat: PieceId| {
        let name = here.brief.piece_name(seat);
        there.option.choices.seats().iter().any(|other| there.brief.piece_name(other.piece) == name)
    };
    let mut free: Vec<PieceId> = here.option.choices.seats().iter().map(|seat| seat.piece).collect();
    free.retain(|seat| !borne(*seat));
    let mut named = |seat: PieceId| {
        let stands_in = free.iter().rposition(|other| are_of_one_row(here.of(seat), here.of(*other)));
        stands_in.map_or(seat, |place| free.remove(place))
    };
    only.into_iter().map(&mut named).collect()
}

/// Back to the same wall or free with the same wall before it, the same hand, and the same seat.
fn is_main_seat_alike(here: Side<'_>, there: Side<'_>) -> bool {
    let (one, other) = (&here.option.choices, &there.option.choices);
    let same_wall = |one: Option<WallId>, other: Option<WallId>| match (one, other) {
        (Some(one), Some(other)) => is_same_wall(here.of(one), there.of(other)),
        (None, None) => true,
        (Some(_), None) | (None, Some(_)) => false,
    };
    // Which of several walls that run one way a free seat is said to face is settled by the room before them.
    let faces_alike = same_wall(one.faced, other.faced)
        || (one.seat_back.is_none() && other.seat_back.is_none() && alike(one.facing, other.facing));
    one.hand == other.hand
        && same_wall(one.seat_back, other.seat_back)
        && faces_alike
        && are_of_one_row(here.of(here.option.main_seat), there.of(there.option.main_seat))
}

fn is_same_wall(one: In<'_, WallId>, other: In<'_, WallId>) -> bool {
    one.brief.room.wall_name(one.id) == other.brief.room.wall_name(other.id)
}

fn stand_alike(one: In<'_, SecondSeat>, other: In<'_, SecondSeat>) -> bool {
    let stands = |seat: SecondSeat| -> (SecondPlace, Option<Hand>) { (seat.place, seat.hand) };
    stands(one.id) == stands(other.id)
        && are_of_one_row(In { brief: one.brief, id: one.id.piece }, In { brief: other.brief, id: other.id.piece })
}

/// The piece that carries the screen.
fn screen(side: Side<'_>) -> Option<PieceId> {
    let placed = side.option.layout.placed.iter().map(|placed| placed.piece);
    placed.into_iter().find(|id| side.brief.piece(*id).is_some_and(|piece| piece.kind.carries_screen()))
}
