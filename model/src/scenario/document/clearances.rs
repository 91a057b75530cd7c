//! The clearances, as written.

use std::borrow::Cow;
use std::collections::BTreeMap;

use schemars::{JsonSchema, Schema, SchemaGenerator};
use serde::Deserialize;

use crate::keyed::{Keyed, properties};
use crate::length::Measure;
use crate::rules::Clearance;
use crate::tables::Profile;

/// The profile and the clearances that differ from it.
#[derive(Debug, Clone, Default, PartialEq, Deserialize)]
pub(crate) struct ClearanceRows {
    /// The table that the clearances start from.
    pub(crate) profile: Option<Profile>,
    /// Clearances set by themselves.
    #[serde(flatten)]
    pub(crate) figures: BTreeMap<Clearance, Option<Measure>>,
}

impl JsonSchema for ClearanceRows {
    fn inline_schema() -> bool {
        true
    }

    fn schema_name() -> Cow<'static, str> {
        "Clearances".into()
    }

    fn json_schema(generator: &mut SchemaGenerator) -> Schema {
        let mut schema = Keyed::<Clearance, Measure>::json_schema(generator);
        let mut profile = generator.subschema_for::<Option<Profile>>();
        profile.insert("description".to_owned(), "The table that the clearances start from; default easy.".into());
        let mut keys = properties::<Clearance, Option<Measure>>(generator);
        keys.insert("profile".to_owned(), profile.to_value());
        schema.insert("properties".to_owned(), keys.into());
        schema
    }
}
