//! One candidate against the room, all other pieces as they were asked for.

use elbowroom_model::listing::ListedPiece;
use elbowroom_model::{Brief, Dimension, Piece, PieceId, SizeRange};

use super::found::{Beyond, CandidateFound, Left, Miss, OptionFits, WhyNot};
use super::rows::{Row, stand_in, suits};
use super::tolerance::{BEYOND, FINE};
use super::trial::{fits, with, with_range};
use crate::arrangement::enumerate;
use crate::best_by;
use crate::by_plan::{OptionByPlan, by_plan};
use crate::routes::Floor;
use crate::search::{self, ArrangementContext, Budget, Easing, RoomContext};
use crate::site::Site;
use crate::sizes::AloneAsked;
use crate::way_in::of_a_list;
use crate::{Limits, Unwatched, rank, sizes};

/// How far it is looked for room that is left, mm.
const FAR: f64 = 600.0;
/// Nodes that looking for room left may take.
const NODES: usize = 400;
/// `candidate` as the piece of the room that it suits best. `brief`: as asked, `by_the_way`: without what the way holds.
pub(super) fn candidate(brief: &Brief, by_the_way: &Brief, rows: &[Row], candidate: &ListedPiece) -> CandidateFound {
    let of_its_kind = rows.iter().enumerate().filter(|(_, row)| row.kind == candidate.kind);
    let tried = of_its_kind.map(|(place, row)| against(brief, by_the_way, place, row, candidate));
    best_by(tried, score)
        .unwrap_or_else(|| CandidateFound { why_not: Some(WhyNot::NoneAsked), ..unseen(brief, candidate) })
}

/// How well it fits: the score of its best option, less than any where it does not.
fn score(found: &CandidateFound) -> f64 {
    found.options.first().map_or(-1.0, |option| option.score)
}

/// What is known of a candidate before it is tried.
fn unseen(brief: &Brief, candidate: &ListedPiece) -> CandidateFound {
    let usual = brief.pieces.iter().find(|piece| piece.kind == candidate.kind).map_or(0.0, Piece::own_height);
    let way = brief.way.as_ref().map(|way| of_a_list(way, candidate, usual));
    CandidateFound { way, ..CandidateFound::default() }
}

fn against(brief: &Brief, by_the_way: &Brief, place: usize, row: &Row, candidate: &ListedPiece) -> CandidateFound {
    let unseen = CandidateFound { row: Some(place), beyond: beyond(brief, row, candidate), ..unseen(brief, candidate) };
    let Some(piece) = row.piece(by_the_way) else { return unseen };
    if !row.enough(candidate) {
        return CandidateFound { why_not: Some(WhyNot::TooFew), ..unseen };
    }
    if !suits(piece, candidate) {
        return CandidateFound { why_not: Some(WhyNot::OtherHand), ..unseen };
    }
    let placed = with(by_the_way, row, &stand_in(piece, candidate));
    let found = by_plan(&placed).options;
    if let Some(best) = found.first() {
        let left = left(&placed, row, candidate, best);
        return CandidateFound { options: options(&found), left, ..unseen };
    }
    // What would make it fit is looked for by whoever tells why nothing does.
    let answer = rank(&placed, &Limits { shown: 0, ..Limits::default() }, &Unwatched);
    if answer.undecided() > 0 {
        return CandidateFound { why_not: Some(WhyNot::NotDecided), remedies: answer.remedies, ..unseen };
    }
    let misses = misses(&placed, row, candidate);
    CandidateFound { misses, remedies: answer.remedies, ..unseen }
}

fn options(found: &[OptionByPlan]) -> Vec<OptionFits> {
    let fits = |option: &OptionByPlan| OptionFits {
        key: option.key.clone(),
        main_seat: option.main_seat,
        choices: option.choices.clone(),
        score: option.score,
    };
    found.iter().map(fits).collect()
}

/// Sizes beyond what was asked for.
fn beyond(brief: &Brief, row: &Row, candidate: &ListedPiece) -> Vec<Beyond> {
    let Some(piece) = row.piece(brief) else { return Vec::new() };
    let beyond = |dimension: Dimension| {
        let (size, range) = (candidate.size(dimension)?, piece.range(dimension)?);
        let by = if size > range.most { size - range.most } else { (size - range.least).min(0.0) };
        (by.abs() > BEYOND).then_some(Beyond { dimension, by })
    };
    piece.dimensions().into_iter().filter_map(beyond).collect()
}

/// How much larger the candidate could be in its best option, each dimension by itself, all other pieces at their least.
fn left(placed: &Brief, row: &Row, candidate: &ListedPiece, best: &OptionByPlan) -> Vec<Left> {
    // What comes in steps, or lies flat, is no question of a centimetre.
    if candidate.kind.is_flat() {
        return Vec::new();
    }
    let (Some(id), Some(piece)) = (row.pieces.first(), row.piece(placed)) else { return Vec::new() };
    let left = |dimension: Dimension| {
        let size = candidate.size(dimension)?;
        let range = SizeRange { least: size, usual: size, most: size + FAR };
        let free = with_range(placed, row, dimension, range);
        let by = most_in(&free, *id, dimension, best)? - size;
        Some(Left { dimension, by: by.max(0.0), or_more: by > FAR - FINE })
    };
    piece.dimensions().into_iter().filter_map(left).collect()
}

/// The most that `dimension` of the piece `id` can be in the arrangement of `option`.
fn most_in(free: &Brief, id: PieceId, dimension: Dimension, option: &OptionByPlan) -> Option<f64> {
    let site = Site::of(free);
    let (room, floor) = (RoomContext::of(free, &site), Floor::of(free, &site));
    let enumeration = enumerate(free, &site);
    let arrangement = enumeration.arrangements.iter().find(|arrangement| {
        // What stands is what the option was told by.
        arrangement.choices_in(&option.layout).are_same_as(&option.choices, free)
    })?;
    let context = ArrangementContext::of(&room, &floor, arrangement);
    let planned = search::plan(&context, Budget::of_each(NODES)).found?;
    let largest = search::largest(&room, &floor, arrangement, &planned, NODES).found?;
    let (layout, easing) = (&largest.layout, Easing::as_in(&planned));
    let asked = AloneAsked { layout, piece: id, dimension, easing, nodes: NODES };
    let (most, _) = sizes::alone(&room, &floor, arrangement, asked)?;
    Some(most)
}

/// Each dimension that, less by so much and by itself, would make the candidate fit; the least first.
fn misses(placed: &Brief, row: &Row, candidate: &ListedPiece) -> Vec<Miss> {
    let Some(piece) = row.piece(placed) else { return Vec::new() };
    let miss = |dimension: Dimension| {
        let size = candidate.size(dimension)?;
        let holds = |size: f64| fits(&with_range(placed, row, dimension, SizeRange::fixed(size)));
        let (mut fails, mut good) = (size, size / 4.0);
        if !holds(good) {
            return None;
        }
        while fails - good > FINE {
            let middle = f64::midpoint(fails, good);
            if holds(middle) { good = middle } else { fails = middle }
        }
        Some(Miss { dimension, by: size - good })
    };
    let mut misses: Vec<Miss> = piece.dimensions().into_iter().filter_map(miss).collect();
    misses.sort_by(|one, other| one.by.total_cmp(&other.by));
    misses
}
