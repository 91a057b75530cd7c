//! Units in a sentence.

use elbowroom_model::Unit;

use super::lengths::{shop_unit, sign};

/// The unit that furniture is sold in as a sentence has it after `in`: `sizes in inches`.
pub(crate) const fn in_words(unit: Unit) -> &'static str {
    match shop_unit(unit) {
        Unit::Inch => "inches",
        other => sign(other),
    }
}
