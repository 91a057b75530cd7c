//! What one option gives for what it takes, against another.

use elbowroom_model::{Criterion, Dimension, PieceId};

use super::side::{Side, are_of_one_row};
use crate::answer::{PieceSizes, Thing};
use crate::routes::Route;

/// Scores nearer than this are told as the same.
const SAME_SCORE: f64 = 3.0;
/// Lengths nearer than this are told as the same, mm: a shopper's step.
const SAME_LENGTH: f64 = 10.0;

/// One thing in which an option is apart from another. Ids are places in its own brief, unless told otherwise.
#[derive(Debug, Clone, Copy, PartialEq)]
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
        piece: PieceId,
        /// Which dimension.
        dimension: Dimension,
        /// The most in this one less that in the other, mm.
        by: f64,
    },
    /// A way is wider or narrower.
    Width {
        /// From here.
        from: Thing,
        /// To there.
        to: Thing,
        /// mm.
        by: f64,
    },
    /// A piece stands in this one alone.
    Stands {
        /// The piece.
        piece: PieceId,
    },
    /// A piece stands in the other alone.
    Lacks {
        /// The piece, by its place in the other's brief.
        piece: PieceId,
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

/// One option against the other. They may be of two briefs: pieces and items are the same where their names are, and
/// pieces of one row of the file may change places.
#[must_use]
pub fn trade(one: Side<'_>, other: Side<'_>) -> Trade {
    let mut all = scores(one, other);
    all.extend(pieces(one, other));
    all.extend(sizes(one, other));
    all.extend(ways(one, other));
    let (gains, costs) = all.into_iter().partition(|(_, better)| *better);
    let told = |all: Vec<(Apart, bool)>| all.into_iter().map(|(apart, _)| apart).collect();
    Trade { gains: told(gains), costs: told(costs) }
}

/// What is apart, and whether that is for the better.
type Weighed = Vec<(Apart, bool)>;

fn scores(one: Side<'_>, other: Side<'_>) -> Weighed {
    let mut found: Vec<(f64, Apart, bool)> = Vec::new();
    for judgement in &one.option.judgements {
        let Some(theirs) = other.option.judgement(judgement.criterion) else { continue };
        let (by, weight) = (judgement.score - theirs.score, one.brief.wishes.get(judgement.criterion));
        if by.abs() >= SAME_SCORE && weight > 0.0 {
            let apart = Apart::Score { criterion: judgement.criterion, by };
            found.push(((by * weight).abs(), apart, by > 0.0));
        }
    }
    found.sort_by(|one, other| other.0.total_cmp(&one.0));
    found.into_iter().map(|(_, apart, better)| (apart, better)).collect()
}

fn pieces(one: Side<'_>, other: Side<'_>) -> Weighed {
    let alone = |here: Side<'_>, there: Side<'_>| -> Vec<PieceId> {
        let pieces = twins(here, there).into_iter().filter(|(_, theirs)| theirs.is_none());
        pieces.map(|(ours, _)| ours.piece).collect()
    };
    let stands = alone(one, other).into_iter().map(|piece| (Apart::Stands { piece }, true));
    let lacks = alone(other, one).into_iter().map(|piece| (Apart::Lacks { piece }, false));
    stands.chain(lacks).collect()
}

fn sizes(one: Side<'_>, other: Side<'_>) -> Weighed {
    let mut found: Vec<(f64, Apart)> = Vec::new();
    for (sizes, theirs) in twins(one, other) {
        let Some(theirs) = theirs else { continue };
        for &dimension in Dimension::ALL {
            let Some((ours, theirs)) = sizes.get(dimension).zip(theirs.get(dimension)) else { continue };
            let by = ours.together - theirs.together;
            if by.abs() >= SAME_LENGTH {
                found.push((by, Apart::Size { piece: sizes.piece, dimension, by }));
            }
        }
    }
    found.sort_by(|one, other| other.0.abs().total_cmp(&one.0.abs()));
    found.into_iter().map(|(by, apart)| (apart, by > 0.0)).collect()
}

fn ways(one: Side<'_>, other: Side<'_>) -> Weighed {
    let ends = |side: Side<'_>, route: &Route| [route.from, route.to].map(|end| end.name(side.brief).to_owned());
    let mut found = Vec::new();
    for route in &one.option.routes {
        let theirs = other.option.routes.iter().find(|theirs| ends(other, theirs) == ends(one, route));
        let Some(theirs) = theirs else { continue };
        let by = route.width - theirs.width;
        if by.abs() >= SAME_LENGTH {
            let (from, to) = (route.from.into(), route.to.into());
            found.push((Apart::Width { from, to, by }, by > 0.0));
        }
    }
    found
}

/// Each piece here with the piece there that it is: that of its name, else one of its row that is nobody else's; `None`
/// where none stands there.
fn twins<'a>(here: Side<'a>, there: Side<'a>) -> Vec<(&'a PieceSizes, Option<&'a PieceSizes>)> {
    let mut left: Vec<&PieceSizes> = there.option.sizes.iter().collect();
    let mut take = |is_twin: &dyn Fn(PieceId) -> bool| {
        let place = left.iter().position(|theirs| is_twin(theirs.piece));
        place.map(|place| left.remove(place))
    };
    let name = |side: Side<'a>, piece: PieceId| side.brief.piece_name(piece);
    let ours = here.option.sizes.iter();
    let mut found: Vec<(&PieceSizes, Option<&PieceSizes>)> =
        ours.map(|ours| (ours, take(&|theirs| name(there, theirs) == name(here, ours.piece)))).collect();
    for (ours, theirs) in found.iter_mut().filter(|(_, theirs)| theirs.is_none()) {
        *theirs = take(&|theirs| are_of_one_row(here.of(ours.piece), there.of(theirs)));
    }
    found
}
