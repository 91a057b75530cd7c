//! What is laid out before the main seat: its table and the rug.

use super::room::{area, shared_area};
use super::standing::Standing;
use super::{Mark, Odd, Scene};

/// How far a table's middle may lie off the axis, mm.
const TABLE_OFF: f64 = 100.0;
/// What a table before a corner sofa has besides, where its least size and the return leave no more, mm.
const BESIDE_RETURN: f64 = 50.0;
/// Figures are told to a thousandth and add up, mm.
const ROUNDED: f64 = 1.0;
/// How far a rug's middle may lie off the axis, mm.
const RUG_OFF: f64 = 150.0;
/// The share of the front that a rug reaches under, at least.
const UNDER_FRONT: f64 = 0.9;
/// Where under a seat that is asked: just behind the front's edge, mm ahead of it.
const JUST_UNDER: (f64, f64) = (-80.0, -60.0);

pub(super) fn odd(scene: &Scene) -> Vec<Odd> {
    let Some(main) = scene.main() else { return Vec::new() };
    let mut all = Vec::new();
    let axis = main.front();
    if let Some(table) = scene.table() {
        let off = axis.aside(table.middle()).abs();
        if off > table_off(scene, main, table) + ROUNDED {
            all.push(Odd::of(Mark::TableOffAxis, &[&table.name], off));
        }
    }
    for rug in scene.pieces.iter().filter(|piece| piece.is_rug()) {
        let line = axis.strip(0.0, JUST_UNDER.0, JUST_UNDER.1);
        let share = shared_area(&rug.parts[0], &line) / area(&line);
        if share < UNDER_FRONT {
            all.push(Odd::of(Mark::RugShort, &[&rug.name], 100.0 * share));
        }
        let off = axis.aside(rug.middle()).abs();
        if off > RUG_OFF {
            all.push(Odd::of(Mark::RugOffAxis, &[&rug.name], off));
        }
    }
    all
}

/// How far the table may lie off: before a corner sofa as far as its least size must to keep off the return.
fn table_off(scene: &Scene, main: &Standing, table: &Standing) -> f64 {
    let beside = table.least.width / 2.0 + scene.kept.seat_to_table - main.front().width / 2.0 + BESIDE_RETURN;
    if main.is_corner() { beside.max(TABLE_OFF) } else { TABLE_OFF }
}
