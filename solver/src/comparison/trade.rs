//! What one option gives for what it takes, against another.

use elbowroom_model::{Criterion, Dimension};

use crate::outcome::{DimensionFound, OptionFound, PieceFound};

/// Scores nearer than this are told as the same.
const SAME_SCORE: f64 = 3.0;
/// Lengths nearer than this are told as the same, mm: a shopper's step.
const SAME_LENGTH: f64 = 10.0;

/// One thing in which an option is apart from another.
#[derive(Debug, Clone, PartialEq)]
pub enum Apart {
    /// A criterion judges it otherwise.
    Score {
        /// Which.
        criterion: Criterion,
        /// The score of this one less that of the other.
        by: f64,
    },
    /// A piece may be larger or must be smaller.
    Size {
        /// The piece.
        piece: String,
        /// Which dimension.
        dimension: Dimension,
        /// The most in this one less that in the other, mm.
        by: f64,
    },
    /// A way is wider or narrower.
    Width {
        /// From here.
        from: String,
        /// To there.
        to: String,
        /// mm.
        by: f64,
    },
    /// A piece stands in the one alone.
    Piece {
        /// The piece.
        piece: String,
        /// In this one.
        stands: bool,
    },
}

/// What an option is better in than another, and what it is worse in, each with what counts most first: criteria by their
/// weight, then pieces, then sizes, then ways.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Trade {
    /// Better.
    pub gains: Vec<Apart>,
    /// Worse.
    pub costs: Vec<Apart>,
}

/// `option` against `other`.
#[must_use]
pub fn trade(option: &OptionFound, other: &OptionFound) -> Trade {
    let mut all = scores(option, other);
    all.extend(pieces(option, other));
    all.extend(sizes(option, other));
    all.extend(ways(option, other));
    let (gains, costs) = all.into_iter().partition(|(_, better)| *better);
    let told = |all: Vec<(Apart, bool)>| all.into_iter().map(|(apart, _)| apart).collect();
    Trade { gains: told(gains), costs: told(costs) }
}

type Told = Vec<(Apart, bool)>;

fn scores(option: &OptionFound, other: &OptionFound) -> Told {
    let mut found: Vec<(f64, Apart, bool)> = Vec::new();
    for criterion in &option.criteria {
        let Some(theirs) = other.criteria.iter().find(|theirs| theirs.name == criterion.name) else { continue };
        let by = criterion.score - theirs.score;
        if by.abs() >= SAME_SCORE && criterion.weight > 0.0 {
            let told = Apart::Score { criterion: criterion.name, by };
            found.push(((by * criterion.weight).abs(), told, by > 0.0));
        }
    }
    found.sort_by(|one, other| other.0.total_cmp(&one.0));
    found.into_iter().map(|(_, apart, better)| (apart, better)).collect()
}

fn pieces(option: &OptionFound, other: &OptionFound) -> Told {
    let missing = |here: &OptionFound, there: &OptionFound, stands: bool| -> Told {
        let alone = here.pieces.iter().filter(|piece| named(there, &piece.name).is_none());
        alone.map(|piece| (Apart::Piece { piece: piece.name.clone(), stands }, stands)).collect()
    };
    let mut found = missing(option, other, true);
    found.extend(missing(other, option, false));
    found
}

fn sizes(option: &OptionFound, other: &OptionFound) -> Told {
    let mut found = Vec::new();
    for piece in &option.pieces {
        let Some(theirs) = named(other, &piece.name) else { continue };
        for dimension in [Dimension::Width, Dimension::Return, Dimension::Depth] {
            let Some((ours, theirs)) = figures(piece, dimension).zip(figures(theirs, dimension)) else { continue };
            let by = ours.together - theirs.together;
            if by.abs() >= SAME_LENGTH {
                found.push((Apart::Size { piece: piece.name.clone(), dimension, by }, by > 0.0));
            }
        }
    }
    let by = |apart: &Apart| if let Apart::Size { by, .. } = apart { by.abs() } else { 0.0 };
    found.sort_by(|one, other| by(&other.0).total_cmp(&by(&one.0)));
    found
}

fn ways(option: &OptionFound, other: &OptionFound) -> Told {
    let mut found = Vec::new();
    for route in &option.routes {
        let theirs = other.routes.iter().find(|theirs| theirs.from == route.from && theirs.to == route.to);
        let Some(theirs) = theirs else { continue };
        let by = route.width - theirs.width;
        if by.abs() >= SAME_LENGTH {
            found.push((Apart::Width { from: route.from.clone(), to: route.to.clone(), by }, by > 0.0));
        }
    }
    found
}

fn named<'a>(option: &'a OptionFound, name: &str) -> Option<&'a PieceFound> {
    option.pieces.iter().find(|piece| piece.name == name)
}

const fn figures(piece: &PieceFound, dimension: Dimension) -> Option<DimensionFound> {
    match dimension {
        Dimension::Width => Some(piece.range.width),
        Dimension::Return => piece.range.return_length,
        Dimension::Depth => Some(piece.range.depth),
    }
}
