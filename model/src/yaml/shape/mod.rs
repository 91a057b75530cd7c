//! Holds a tree to a schema: every key that is unknown, twice or missing and every value of the wrong kind is told, with
//! the nearest one that is known, and is taken out, so that the rest can still be read.

mod spot;
mod words;

use serde_json::Value;

use self::spot::{Spot, nth, spot_of};
use self::words::{did_you_mean, found_words, key_remedy, kind_meant, lower_first, sentence, shown, type_words};
use super::tree::{Entry, Node, NodeValue};
use crate::fault::{Fault, Place};
use crate::keyed::keys_of;
use crate::length::nearest_unit;
use crate::quote::quoted;

/// The tree less what is at fault, and the faults. [`Node::TAKEN_OUT`] stands where something was.
pub(crate) fn hold_to(tree: Node, schema: &Value) -> (Node, Vec<Fault>) {
    let mut holder = Holder { root: schema, faults: Vec::new() };
    let place = tree.place;
    let held = holder.hold(tree, schema, &Spot { item: String::new(), key: "file".to_owned() });
    let empty = Node { value: NodeValue::Map(Vec::new()), place };
    (held.unwrap_or(empty), holder.faults)
}

struct Holder<'a> {
    root: &'a Value,
    faults: Vec<Fault>,
}

impl<'a> Holder<'a> {
    /// The node less what is at fault; `None` where nothing of it can be used.
    fn hold(&mut self, node: Node, schema: &'a Value, spot: &Spot) -> Option<Node> {
        let schema = self.followed(schema);
        if node.value == NodeValue::Null {
            return self.hold_null(node, schema, spot);
        }
        if let Some(kinds) = self.kinds(schema) {
            return self.hold_kind(node, &kinds, spot);
        }
        if let Some(alternatives) = schema["anyOf"].as_array() {
            let alternative = self.alternative(&node, alternatives)?;
            return self.hold(node, alternative, spot);
        }
        let known = keys_of(schema);
        if !known.is_empty() {
            return self.hold_choice(node, known.into_iter().map(|one| one.0).collect(), spot);
        }
        let types = types(schema);
        let place = node.place;
        match node.value {
            NodeValue::Map(entries) if types.contains(&"object") => Some(self.hold_map(entries, place, schema, spot)),
            NodeValue::List(items) if types.contains(&"array") => self.hold_list(items, place, schema, spot),
            ref value if types.iter().any(|one| is_of(value, one)) => Some(node),
            _ => {
                self.wrong_type(&node, &types, spot);
                None
            }
        }
    }

    fn hold_null(&mut self, node: Node, schema: &Value, spot: &Spot) -> Option<Node> {
        let nullable = |one: &Value| types(one).contains(&"null");
        if nullable(schema) || schema["anyOf"].as_array().is_some_and(|all| all.iter().any(nullable)) {
            return Some(node);
        }
        let message = format!("`{}` of {} has no value.", spot.key, spot.of());
        self.fault("missing_value", spot, node.place, message, format!("Give `{}` a value.", spot.key));
        None
    }

