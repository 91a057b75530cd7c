//! Values of the file as they stand there.

use serde_json::Value;

/// A value as a field shows it.
pub(in crate::page) fn shown(value: &Value) -> String {
    match value {
        Value::Null => String::new(),
        Value::String(text) => text.clone(),
        Value::Bool(_) | Value::Number(_) => value.to_string(),
        // Written at length in the file: it is changed there.
        Value::Array(_) | Value::Object(_) => value.to_string(),
    }
}
