//! From a tree to typed rows. The one module that names `serde_yaml`.

use serde::de::DeserializeOwned;
use serde_yaml::{Mapping, Number, Value};

use super::tree::{Node, NodeValue};
use crate::fault::Fault;
use crate::quote::clean;

/// The tree as `T`.
///
/// # Errors
/// What does not fit `T`: a tree that was held to the schema fits.
pub(crate) fn typed<T: DeserializeOwned>(tree: &Node) -> Result<T, Box<Fault>> {
    serde_yaml::from_value(value(tree)).map_err(|error| not_understood(&error))
}

/// A text of the program's own as `T`: whole and sound, which tests see to, so it needs no places and no guards.
///
/// # Errors
/// What does not fit `T`.
pub(crate) fn of_own<T: DeserializeOwned>(text: &str) -> Result<T, Box<Fault>> {
    serde_yaml::from_str(text).map_err(|error| not_understood(&error))
}

fn not_understood(error: &serde_yaml::Error) -> Box<Fault> {
    Box::new(Fault {
        code: "not_understood",
        item: None,
        message: format!("The file is not understood: {}.", clean(&error.to_string())),
        remedy: "Compare it with the schema that `schema` prints.".to_owned(),
        place: None,
    })
}

fn value(node: &Node) -> Value {
    match &node.value {
        NodeValue::Null => Value::Null,
        NodeValue::Bool(bool) => Value::Bool(*bool),
        NodeValue::Integer(number) => Value::Number(Number::from(*number)),
        NodeValue::Float(number) => Value::Number(Number::from(*number)),
        NodeValue::Text(text) => Value::String(text.clone()),
        NodeValue::List(items) => Value::Sequence(items.iter().map(value).collect()),
        NodeValue::Map(entries) => {
            let pair = |entry: &super::tree::Entry| (Value::String(entry.key.clone()), value(&entry.node));
            Value::Mapping(entries.iter().map(pair).collect::<Mapping>())
        }
    }
}
