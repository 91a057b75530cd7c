//! What is tried, as changes to the file: each piece gets its `place` and is held there.

use elbowroom_model::filed::Filed;
use elbowroom_model::{Brief, Hand, Unit};
use elbowroom_solver::answer::degrees;
use serde_json::{Value, json};

use super::tried::{Tried, back};

/// Figures of a place told apart in a millimetre.
const FINE: f64 = 10.0;

/// The changes, which keep their order; nothing where the rows of the file are not those of the brief.
pub(super) fn changes(text: &str, brief: &Brief, tried: &[Tried]) -> Option<Vec<Value>> {
    let values = Filed::read(text).ok()?.values();
    let units = values["units"].as_str().and_then(Unit::of).unwrap_or_default();
    let rows = values["pieces"].as_array()?;
    let count = |row: &Value| row["count"].as_u64().and_then(|count| usize::try_from(count).ok()).unwrap_or(1);
    if rows.iter().map(count).sum::<usize>() != brief.pieces.len() {
        return None;
    }
    let mut ids = brief.piece_ids();
    let of_rows: Vec<Vec<_>> = rows.iter().map(|row| ids.by_ref().take(count(row)).collect()).collect();
    let mut changes = Vec::new();
    // From the last row on: a row that is parted moves those after it.
    for (row, (filed, pieces)) in rows.iter().zip(&of_rows).enumerate().rev() {
        let of = |piece| tried.iter().find(|it| it.placed.piece == piece);
        let each: Vec<(&str, Option<&Tried>)> =
            pieces.iter().map(|piece| (brief.piece_name(*piece), of(*piece))).collect();
        match each.as_slice() {
            [(_, Some(it))] => changes.extend(of_row(row, filed, it, units)),
            [_] => {}
            several if several.iter().all(|(_, it)| it.is_none()) => {}
            several => changes.extend(parted(row, filed, several, units)),
        }
    }
    Some(changes)
}

/// A row for one piece.
fn of_row(row: usize, filed: &Value, it: &Tried, units: Unit) -> Vec<Value> {
    let kept = kept(it, filed, units);
    let set = |(key, to): (&str, Value)| json!({ "do": "set", "at": format!("pieces.{row}.{key}"), "to": to });
    // What stands there otherwise gives way as a whole.
    kept.into_iter().map(set).collect()
}

/// A row for several pieces, parted into one for each, named as it was told.
fn parted(row: usize, filed: &Value, each: &[(&str, Option<&Tried>)], units: Unit) -> Vec<Value> {
    let mut changes = Vec::new();
    for (name, it) in each.iter().rev() {
        let mut own = filed.clone();
        let Some(keys) = own.as_object_mut() else { continue };
        keys.remove("count");
        keys.remove("pair");
        keys.insert("name".to_owned(), (*name).into());
        if let Some(it) = it {
            keys.extend(kept(it, filed, units).into_iter().map(|(key, to)| (key.to_owned(), to)));
        }
        changes.push(json!({ "do": "add", "at": "pieces", "row": own, "before": row + 1 }));
    }
    changes.push(json!({ "do": "remove", "at": format!("pieces.{row}") }));
    changes
}

/// What a row says of a piece that is kept so.
fn kept(it: &Tried, filed: &Value, units: Unit) -> Vec<(&'static str, Value)> {
    let length = |length: f64| figure(length, units);
    let size = it.placed.size;
    let mut kept = Vec::new();
    if it.sized {
        kept.extend([("width", length(size.width)), ("depth", length(size.depth))]);
        kept.extend(size.return_length.map(|size| ("return", length(size))));
        kept.extend(size.second_return.map(|size| ("second_return", length(size))));
        kept.extend(size.return_depth.map(|size| ("return_depth", length(size))));
    }
    if let (Some(hand), true) = (it.placed.hand, !matches!(filed["hand"].as_str(), Some("left" | "right"))) {
        kept.push(("hand", if hand == Hand::Left { "left" } else { "right" }.into()));
    }
    let back = back(&it.placed);
    let at = [length(back.x), length(back.y)];
    kept.push(("place", json!({ "at": at, "facing": number(degrees(it.placed.facing)) })));
    kept.push(("hold", true.into()));
    kept
}

/// A length in the file's unit, to a tenth of a millimetre.
fn figure(length: f64, units: Unit) -> Value {
    let length = (length * FINE).round() / FINE;
    let decimals = 1e6;
    number((length / units.millimetres() * decimals).round() / decimals)
}

/// A figure, whole where it is.
fn number(figure: f64) -> Value {
    if figure.fract() == 0.0 && figure.abs() < 1e9 { Value::from(figure as i64) } else { Value::from(figure) }
}
