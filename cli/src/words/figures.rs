//! Counts and areas.

/// `1 wall`, `4 walls`.
pub(crate) fn counted(count: usize, one: &str, many: &str) -> String {
    format!("{count} {}", if count == 1 { one } else { many })
}

/// An area in square metres.
pub(crate) fn area(square_metres: f64) -> String {
    format!("{square_metres:.1} m2")
}
