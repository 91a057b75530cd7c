//! Decisions that the options are held to, and who lives in the room, as written.

use std::borrow::Cow;
use std::collections::BTreeMap;

use schemars::{JsonSchema, Schema, SchemaGenerator, json_schema};
use serde::Deserialize;

use crate::only::CHOICES;

/// Decisions by their names, each with the values that it may or may not have.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(transparent)]
pub(crate) struct ChoiceRows(pub(crate) BTreeMap<String, Option<ChoiceRow>>);

/// One value or several.
#[derive(Debug, Clone, Deserialize)]
#[serde(untagged)]
pub(crate) enum ChoiceRow {
    /// One.
    One(String),
    /// Any of several.
    Several(Vec<String>),
}

impl JsonSchema for ChoiceRows {
    fn inline_schema() -> bool {
        true
    }

    fn schema_name() -> Cow<'static, str> {
        "Choices".into()
    }

    /// The keys are those of results, or the name of a second seat: an editor is offered the former.
    fn json_schema(_: &mut SchemaGenerator) -> Schema {
        json_schema!({
            "type": "object",
            "propertyNames": { "anyOf": [{ "enum": CHOICES }, { "type": "string" }] },
            "additionalProperties": {
                "anyOf": [{ "type": "string" }, { "type": "array", "items": { "type": "string" } }]
            }
        })
    }
}

/// Who lives in the room.
#[derive(Debug, Clone, Default, Deserialize, JsonSchema)]
#[schemars(inline)]
#[serde(deny_unknown_fields)]
pub(crate) struct HouseholdRow {
    /// How many are to sit: the places that the criterion `seats` asks for.
    pub(crate) people: Option<u32>,
    /// true: what to heed where children live is told; false: none of it is; left out: the general caution at windows.
    pub(crate) children: Option<bool>,
}

/// Whom the room is planned for.
#[derive(Debug, Clone, Default, Deserialize, JsonSchema)]
#[schemars(inline)]
#[serde(deny_unknown_fields)]
pub(crate) struct OrderRow {
    /// Whom it is planned for; shown at the head of pages and sheets.
    pub(crate) client: Option<String>,
    /// A note of yours; shown there too, never read as anything else.
    pub(crate) note: Option<String>,
}
