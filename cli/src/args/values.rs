//! How a single value of the command line is read.

use clap::builder::{PossibleValuesParser, TypedValueParser};
use elbowroom_model::{Criterion, Unit};

/// Reads a unit of length.
pub(super) fn unit() -> impl TypedValueParser<Value = Unit> {
    PossibleValuesParser::new(Unit::ALL.iter().map(|unit| unit.key())).try_map(|given| given.parse::<Unit>())
}

/// Reads the name of a criterion.
pub(super) fn criterion() -> impl TypedValueParser<Value = Criterion> {
    PossibleValuesParser::new(Criterion::ALL.iter().map(|criterion| criterion.key()))
        .try_map(|given| given.parse::<Criterion>())
}
