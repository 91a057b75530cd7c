//! From a tree to typed rows. The one module that names `serde_yaml`.

use serde::de::DeserializeOwned;
use serde_yaml::{Mapping, Number, Value};

use super::tree::{Node, NodeValue};

/// The tree as `T`.
///
/// # Errors
/// What does not fit `T`, in words.
pub(crate) fn typed<T: DeserializeOwned>(tree: &Node) -> Result<T, String> {
    serde_yaml::from_value(value(tree)).map_err(|error| error.to_string())
}

/// A text of the program's own as `T`: whole and sound, which tests see to, so it needs no places and no guards.
///
/// # Errors
/// What does not fit `T`, in words.
pub(crate) fn of_own<T: DeserializeOwned>(text: &str) -> Result<T, String> {
    serde_yaml::from_str(text).map_err(|error| error.to_string())
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
