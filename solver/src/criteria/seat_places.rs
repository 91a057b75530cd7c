//! Where people sit: the places along each seat, with the eye of the sitter and the way it looks.
//!
//! A sofa of one run has as many as it is sold for; of other seats the length of their runs tells.

use std::ops::Range;

use elbowroom_model::SeatForm;
use elbowroom_model::{Brief, Piece, PieceId, Point};

use super::tolerance::ROUNDING;
use crate::geometry::Convex;
use crate::layout::{Layout, Placed, Size};

/// Width of one seat place, mm: 27 in (common practice, no source).
pub const PLACE_WIDTH: f64 = 685.8;

/// Width of both arms of a seat together, mm: 9 in (common practice, no source).
pub const BOTH_ARMS: f64 = 228.6;

/// No seat has more places.
const MOST_PLACES: usize = 64;

/// Height of the eye of one who sits, mm: the reference height of EN 17037 for the view out (from memory).
pub const SITTING_EYE: f64 = 1200.0;

/// The part of a seat that a place belongs to.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Run {
    /// A straight seat, or the main run of a corner sofa beyond its corner.
    Main,
    /// The corner of a corner sofa: one place, however large.
    Corner,
    /// A return of a corner sofa.
    Return,
}

/// A place for one.
#[derive(Debug, Clone, PartialEq)]
pub struct SeatPlace {
    /// The seat, by its place in the brief.
    pub piece: PieceId,
    /// The part of the seat.
    pub run: Run,
    /// The eye on the plan: over the middle of the cushion.
    pub eye: Point,
    /// Unit vector that the sitter faces.
    pub facing: Point,
    /// The cushion, from the back edge to the front edge.
    pub cushion: Convex,
}

/// Every place of every seat that stands, in the order of the brief, along each seat from its anchor.
#[must_use]
pub fn seat_places(brief: &Brief, layout: &Layout) -> Vec<SeatPlace> {
    let seats = layout.placed.iter().filter_map(|placed| {
        let piece = brief.piece(placed.piece)?;
        piece.kind.is_seat().then(|| places_of(piece, placed))
    });
    seats.flatten().collect()
}

/// How many places a seat of `size` has, fractions of a place counted: what the whole number grows from.
#[must_use]
pub fn measure_of_places(piece: &Piece, size: Size) -> f64 {
    match (piece.kind.traits().seat, size.return_length) {
        (Some(SeatForm::Single), _) => 1.0,
        (Some(SeatForm::Corner), Some(return_length)) => {
            let places = |run: f64| (run / PLACE_WIDTH).max(0.0);
            let along_return = if piece.chaise { 0.0 } else { places(beyond_corner(return_length, size.depth)) };
            let second = size.second_return.map_or(0.0, |length| 1.0 + places(beyond_corner(length, size.depth)));
            1.0 + places(along_bay(size)) + along_return + second
        }
        (Some(SeatForm::Straight | SeatForm::DayBed | SeatForm::Corner) | None, _) => {
            ((size.width - BOTH_ARMS) / PLACE_WIDTH).max(1.0)
        }
    }
}

/// The eye of one who sits in the middle of a seat (of a corner sofa: of the main run beyond its corner).
#[must_use]
pub fn middle_eye(placed: &Placed) -> Point {
    let (left, right) = placed.front();
    (left + right) * 0.5 - placed.facing * (placed.size.depth / 2.0)
}

fn places_of(piece: &Piece, placed: &Placed) -> Vec<SeatPlace> {
    match placed.hand {
        Some(_) => corner_places(piece, placed),
        None => straight_places(piece, placed),
    }
}

fn straight_places(piece: &Piece, placed: &Placed) -> Vec<SeatPlace> {
    let Size { width, depth, .. } = placed.size;
    let run = (width - BOTH_ARMS).max(0.0);
    let by_run = || if piece.kind.traits().seat == Some(SeatForm::Single) { 1 } else { whole_places(run).max(1) };
    let count = piece.sits.at(width).map_or_else(by_run, |seats| (seats as usize).clamp(1, MOST_PLACES));
    let cushion = |span: Range<f64>| placed.block(span.start - run / 2.0, span.end - run / 2.0, 0.0, depth);
    let place = |span| seat_place(placed, Run::Main, placed.facing, cushion(span));
    even_spans(run, count).map(place).collect()
}

fn corner_places(piece: &Piece, placed: &Placed) -> Vec<SeatPlace> {
    let Size { width, return_length, second_return, depth, .. } = placed.size;
    let (deep, to) = placed.size.bay();
    let between = (placed.facing + placed.along()).unit().unwrap_or(placed.facing);
    let corner_facing = if piece.chaise { placed.facing } else { between };
    let corner = seat_place(placed, Run::Corner, corner_facing, placed.block(0.0, deep, 0.0, depth));

    let main = along_bay(placed.size);
    let on_main = even_spans(main, whole_places(main)).map(|span| {
        let cushion = placed.block(deep + span.start, deep + span.end, 0.0, depth);
        seat_place(placed, Run::Main, placed.facing, cushion)
    });
    // A chaise is the corner place drawn out: one puts the legs up on it.
    let along_return = if piece.chaise { 0.0 } else { beyond_corner(return_length.unwrap_or(0.0), depth) };
    let on_return = even_spans(along_return, whole_places(along_return)).map(|span| {
        let cushion = placed.block(0.0, deep, depth + span.start, depth + span.end);
        seat_place(placed, Run::Return, placed.along(), cushion)
    });
    let first = std::iter::once(corner).chain(on_main).chain(on_return);
    let Some(second) = second_return else { return first.collect() };
    let other = (placed.facing - placed.along()).unit().unwrap_or(placed.facing);
    let other = seat_place(placed, Run::Corner, other, placed.block(to, width, 0.0, depth));
    let along_second = beyond_corner(second, depth);
    let on_second = even_spans(along_second, whole_places(along_second)).map(|span| {
        let cushion = placed.block(to, width, depth + span.start, depth + span.end);
        seat_place(placed, Run::Return, -placed.along(), cushion)
    });
    first.chain([other]).chain(on_second).collect()
}

fn seat_place(placed: &Placed, run: Run, facing: Point, cushion: Convex) -> SeatPlace {
    SeatPlace { piece: placed.piece, run, eye: cushion.middle(), facing, cushion }
}

/// What one run of a corner sofa has for cushions beyond its corner and before the arm at its end.
fn beyond_corner(length: f64, depth: f64) -> f64 {
    (length - depth - BOTH_ARMS / 2.0).max(0.0)
}

/// What the main run has for cushions beyond its corner and before the arm at its end; of a U between both corners.
fn along_bay(size: Size) -> f64 {
    let (from, to) = size.bay();
    let arm = if size.second_return.is_some() { 0.0 } else { BOTH_ARMS / 2.0 };
    (to - from - arm).max(0.0)
}

fn whole_places(run: f64) -> usize {
    // A cast from float to integer saturates, and NaN gives 0; no seat is kilometres long.
    (((run + ROUNDING) / PLACE_WIDTH).floor() as usize).min(MOST_PLACES)
}

/// `count` equal spans of a run of that length.
fn even_spans(run: f64, count: usize) -> impl Iterator<Item = Range<f64>> {
    let step = run / count.max(1) as f64;
    (0..count).map(move |place| place as f64 * step..(place + 1) as f64 * step)
}
