//! Cautions that go with every result where they apply: they defer to local codes and licensed practice.

use elbowroom_model::{Brief, ItemKind, Piece, Swings};

/// Storage at least this tall is told to be fixed to the wall, mm (common practice, no source).
const TALL: f64 = 750.0;

/// What to heed beside what was asked.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Caution {
    /// Exits and escape windows stay free.
    Exits,
    /// What burns stays away from heaters and fires.
    Heat,
    /// A radiator is taken as one that water heats.
    Radiator,
    /// What is tall or holds a television is fixed to the wall.
    TipOver,
    /// What hangs is fixed to a wall that bears it.
    Hung,
    /// Over a fire a screen is hot and high.
    OverFire,
    /// Across an opening there is no wall to fix it to.
    AcrossOpening,
    /// What children climb stays away from windows.
    Children,
    /// Wiring, gas, structure and weights are for a licensed person.
    LicensedWork,
    /// Figures for a wheelchair are guidance.
    Wheelchair,
    /// A leaf swings over a rug.
    RugUnderDoor,
    /// Pieces are carried as boxes.
    Boxes,
    /// Piece and way are measured twice.
    MeasureTwice,
    /// Heavy pieces take trained carriers.
    Carriers,
}

/// The cautions that go with a way in.
pub const OF_CARRYING: [Caution; 3] = [Caution::Boxes, Caution::MeasureTwice, Caution::Carriers];

/// The cautions that this brief calls for, the gravest first; those of carrying last.
#[must_use]
pub fn cautions(brief: &Brief) -> Vec<Caution> {
    let tips = has_what_tips(brief);
    let hangs = brief.pieces.iter().any(|piece| piece.kind.hangs());
    let in_the_room = [
        (true, Caution::Exits),
        (has(brief, |kind| matches!(kind, ItemKind::Radiator(_) | ItemKind::Fireplace(_))), Caution::Heat),
        (has(brief, |kind| matches!(kind, ItemKind::Radiator(_))), Caution::Radiator),
        (tips, Caution::TipOver),
        (hangs, Caution::Hung),
        (hangs && has(brief, |kind| matches!(kind, ItemKind::Fireplace(_))), Caution::OverFire),
        (tips && has(brief, |kind| matches!(kind, ItemKind::Opening(_))), Caution::AcrossOpening),
        (may_climb(brief), Caution::Children),
        (has(brief, |kind| matches!(kind, ItemKind::Socket(_) | ItemKind::Fireplace(_))), Caution::LicensedWork),
        (brief.rules.are_for_a_wheelchair(), Caution::Wheelchair),
        (has_rug_and_swing(brief), Caution::RugUnderDoor),
    ];
    let of_carrying = OF_CARRYING.map(|caution| (brief.way.is_some(), caution));
    in_the_room.into_iter().chain(of_carrying).filter(|(applies, _)| *applies).map(|(_, caution)| caution).collect()
}

/// Whether there is a window to climb to, and nobody says that no children live here.
fn may_climb(brief: &Brief) -> bool {
    brief.household.children != Some(false) && has(brief, |kind| matches!(kind, ItemKind::Window(_)))
}

fn has(brief: &Brief, is_such: impl Fn(&ItemKind) -> bool) -> bool {
    brief.room.items.iter().any(|item| is_such(&item.kind))
}

fn has_what_tips(brief: &Brief) -> bool {
    let tips = |piece: &Piece| {
        (piece.screen.is_some() && !piece.kind.hangs()) || (piece.kind.is_storage() && piece.height >= TALL)
    };
    brief.pieces.iter().any(tips)
}

fn has_rug_and_swing(brief: &Brief) -> bool {
    let swings_in = |kind: &ItemKind| matches!(kind, ItemKind::Door(door) if door.swings == Swings::In);
    brief.pieces.iter().any(|piece| piece.kind.lies_under()) && has(brief, swings_in)
}
