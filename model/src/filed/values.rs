//! The values of a file without their places, and the same with one thing changed.

use serde_json::{Map, Value};

use super::change::Change;
use crate::yaml::{Node, NodeValue};

/// The values of a tree.
pub(super) fn of(node: &Node) -> Value {
    match &node.value {
        NodeValue::Null => Value::Null,
        NodeValue::Bool(value) => Value::Bool(*value),
        NodeValue::Integer(value) => Value::from(*value),
        NodeValue::Float(value) => Value::from(*value),
        NodeValue::Text(text) => Value::from(text.as_str()),
        NodeValue::List(rows) => rows.iter().map(of).collect(),
        NodeValue::Map(entries) => {
            Value::Object(entries.iter().map(|entry| (entry.key.clone(), of(&entry.node))).collect())
        }
    }
}

/// The values with one thing changed; `None` where there is no such place.
pub(super) fn changed(mut values: Value, change: &Change) -> Option<Value> {
    match change {
        Change::Set { at, to } => put(&mut values, at, to.clone()).then_some(values),
        Change::Remove { at } => {
            let removed = match at.rsplit_once('.') {
                Some((above, last)) => taken_out(found(&mut values, above)?, last)?,
                None => taken_out(&mut values, at)?,
            };
            // What would be left empty goes too.
            let above = at.rsplit_once('.').map(|(above, _)| above);
            match above {
                Some(above) if removed == Left::Nothing => changed(values, &Change::Remove { at: above.to_owned() }),
                _ => Some(values),
            }
        }
        Change::Add { at, row, before } => {
            if found(&mut values, at).is_none_or(|node| node.is_null()) {
                return put(&mut values, at, Value::Array(vec![row.clone()])).then_some(values);
            }
            let rows = found(&mut values, at)?.as_array_mut()?;
            rows.insert(before.unwrap_or(rows.len()).min(rows.len()), row.clone());
            Some(values)
        }
    }
}

#[derive(Debug, PartialEq, Eq)]
enum Left {
    Something,
    Nothing,
}

fn taken_out(from: &mut Value, last: &str) -> Option<Left> {
    let left = match from {
        Value::Object(keys) => {
            keys.remove(last)?;
            keys.len()
        }
        Value::Array(rows) => {
            let place = last.parse().ok().filter(|place| *place < rows.len())?;
            rows.remove(place);
            rows.len()
        }
        _ => return None,
    };
    Some(if left == 0 { Left::Nothing } else { Left::Something })
}

fn found<'a>(values: &'a mut Value, at: &str) -> Option<&'a mut Value> {
    at.split('.').try_fold(values, |here, step| match here {
        Value::Object(keys) => keys.get_mut(step),
        Value::Array(rows) => rows.get_mut(step.parse::<usize>().ok()?),
        _ => None,
    })
}

/// Puts a value at a place; maps on the way are made where they are not there.
fn put(values: &mut Value, at: &str, to: Value) -> bool {
    let mut here = values;
    for step in at.split('.') {
        if here.is_null() {
            *here = Value::Object(Map::new());
        }
        let next = match here {
            Value::Object(keys) => Some(keys.entry(step).or_insert(Value::Null)),
            Value::Array(rows) => step.parse::<usize>().ok().and_then(|place| rows.get_mut(place)),
            _ => None,
        };
        match next {
            Some(next) => here = next,
            None => return false,
        }
    }
    *here = to;
    true
}
