//! All that is carried as rows for a spreadsheet: a column for each figure.

use elbowroom_model::{Dimension, Rounding, Unit};

use super::room;
use crate::process::failure::Failure;
use crate::result::stock::StockResult;
use crate::text::cells::{cell, line};
use crate::words::lengths::shop_unit;
use crate::words::number::number;

/// The rows; what is not known is left empty.
pub(crate) fn rows(told: &StockResult, unit: Unit) -> Result<String, Failure> {
    let line = |cells: &[String]| line(cells).map_err(Failure::Unwritable);
    let own = shop_unit(unit).key();
    let mut heads: Vec<String> =
        ["day", "what", "piece", "count", "from", "to", "client", "address"].map(str::to_owned).into();
    heads.extend(Dimension::ALL.iter().map(|one| format!("{}_{own}", one.key())));
    heads.push(format!("height_{own}"));
    heads.extend(["mass_kg", "people", "parts", "volume_m3", "where"].map(str::to_owned));
    let mut text = line(&heads)?;
    for one in &told.carried {
        let stop = one.to.or(one.from).and_then(|place| told.rooms.get(place));
        let length =
            |length: Option<f64>| length.map_or_else(String::new, |length| number(unit, length, Rounding::Nearest));
        let mut cells = vec![
            one.day.clone(),
            one.what.to_owned(),
            cell(&one.name),
            one.count.to_string(),
            cell(&room(told, one.from)),
            cell(&room(told, one.to)),
            cell(stop.map_or("", |stop| stop.client.as_str())),
            cell(stop.map_or("", |stop| stop.address.as_str())),
        ];
        cells.extend(Dimension::ALL.iter().map(|dimension| length(one.size.get(*dimension))));
        cells.push(length(one.height));
        cells.extend([
            one.mass.map_or_else(String::new, |mass| mass.to_string()),
            one.people.map_or_else(String::new, |people| people.to_string()),
            one.parts.map_or_else(String::new, |parts| parts.to_string()),
            one.volume.map_or_else(String::new, |volume| format!("{volume:.3}")),
            cell(&one.place),
        ]);
        text.push_str(&line(&cells)?);
    }
    Ok(text)
}
