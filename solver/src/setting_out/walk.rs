//! What to try once all is marked: the doors, the ways, the fronts, the feet.

use elbowroom_model::{Brief, Clearance, ItemKind, PieceKind, Swings};

use crate::outcome::OptionFound;

/// One thing to try.
#[derive(Debug, Clone, PartialEq)]
pub enum WalkStep {
    /// Open a door all the way.
    OpenDoor {
        /// The door.
        door: String,
    },
    /// Walk a way with something as wide as it needs.
    Way {
        /// From here.
        from: String,
        /// To there.
        to: String,
        /// What it must have, mm.
        needs: f64,
        /// What it has, mm.
        width: f64,
        /// What it is narrowest between.
        between: Option<[String; 2]>,
    },
    /// Turn a wheelchair on its circle.
    Turn {
        /// mm.
        diameter: f64,
    },
    /// Pull out what opens or is drawn out before a front.
    Front {
        /// The piece.
        piece: String,
        /// Its kind.
        kind: PieceKind,
        /// Clear before it, mm.
        clear: f64,
    },
    /// Sit, and reach the table with the feet still on the floor.
    FeetToTable {
        /// The seat.
        seat: String,
        /// The table.
        table: String,
        /// Between them, mm.
        clear: f64,
    },
    /// Sit, and look at the screen.
    Screen {
        /// The seat.
        seat: String,
        /// The media unit.
        unit: String,
        /// From front to front, mm.
        clear: f64,
    },
}

/// Everything to try, doors first.
pub(super) fn steps(brief: &Brief, option: &OptionFound) -> Vec<WalkStep> {
    let mut steps = doors(brief);
    steps.extend(option.routes.iter().map(|route| WalkStep::Way {
        from: route.from.clone(),
        to: route.to.clone(),
        needs: route.needs,
        width: route.width,
        between: route.pinch.as_ref().map(|pinch| pinch.between.clone()),
    }));
    steps.extend(option.turning_circle.map(|circle| WalkStep::Turn { diameter: circle.diameter }));
    steps.extend(fronts(brief, option));
    steps.extend(seats(option));
    steps
}

fn doors(brief: &Brief) -> Vec<WalkStep> {
    let swings_in = |kind: &ItemKind| matches!(kind, ItemKind::Door(door) if door.swings == Swings::In);
    let doors = brief.room.items.iter().filter(|item| swings_in(&item.kind));
    doors.map(|item| WalkStep::OpenDoor { door: item.name.clone() }).collect()
}

fn fronts<'a>(brief: &'a Brief, option: &'a OptionFound) -> impl Iterator<Item = WalkStep> + 'a {
    option.pieces.iter().filter_map(|piece| {
        let asked = brief.pieces.iter().find(|asked| asked.name == piece.name)?;
        let clear = brief.rules.get(asked.keeps_clear()?);
        (clear > 0.0).then(|| WalkStep::Front { piece: piece.name.clone(), kind: piece.kind, clear })
    })
}

fn seats(option: &OptionFound) -> impl Iterator<Item = WalkStep> + '_ {
    option.gaps.iter().filter_map(|gap| {
        let [one, other] = gap.between.clone();
        match gap.rule {
            Clearance::SeatToTable => Some(WalkStep::FeetToTable { seat: one, table: other, clear: gap.clear }),
            Clearance::ScreenToSeat => Some(WalkStep::Screen { seat: one, unit: other, clear: gap.clear }),
            _ => None,
        }
    })
}
