//! Arrangements in words.

use elbowroom_model::article::the;
use elbowroom_model::{Brief, Hand, Only, SecondPlace, WallId};

/// A decision that the options are held to.
pub(super) fn only(brief: &Brief, only: &Only) -> String {
    match *only {
        Only::SeatBack(Some(wall)) => format!("back to {}", the_wall(brief, wall)),
        Only::SeatBack(None) => "seat free of the walls".to_owned(),
        Only::Facing(wall) => format!("facing {}", the_wall(brief, wall)),
        Only::Hand(hand) => format!("return on the {}", side(hand)),
        Only::MediaWall(Some(wall)) => format!("screen on {}", the_wall(brief, wall)),
        Only::MediaWall(None) => "no screen".to_owned(),
        Only::SecondSeat(seat, place) => {
            let piece = seat.and_then(|seat| brief.pieces.get(seat));
            let name = piece.map_or("every second seat", |piece| piece.name.as_str());
            match place {
                SecondPlace::Opposite => format!("{name} opposite"),
                SecondPlace::Left => format!("{name} at the left"),
                SecondPlace::Right => format!("{name} at the right"),
            }
        }
    }
}

/// A wall in a sentence: `the canal wall`, but `wall 3`.
pub(super) fn the_wall(brief: &Brief, wall: WallId) -> String {
    the(brief.room.wall(wall).map_or("", |wall| wall.name.as_str()))
}

/// On which side a hand is.
const fn side(hand: Hand) -> &'static str {
    match hand {
        Hand::Left => "left",
        Hand::Right => "right",
    }
}
