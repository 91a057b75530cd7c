//! What to try once all is marked: the doors, the ways, the fronts, the feet.

use elbowroom_model::{Brief, Clearance, ItemId, ItemKind, PieceId, Swings};

use crate::answer::{RankedOption, Thing};

/// One thing to try.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum WalkStep {
    /// Open a door all the way.
    OpenDoor {
        /// The door.
        door: ItemId,
    },
    /// Walk a way with something as wide as it needs.
    Way {
        /// From here.
        from: Thing,
        /// To there.
        to: Thing,
        /// What it must have, mm.
        needs: f64,
        /// What it has, mm.
        width: f64,
        /// What it is narrowest between.
        between: Option<[Thing; 2]>,
    },
    /// Turn a wheelchair on its circle.
    Turn {
        /// mm.
        diameter: f64,
    },
    /// Pull out what opens or is drawn out before a front.
    Front {
        /// The piece, by its place in the brief.
        piece: PieceId,
        /// Clear before it, mm.
        clear: f64,
    },
    /// Sit, and reach the table with the feet still on the floor.
    FeetToTable {
        /// The seat.
        seat: Thing,
        /// The table.
        table: Thing,
        /// Between them, mm.
        clear: f64,
    },
    /// Sit, and look at the screen.
    Screen {
        /// The seat.
        seat: Thing,
        /// The media unit.
        unit: Thing,
        /// From front to front, mm.
        clear: f64,
    },
}

/// Everything to try, doors first.
pub(super) fn steps(brief: &Brief, option: &RankedOption) -> Vec<WalkStep> {
    let mut steps = doors(brief);
    steps.extend(option.routes.iter().map(|route| WalkStep::Way {
        from: route.from.into(),
        to: route.to.into(),
        needs: route.needs,
        width: route.width,
        between: route.pinch.map(|pinch| pinch.between.map(Thing::from)),
    }));
    steps.extend(option.turning_circle.map(|circle| WalkStep::Turn { diameter: circle.diameter }));
    steps.extend(fronts(brief, option));
    steps.extend(seats(option));
    steps
}

fn doors(brief: &Brief) -> Vec<WalkStep> {
    let swings_in =
        |kind: &ItemKind| matches!(kind, ItemKind::Door(door) if matches!(door.swings, Swings::In | Swings::Folds));
    let doors = brief.room.items().filter(|(_, item)| swings_in(&item.kind));
    doors.map(|(door, _)| WalkStep::OpenDoor { door }).collect()
}

fn fronts<'a>(brief: &'a Brief, option: &'a RankedOption) -> impl Iterator<Item = WalkStep> + 'a {
    option.layout.placed.iter().filter_map(|placed| {
        let clear = brief.rules.get(brief.piece(placed.piece)?.keeps_clear()?);
        (clear > 0.0).then_some(WalkStep::Front { piece: placed.piece, clear })
    })
}

fn seats(option: &RankedOption) -> impl Iterator<Item = WalkStep> + '_ {
    option.gaps.iter().filter_map(|gap| {
        let ([one, other], clear) = (gap.between, gap.clear);
        match gap.rule {
            Clearance::SeatToTable => Some(WalkStep::FeetToTable { seat: one, table: other, clear }),
            Clearance::ScreenToSeat => Some(WalkStep::Screen { seat: one, unit: other, clear }),
            _ => None,
        }
    })
}
