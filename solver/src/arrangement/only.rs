//! Arrangements that are wanted: those whose decisions are what the brief holds them to.

use elbowroom_model::{Brief, Only, PieceId, Point, WallId};

use super::stand::{Choices, Role};
use super::tolerance::AS_SQUARE;

/// Whether `choices` are among those that are wanted: values of one decision are alternatives, decisions all hold, by the
/// brief and by whoever narrows it further; and nothing of what is excluded holds.
pub(super) fn is_wanted(brief: &Brief, choices: &Choices) -> bool {
    let keeps = |all: &[Only]| {
        let holds = |only: &Only| {
            let alike = all.iter().filter(|other| other.is_about_the_same(only));
            alike.into_iter().any(|only| is_so(brief, choices, only))
        };
        all.iter().all(holds)
    };
    let is_excluded = brief.wanted.exclude.iter().any(|only| is_anywhere_so(brief, choices, only));
    keeps(&brief.only) && keeps(&brief.wanted.only) && !is_excluded
}

/// As [`is_so`]; of several second seats one is enough.
fn is_anywhere_so(brief: &Brief, choices: &Choices, only: &Only) -> bool {
    match *only {
        Only::SecondSeat(seat, place) => {
            let mut seats = choices.second_seats.iter().flatten();
            seats.any(|second| seat.is_none_or(|seat| seat == second.piece) && second.place == place)
        }
        _ => is_so(brief, choices, only),
    }
}

fn is_so(brief: &Brief, choices: &Choices, only: &Only) -> bool {
    match *only {
        Only::SeatBack(wall) => choices.seat_back == wall,
        Only::Facing(wall) => is_faced(brief, choices.facing, wall),
        Only::Hand(hand) => choices.hand == Some(hand),
        Only::MediaWall(wall) => choices.media_wall == wall,
        Only::SecondSeat(seat, place) => {
            let seats = choices.second_seats.iter().flatten();
            let mut seats = seats.filter(|second| seat.is_none_or(|seat| seat == second.piece));
            seats.clone().next().is_some() && seats.all(|second| second.place == place)
        }
    }
}

/// Whether the options are held to a decision about a piece of this role, which it must stand to make.
pub(super) fn asks_for(brief: &Brief, role: Role, piece: PieceId) -> bool {
    let all = || brief.only.iter().chain(&brief.wanted.only);
    let may_have_none = all().any(|only| *only == Only::MediaWall(None));
    all().any(|only| match *only {
        Only::MediaWall(wall) => role.is_screen() && wall.is_some() && !may_have_none,
        Only::SecondSeat(seat, _) => role.is_second_seat() && seat.is_none_or(|seat| seat == piece),
        Only::SeatBack(_) | Only::Facing(_) | Only::Hand(_) => false,
    })
}

/// Whether no wall is faced more squarely than `wall`.
fn is_faced(brief: &Brief, facing: Point, wall: WallId) -> bool {
    let squarely = |wall: &elbowroom_model::Wall| -wall.inward().dot(facing);
    let most = brief.room.walls.iter().map(squarely).fold(f64::NEG_INFINITY, f64::max);
    brief.room.wall(wall).is_some_and(|wall| squarely(wall) > most - AS_SQUARE)
}