    /// The kinds that a value with a `kind` may have, each with its schema.
    fn kinds(&self, schema: &'a Value) -> Option<Vec<(&'a str, &'a Value)>> {
        let kind = |one: &'a Value| {
            let one = self.followed(one);
            Some((one["properties"]["kind"]["const"].as_str()?, one))
        };
        schema["oneOf"].as_array()?.iter().map(kind).collect()
    }

    fn hold_kind(&mut self, node: Node, kinds: &[(&'a str, &'a Value)], spot: &Spot) -> Option<Node> {
        let NodeValue::Map(entries) = &node.value else {
            self.wrong_type(&node, &["object"], spot);
            return None;
        };
        let known: Vec<String> = kinds.iter().map(|kind| kind.0.to_owned()).collect();
        let inner = spot_of(entries, spot, &|kind| known.iter().any(|one| one == kind));
        let Some(entry) = entries.iter().find(|entry| entry.key == "kind") else {
            let message = format!("{} says no kind.", sentence(&spot.of()));
            let remedy = format!("Give it a `kind`: {}.", known.join(", "));
            self.fault("missing_key", &inner, node.place, message, remedy);
            return None;
        };
        let kind = self.hold_choice(entry.node.clone(), known, &Spot { key: "kind".to_owned(), ..inner })?;
        let NodeValue::Text(kind) = kind.value else { return None };
        let schema = kinds.iter().find(|one| one.0 == kind)?.1;
        self.hold(node, schema, spot)
    }

    fn hold_choice(&mut self, node: Node, known: Vec<String>, spot: &Spot) -> Option<Node> {
        let NodeValue::Text(text) = &node.value else {
            self.wrong_choice(&node, &known, spot);
            return None;
        };
        if known.contains(text) {
            return Some(node);
        }
        let code = match spot.key.as_str() {
            "kind" => "unknown_kind",
            "units" => "unknown_unit",
            _ => "unknown_name",
        };
        let what = if spot.key == "units" { "unit of length" } else { &spot.key };
        let message = format!("`{}`, given for {}, is no known {what}.", quoted(text), spot.of());
        let unit = (code == "unknown_unit").then(|| nearest_unit(text)).flatten();
        let near = || if code == "unknown_kind" { kind_meant(text, &known) } else { did_you_mean(text, &known) };
        let remedy = unit.map_or_else(near, |unit| format!("Did you mean `{unit}`?"));
        self.fault(code, spot, node.place, message, remedy);
        None
    }

    /// What is no text where one of a few words is asked for: quotes would not make it one of them.
    fn wrong_choice(&mut self, node: &Node, known: &[String], spot: &Spot) {
        let (found, text) = found_words(&node.value);
        let (key, of) = (&spot.key, spot.of());
        let message =
            format!("`{key}` of {of} is {found}{}; it must be one of the words that are known here.", shown(&text));
        self.fault("wrong_type", spot, node.place, message, did_you_mean(&text, known));
    }

    fn alternative(&self, node: &Node, alternatives: &'a [Value]) -> Option<&'a Value> {
        let wanted = match node.value {
            NodeValue::Map(_) => "object",
            NodeValue::List(_) => "array",
            _ => "string",
        };
        let followed = || alternatives.iter().map(|one| self.followed(one)).filter(|one| types(one) != ["null"]);
        followed().find(|one| types(one).contains(&wanted)).or_else(|| followed().next())
    }

    fn hold_map(&mut self, entries: Vec<Entry>, place: Option<Place>, schema: &'a Value, spot: &Spot) -> Node {
        let properties = schema["properties"].as_object();
        let inner = self.spot_in(&entries, spot, schema);
        let known: Vec<String> = properties.into_iter().flat_map(|all| all.keys().cloned()).collect();
        self.tell_missing(&entries, place, schema, &inner);
        let mut held: Vec<Entry> = Vec::new();
        let mut seen: Vec<String> = Vec::new();
        for entry in entries {
            let any_key = Some(&schema["additionalProperties"]).filter(|value| value.is_object());
            let Some(property) = properties.and_then(|all| all.get(&entry.key)).or(any_key) else {
                self.unknown_key(&entry, &known, &inner);
                continue;
            };
            if seen.contains(&entry.key) {
                let message = format!("`{}` stands twice in {}.", quoted(&entry.key), inner.of());
                self.fault("key_twice", &inner, entry.place, message, "Keep one of the two.".to_owned());
                continue;
            }
            seen.push(entry.key.clone());
            let below = Spot { item: inner.item.clone(), key: entry.key.clone() };
            let node = self.hold(entry.node, property, &below).unwrap_or(Node::TAKEN_OUT);
            held.push(Entry { key: entry.key, place: entry.place, node });
        }
        Node { value: NodeValue::Map(held), place }
    }

    /// The spot inside a map that `schema` describes.
    fn spot_in(&self, entries: &[Entry], spot: &Spot, schema: &'a Value) -> Spot {
        let kind = self.followed(&schema["properties"]["kind"]);
        let known = keys_of(kind);
        let one = kind["const"].as_str();
        let free = known.is_empty() && one.is_none();
        spot_of(entries, spot, &|kind| free || one == Some(kind) || known.iter().any(|(key, _)| key == kind))
    }

    fn tell_missing(&mut self, entries: &[Entry], place: Option<Place>, schema: &Value, spot: &Spot) {
        let required = schema["required"].as_array().into_iter().flatten().filter_map(Value::as_str);
        for key in required.filter(|key| !entries.iter().any(|entry| entry.key == *key)) {
            let says = schema["properties"][key]["description"].as_str().unwrap_or_default();
            let message = format!("{} has no `{key}`.", sentence(&spot.of()));
            let remedy = format!("Give `{key}`: {}", lower_first(says));
            self.fault("missing_key", spot, place, message, remedy);
        }
    }

    fn unknown_key(&mut self, entry: &Entry, known: &[String], spot: &Spot) {
        let message = format!("`{}` is no key of {}.", quoted(&entry.key), spot.of());
        self.fault("unknown_key", spot, entry.place, message, key_remedy(&entry.key, known));
    }

    fn hold_list(&mut self, items: Vec<Node>, place: Option<Place>, schema: &'a Value, spot: &Spot) -> Option<Node> {
        let least = schema["minItems"].as_u64().unwrap_or(0);
        let most = schema["maxItems"].as_u64().unwrap_or(u64::MAX);
        let count = items.len() as u64;
        if !(least..=most).contains(&count) {
            let message = format!("`{}` of {} has {count} entries; it needs {least}.", spot.key, spot.of());
            self.fault("wrong_count", spot, place, message, format!("Give {least} entries: `[x, y]`."));
            return None;
        }
        let of = &schema["items"];
        // Rows are read one by one; a point or a list of points is whole or nothing.
        let leaves_a_place = types(of).contains(&"object") || of["oneOf"].is_array();
        let mut held = Vec::new();
        for (index, item) in items.into_iter().enumerate() {
            let below = Spot { item: nth(spot, index), key: spot.key.clone() };
            let item = self.hold(item, of, &below);
            if item.is_none() && !leaves_a_place {
                return None;
            }
            held.push(item.unwrap_or(Node::TAKEN_OUT));
        }
        Some(Node { value: NodeValue::List(held), place })
    }

    fn wrong_type(&mut self, node: &Node, types: &[&str], spot: &Spot) {
        let wanted: Vec<&str> = types.iter().filter(|one| **one != "null").map(|one| type_words(one)).collect();
        let (found, text) = found_words(&node.value);
        let message =
            format!("`{}` of {} is {found}{}; it must be {}.", spot.key, spot.of(), shown(&text), wanted.join(" or "));
        let remedy = match (&node.value, types) {
            (NodeValue::Integer(_) | NodeValue::Float(_) | NodeValue::Bool(_), [.., "string"] | ["string", ..]) => {
                format!("Put it in quotes: \"{text}\".")
            }
            (_, ["boolean", ..]) => "Write `true` or `false`.".to_owned(),
            _ => format!("Write {} here.", wanted.join(" or ")),
        };
        self.fault("wrong_type", spot, node.place, message, remedy);
    }

    fn followed(&self, schema: &'a Value) -> &'a Value {
        let mut schema = schema;
        // Definitions do not refer in circles; the limit only says so.
        for _ in 0..8 {
            let Some(name) = schema["$ref"].as_str().and_then(|path| path.strip_prefix("#/$defs/")) else { break };
            schema = &self.root["$defs"][name];
        }
        schema
    }

    fn fault(&mut self, code: &'static str, spot: &Spot, place: Option<Place>, message: String, remedy: String) {
        let item = (!spot.item.is_empty()).then(|| spot.item.clone());
        self.faults.push(Fault { code, item, message, remedy, place });
    }
}

fn types(schema: &Value) -> Vec<&str> {
    match &schema["type"] {
        Value::String(one) => vec![one],
        Value::Array(all) => all.iter().filter_map(Value::as_str).collect(),
        _ => Vec::new(),
    }
}

fn is_of(value: &NodeValue, name: &str) -> bool {
    match value {
        NodeValue::Null => name == "null",
        NodeValue::Bool(_) => name == "boolean",
        NodeValue::Integer(number) => name == "number" || (name == "integer" && u32::try_from(*number).is_ok()),
        NodeValue::Float(_) => name == "number",
        NodeValue::Text(_) => name == "string",
        NodeValue::List(_) | NodeValue::Map(_) => false,
    }
}
