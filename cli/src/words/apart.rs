//! Prose of what sets one option apart from another.

use elbowroom_model::Dimension;

/// A criterion's score: `view +20`.
pub(crate) fn score(criterion: &str, by: f64) -> String {
    format!("{criterion} {by:+.0}")
}

/// A size: `coffee table 12 cm wider`.
pub(crate) fn size(piece: &str, dimension: Dimension, by: &str, more: bool) -> String {
    match (dimension, more) {
        (Dimension::Width, true) => format!("{piece} {by} wider"),
        (Dimension::Width, false) => format!("{piece} {by} narrower"),
        (Dimension::Return, true) => format!("return of the {piece} {by} longer"),
        (Dimension::Return, false) => format!("return of the {piece} {by} shorter"),
        (Dimension::Depth, true) => format!("{piece} {by} deeper"),
        (Dimension::Depth, false) => format!("{piece} {by} less deep"),
    }
}

/// A way: `way from the hall door to the corner sofa 9 cm narrower`.
pub(crate) fn way(from: &str, to: &str, by: &str, more: bool) -> String {
    format!("way from {from} to {to} {by} {}", if more { "wider" } else { "narrower" })
}

/// A piece that stands in the one alone.
pub(crate) fn piece(piece: &str, stands: bool) -> String {
    if stands { format!("{piece} placed") } else { format!("{piece} left out") }
}
