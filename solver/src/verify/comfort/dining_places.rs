//! A table that is to seat so many has the places: on its long sides, at its ends too where those hold too few, with a chair's
//! room behind each end that is used.

use elbowroom_model::{Clearance, KeepsClear, Rule};

use super::edge::Edge;
use super::front_open::standing;
use super::measure::{Lengths, Measure};
use crate::answer::Thing;
use crate::verify::breach::Wrong;
use crate::verify::checked_layout::{CheckedLayout, InPlace};
use crate::verify::tolerance::SLACK;

const RULE: Clearance = Clearance::DiningPlaces;

pub(super) fn measures(scene: &CheckedLayout<'_>) -> Vec<Measure> {
    let place = scene.rule(RULE);
    if place <= 0.0 {
        return Vec::new();
    }
    let to_seat = scene.pieces.iter().filter_map(|table| Some((table, table.piece.seats?)));
    to_seat.flat_map(|(table, seats)| of_table(scene, table, seats as usize, place)).collect()
}

fn of_table(scene: &CheckedLayout<'_>, table: &InPlace<'_>, seats: usize, place: f64) -> Vec<Measure> {
    let Sides { long, short } = Sides::of(table);
    let places =
        |sides: &[Edge]| sides.iter().map(|side| ((side.length + SLACK) / place).floor() as usize).sum::<usize>();
    if places(&long) >= seats {
        return Vec::new();
    }
    let lacking = seats.saturating_sub(places(&long) + places(&short));
    let short_by = place * lacking as f64;
    let too_few = Measure::of_no_length(RULE, Wrong::TooFewPlaces, &[table.thing()], short_by);
    let chairs = short.iter().flat_map(|side| behind_chairs(scene, table, side));
    std::iter::once(too_few).chain(chairs).collect()
}

/// What there is behind the chairs at a side, up to each thing.
fn behind_chairs(scene: &CheckedLayout<'_>, table: &InPlace<'_>, side: &Edge) -> Vec<Measure> {
    let wanted = match table.piece.kind.traits().keeps_clear {
        KeepsClear::AlongSides { passing, .. } if table.piece.passing => scene.rule(passing),
        KeepsClear::AlongSides { seated, .. } => scene.rule(seated),
        KeepsClear::Nothing | KeepsClear::Before(_) => return Vec::new(),
    };
    let itself = [table.placed.piece];
    let fixed = standing(scene)
        .into_iter()
        .chain(scene.checked.steps.iter().cloned())
        .filter_map(|(of, shape)| Some((of, side.nearest_ahead(&shape)?)));
    let pieces = scene.off_chairs(&itself).filter_map(|piece| Some((piece.thing(), side.nearest_of(&piece.parts)?)));
    let leaves = scene.checked.zones.iter().filter(|zone| zone.rule == Rule::DoorSwing).filter_map(|leaf| {
        let floor = side.floor(wanted).pulled_in(SLACK)?;
        Some((leaf.of, wanted - leaf.shape.entered_by(&floor)?))
    });
    let all: Vec<(Thing, f64)> = fixed.chain(pieces).chain(leaves).collect();
    let measure =
        |(of, given)| Measure::at_least(RULE, Wrong::NoChairAtEnd, &[table.thing(), of], &Lengths { wanted, given });
    all.into_iter().map(measure).collect()
}

/// The sides of a table that stand at no wall.
struct Sides {
    long: Vec<Edge>,
    short: Vec<Edge>,
}

impl Sides {
    fn of(table: &InPlace<'_>) -> Self {
        let (placed, along) = (table.placed, table.placed.along());
        let (half, out) = (along * (placed.size.width / 2.0), placed.facing * placed.size.depth);
        let [left, right] = [placed.anchor - half, placed.anchor + half];
        let front = Edge::between(left + out, right + out, placed.facing);
        let back = Edge::between(left, right, -placed.facing);
        let ends = vec![Edge::between(left, left + out, -along), Edge::between(right, right + out, along)];
        let across = if placed.at_wall.is_some() { vec![front] } else { vec![front, back] };
        if placed.size.depth > placed.size.width {
            Self { long: ends, short: across }
        } else {
            Self { long: across, short: ends }
        }
    }
}
