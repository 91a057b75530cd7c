//! A table's middle lies before the middle of the front that it serves.

use elbowroom_model::{Clearance, Dimension};

use super::edge::Edge;
use super::measure::{Lengths, Measure};
use super::seat_front::main_front;
use crate::verify::breach::Wrong;
use crate::verify::checked_layout::{CheckedLayout, InPlace};
use crate::verify::table::best_seat;

const RULE: Clearance = Clearance::TableAxis;

/// What a table before a corner sofa may lie further off than its place off the return makes it, mm (common practice).
const BY_RETURN: f64 = 50.0;

pub(super) fn measures(scene: &CheckedLayout<'_>) -> Vec<Measure> {
    if scene.rule(RULE) <= 0.0 {
        return Vec::new();
    }
    let tables = scene.pieces.iter().filter(|piece| piece.piece.kind.stands_before_seat());
    tables.filter_map(|table| of_table(scene, table)).collect()
}

fn of_table(scene: &CheckedLayout<'_>, table: &InPlace<'_>) -> Option<Measure> {
    let seat = best_seat(scene, table)?;
    let front = main_front(seat.placed);
    let given = front.aside(table.placed.main().middle()).abs();
    let lengths = Lengths { wanted: allowed(scene, seat, table, &front), given };
    Some(Measure::at_most(RULE, Wrong::TableOffAxis, &[table.thing(), seat.thing()], &lengths))
}

/// How far off it may lie: before a corner sofa it keeps its place off the return too, where the bay is narrow.
fn allowed(scene: &CheckedLayout<'_>, seat: &InPlace<'_>, table: &InPlace<'_>, front: &Edge) -> f64 {
    let figure = scene.rule(RULE);
    if seat.placed.hand.is_none() {
        return figure;
    }
    let lies_along = table.placed.left().dot(front.along).abs() >= table.placed.facing.dot(front.along).abs();
    let dimension = if lies_along { Dimension::Width } else { Dimension::Depth };
    let least = table.piece.range(dimension).map_or(0.0, |range| range.least);
    figure.max(least / 2.0 + scene.rule(Clearance::SeatToTable) - front.length / 2.0 + BY_RETURN)
}
