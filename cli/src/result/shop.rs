//! Every candidate of a list against one room, as JSON. Lengths mm.

use elbowroom_model::listing::{ListedPiece, Money};
use elbowroom_model::{Dimension, PieceKind};
use elbowroom_solver::shop::{
    Beyond, CandidateFound, Impossible, Left, Miss, OptionFits, PairFound, Row, SetFound, SetPiece, SetsFound,
    ShopFound,
};
use serde::Serialize;

use super::costs::CostsResult;
use super::rank::{OptionResult, RemedyResult};
use super::way::PieceResult;
use crate::words::answer::title;
use crate::words::shop::{self as words, Names};

/// Name and version of the format.
const FORMAT: &str = "elbowroom-shop/1";

/// Every candidate against one room.
#[derive(Debug, Serialize)]
pub(crate) struct ShopResult<'a> {
    /// Name and version of the format.
    format: &'static str,
    /// Name of the room.
    room: &'a str,
    /// What the room asks for.
    rows: Vec<RowResult<'a>>,
    /// Each candidate, in the list's order.
    candidates: Vec<CandidateResult<'a>>,
    /// The best sets, where they were asked for.
    sets: Option<SetsResult<'a>>,
    /// Cautions.
    notices: &'a [String],
}

/// A piece that the room asks for, or several alike.
#[derive(Debug, Serialize)]
struct RowResult<'a> {
    /// The name of the first of them.
    name: &'a str,
    /// What it is.
    kind: PieceKind,
    /// How many alike.
    count: usize,
    /// It must stand in the room.
    needed: bool,
}

/// A candidate against the row that suits it best.
#[derive(Debug, Serialize)]
struct CandidateResult<'a> {
    /// Its name.
    name: &'a str,
    /// Line of the list.
    line: usize,
    /// What it is.
    kind: PieceKind,
    /// Width.
    width: f64,
    /// Return.
    #[serde(rename = "return")]
    return_length: Option<f64>,
    /// Second return; absent where it has none.
    #[serde(skip_serializing_if = "Option::is_none")]
    second_return: Option<f64>,
    /// Depth.
    depth: f64,
    /// Depth of its return; absent where that is as deep as the rest.
    #[serde(skip_serializing_if = "Option::is_none")]
    return_depth: Option<f64>,
    /// What one costs.
    price: Option<Money>,
    /// Name of the row that it is tried as.
    row: Option<&'a str>,
    /// Sizes that lie beyond what was asked for.
    beyond: Vec<BeyondResult>,
    /// Whether it gets in, where the way is given.
    way: Option<PieceResult<'a>>,
    /// It has its place in the room.
    fits: bool,
    /// Every option with it, best first.
    options: Vec<FitResult<'a>>,
    /// How much larger it could be in the first option, each dimension by itself.
    left: Vec<LeftResult>,
    /// Dimensions that would have to be less, each by itself enough.
    misses: Vec<MissResult>,
    /// Why it does not fit, where that is no matter of size.
    why_not: Option<String>,
    /// What would make it fit.
    remedies: Vec<RemedyResult>,
}

/// A size beyond what was asked for.
#[derive(Debug, Serialize)]
struct BeyondResult {
    /// Which.
    dimension: Dimension,
    /// Over the most if above 0, under the least if below.
    by: f64,
}

/// How much larger a piece could be.
#[derive(Debug, Serialize)]
struct LeftResult {
    /// Which dimension.
    dimension: Dimension,
    /// By so much, all other pieces at their least.
    by: f64,
    /// It was not looked any further.
    or_more: bool,
}

/// By how much a piece is too large.
#[derive(Debug, Serialize)]
struct MissResult {
    /// Which dimension.
    dimension: Dimension,
    /// So much less would do.
    by: f64,
}

/// An option that a candidate fits.
#[derive(Debug, Serialize)]
struct FitResult<'a> {
    /// Stable name of the arrangement.
    key: &'a str,
    /// The arrangement in words.
    title: String,
    /// 0 to 100.
    score: f64,
}

/// The best sets.
#[derive(Debug, Serialize)]
struct SetsResult<'a> {
    /// Best first.
    sets: Vec<SetResult<'a>>,
    /// Sets that were solved.
    solved: usize,
    /// Nothing better can be.
    proven: bool,
    /// Why there is none.
    impossible: Option<String>,
    /// Pairs that do not go together, where there is no set.
    pairs: Vec<PairResult<'a>>,
    /// The cheapest set that fits, where none does under the budget.
    cheapest: Option<SetResult<'a>>,
    /// Rows for which the list has nothing.
    without: Vec<&'a str>,
    /// Candidates left aside since they have no price.
    unpriced: Vec<&'a str>,
}

