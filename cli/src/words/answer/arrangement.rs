//! Why an arrangement cannot hold, and what options are held to, in words.

use crate::words::tolerance::NOTHING;
use elbowroom_model::article::{capital, the};
use elbowroom_model::{Brief, ItemId, Only, PieceId, Rounding, Rule, SecondPlace, WallId};
use elbowroom_solver::arrangement::{NoRoom, NoRoomAt, Obstacle};

/// Why an arrangement cannot hold: `Along the canal wall 140 cm is free; the sofa needs 150 cm at the least.`
pub(crate) fn no_room(brief: &Brief, reason: &NoRoom) -> String {
    let [has, needs] = brief.units.side_by_side(reason.has.max(0.0), reason.needs);
    let piece = |id: PieceId| the(brief.piece_name(id));
    match reason.place {
        NoRoomAt::Along { piece: id, wall, .. } if reason.rule == Rule::KeepFree => {
            format!("{} is kept free: {} must not stand at it.", capital(&the_wall(brief, wall)), piece(id))
        }
        NoRoomAt::Along { piece: id, wall, free, beside } => along(brief, reason, id, wall, &Taped { free, beside }),
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

/// What a tape finds free along a wall, mm, and what ends it.
struct Taped {
    free: f64,
    beside: Option<Obstacle>,
}

/// Along a wall: what a tape finds free, and what is missing where the piece reaches past that as far as it may.
fn along(brief: &Brief, reason: &NoRoom, piece: PieceId, wall: WallId, taped: &Taped) -> String {
    let free = taped.free;
    let [has, needs] = brief.units.side_by_side(free.max(0.0), reason.needs);
    let is_free = match taped.beside {
        Some(by) if free < NOTHING => format!("{} leaves nothing free", the(&obstacle(brief, by))),
        Some(by) => format!("beside {} {has} is free", the(&obstacle(brief, by))),
        None => format!("{has} is free"),
    };
    let reaches = reason.has - free > NOTHING;
    let still = reaches.then(|| brief.units.words(reason.short_by(), Rounding::Up));
    let still = still.map_or_else(String::new, |by| format!(", and lacks {by} even off the wall or past its end"));
    let piece = the(brief.piece_name(piece));
    format!("Along {} {is_free}; {piece} needs {needs} at the least{still}.", the_wall(brief, wall))
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
    use elbowroom_model::scenario;

    use super::no_room;
    use elbowroom_solver::Site;
    use elbowroom_solver::arrangement::enumerate;

    #[test]
    fn what_has_no_room_is_told_with_what_there_is_and_what_it_needs() {
        let walls = "[{ length: 600 }, { length: 141, name: right side }, { length: 600 }, { length: 141 }]";
        let pieces = "[{ kind: sofa, width: 150..200, depth: 80..95 }]";
        let brief = scenario::read(&format!("units: cm\nwalls: {walls}\npieces: {pieces}\n"), None).unwrap();
        let found = enumerate(&brief, &Site::of(&brief));
        let dropped = found.dropped.iter().find(|dropped| dropped.arrangement.key == "right-side").unwrap();
        let told = no_room(&brief, &dropped.reason);
        assert_eq!(told, "Along the right side 140 cm is free; the sofa needs 150 cm at the least.");
    }
}
