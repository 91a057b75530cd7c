//! Nothing but rugs stands before a fixed thing where people use it.

use elbowroom_model::Rule;

use super::edge::Edge;
use super::measure::{Lengths, Measure};
use crate::answer::Thing;
use crate::verify::breach::Wrong;
use crate::verify::checked_layout::CheckedLayout;

pub(super) fn measures(scene: &CheckedLayout<'_>) -> Vec<Measure> {
    let room = &scene.brief.room;
    let mut all = Vec::new();
    for (id, floor) in room.used_floors() {
        let floor = floor.moved_out(room.measured_within);
        let edge = Edge::between(floor.from, floor.to, floor.out);
        for piece in scene.standing_but(&[]) {
            if let Some(given) = edge.nearest_of(&piece.parts) {
                let between = [piece.thing(), Thing::Fixed(id)];
                let lengths = Lengths { wanted: floor.depth, given };
                all.push(Measure::at_least(Rule::Use, Wrong::BeforeUsed, &between, &lengths));
            }
        }
    }
    all
}
