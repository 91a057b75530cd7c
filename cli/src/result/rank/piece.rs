//! A piece as it stands in an option: its outline, how large it may be, what holds it.

use elbowroom_model::{Brief, Dimension, Front, Piece, PieceKind, Point, Rule};
use elbowroom_solver::Size;
use elbowroom_solver::answer::{DimensionRange, OptionPiece, PieceSizes, thousandth};
use elbowroom_solver::chairs::chairs_at;
use elbowroom_solver::sizes::HeldBy;
use serde::Serialize;

use crate::words::answer::holding;

/// A piece as it stands.
#[derive(Debug, Serialize)]
pub(super) struct StandingResult<'a> {
    /// Its name.
    name: &'a str,
    /// Its kind.
    kind: PieceKind,
    /// The wall it stands at; null: it stands free.
    at_wall: Option<&'a str>,
    /// The group of its own that it belongs to; absent of the main one.
    #[serde(skip_serializing_if = "Option::is_none")]
    group: Option<&'a str>,
    /// Convex, counter-clockwise.
    parts: Vec<Vec<Point>>,
    /// Degrees.
    facing: f64,
    /// How high it reaches, without a screen that stands on it, mm.
    height: f64,
    /// How high it hangs; absent where it stands.
    #[serde(skip_serializing_if = "Option::is_none")]
    hung: Option<HungResult>,
    /// As planned.
    size: SizeResult,
    /// Chairs that find a place at a table that is to seat so many, and the one at a desk; not told of anything else.
    #[serde(skip_serializing_if = "Option::is_none")]
    chairs: Option<usize>,
    /// What each dimension may be.
    range: RangeResult,
    /// What holds each dimension.
    held_by: Vec<HeldByResult>,
}

impl<'a> StandingResult<'a> {
    /// What is told of a piece of an option of `brief`.
    pub(super) fn of(brief: &'a Brief, one: OptionPiece<'a>) -> Self {
        let OptionPiece { piece, placed, sizes } = one;
        Self {
            name: &piece.name,
            kind: piece.kind,
            at_wall: placed.at_wall.map(|wall| brief.room.wall_name(wall)),
            group: piece.group.as_deref(),
            parts: one.parts(),
            facing: one.facing(),
            height: thousandth(piece.lower_edge() + piece.own_height()),
            hung: HungResult::of(piece),
            size: sizes.planned().into(),
            chairs: has_chairs(piece).then(|| chairs_at(brief, piece, placed).len()),
            range: RangeResult::of(sizes),
            held_by: sizes.held_by.iter().map(|held| HeldByResult::of(brief, sizes, held)).collect(),
        }
    }
}

/// Whether people sit at it on chairs, as far as the file says.
fn has_chairs(piece: &Piece) -> bool {
    piece.seats.is_some() || piece.kind.traits().front == Front::SatAt
}

/// How high something hangs, mm above the floor.
#[derive(Debug, Serialize)]
struct HungResult {
    /// Its lower edge.
    lower_edge: f64,
    /// Its middle.
    centre: f64,
    /// Its upper edge.
    upper_edge: f64,
}

impl HungResult {
    fn of(piece: &Piece) -> Option<Self> {
        let edges = (piece.lower_edge(), piece.height_with_screen());
        let (lower_edge, upper_edge) = (thousandth(edges.0), thousandth(edges.1));
        Some(Self { lower_edge, centre: thousandth(piece.hung_centre()?), upper_edge })
    }
}

/// The sizes of a layout, mm.
#[derive(Debug, Serialize)]
pub(super) struct SizeResult {
    /// Along its back.
    width: f64,
    /// Of a corner sofa.
    #[serde(rename = "return")]
    return_length: Option<f64>,
    /// Of a corner sofa with two returns; absent elsewhere.
    #[serde(skip_serializing_if = "Option::is_none")]
    second_return: Option<f64>,
    /// Away from its back.
    depth: f64,
    /// Of a return that has a depth of its own; absent elsewhere.
    #[serde(skip_serializing_if = "Option::is_none")]
    return_depth: Option<f64>,
}

impl From<Size> for SizeResult {
    fn from(Size { width, return_length, second_return, depth, return_depth }: Size) -> Self {
        Self { width, return_length, second_return, depth, return_depth }
    }
}

/// The figures of each dimension.
#[derive(Debug, Serialize)]
struct RangeResult {
    /// Along its back.
    width: DimensionResult,
    /// Of a corner sofa.
    #[serde(rename = "return")]
    return_length: Option<DimensionResult>,
    /// Of a corner sofa with two returns; absent elsewhere.
    #[serde(skip_serializing_if = "Option::is_none")]
    second_return: Option<DimensionResult>,
    /// Away from its back.
    depth: DimensionResult,
    /// Of a return that has a depth of its own; absent elsewhere.
    #[serde(skip_serializing_if = "Option::is_none")]
    return_depth: Option<DimensionResult>,
}

impl RangeResult {
    fn of(sizes: &PieceSizes) -> Self {
        Self {
            width: sizes.width.into(),
            return_length: sizes.return_length.map(Into::into),
            second_return: sizes.second_return.map(Into::into),
            depth: sizes.depth.into(),
            return_depth: sizes.return_depth.map(Into::into),
        }
    }
}

/// The figures of one dimension, mm.
#[derive(Debug, Serialize)]
struct DimensionResult {
    /// The least that still does its work.
    least: f64,
    /// What the plan aims at; null for what comes in steps.
    aim: Option<f64>,
    /// As planned.
    planned: f64,
    /// All pieces at theirs fit together.
    together: f64,
    /// The most it could be if every other piece gave way; null beyond the options shown.
    alone: Option<f64>,
    /// The most that is sold or asked for.
    most: f64,
}

impl From<DimensionRange> for DimensionResult {
    fn from(DimensionRange { least, aim, planned, together, alone, most }: DimensionRange) -> Self {
        Self { least, aim, planned, together, alone, most }
    }
}

/// What holds a dimension.
#[derive(Debug, Serialize)]
struct HeldByResult {
    /// Which dimension.
    dimension: Dimension,
    /// In the room's own words: `hall door swing`.
    by: String,
    /// The rule: `door_swing`, `room`, `most`, or a clearance.
    rule: Rule,
}

impl HeldByResult {
    fn of(brief: &Brief, sizes: &PieceSizes, HeldBy { dimension, by }: &HeldBy) -> Self {
        Self { dimension: *dimension, by: holding(brief, sizes.piece, by), rule: by.rule() }
    }
}
