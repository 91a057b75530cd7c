//! Tables of one JSON object on each line.

use serde_json::{Map, Value};

use super::Asked;
use super::grid::{Grid, GridRow, MOST_COLUMNS, Told};
use crate::fault::clean;

/// The cells of `text`; `None` where too many rows or columns stand in it.
pub(super) fn grid(text: &str, asked: &Asked<'_>, told: &mut Told) -> Option<Grid> {
    let mut grid = Grid::default();
    let lines = text.lines().enumerate().filter(|(_, line)| !line.trim().is_empty());
    let mut count = 0;
    for (place, line) in lines {
        count += 1;
        if count > asked.most_rows {
            continue;
        }
        match serde_json::from_str::<Map<String, Value>>(line) {
            Ok(map) => take(map, place + 1, &mut grid, told),
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
    grid.even_out();
    Some(grid)
}

fn take(map: Map<String, Value>, line: usize, grid: &mut Grid, told: &mut Told) {
    let mut cells = Vec::new();
    for (key, value) in map {
        let Some(text) = text(&value) else {
            let message = format!("`{}` holds neither a text nor a number.", clean(&key));
            let remedy = "Give a text, a number, true or false, or a list of texts.".to_owned();
            told.add(line, "wrong_type", "", message, remedy);
            continue;
        };
        let place = grid.column(&key);
        cells.resize(cells.len().max(place + 1), String::new());
        if let Some(cell) = cells.get_mut(place) {
            *cell = text;
        }
    }
    grid.rows.push(GridRow { line, cells });
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
