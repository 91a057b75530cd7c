//! All that is carried as rows for a spreadsheet: a column for each figure.

use elbowroom_model::{Dimension, Rounding, Unit};

use super::{room, stop};
use crate::result::carried::Carried;
use crate::result::stock::StockResult;
use crate::text::cells::Cell;
use crate::words::lengths::shop_unit;
use crate::words::number::number;

/// The rows, a header first; what is not known is left empty.
pub(crate) fn rows(told: &StockResult, unit: Unit) -> Vec<Vec<Cell>> {
    let own = shop_unit(unit).key();
    let mut heads: Vec<Cell> =
        ["day", "what", "piece", "count", "from", "to", "client", "address"].map(Cell::text).into();
    heads.extend(Dimension::ALL.iter().map(|one| Cell::text(format!("{}_{own}", one.key()))));
    heads.push(Cell::text(format!("height_{own}")));
    heads.extend(["mass_kg", "people", "parts", "volume_m3", "where"].map(Cell::text));
    std::iter::once(heads).chain(told.carried.iter().map(|one| row(told, one, unit))).collect()
}

fn row(told: &StockResult, one: &Carried, unit: Unit) -> Vec<Cell> {
    let stop = stop(one).and_then(|place| told.rooms.get(place));
    let length = |length: Option<f64>| Cell::maybe(length.map(|length| number(unit, length, Rounding::Nearest)));
    let mut cells = vec![
        Cell::day(Some(&one.day)),
        Cell::text(one.what),
        Cell::text(&one.name),
        Cell::number(one.count),
        Cell::text(room(told, one.from)),
        Cell::text(room(told, one.to)),
        Cell::text(stop.map_or("", |stop| &stop.client)),
        Cell::text(stop.map_or("", |stop| &stop.address)),
    ];
    cells.extend(Dimension::ALL.iter().map(|dimension| length(one.size.get(*dimension))));
    cells.push(length(one.height));
    cells.extend([
        Cell::maybe(one.mass),
        Cell::maybe(one.people),
        Cell::maybe(one.parts),
        Cell::maybe(one.volume.map(|volume| format!("{volume:.3}"))),
        Cell::text(&one.place),
    ]);
    cells
}
