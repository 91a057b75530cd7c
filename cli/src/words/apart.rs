//! Prose of what sets one option apart from another.

use elbowroom_model::Dimension;
use elbowroom_model::article::the;

/// A criterion's score: `view +20`.
pub(crate) fn score(criterion: &str, by: f64) -> String {
    format!("{criterion} {by:+.0}")
}

/// Sizes of one piece: `coffee table 12 cm wider`, `corner sofa 12 cm wider and 3 cm deeper, its return 5 cm shorter`.
pub(crate) fn sizes(piece: &str, apart: &[(Dimension, String, bool)]) -> String {
    let (returns, own): (Vec<_>, Vec<_>) = apart.iter().partition(|(dimension, ..)| *dimension == Dimension::Return);
    let own: Vec<String> = own.into_iter().map(change).collect();
    let returns = returns.first().map(|it| change(it));
    match (own.is_empty(), returns) {
        (true, Some(longer)) => format!("return of {} {longer}", the(piece)),
        (_, None) => format!("{piece} {}", own.join(" and ")),
        (false, Some(longer)) => format!("{piece} {}, its return {longer}", own.join(" and ")),
    }
}

/// `12 cm wider`.
fn change((dimension, by, more): &(Dimension, String, bool)) -> String {
    let how = match (dimension, more) {
        (Dimension::Width, true) => "wider",
        (Dimension::Width, false) => "narrower",
        (Dimension::Return, true) => "longer",
        (Dimension::Return, false) => "shorter",
        (Dimension::Depth, true) => "deeper",
        (Dimension::Depth, false) => "less deep",
    };
    format!("{by} {how}")
}

/// A way: `way from the hall door to the corner sofa 9 cm narrower`.
pub(crate) fn way(from: &str, to: &str, by: &str, more: bool) -> String {
    format!("way from {from} to {to} {by} {}", if more { "wider" } else { "narrower" })
}

/// A piece that stands in the one alone.
pub(crate) fn piece(piece: &str, stands: bool) -> String {
    if stands { format!("{piece} placed") } else { format!("{piece} left out") }
}

#[cfg(test)]
mod tests {
    use elbowroom_model::Dimension::{Depth, Return, Width};

    use super::sizes;

    #[test]
    fn a_piece_is_named_once() {
        let by = |length: &str| length.to_owned();
        assert_eq!(
            sizes("rug", &[(Width, by("9 cm"), true), (Depth, by("3 cm"), false)]),
            "rug 9 cm wider and 3 cm less deep"
        );
        assert_eq!(
            sizes("sofa", &[(Depth, by("3 cm"), true), (Return, by("9 cm"), false)]),
            "sofa 3 cm deeper, its return 9 cm shorter"
        );
        assert_eq!(sizes("p0", &[(Return, by("9 cm"), true)]), "return of p0 9 cm longer");
    }
}
