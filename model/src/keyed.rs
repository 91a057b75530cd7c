//! A map whose keys are the values of an enumeration, with a schema that lists them.

use std::borrow::Cow;
use std::collections::BTreeMap;

use schemars::{JsonSchema, Schema, SchemaGenerator};
use serde::Deserialize;
use serde_json::{Map, Value, json};

/// Values by key; the key is one of an enumeration's.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(transparent, bound = "K: Ord + Deserialize<'de>, V: Deserialize<'de>")]
pub struct Keyed<K, V>(pub BTreeMap<K, V>);

impl<K, V> Default for Keyed<K, V> {
    fn default() -> Self {
        Self(BTreeMap::new())
    }
}

impl<K: JsonSchema, V: JsonSchema> JsonSchema for Keyed<K, V> {
    fn inline_schema() -> bool {
        true
    }

    fn schema_name() -> Cow<'static, str> {
        format!("{}By{}", V::schema_name(), K::schema_name()).into()
    }

    fn json_schema(generator: &mut SchemaGenerator) -> Schema {
        let properties = properties::<K, V>(generator);
        let mut schema = Schema::default();
        schema.insert("type".to_owned(), "object".into());
        schema.insert("properties".to_owned(), Value::Object(properties));
        schema.insert("additionalProperties".to_owned(), false.into());
        schema
    }
}

/// One property for each value of the enumeration `K`, described in its words.
pub(crate) fn properties<K: JsonSchema, V: JsonSchema>(generator: &mut SchemaGenerator) -> Map<String, Value> {
    let keys = K::json_schema(generator);
    let value = generator.subschema_for::<V>();
    let mut properties = Map::new();
    for (key, description) in keys_of(keys.as_value()) {
        let mut schema = value.clone();
        if let Some(description) = description {
            schema.insert("description".to_owned(), json!(description));
        }
        properties.insert(key, schema.to_value());
    }
    properties
}

/// The values of an enumeration's schema, each with its description.
pub(crate) fn keys_of(schema: &Value) -> Vec<(String, Option<String>)> {
    let text = |value: &Value| value.as_str().map(str::to_owned);
    let listed = schema["enum"].as_array().into_iter().flatten().filter_map(|one| Some((text(one)?, None)));
    let one = |one: &Value| Some((text(&one["const"])?, text(&one["description"])));
    let described = schema["oneOf"].as_array().into_iter().flatten().filter_map(one);
    listed.chain(described).collect()
}