/// One of each.
#[derive(Debug, Serialize)]
struct SetResult<'a> {
    /// What stands for each row.
    pieces: Vec<SetPieceResult<'a>>,
    /// What all of it costs.
    price: Option<Money>,
    /// Mean of the scores that the list gives.
    liking: Option<f64>,
    /// What it costs beside others; null where a price of it is not known.
    costs: Option<CostsResult<'a>>,
    /// Options that the set makes.
    options: usize,
    /// The best of them, with its layout.
    option: OptionResult<'a>,
}

/// What stands for a row.
#[derive(Debug, Serialize)]
struct SetPieceResult<'a> {
    /// The row.
    row: &'a str,
    /// The candidate; `None`: this row is left out.
    candidate: Option<&'a str>,
    /// How many.
    count: usize,
}

/// Two candidates that do not go together.
#[derive(Debug, Serialize)]
struct PairResult<'a> {
    /// Their names.
    between: [&'a str; 2],
    /// What fails, in the arrangement that misses least.
    why: String,
}

impl<'a> ShopResult<'a> {
    /// The result of `found` with what is to be told beside it.
    pub(crate) fn of(names: Names<'a>, found: &'a ShopFound, notices: &'a [String]) -> Self {
        let row = |(place, row): (usize, &Row)| RowResult {
            name: names.row(place),
            kind: row.kind,
            count: row.pieces.len(),
            needed: row.needed,
        };
        let candidates = names.listed.iter().zip(&found.candidates);
        Self {
            format: FORMAT,
            room: &names.brief.room.name,
            rows: found.rows.iter().enumerate().map(row).collect(),
            candidates: candidates.map(|(listed, found)| candidate(names, listed, found)).collect(),
            sets: found.sets.as_ref().map(|found| sets(names, found)),
            notices,
        }
    }
}

fn candidate<'a>(names: Names<'a>, listed: &'a ListedPiece, found: &'a CandidateFound) -> CandidateResult<'a> {
    let way = names.brief.way.as_ref().zip(found.way.as_ref());
    let remedies = found.remedies.iter().map(|one| RemedyResult::of(names.brief, one, found.is_decided()));
    CandidateResult {
        name: &listed.name,
        line: listed.line,
        kind: listed.kind,
        width: listed.width,
        return_length: listed.return_length,
        second_return: listed.second_return,
        return_depth: listed.return_depth,
        depth: listed.depth,
        price: listed.price,
        row: found.row.map(|row| names.row(row)),
        beyond: found.beyond.iter().map(|&Beyond { dimension, by }| BeyondResult { dimension, by }).collect(),
        way: way.map(|(way, piece)| PieceResult::of(way, piece)),
        fits: found.fits(),
        options: found.options.iter().map(|one| option(names, one)).collect(),
        left: found.left.iter().map(|&Left { dimension, by, or_more }| LeftResult { dimension, by, or_more }).collect(),
        misses: found.misses.iter().map(|&Miss { dimension, by }| MissResult { dimension, by }).collect(),
        why_not: words::why_not(names, listed, found),
        remedies: remedies.collect(),
    }
}

fn option<'a>(names: Names<'a>, found: &'a OptionFits) -> FitResult<'a> {
    FitResult { key: &found.key, title: title(names.brief, found), score: found.score }
}

fn sets<'a>(names: Names<'a>, found: &'a SetsFound) -> SetsResult<'a> {
    let (pairs, cheapest) = match &found.impossible {
        Some(Impossible::Pairs(pairs)) => (pairs.as_slice(), None),
        Some(Impossible::OverBudget(cheapest)) => (&[][..], Some(cheapest.as_ref())),
        Some(Impossible::NothingListed | Impossible::NoneFor(_) | Impossible::NotAllTogether) | None => (&[][..], None),
    };
    SetsResult {
        sets: found.sets.iter().map(|one| set(names, one)).collect(),
        solved: found.solved,
        proven: found.proven,
        impossible: found.impossible.as_ref().map(|why| words::impossible(names, why)),
        pairs: pairs.iter().map(|one| pair(names, one)).collect(),
        cheapest: cheapest.map(|one| set(names, one)),
        without: found.without.iter().map(|row| names.row(*row)).collect(),
        unpriced: found.unpriced.iter().map(|place| names.candidate(*place)).collect(),
    }
}

fn set<'a>(names: Names<'a>, found: &'a SetFound) -> SetResult<'a> {
    let piece = |SetPiece { row, candidate }: &SetPiece| SetPieceResult {
        row: names.row(*row),
        candidate: candidate.map(|place| names.candidate(place)),
        count: names.count(*row),
    };
    SetResult {
        pieces: found.pieces.iter().map(piece).collect(),
        price: found.price,
        liking: found.liking,
        costs: found.costs.as_ref().map(|costs| CostsResult::of(names, costs)),
        options: found.options,
        option: OptionResult::of(&found.brief, &found.option),
    }
}

fn pair<'a>(names: Names<'a>, found: &'a PairFound) -> PairResult<'a> {
    PairResult { between: found.between.map(|place| names.candidate(place)), why: words::nearest(names.brief, found) }
}
