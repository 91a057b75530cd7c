//! Sizes lowered to what gets in, before anything is solved.

use elbowroom_model::way_in::{Capped, Load, Way};
use elbowroom_model::{Brief, Dimension, Piece, PieceId, SizeRange};

use super::carried::{Failed, carried};
use super::tolerance::FINE;
use crate::best_by;
use crate::refusal::without;

/// Depths that are tried between the least and the most.
const DEPTHS: u32 = 32;

/// A brief whose pieces can all be carried in, or why there is none.
#[derive(Debug)]
pub(crate) enum Narrowed {
    /// The way holds no size.
    Same,
    /// With lower mosts, and without the pieces that need not stand and do not get in: their places in the brief as it was,
    /// the last first.
    To(Box<Brief>, Vec<PieceId>),
    /// A piece that is needed does not get in at its least.
    Blocked(Vec<Blocked>),
}

/// A needed piece that does not get in at its least sizes.
#[derive(Debug)]
pub(crate) struct Blocked {
    /// Its place in the brief.
    pub(crate) piece: PieceId,
    /// Where it fails.
    pub(crate) fails: Failed,
    /// The depth or width below its least at which it would get in, where one is.
    pub(crate) remedy: Option<(Dimension, f64)>,
}

/// `brief` with the most of every size lowered to what gets in by its way, less the pieces that may go and do not.
pub(crate) fn narrowed(brief: &Brief) -> Narrowed {
    let Some(way) = &brief.way else { return Narrowed::Same };
    let sizes: Vec<Option<[f64; 3]>> = brief.pieces.iter().map(|piece| most_that_gets_in(way, piece)).collect();
    let stopped = |(_, (piece, sizes)): &(PieceId, (&Piece, &Option<[f64; 3]>))| sizes.is_none() && piece.needed;
    let pieces = || brief.pieces().zip(&sizes).map(|((id, piece), sizes)| (id, (piece, sizes)));
    let blocked: Vec<Blocked> = pieces().filter(stopped).filter_map(|(id, (piece, _))| block(way, id, piece)).collect();
    if !blocked.is_empty() {
        return Narrowed::Blocked(blocked);
    }
    let mut to = brief.clone();
    let left_out: Vec<PieceId> = pieces().rev().filter(|(_, (_, sizes))| sizes.is_none()).map(|(id, _)| id).collect();
    for id in &left_out {
        to = without(&to, *id);
    }
    let mut capped = Vec::new();
    for (id, sizes) in to.piece_ids().zip(sizes.iter().flatten()) {
        lower(&mut to, id, *sizes, way, &mut capped);
    }
    if capped.is_empty() && left_out.is_empty() {
        return Narrowed::Same;
    }
    if let Some(way) = &mut to.way {
        way.capped = capped;
    }
    Narrowed::To(Box::new(to), left_out)
}

/// `brief` with its way done with: sizes are lowered to what gets in, where their least does, and no way is left.
pub(crate) fn brief_by_the_way(brief: &Brief) -> Brief {
    let mut to = brief.clone();
    if let Some(way) = &brief.way {
        for (id, piece) in brief.pieces() {
            if let Some(sizes) = most_that_gets_in(way, piece) {
                lower(&mut to, id, sizes, way, &mut Vec::new());
            }
        }
    }
    to.way = None;
    to
}

/// The most width, return and depth of `piece` that get in together, by what a size counts; `None` where not even the
/// least do. What is smaller gets in too.
#[must_use]
pub fn most_that_gets_in(way: &Way, piece: &Piece) -> Option<[f64; 3]> {
    let piece = &with_other_runs(way, piece)?;
    let gets_in =
        |width: f64, other: Option<f64>, depth: f64| carried(way, &Load::of(piece, width, other, depth)).gets_in;
    let (width, depth) = (piece.width, piece.depth);
    let other = piece.return_length;
    let most_other = other.map_or(0.0, |range| range.most);
    if gets_in(width.most, other.map(|range| range.most), depth.most) {
        return Some([width.most, most_other, depth.most]);
    }
    if piece.square {
        return most_of(width, |size| gets_in(size, None, size)).map(|size| [size, 0.0, size]);
    }
    let mut best: Option<(f64, [f64; 3])> = None;
    for deep in depths(depth, |deep| gets_in(width.least, other.map(|range| range.least), deep)) {
        // Each run is carried by itself, so one does not limit the other.
        let long = most_of(width, |size| gets_in(size, other.map(|range| range.least), deep));
        let far = other.map(|range| most_of(range, |size| gets_in(width.least, Some(size), deep)));
        let (Some(long), far) = (long, far.unwrap_or(Some(0.0))) else { continue };
        let Some(far) = far else { continue };
        let value = width.value(long) + depth.value(deep) + other.map_or(0.0, |range| range.value(far));
        if best.is_none_or(|(most, _)| value > most + FINE) {
            best = Some((value, [long, far, deep]));
        }
    }
    best.map(|(_, sizes)| sizes)
}

