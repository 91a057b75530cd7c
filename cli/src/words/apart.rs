//! What sets one option apart from another, item by item, in the reader's unit.

use elbowroom_model::article::the;
use elbowroom_model::{Brief, Dimension, PieceId, Rounding};
use elbowroom_solver::answer::Thing;
use elbowroom_solver::comparison::Apart;

use super::lengths::shop_unit;

/// Differences in words, those in the size of one piece together: `view +20`, `coffee table 12 cm wider and 3 cm deeper`.
/// `brief`, `other`: what the one that they are told of was solved for, and what it is held against.
pub(crate) fn words<'a>(brief: &Brief, other: &Brief, all: impl IntoIterator<Item = &'a Apart>) -> Vec<String> {
    let all: Vec<&Apart> = all.into_iter().collect();
    let length = |by: f64| shop_unit(brief.units).words(by.abs(), Rounding::Nearest);
    let sizes_of = |of: PieceId| -> Vec<Change> {
        let sizes = all.iter().filter_map(|apart| match apart {
            Apart::Size { piece, dimension, by } if *piece == of => {
                Some(Change { dimension: *dimension, by: length(*by), more: *by > 0.0 })
            }
            _ => None,
        });
        sizes.collect()
    };
    let mut told_pieces: Vec<PieceId> = Vec::new();
    let mut told = Vec::new();
    for apart in &all {
        told.push(match apart {
            Apart::Score { criterion, by } => score(super::criteria::name(*criterion), *by),
            Apart::Size { piece, .. } if told_pieces.contains(piece) => continue,
            Apart::Size { piece, .. } => {
                told_pieces.push(*piece);
                sizes(Thing::Piece(*piece).name(brief), &sizes_of(*piece))
            }
            Apart::Width { from, to, by } => way(from.name(brief), to.name(brief), &length(*by), *by > 0.0),
            Apart::Stands { piece } => format!("{} placed", Thing::Piece(*piece).name(brief)),
            Apart::Lacks { piece } => format!("{} left out", Thing::Piece(*piece).name(other)),
        });
    }
    told
}

/// A criterion's score: `view +20`.
fn score(criterion: &str, by: f64) -> String {
    format!("{criterion} {by:+.0}")
}

/// Sizes of one piece: `coffee table 12 cm wider`, `corner sofa 12 cm wider and 3 cm deeper, its return 5 cm shorter`.
fn sizes(piece: &str, apart: &[Change]) -> String {
    let (returns, own): (Vec<_>, Vec<_>) = apart.iter().partition(|it| !it.is_of_main_run());
    let own: Vec<String> = own.into_iter().map(Change::words).collect();
    let returns: Vec<(&str, String)> = returns.into_iter().map(|it| (it.of(), it.words())).collect();
    match (own.is_empty(), returns.split_first()) {
        (true, Some(((of, longer), rest))) => {
            let rest = rest.iter().map(|(of, longer)| format!(", its {of} {longer}"));
            format!("{of} of {} {longer}{}", the(piece), rest.collect::<String>())
        }
        (_, None) => format!("{piece} {}", own.join(" and ")),
        (false, Some(_)) => {
            let all = returns.iter().map(|(of, longer)| format!(", its {of} {longer}"));
            format!("{piece} {}{}", own.join(" and "), all.collect::<String>())
        }
    }
}

/// How a dimension differs.
struct Change {
    dimension: Dimension,
    /// By how much, in words.
    by: String,
    /// It is larger.
    more: bool,
}

impl Change {
    /// `12 cm wider`.
    fn words(&self) -> String {
        let how = match (self.dimension, self.more) {
            (Dimension::Width, true) => "wider",
            (Dimension::Width, false) => "narrower",
            (Dimension::Return | Dimension::SecondReturn, true) => "longer",
            (Dimension::Return | Dimension::SecondReturn, false) => "shorter",
            (Dimension::Depth | Dimension::ReturnDepth, true) => "deeper",
            (Dimension::Depth | Dimension::ReturnDepth, false) => "less deep",
        };
        format!("{} {how}", self.by)
    }

    /// Whether it is the main run that differs, or all of the piece.
    fn is_of_main_run(&self) -> bool {
        matches!(self.dimension, Dimension::Width | Dimension::Depth)
    }

    /// Which return differs.
    fn of(&self) -> &'static str {
        if self.dimension == Dimension::SecondReturn { "second return" } else { "return" }
    }
}

/// A way: `way from the hall door to the corner sofa 9 cm narrower`.
fn way(from: &str, to: &str, by: &str, more: bool) -> String {
    format!("way from {from} to {to} {by} {}", if more { "wider" } else { "narrower" })
}

#[cfg(test)]
mod tests {
    use elbowroom_model::Dimension::{Depth, Return, Width};

    use super::{Change, sizes};

    #[test]
    fn a_piece_is_named_once() {
        let by = |dimension, by: &str, more| Change { dimension, by: by.to_owned(), more };
        assert_eq!(
            sizes("rug", &[by(Width, "9 cm", true), by(Depth, "3 cm", false)]),
            "rug 9 cm wider and 3 cm less deep"
        );
        assert_eq!(
            sizes("sofa", &[by(Depth, "3 cm", true), by(Return, "9 cm", false)]),
            "sofa 3 cm deeper, its return 9 cm shorter"
        );
        assert_eq!(sizes("p0", &[by(Return, "9 cm", true)]), "return of p0 9 cm longer");
    }
}
