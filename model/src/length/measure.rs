//! A length as a file gives it: a number in the file's unit, or a text with a unit of its own.

use std::borrow::Cow;

use schemars::{JsonSchema, Schema, SchemaGenerator, json_schema};
use serde::Deserialize;

use super::{Extent, LengthError, bare, own_unit, parse, parse_extent};
use crate::unit::Unit;

/// Figures told apart in a millimetre of a room, far finer than any tape.
const TO_A_MILLIMETRE: f64 = 1e9;

/// The nearest figure told apart: a room is the same to the last digit, in whatever unit it is told.
fn nearest(length: f64) -> f64 {
    (length * TO_A_MILLIMETRE).round() / TO_A_MILLIMETRE
}

/// A length as written.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(untagged)]
pub enum Measure {
    /// A number in the file's unit.
    Number(f64),
    /// A text, perhaps with a unit of its own.
    Text(String),
}

impl Measure {
    /// The length, mm.
    ///
    /// # Errors
    /// Why it is none.
    pub fn length(&self, units: Unit) -> Result<f64, LengthError> {
        let length = match self {
            Self::Number(number) => bare(*number, units),
            Self::Text(text) => parse(text, units),
        };
        length.map(nearest)
    }

    /// The range or the one length, mm.
    ///
    /// # Errors
    /// Why it is neither.
    pub fn extent(&self, units: Unit) -> Result<Extent, LengthError> {
        let extent = match self {
            Self::Number(number) => bare(*number, units).map(Extent::One),
            Self::Text(text) => parse_extent(text, units),
        };
        extent.map(|extent| extent.map(nearest))
    }

    /// The unit that it names itself; `None`: it is in the file's.
    #[must_use]
    pub fn own_unit(&self) -> Option<Unit> {
        match self {
            Self::Number(_) => None,
            Self::Text(text) => own_unit(text),
        }
    }

    /// The length as the file has it, fit to be shown.
    #[must_use]
    pub fn as_written(&self) -> String {
        match self {
            Self::Number(number) => crate::quote::quoted(&number.to_string()),
            Self::Text(text) => crate::quote::quoted(text),
        }
    }
}

impl JsonSchema for Measure {
    fn inline_schema() -> bool {
        true
    }

    fn schema_name() -> Cow<'static, str> {
        "Length".into()
    }

    fn json_schema(_: &mut SchemaGenerator) -> Schema {
        json_schema!({ "type": ["number", "string"] })
    }
}
