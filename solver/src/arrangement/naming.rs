//! Keys that stay the same from run to run, and titles in words.

use elbowroom_model::article::the;
use elbowroom_model::{Brief, Hand, WallId};

use super::cast::Cast;
use super::media::ScreenPlace;
use super::seating::Seating;
use super::second_seat::SecondSeat;
use super::stand::Role;

/// Stable name: `canal-wall/left/stair-wall`, `free-stair-wall/stair-wall/armchairs-left-right`.
pub(super) fn key(
    brief: &Brief,
    cast: &Cast,
    seating: &Seating,
    screen: Option<ScreenPlace>,
    company: &[Vec<SecondSeat>],
) -> String {
    let mut parts = vec![match (seating.back, seating.faced) {
        (Some(back), _) => wall_slug(brief, back),
        (None, Some(faced)) => format!("free-{}", wall_slug(brief, faced)),
        (None, None) => "free".to_owned(),
    }];
    parts.extend(seating.hand.map(|hand| hand_word(hand).to_owned()));
    match screen {
        Some(place) => parts.push(wall_slug(brief, place.wall)),
        None if cast.screen.is_some() => parts.push("no-screen".to_owned()),
        None => {}
    }
    parts.extend(company.iter().map(|row| row_slug(brief, row)));
    parts.join("/")
}

/// The decisions in words: `Back to the canal wall, return on the left, screen on the stair wall`.
pub(super) fn title(
    brief: &Brief,
    cast: &Cast,
    seating: &Seating,
    screen: Option<ScreenPlace>,
    company: &[Vec<SecondSeat>],
) -> String {
    let mut parts = vec![match (seating.back, seating.faced) {
        (Some(back), _) => format!("Back to {}", the_wall(brief, back)),
        (None, Some(faced)) if screen.is_none_or(|place| place.wall != faced) => {
            format!("Free-standing, facing {}", the_wall(brief, faced))
        }
        (None, _) => "Free-standing".to_owned(),
    }];
    parts.extend(seating.hand.map(|hand| format!("return on the {}", hand_word(hand))));
    match screen {
        Some(place) => parts.push(format!("screen on {}", the_wall(brief, place.wall))),
        None if cast.screen.is_some() => parts.push("no screen".to_owned()),
        None => {}
    }
    parts.extend(company.iter().map(|row| row_words(brief, row)));
    parts.join(", ")
}

/// A wall in a sentence: `the canal wall`, but `wall 3`.
pub(super) fn the_wall(brief: &Brief, wall: WallId) -> String {
    let name = brief.room.wall(wall).map_or("", |wall| wall.name.as_str());
    the(name)
}

/// Makes every key one of a kind: where names differ only in what a slug leaves out, the later ones get a number.
pub(super) fn distinct(keys: &mut [&mut String]) {
    let mut taken = std::collections::BTreeSet::new();
    for key in keys {
        let plain = key.clone();
        let mut number = 2_usize;
        while !taken.insert(key.clone()) {
            **key = format!("{plain}-{number}");
            number += 1;
        }
    }
}

pub(super) fn hand_word(hand: Hand) -> &'static str {
    match hand {
        Hand::Left => "left",
        Hand::Right => "right",
    }
}

fn place_word(role: Role) -> &'static str {
    match role {
        Role::LeftOf => "left",
        Role::RightOf => "right",
        _ => "opposite",
    }
}

fn wall_slug(brief: &Brief, wall: WallId) -> String {
    let name = brief.room.wall(wall).map_or("", |wall| wall.name.as_str());
    match slug(name) {
        empty if empty.is_empty() => format!("wall-{}", wall.0 + 1),
        slug => slug,
    }
}

/// Letters and digits in lower case, everything else one hyphen.
fn slug(name: &str) -> String {
    let plain = name.chars().flat_map(char::to_lowercase).map(|c| if c.is_alphanumeric() { c } else { '-' });
    let plain: String = plain.collect();
    plain.split('-').filter(|word| !word.is_empty()).collect::<Vec<_>>().join("-")
}

/// What the seats of a row are called together: the name of the one, or the common part of the names and an s.
fn row_name(brief: &Brief, row: &[SecondSeat]) -> String {
    let first = row.first().and_then(|seat| brief.pieces.get(seat.piece));
    let name = first.map_or("", |piece| piece.name.as_str());
    if row.len() < 2 {
        return name.to_owned();
    }
    let stem = name.trim_end_matches(|c: char| c.is_ascii_digit()).trim_end();
    format!("{stem}s")
}

/// The places of a row, one word where all are the same.
fn places(row: &[SecondSeat]) -> Vec<&'static str> {
    let mut places: Vec<_> = row.iter().map(|seat| place_word(seat.role)).collect();
    if places.windows(2).all(|pair| pair[0] == pair[1]) {
        places.truncate(1);
    }
    places
}

fn row_slug(brief: &Brief, row: &[SecondSeat]) -> String {
    let mut words = vec![slug(&row_name(brief, row))];
    words.extend(places(row).into_iter().map(str::to_owned));
    words.extend(row_hand(row).map(|hand| format!("return-{}", hand_word(hand))));
    words.join("-")
}

fn row_words(brief: &Brief, row: &[SecondSeat]) -> String {
    let mut places = places(row);
    places.dedup();
    let places = match places.as_slice() {
        ["left", "right"] => "on either side".to_owned(),
        ["left", "right", "opposite"] => "on either side and opposite".to_owned(),
        [side @ ("left" | "right")] => format!("on the {side}"),
        _ => "opposite".to_owned(),
    };
    let hand = row_hand(row).map_or(String::new(), |hand| format!(" with its return on the {}", hand_word(hand)));
    format!("{} {places}{hand}", row_name(brief, row))
}

fn row_hand(row: &[SecondSeat]) -> Option<Hand> {
    row.first().and_then(|seat| seat.hand)
}
