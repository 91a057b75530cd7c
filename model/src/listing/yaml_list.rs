//! Tables written as a YAML list of rows; `pieces:` may hold the list, and `units:` its unit.

use super::asked::Asked;
use super::faults::FaultList;
use super::grid::{Grid, GridRow, MOST_COLUMNS};
use crate::quote::quoted;
use crate::unit::Unit;
use crate::yaml::tree::NodeValue;
use crate::yaml::{Entry, Node};

/// The cells of `text`; `None` after faults that keep it from being read.
pub(super) fn grid(text: &str, asked: &Asked<'_>, told: &mut FaultList) -> Option<Grid> {
    let tree = match Node::read(text) {
        Ok(tree) => tree,
        Err(fault) => {
            let line = fault.place.map_or(0, |place| place.line);
            let (message, remedy) = told_of(fault.code)
                .map_or((fault.message, fault.remedy), |(message, remedy)| (message.to_owned(), remedy.to_owned()));
            told.add(line, fault.code, "", message, remedy);
            return None;
        }
    };
    let mut grid = Grid::default();
    let rows = match tree.value {
        NodeValue::List(rows) => rows,
        NodeValue::Map(entries) => rows_under(entries, &mut grid, told)?,
        _ => {
            no_list(1, told);
            return None;
        }
    };
    if rows.len() > asked.most_rows {
        told.too_many(rows.len(), asked.most_rows);
        return None;
    }
    for row in rows {
        take(row, &mut grid, told);
        if grid.headers.len() > MOST_COLUMNS {
            told.too_many_columns(0);
            return None;
        }
    }
    Some(grid)
}

/// What the reader of scenarios says in a scenario's words, in a list's.
fn told_of(code: &str) -> Option<(&'static str, &'static str)> {
    match code {
        "file_too_large" => Some(("A list in YAML is 1 MiB at most.", "Write a longer one as CSV.")),
        "too_much" => Some((
            "The list nests deeper, or holds more, than is read as YAML.",
            "Write a long list as CSV; a row nests no deeper than its own keys.",
        )),
        "several_documents" => Some(("The file holds several documents.", "Keep one list in one file.")),
        "empty_file" => Some(("The list is empty.", "Give it a row for each piece.")),
        _ => None,
    }
}

fn no_list(line: usize, told: &mut FaultList) {
    let remedy = "Write `- { kind: sofa, name: ..., width: 212 cm, depth: 95 cm }` for each piece.".to_owned();
    told.add(line, "wrong_type", "", "The file is no list of pieces.".to_owned(), remedy);
}

fn rows_under(entries: Vec<Entry>, grid: &mut Grid, told: &mut FaultList) -> Option<Vec<Node>> {
    let mut rows = None;
    let mut keys: Vec<String> = Vec::new();
    for entry in entries {
        let line = entry.place.map_or(0, |place| place.line);
        if keys.contains(&entry.key) {
            let message = format!("`{}` stands twice in the list.", quoted(&entry.key));
            told.add(line, "key_twice", "", message, "Keep one of the two.".to_owned());
            continue;
        }
        keys.push(entry.key.clone());
        match (entry.key.as_str(), entry.node.value) {
            ("pieces", NodeValue::List(list)) => rows = Some(list),
            ("units", NodeValue::Text(unit)) if Unit::of(&unit).is_some() => grid.units = Unit::of(&unit),
            ("units", _) => {
                let message = "`units` of the list is no known unit of length.".to_owned();
                told.add(line, "unknown_unit", "", message, "Units are mm, cm, m, in, ft.".to_owned());
            }
            ("pieces", _) => no_list(line, told),
            (key, _) => {
                let message = format!("`{}` is no key of the list.", quoted(key));
                told.add(line, "unknown_key", "", message, "Known here: units, pieces.".to_owned());
            }
        }
    }
    if rows.is_none() && told.is_empty() {
        no_list(1, told);
    }
    rows
}

fn take(row: Node, grid: &mut Grid, told: &mut FaultList) {
    let line = row.place.map_or(0, |place| place.line);
    let NodeValue::Map(entries) = row.value else {
        no_list(line, told);
        return;
    };
    let mut cells: Vec<Option<String>> = Vec::new();
    for entry in entries {
        let line = entry.place.map_or(line, |place| place.line);
        let key = quoted(&entry.key);
        let Some(text) = text(&entry.node.value) else {
            let message = format!("`{key}` holds neither a text nor a number.");
            let remedy = "Give a text, a number, true or false, or a list of texts.".to_owned();
            told.add(line, "wrong_type", "", message, remedy);
            continue;
        };
        let place = grid.column(&entry.key);
        cells.resize(cells.len().max(place + 1), None);
        match cells.get_mut(place) {
            Some(cell @ None) => *cell = Some(text),
            _ => {
                let message = format!("`{key}` stands twice in one row.");
                told.add(line, "key_twice", "", message, "Keep one of the two.".to_owned());
            }
        }
    }
    let cells = cells.into_iter().map(Option::unwrap_or_default).collect();
    grid.rows.push(GridRow { line, cells, numbers: Vec::new() });
}

fn text(value: &NodeValue) -> Option<String> {
    match value {
        NodeValue::Null => Some(String::new()),
        NodeValue::Bool(one) => Some(one.to_string()),
        NodeValue::Integer(one) => Some(one.to_string()),
        NodeValue::Float(one) => Some(one.to_string()),
        NodeValue::Text(one) => Some(one.trim().to_owned()),
        NodeValue::List(all) => {
            let text = |node: &Node| if let NodeValue::Text(one) = &node.value { Some(one.clone()) } else { None };
            all.iter().map(text).collect::<Option<Vec<String>>>().map(|texts| texts.join("; "))
        }
        NodeValue::Map(_) => None,
    }
}
