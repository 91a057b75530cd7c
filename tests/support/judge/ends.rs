//! Lamps and side tables: at the ends of seats, one of a kind at each.

use std::collections::BTreeMap;

use crate::support::checker::plane::{apart, dot, minus};

use super::standing::{End, Standing};
use super::{Mark, Odd, Scene};

/// How far from an end of a seat a lamp or a side table is still at it, mm.
const AT_END: f64 = 200.0;

/// An end by its seat's name and its place there.
type EndName<'a> = (&'a str, usize);

pub(super) fn odd(scene: &Scene) -> Vec<Odd> {
    let mut all = Vec::new();
    let mut met: BTreeMap<(&str, EndName<'_>), Vec<&str>> = BTreeMap::new();
    for piece in scene.pieces.iter().filter(|piece| piece.is_at_ends()) {
        match nearest(scene, piece) {
            Some((end, gap)) if gap <= AT_END => met.entry((piece.kind.as_str(), end)).or_default().push(&piece.name),
            other => all.push(Odd::of(Mark::AwayFromEnds, &[&piece.name], other.map_or(f64::INFINITY, |(_, gap)| gap))),
        }
    }
    for pieces in met.values().filter(|pieces| pieces.len() > 1) {
        all.push(Odd::of(Mark::TwoAtOneEnd, pieces, pieces.len() as f64));
    }
    all
}

/// The end that a piece stands beyond, with the gap to it; of several the nearest.
fn nearest<'a>(scene: &'a Scene, piece: &Standing) -> Option<(EndName<'a>, f64)> {
    let seats = scene.pieces.iter().filter(|seat| seat.is_seat());
    let ends = seats.flat_map(|seat| {
        seat.ends().into_iter().enumerate().map(move |(place, end)| ((seat.name.as_str(), place), end))
    });
    let beyond = ends.filter(|(_, end)| is_beyond(piece, end));
    let gaps = beyond.map(|(name, end)| (name, apart(&piece.parts[0], &end.line)));
    gaps.min_by(|one, other| one.1.total_cmp(&other.1))
}

/// The piece's middle lies off the seat, on the side of this end.
fn is_beyond(piece: &Standing, end: &End) -> bool {
    dot(minus(piece.middle(), end.line[0]), end.outward) > 0.0
}
