//! The back of a return that runs along a wall keeps the gap of a seat from it.

use elbowroom_model::{Rule, Wall, WallId};

use super::measure::{Lengths, Measure};
use super::seat_front::return_back;
use crate::answer::Thing;
use crate::geometry::Segment;
use crate::verify::breach::Wrong;
use crate::verify::checked_layout::{CheckedLayout, InPlace};
use crate::verify::group::is_opposite;

pub(super) fn measures(scene: &CheckedLayout<'_>) -> Vec<Measure> {
    scene.seats().flat_map(|seat| of_seat(scene, seat)).collect()
}

fn of_seat(scene: &CheckedLayout<'_>, seat: &InPlace<'_>) -> Vec<Measure> {
    let wanted = seat.piece.off_wall;
    // A chaise has no back to keep off.
    let Some(back) = return_back(seat.placed).filter(|_| wanted > 0.0 && !seat.piece.chaise) else { return Vec::new() };
    let along = scene.brief.room.walls.iter().zip(&scene.checked.walls).enumerate();
    let along = along.filter(|(_, (wall, _))| is_opposite(wall.inward(), back.out));
    let measure = |(place, (_, moved_in)): (usize, (&Wall, &Segment))| {
        let given = back.nearest_ahead(&moved_in.shape())?;
        let between = [seat.thing(), Thing::Wall(WallId(place))];
        Some(Measure::at_least(Rule::ReturnOffWall, Wrong::ReturnTooNear, &between, &Lengths { wanted, given }))
    };
    along.filter_map(measure).collect()
}
