//! How a single value of the command line is read.

use clap::builder::{PossibleValuesParser, TypedValueParser};
use elbowroom_model::{Criterion, Unit};

/// The units of length, as files and the command line write them.
const UNITS: [(&str, Unit); 5] =
    [("mm", Unit::Millimetre), ("cm", Unit::Centimetre), ("m", Unit::Metre), ("in", Unit::Inch), ("ft", Unit::Foot)];

/// Reads a unit of length.
pub(super) fn unit() -> impl TypedValueParser<Value = Unit> {
    PossibleValuesParser::new(UNITS.map(|(word, _)| word)).map(|given| {
        let found = UNITS.iter().find(|(word, _)| *word == given);
        found.map_or_else(Unit::default, |(_, unit)| *unit)
    })
}

/// Reads the name of a criterion.
pub(super) fn criterion() -> impl TypedValueParser<Value = Criterion> {
    PossibleValuesParser::new(Criterion::ALL.map(Criterion::key)).try_map(|given| {
        let found = Criterion::ALL.into_iter().find(|criterion| criterion.key() == given);
        found.ok_or("no such criterion")
    })
}
