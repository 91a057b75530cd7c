//! Least, usual and most of a dimension: what the scenario says, and the table where it says nothing.

use crate::length::Extent;
use crate::piece::SizeRange;

/// The table's range held within what the scenario gives: a missing end is the table's, never past the given one, and what
/// is usual lies between.
pub(super) fn within(table: SizeRange, given: Option<Extent>) -> SizeRange {
    let (least, most) = match given {
        None => (table.least, table.most),
        Some(Extent::One(size)) => (size, size),
        Some(Extent::Between { least: Some(least), most: Some(most) }) => (least, most),
        Some(Extent::Between { least: Some(least), most: None }) => (least, table.most.max(least)),
        Some(Extent::Between { least: None, most: Some(most) }) => (table.least.min(most), most),
        Some(Extent::Between { least: None, most: None }) => (table.least, table.most),
    };
    SizeRange { least, usual: table.usual.clamp(least, most), most }
}

/// The table's range with a least that is at least `least`: the others follow where it passes them.
pub(super) fn raised(table: SizeRange, least: f64) -> SizeRange {
    let least = table.least.max(least);
    SizeRange { least, usual: table.usual.max(least), most: table.most.max(least) }
}

/// What both ranges allow, for a piece whose width and depth are one size.
pub(super) fn common(width: SizeRange, depth: SizeRange) -> (SizeRange, SizeRange) {
    let (least, most) = (width.least.max(depth.least), width.most.min(depth.most));
    if least > most {
        return (width, width);
    }
    let both = SizeRange { least, usual: width.usual.clamp(least, most), most };
    (both, both)
}
