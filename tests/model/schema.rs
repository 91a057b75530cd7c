//! The published schema: it lists what the reader knows, each with a description, and nothing else.

use elbowroom_model::scenario;
use serde_json::Value;

fn schema() -> Value {
    serde_json::from_str(&scenario::schema()).unwrap()
}

#[test]
fn every_key_is_described() {
    fn undescribed(value: &Value, path: &str, out: &mut Vec<String>) {
        match value {
            Value::Object(map) => {
                for (key, property) in map.get("properties").and_then(Value::as_object).into_iter().flatten() {
                    if property["description"].as_str().is_none_or(str::is_empty) && property.get("const").is_none() {
                        out.push(format!("{path}.{key}"));
                    }
                }
                for (key, child) in map {
                    undescribed(child, &format!("{path}/{key}"), out);
                }
            }
            Value::Array(all) => all.iter().for_each(|child| undescribed(child, path, out)),
            _ => {}
        }
    }
    let mut out = Vec::new();
    undescribed(&schema(), "", &mut out);
    assert!(out.is_empty(), "{out:#?}");
}

#[test]
fn no_unknown_key_is_let_through() {
    fn open(value: &Value, out: &mut Vec<String>) {
        match value {
            Value::Object(map) => {
                if map.contains_key("properties") && map.get("additionalProperties") != Some(&Value::Bool(false)) {
                    out.push(value.to_string());
                }
                map.values().for_each(|child| open(child, out));
            }
            Value::Array(all) => all.iter().for_each(|child| open(child, out)),
            _ => {}
        }
    }
    let mut out = Vec::new();
    open(&schema(), &mut out);
    assert!(out.is_empty(), "{out:#?}");
}
