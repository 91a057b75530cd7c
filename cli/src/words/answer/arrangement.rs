//! Arrangements in words.

use crate::words::tolerance::NOTHING;
use elbowroom_model::article::{capital, several, the};
use elbowroom_model::{Brief, ItemId, Only, PieceId, Rule, SecondPlace, WallId};
use elbowroom_solver::arrangement::{Choices, NoRoom, NoRoomAt, Obstacle, SecondSeat};

/// The decisions as a title: `Back to the canal wall, return on the left, screen on the stair wall`.
pub(crate) fn title(brief: &Brief, choices: &Choices) -> String {
    let mut parts = vec![match (choices.seat_back, choices.faced) {
        (Some(back), _) => format!("Back to {}", the_wall(brief, back)),
        (None, Some(faced)) if choices.media_wall != Some(faced) => {
            format!("Free-standing, facing {}", the_wall(brief, faced))
        }
        (None, _) => "Free-standing".to_owned(),
    }];
    parts.extend(choices.hand.map(|hand| format!("return on the {}", hand.key())));
    match choices.media_wall {
        Some(wall) => parts.push(format!("screen on {}", the_wall(brief, wall))),
        None if brief.pieces.iter().any(|piece| piece.kind.carries_screen()) => parts.push("no screen".to_owned()),
        None => {}
    }
    parts.extend(choices.second_seats.iter().map(|row| second_seats(brief, row)));
    parts.join(", ")
}

/// Where the seats of one row stand: `armchairs on either side`.
fn second_seats(brief: &Brief, row: &[SecondSeat]) -> String {
    let first = row.first();
    let name = first.and_then(|seat| brief.piece(seat.piece)).map_or("", |piece| piece.name.as_str());
    let name = if row.len() < 2 { name.to_owned() } else { several(name) };
    let mut places: Vec<SecondPlace> = row.iter().map(|seat| seat.place).collect();
    places.dedup();
    let places = match places.as_slice() {
        [SecondPlace::Left, SecondPlace::Right] => "on either side",
        [SecondPlace::Left, SecondPlace::Right, SecondPlace::Opposite] => "on either side and opposite",
        [SecondPlace::Left] => "on the left",
        [SecondPlace::Right] => "on the right",
        _ => "opposite",
    };
    let hand = first.and_then(|seat| seat.hand);
    let hand = hand.map_or(String::new(), |hand| format!(" with its return on the {}", hand.key()));
    format!("{name} {places}{hand}")
}

/// Why an arrangement cannot hold: `Along the canal wall 140 cm is free; the sofa needs 150 cm at the least.`
pub(crate) fn no_room(brief: &Brief, reason: &NoRoom) -> String {
    let [has, needs] = brief.units.side_by_side(reason.has.max(0.0), reason.needs);
    let piece = |id: PieceId| the(brief.piece_name(id));
    match reason.place {
        NoRoomAt::Along { piece: id, wall, .. } if reason.rule == Rule::KeepFree => {
            format!("{} is kept free: {} must not stand at it.", capital(&the_wall(brief, wall)), piece(id))
        }
        NoRoomAt::Along { piece: id, wall, beside } => {
            let wall = the_wall(brief, wall);
            let free = match beside {
                Some(by) if reason.has < NOTHING => format!("{} leaves nothing free", the(&obstacle(brief, by))),
                Some(by) => format!("beside {} {has} is free", the(&obstacle(brief, by))),
                None => format!("{has} is free"),
            };
            format!("Along {wall} {free}; {} needs {needs} at the least.", piece(id))
        }
        NoRoomAt::Before { seat } => {
            format!("There is {has} for {} and what stands before it; they need {needs} at the least.", piece(seat))
        }
        NoRoomAt::Between { seat, other } => format!(
            "There is {has} for {}, {} and the distance between them; they need {needs} at the least.",
            piece(seat),
            piece(other)
        ),
    }
}

/// What keeps pieces off the floor, by its name: `hall door's landing`.
fn obstacle(brief: &Brief, obstacle: Obstacle) -> String {
    let name = |item: ItemId| brief.room.item_name(item);
    match obstacle {
        Obstacle::Landing(item) => format!("{}'s landing", name(item)),
        Obstacle::Swing(item) => format!("{}'s swing", name(item)),
        Obstacle::Item(item) => name(item).to_owned(),
        Obstacle::Fixed(fixed) => brief.room.fixed_name(fixed).to_owned(),
    }
}

/// A decision that the options are held to.
pub(super) fn only(brief: &Brief, only: &Only) -> String {
    match *only {
        Only::SeatBack(Some(wall)) => format!("back to {}", the_wall(brief, wall)),
        Only::SeatBack(None) => "seat free of the walls".to_owned(),
        Only::Facing(wall) => format!("facing {}", the_wall(brief, wall)),
        Only::Hand(hand) => format!("return on the {}", hand.key()),
        Only::MediaWall(Some(wall)) => format!("screen on {}", the_wall(brief, wall)),
        Only::MediaWall(None) => "no screen".to_owned(),
        Only::SecondSeat(seat, place) => {
            let piece = seat.and_then(|seat| brief.piece(seat));
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

#[cfg(test)]
mod tests {
    use elbowroom_model::{Brief, scenario};

    use super::{no_room, title};
    use elbowroom_solver::Site;
    use elbowroom_solver::arrangement::{Enumeration, enumerate};

    fn of(room: [u32; 2], pieces: &str) -> (Brief, Enumeration) {
        let [width, depth] = room;
        let walls = format!(
            "[{{ length: {width}, name: top }}, {{ length: {depth}, name: right side }}, {{ length: {width}, name: bottom }}, \
             {{ length: {depth}, name: left side }}]"
        );
        let brief = scenario::read(&format!("units: cm\nwalls: {walls}\npieces:\n{pieces}"), None).unwrap();
        let found = enumerate(&brief, &Site::of(&brief));
        (brief, found)
    }

    fn titled(room: [u32; 2], pieces: &str, key: &str) -> String {
        let (brief, found) = of(room, pieces);
        let arrangement = found.arrangements.iter().find(|arrangement| arrangement.key == key).unwrap();
        title(&brief, &arrangement.choices)
    }

    #[test]
    fn a_title_tells_the_decisions_in_words() {
        let corner = "  - { kind: corner-sofa }\n  - { kind: media-unit, needed: false }\n";
        let left = "Back to the top, return on the left, screen on the left side";
        assert_eq!(titled([700, 700], corner, "top/left/left-side"), left);
        assert_eq!(titled([700, 700], corner, "top/left/no-screen"), "Back to the top, return on the left, no screen");
        let free = "Free-standing, return on the left, screen on the top";
        assert_eq!(titled([700, 700], corner, "free-top/left/top"), free);
        let pair = "  - { kind: sofa }\n  - { kind: armchair, count: 2 }\n";
        let shared = "Back to the top, armchairs on either side";
        assert_eq!(titled([700, 700], pair, "top/armchairs-left-right"), shared);
        let free = "Free-standing, facing the bottom, armchairs opposite";
        assert_eq!(titled([700, 600], pair, "free-bottom/armchairs-opposite"), free);
    }

    #[test]
    fn what_has_no_room_is_told_with_what_there_is_and_what_it_needs() {
        let (brief, found) = of([600, 141], "  - { kind: sofa, width: 150..200, depth: 80..95 }\n");
        let dropped = found.dropped.iter().find(|dropped| dropped.arrangement.key == "right-side").unwrap();
        let told = no_room(&brief, &dropped.reason);
        assert_eq!(told, "Along the right side 140 cm is free; the sofa needs 150 cm at the least.");
    }
}
