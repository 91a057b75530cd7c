//! Tables of one JSON object on each line.

use std::fmt;

use serde::de::{Deserialize, Deserializer, MapAccess, Visitor};
use serde_json::Value;

use super::asked::Asked;
use super::faults::FaultList;
use super::grid::{Grid, GridRow, MOST_COLUMNS};
use crate::quote::{clean, quoted};

/// The cells of `text`; `None` where too many rows or columns stand in it.
pub(super) fn grid(text: &str, asked: &Asked<'_>, told: &mut FaultList) -> Option<Grid> {
    let mut grid = Grid::default();
    let lines = text.lines().enumerate().filter(|(_, line)| !line.trim().is_empty());
    let mut count = 0;
    for (place, line) in lines {
        count += 1;
        if count > asked.most_rows {
            continue;
        }
        match serde_json::from_str::<Object>(line) {
            Ok(object) => take(object, place + 1, &mut grid, told),
            Err(error) => {
                let said = error.to_string();
                let said = said.split(" at line ").next().unwrap_or_default();
                let message = format!("The line is no JSON object: {}.", clean(said));
                let remedy = "Write one object on the line: {\"kind\": \"sofa\", \"width\": \"212 cm\"}.".to_owned();
                told.add(place + 1, "not_json", "", message, remedy);
            }
        }
        if grid.headers.len() > MOST_COLUMNS {
            told.too_many_columns(place + 1);
            return None;
        }
    }
    if count > asked.most_rows {
        told.too_many(count, asked.most_rows);
        return None;
    }
    Some(grid)
}

/// An object's keys with their values as they stand, a key that stands twice among them.
struct Object(Vec<(String, Value)>);

impl<'de> Deserialize<'de> for Object {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_map(Entries)
    }
}

struct Entries;

impl<'de> Visitor<'de> for Entries {
    type Value = Object;

    fn expecting(&self, formatter: &mut fmt::Formatter<'_>) -> fmt::Result {
        formatter.write_str("an object")
    }

    fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<Object, A::Error> {
        let mut entries = Vec::new();
        while let Some(entry) = map.next_entry()? {
            entries.push(entry);
        }
        Ok(Object(entries))
    }
}

fn take(Object(entries): Object, line: usize, grid: &mut Grid, told: &mut FaultList) {
    let mut cells: Vec<Option<String>> = Vec::new();
    for (key, value) in entries {
        let Some(text) = text(&value) else {
            let message = format!("`{}` holds neither a text nor a number.", quoted(&key));
            let remedy = "Give a text, a number, true or false, or a list of texts.".to_owned();
            told.add(line, "wrong_type", "", message, remedy);
            continue;
        };
        let place = grid.column(&key);
        cells.resize(cells.len().max(place + 1), None);
        match cells.get_mut(place) {
            Some(cell @ None) => *cell = Some(text),
            _ => {
                let message = format!("`{}` stands twice in one row.", quoted(&key));
                told.add(line, "key_twice", "", message, "Keep one of the two.".to_owned());
            }
        }
    }
    let cells = cells.into_iter().map(Option::unwrap_or_default).collect();
    grid.rows.push(GridRow { line, cells, numbers: Vec::new() });
}

/// A value as a cell holds it; parts of a list stand one after the other.
fn text(value: &Value) -> Option<String> {
    match value {
        Value::Null => Some(String::new()),
        Value::Bool(one) => Some(one.to_string()),
        Value::Number(one) => Some(one.to_string()),
        Value::String(one) => Some(one.trim().to_owned()),
        Value::Array(all) => {
            let texts: Option<Vec<String>> = all.iter().map(|one| one.as_str().map(str::to_owned)).collect();
            texts.map(|texts| texts.join("; "))
        }
        Value::Object(_) => None,
    }
}
