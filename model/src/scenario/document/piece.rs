//! A piece of furniture, as written.

use schemars::JsonSchema;
use serde::Deserialize;

use super::stand_in::StandInRow;
use super::stands::{AimRow, PlaceRow};
use crate::kind::PieceKind;
use crate::length::Measure;
use crate::pair::Pair;
use crate::turned::Turned;

/// A piece of furniture, or several alike. A size is a range (`200..260`, `..260`, `200..`) or one length that is fixed;
/// without one the table's sizes hold.
#[derive(Debug, Clone, Default, Deserialize, JsonSchema)]
#[schemars(inline)]
#[serde(deny_unknown_fields)]
pub(crate) struct PieceRow {
    /// What it is.
    #[schemars(required)]
    pub(crate) kind: Option<PieceKind>,
    /// Its name, unique; default its kind, numbered where several have none.
    pub(crate) name: Option<String>,
    /// How many, all of one size; default 1.
    pub(crate) count: Option<u32>,
    /// Of a corner sofa: the side of the return as you SIT on the main run; default either. Of a U with two returns alike it
    /// says nothing.
    pub(crate) hand: Option<HandRow>,
    /// Along its back; of a corner sofa the main run, the corner included.
    pub(crate) width: Option<Measure>,
    /// Of a corner sofa: whole length of the return along its back, the corner included, and not how far it juts out: 300 mm
    /// or more beyond the depth.
    #[serde(rename = "return")]
    pub(crate) return_length: Option<Measure>,
    /// Of a corner sofa: a second return at the other end, which makes it a U: its whole length, as that of `return`.
    pub(crate) second_return: Option<Measure>,
    /// Away from its back; of a corner sofa all runs.
    pub(crate) depth: Option<Measure>,
    /// Of a corner sofa: how deep the return is, where that is not `depth`: a chaise is often less deep, or deeper.
    pub(crate) return_depth: Option<Measure>,
    /// Above the floor.
    pub(crate) height: Option<Measure>,
    /// Of a corner sofa: the return has no back, so one sees over it; default false.
    pub(crate) chaise: Option<bool>,
    /// Gap kept behind its backs where they stand at a wall; default by the clearances.
    pub(crate) off_wall: Option<Measure>,
    /// Of a media unit or a wall-screen: the diagonal of its 16:9 screen.
    pub(crate) screen: Option<Measure>,
    /// Of a wall-screen: height of its middle above the floor; default 1100 mm.
    pub(crate) centre: Option<Measure>,
    /// How many sit at a dining table, or on a sofa: a two- or three-seater, of the sizes that those are sold in.
    pub(crate) seats: Option<u32>,
    /// Of two sofas (`count: 2`): facing each other, at a right angle (corner), or as suits the room; default either.
    pub(crate) pair: Option<Pair>,
    /// Of a dining table: people pass behind the chairs; default false.
    pub(crate) passing: Option<bool>,
    /// Of a lamp or side table: the seat it stands at, by its name, or by its kind any of those; default any seat.
    pub(crate) at: Option<String>,
    /// A name: pieces of one `group` make a group of their own beside the main one, such as a reading chair with its lamp.
    pub(crate) group: Option<String>,
    /// It must stand in the room; false: only if it fits; default true.
    pub(crate) needed: Option<bool>,
    /// Of an armchair: it stands turned 15, 30 or 45 degrees toward the heart of its group (not the seat that the others stand
    /// about); default no.
    pub(crate) turned: Option<Turned>,
    /// What plans aim at with it: sizes of its own (`{ width: 220, depth: 95 }`), or usual, or largest; default as `sizes`.
    pub(crate) aim: Option<AimRow>,
    /// Where it stands in the room as it is: `{ wall: party wall, from: 58, off: 6 }`, or `{ at: [x, y], facing: 270 }`.
    pub(crate) place: Option<PlaceRow>,
    /// Plans leave it where `place` says; default false.
    pub(crate) hold: Option<bool>,
    /// What may stand in for it where a stock has none of it to give: kinds with their usual sizes, or with sizes of their
    /// own (`[sofa, { kind: armchair, width: 80..95 }]`). Only `batch --stock` asks.
    #[schemars(with = "Option<Vec<StandInRow>>")]
    pub(crate) instead: Option<Vec<Option<StandInRow>>>,
}

/// Hands that a corner sofa may have.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub(crate) enum HandRow {
    /// The return on the sitter's left.
    Left,
    /// The return on the sitter's right.
    Right,
    /// Whichever suits the room.
    Either,
}