/// The piece with the most of a second return, and of a return's own depth, lowered to what gets in with all else at its
/// least; `None` where not even the least do.
fn with_other_runs(way: &Way, piece: &Piece) -> Option<Piece> {
    let mut lowered = piece.clone();
    for dimension in [Dimension::ReturnDepth, Dimension::SecondReturn] {
        let Some(range) = piece.range(dimension) else { continue };
        let gets_in = |size: f64| {
            let mut tried = least_of(&lowered);
            tried.range_mut(dimension).into_iter().for_each(|range| *range = SizeRange::fixed(size));
            let other = tried.return_length.map(|range| range.least);
            carried(way, &Load::of(&tried, tried.width.least, other, tried.depth.least)).gets_in
        };
        let most = most_of(range, gets_in)?;
        let held = SizeRange { least: range.least, usual: range.usual.min(most), most };
        lowered.range_mut(dimension).into_iter().for_each(|range| *range = held);
    }
    Some(lowered)
}

/// The piece with a second return and a return's own depth of their least.
fn least_of(piece: &Piece) -> Piece {
    let least = |range: Option<SizeRange>| range.map(|range| SizeRange::fixed(range.least));
    Piece { second_return: least(piece.second_return), return_depth: least(piece.return_depth), ..piece.clone() }
}

/// Depths to try: the most that gets in, and steps below it.
fn depths(range: SizeRange, gets_in: impl Fn(f64) -> bool) -> Vec<f64> {
    let Some(most) = most_of(range, gets_in) else { return Vec::new() };
    let step = (most - range.least) / f64::from(DEPTHS);
    (0..=DEPTHS).map(|place| most - f64::from(place) * step).collect()
}

/// The most in `range` that `holds`, where what is smaller holds too.
fn most_of(range: SizeRange, holds: impl Fn(f64) -> bool) -> Option<f64> {
    if holds(range.most) {
        return Some(range.most);
    }
    if !holds(range.least) {
        return None;
    }
    let (mut low, mut high) = (range.least, range.most);
    while high - low > FINE {
        let middle = f64::midpoint(low, high);
        if holds(middle) { low = middle } else { high = middle }
    }
    Some(low)
}

/// Lowers the most of each size of a piece to `most` (width, return, depth), and notes what holds it.
fn lower(to: &mut Brief, id: PieceId, most: [f64; 3], way: &Way, capped: &mut Vec<Capped>) {
    let Some(lowered) = to.piece_mut(id) else { return };
    let piece = &lowered.clone();
    let [width, other, depth] = most;
    for dimension in [Dimension::SecondReturn, Dimension::ReturnDepth] {
        let held = with_other_runs(way, piece).and_then(|held| held.range(dimension));
        if let (Some(range), Some(held)) = (lowered.range_mut(dimension), held)
            && held.most < range.most
        {
            *range = held;
            capped.push(Capped { piece: id, dimension, by: None });
        }
    }
    let mut hold = |range: &mut SizeRange, dimension: Dimension, size: f64| {
        if size < range.most {
            let by = holder(way, piece, dimension, most);
            *range = SizeRange { least: range.least, usual: range.usual.min(size), most: size };
            capped.push(Capped { piece: id, dimension, by });
        }
    };
    hold(&mut lowered.width, Dimension::Width, width);
    if let Some(range) = &mut lowered.return_length {
        hold(range, Dimension::Return, other);
    }
    hold(&mut lowered.depth, Dimension::Depth, depth);
    lowered.steps.retain(|step| step.width <= width + FINE && step.depth <= depth + FINE);
}

/// The point that stops a piece which is a little larger in `dimension` than what gets in.
fn holder(way: &Way, piece: &Piece, dimension: Dimension, most: [f64; 3]) -> Option<usize> {
    let [width, other, depth] = most;
    let more = |size: f64, of: Dimension| if of == dimension { size + 1.0 } else { size };
    let other = piece.return_length.map(|_| more(other, Dimension::Return));
    let load = Load::of(piece, more(width, Dimension::Width), other, more(depth, Dimension::Depth));
    carried(way, &load).parts.into_iter().find_map(|part| part.fails).map(|fails| fails.at)
}

fn block(way: &Way, id: PieceId, piece: &Piece) -> Option<Blocked> {
    let piece = &least_of(piece);
    let least = (piece.width.least, piece.return_length.map(|range| range.least), piece.depth.least);
    let load = Load::of(piece, least.0, least.1, least.2);
    let fails = carried(way, &load).parts.into_iter().find_map(|part| part.fails)?;
    let down = |least: f64| SizeRange { least: 1.0, usual: least, most: least };
    let depth = most_of(down(least.2), |size| carried(way, &Load::of(piece, least.0, least.1, size)).gets_in);
    let width = most_of(down(least.0), |size| carried(way, &Load::of(piece, size, least.1, least.2)).gets_in);
    let remedies = [(Dimension::Depth, depth, least.2), (Dimension::Width, width, least.0)];
    let remedy = remedies.into_iter().filter_map(|(dimension, to, from)| Some((dimension, to?, from - to?)));
    let remedy = best_by(remedy, |(_, _, less)| -less);
    Some(Blocked { piece: id, fails, remedy: remedy.map(|(dimension, to, _)| (dimension, to)) })
}
