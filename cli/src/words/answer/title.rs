//! What an arrangement is called, in plain words: where the main seat stands and what it faces, its hand and every side as one
//! sits on it, the screen, the other seats that stand.

use elbowroom_model::article::{capital, the};
use elbowroom_model::{Brief, Hand, PieceId, SecondPlace};
use elbowroom_solver::Layout;
use elbowroom_solver::answer::RankedOption;
use elbowroom_solver::arrangement::Choices;
use elbowroom_solver::group_places::{GroupBy, GroupPlace, group_places};
use elbowroom_solver::judge::JudgedRoom;
use elbowroom_solver::shop::OptionFits;

use super::arrangement::the_wall;
use super::second_seats::{self, unnumbered};

/// What a title tells of.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Arranged<'a> {
    /// The seat that the others stand about.
    main_seat: PieceId,
    /// The decisions.
    choices: &'a Choices,
    /// A screen stands, whether at a wall or not.
    has_screen: bool,
    /// Where the pieces stand, where that is known.
    layout: Option<&'a Layout>,
}

impl<'a> From<&'a RankedOption> for Arranged<'a> {
    fn from(option: &'a RankedOption) -> Self {
        let choices = &option.choices;
        let layout = Some(&option.layout);
        Self { main_seat: option.main_seat, choices, has_screen: choices.media_wall.is_some(), layout }
    }
}

impl<'a> From<&'a OptionFits> for Arranged<'a> {
    fn from(option: &'a OptionFits) -> Self {
        let choices = &option.choices;
        Self { main_seat: option.main_seat, choices, has_screen: choices.media_wall.is_some(), layout: None }
    }
}

impl<'a> From<&'a JudgedRoom> for Arranged<'a> {
    fn from(room: &'a JudgedRoom) -> Self {
        let screen = |id: PieceId| room.brief.piece(id).is_some_and(|piece| piece.kind.carries_screen());
        let has_screen = room.layout.placed.iter().any(|placed| screen(placed.piece));
        Self { main_seat: room.main_seat, choices: &room.choices, has_screen, layout: Some(&room.layout) }
    }
}

/// `Back to the canal wall, return on your left as you sit, screen on the stair wall`,
/// `Sofa free in the room, facing the screen on the party wall, armchairs on either side`.
pub(crate) fn title<'a>(brief: &Brief, of: impl Into<Arranged<'a>>) -> String {
    capital(&title_within(brief, of))
}

/// The same within a sentence.
pub(crate) fn title_within<'a>(brief: &Brief, of: impl Into<Arranged<'a>>) -> String {
    let Arranged { main_seat, choices, has_screen, layout } = of.into();
    let mut parts = vec![seat(brief, main_seat, choices)];
    let faces_screen = choices.faced.is_some() && choices.faced == choices.media_wall;
    parts.extend(choices.faced.map(|wall| match faces_screen {
        true => format!("facing the screen on {}", the_wall(brief, wall)),
        false => format!("facing {}", the_wall(brief, wall)),
    }));
    parts.extend(choices.hand.map(|hand| returns(brief, main_seat, hand)));
    match choices.media_wall {
        Some(_) if faces_screen => {}
        Some(wall) => parts.push(format!("screen on {}", the_wall(brief, wall))),
        None if has_screen => parts.push("screen free in the room".to_owned()),
        None if brief.pieces.iter().any(|piece| piece.kind.carries_screen()) => parts.push("no screen".to_owned()),
        None => {}
    }
    parts.extend(choices.second_seats.iter().filter_map(|row| second_seats::words(brief, main_seat, row)));
    let groups = layout.map(|layout| group_places(brief, layout)).unwrap_or_default();
    parts.extend(groups.into_iter().map(|place| group(brief, place)));
    parts.join(", ")
}

/// The sides of the returns: `return on your left as you sit`, `chaise on your left as you sit, second return on the right`.
fn returns(brief: &Brief, seat: PieceId, hand: Hand) -> String {
    let has_two = brief.piece(seat).is_some_and(|piece| piece.second_return.is_some());
    if !has_two {
        return format!("return on your {} as you sit", hand.key());
    }
    let what = if brief.piece(seat).is_some_and(|piece| piece.chaise) { "chaise" } else { "return" };
    let other = if hand == Hand::Left { Hand::Right } else { Hand::Left };
    format!("{what} on your {} as you sit, second return on the {}", hand.key(), other.key())
}

/// Said where a title tells sides: on a plan, seen from above, they may lie the other way round.
pub(crate) const SIDES: &str = "Left and right are as one sits on the main seat.";

/// Whether the title of these decisions tells a side without saying so: that of a second seat.
pub(crate) fn tells_sides(choices: &Choices) -> bool {
    choices.second_seats.iter().flatten().any(|seat| seat.place != SecondPlace::Opposite)
}

/// Where a group of its own stands: `reading group by the bay window`.
fn group(brief: &Brief, GroupPlace { group, by }: GroupPlace<'_>) -> String {
    let name = if group.ends_with("group") { group.to_owned() } else { format!("{group} group") };
    match by {
        GroupBy::Window(window) => format!("{name} by {}", the(brief.room.item_name(window))),
        GroupBy::Wall(wall) => format!("{name} at {}", the_wall(brief, wall)),
        GroupBy::Free => format!("{name} free in the room"),
    }
}

/// Where the main seat stands. One of several alike is told as that, for its number says nothing; at a wall a seat goes
/// without saying, unless others of its row stand about it.
fn seat(brief: &Brief, main_seat: PieceId, choices: &Choices) -> String {
    let stand = choices.second_seats.iter().flatten();
    let has_like = second_seats::are_alike(brief, main_seat, stand.map(|seat| seat.piece));
    let name = brief.piece_name(main_seat);
    let alike = brief.piece(main_seat).is_some_and(|piece| piece.alike.is_some());
    let name = if alike { unnumbered(name) } else { name };
    match (choices.seat_back, has_like) {
        (Some(back), false) => format!("back to {}", the_wall(brief, back)),
        (Some(back), true) => format!("one {name} back to {}", the_wall(brief, back)),
        (None, false) => format!("{name} free in the room"),
        (None, true) => format!("one {name} free in the room"),
    }
}

#[cfg(test)]
mod tests;
