//! Lengths and ranges as people write them; inside, always millimetres.

mod error;
mod measure;
mod number;
mod parse;

pub use error::LengthError;
pub use measure::Measure;
pub(crate) use parse::own_unit;
pub use parse::{Extent, LONGEST, bare, nearest_unit, parse, parse_extent};
