//! Causes in the room's own words.

use elbowroom_model::{Brief, Clearance, FixedId, ItemId, Rule, WallId};

use super::requirement::{Cause, With};

impl Cause {
    /// What `piece` keeps from, in the room's own words: `hall door swing`, `canal wall`, `way from hall door to kitchen`.
    #[must_use]
    pub fn words(&self, brief: &Brief, piece: usize) -> String {
        match self.with {
            With::Itself => self.piece_name(brief, self.piece),
            With::Wall(WallId(wall)) => brief.room.walls.get(wall).map(|wall| wall.name.clone()).unwrap_or_default(),
            With::Fixed(FixedId(fixed)) => {
                brief.room.fixed.get(fixed).map(|fixed| fixed.name.clone()).unwrap_or_default()
            }
            With::Piece(other) if other == piece => self.piece_name(brief, self.piece),
            With::Piece(other) => self.piece_name(brief, other),
            With::Item(ItemId(item)) => {
                let name = brief.room.items.get(item).map(|item| item.name.as_str()).unwrap_or_default();
                match self.rule {
                    Rule::DoorSwing => format!("{name} swing"),
                    Rule::Clearance(Clearance::DoorLanding) => format!("{name} landing"),
                    Rule::KeepClear => format!("{name} clearance"),
                    _ => name.to_owned(),
                }
            }
            With::Route(demand) => {
                let from = brief.room.items.get(demand.from.0).map(|item| item.name.as_str()).unwrap_or_default();
                format!("way from {from} to {}", demand.to.name(brief))
            }
        }
    }

    fn piece_name(&self, brief: &Brief, piece: usize) -> String {
        brief.pieces.get(piece).map(|piece| piece.name.clone()).unwrap_or_default()
    }
}
