//! The back of a return that runs along a wall keeps the gap of a seat from it.

use elbowroom_model::{Rule, Wall, WallId};

use super::edge::Edge;
use super::measure::{Lengths, Measure};
use super::seat_front::{return_back, second_return_back};
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
    if wanted <= 0.0 {
        return Vec::new();
    }
    // A chaise has no back to keep off.
    let backs = [return_back(seat.placed).filter(|_| !seat.piece.chaise), second_return_back(seat.placed)];
    backs.into_iter().flatten().flat_map(|back| of_back(scene, seat, &back)).collect()
}

fn of_back(scene: &CheckedLayout<'_>, seat: &InPlace<'_>, back: &Edge) -> Vec<Measure> {
    let wanted = seat.piece.off_wall;
    let along = scene.brief.room.walls.iter().zip(&scene.checked.walls).enumerate();
    let along = along.filter(|(_, (wall, _))| is_opposite(wall.inward(), back.out));
    let measure = |(place, (_, moved_in)): (usize, (&Wall, &Segment))| {
        let given = back.nearest_ahead(&moved_in.shape())?;
        let between = [seat.thing(), Thing::Wall(WallId(place))];
        Some(Measure::at_least(Rule::ReturnOffWall, Wrong::ReturnTooNear, &between, &Lengths { wanted, given }))
    };
    along.filter_map(measure).collect()
}
