//! How the two sofas of one row of the file stand to each other.

use schemars::JsonSchema;
use serde::Deserialize;
use strum::IntoStaticStr;

/// How two sofas of one row stand to each other.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Deserialize, JsonSchema, IntoStaticStr)]
#[serde(rename_all = "snake_case")]
#[strum(serialize_all = "snake_case")]
pub enum Pair {
    /// Opposite, one facing the other.
    Facing,
    /// At a right angle.
    Corner,
    /// As suits the room.
    #[default]
    Either,
}

impl Pair {
    /// The word as files write it.
    #[must_use]
    pub fn key(self) -> &'static str {
        self.into()
    }
}
