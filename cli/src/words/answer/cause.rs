//! Causes in the room's own words.

use elbowroom_model::article::the;
use elbowroom_model::{Brief, Clearance, PieceId, Rule};
use elbowroom_solver::rules::{Cause, With};
use elbowroom_solver::sizes::Holding;

/// What holds a size of `piece`: `hall door swing`, `the most asked for`, `bend, on the way in`.
pub(crate) fn holding(brief: &Brief, piece: PieceId, by: &Holding) -> String {
    match by {
        Holding::Most => "the most asked for".to_owned(),
        Holding::Way(point) => {
            let points = brief.way.as_ref().map_or(&[][..], |way| &way.points);
            let point = point.and_then(|point| points.get(point));
            point.map_or_else(|| "the way in".to_owned(), |point| format!("{}, on the way in", point.name))
        }
        Holding::Cause(cause) => kept_from(brief, piece, cause),
    }
}

/// What `piece` keeps from: `hall door swing`, `canal wall`, `way from hall door to kitchen`.
pub(crate) fn kept_from(brief: &Brief, piece: PieceId, cause: &Cause) -> String {
    match cause.with {
        With::Itself => piece_name(brief, cause.piece),
        With::Wall(wall) => brief.room.wall_name(wall).to_owned(),
        With::Fixed(fixed) => brief.room.fixed_name(fixed).to_owned(),
        With::Piece(other) if other == piece => piece_name(brief, cause.piece),
        // Two others, by way of which it is held: one of them alone would be no reason.
        With::Piece(other) if cause.piece != piece => {
            format!("{} and {}", piece_name(brief, cause.piece), piece_name(brief, other))
        }
        With::Piece(other) => piece_name(brief, other),
        With::Item(item) => {
            let name = brief.room.item_name(item);
            match cause.rule {
                Rule::DoorSwing => format!("{name} swing"),
                Rule::Clearance(Clearance::DoorLanding) => format!("{name} landing"),
                Rule::Clearance(Clearance::LatchSide) => format!("floor beside the latch of {}", the(name)),
                Rule::KeepClear => format!("{name} clearance"),
                _ => name.to_owned(),
            }
        }
        With::Route(demand) => {
            let from = brief.room.item_name(demand.from);
            format!("way from {from} to {}", demand.to.name(brief))
        }
    }
}

fn piece_name(brief: &Brief, piece: PieceId) -> String {
    brief.piece_name(piece).to_owned()
}

#[cfg(test)]
mod tests {
    use elbowroom_model::{Clearance, PieceId, scenario};
    use elbowroom_solver::rules::{Cause, With};

    use super::kept_from;

    #[test]
    fn what_two_others_keep_between_them_names_both() {
        let text = "units: cm\nwalls: [{ length: 500 }, { length: 400 }, { length: 500 }, { length: 400 }]\npieces:\n  \
                    - { kind: sofa }\n  - { kind: coffee-table }\n  - { kind: bookcase }\n";
        let brief = scenario::read(text, None).unwrap();
        let cause = Cause { rule: Clearance::SeatToTable.into(), piece: PieceId(1), with: With::Piece(PieceId(0)) };
        assert_eq!(kept_from(&brief, PieceId(2), &cause), "coffee table and sofa");
        assert_eq!(kept_from(&brief, PieceId(1), &cause), "sofa");
        assert_eq!(kept_from(&brief, PieceId(0), &cause), "coffee table");
    }
}
