//! Keys that stay the same from run to run.

use elbowroom_model::article::several;
use elbowroom_model::{Brief, Hand, SecondPlace, WallId};

use super::stand::{Choices, SecondSeat};

/// Stable name: `canal-wall/left/stair-wall`, `free-stair-wall/stair-wall/armchairs-left-right`. `has_screen`: there is a
/// screen to speak of, whether it stands or not.
pub(super) fn key(brief: &Brief, has_screen: bool, choices: &Choices) -> String {
    let mut parts = vec![match (choices.seat_back, choices.faced) {
        (Some(back), _) => wall_slug(brief, back),
        (None, Some(faced)) => format!("free-{}", wall_slug(brief, faced)),
        (None, None) => "free".to_owned(),
    }];
    parts.extend(choices.hand.map(|hand| hand_word(hand).to_owned()));
    match choices.media_wall {
        Some(wall) => parts.push(wall_slug(brief, wall)),
        None if has_screen => parts.push("no-screen".to_owned()),
        None => {}
    }
    parts.extend(choices.second_seats.iter().map(|row| row_slug(brief, row)));
    parts.join("/")
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

const fn hand_word(hand: Hand) -> &'static str {
    match hand {
        Hand::Left => "left",
        Hand::Right => "right",
    }
}

const fn place_word(place: SecondPlace) -> &'static str {
    match place {
        SecondPlace::Left => "left",
        SecondPlace::Right => "right",
        SecondPlace::Opposite => "opposite",
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

fn row_slug(brief: &Brief, row: &[SecondSeat]) -> String {
    let first = row.first();
    let name = first.and_then(|seat| brief.piece(seat.piece)).map_or("", |piece| piece.name.as_str());
    let mut words = vec![if row.len() < 2 { slug(name) } else { slug(&several(name)) }];
    let mut places: Vec<SecondPlace> = row.iter().map(|seat| seat.place).collect();
    // One word where all are the same.
    if places.windows(2).all(|pair| pair[0] == pair[1]) {
        places.truncate(1);
    }
    words.extend(places.into_iter().map(|place| place_word(place).to_owned()));
    words.extend(first.and_then(|seat| seat.hand).map(|hand| format!("return-{}", hand_word(hand))));
    words.join("-")
}
