//! The scenario file's own types, as written: keys and values, nothing checked beyond their kind.
//!
//! Whatever may be left out, or was at fault and has been told of, is `None`. The doc comments are the descriptions of
//! the published schema.

mod clearances;
mod held_to;
mod item;
mod piece;
mod stand_in;
mod stands;

use schemars::JsonSchema;
use serde::Deserialize;

pub(crate) use clearances::ClearanceRows;
pub(crate) use held_to::{ChoiceRow, ChoiceRows, HouseholdRow, OrderRow};
pub(crate) use item::{
    CarriesRow, DoorRow, FireplaceRow, HingeRow, ItemRow, OpeningRow, RadiatorRow, StanceRow, SwingsRow, ViewRow,
    WindowRow,
};
pub(crate) use piece::{HandRow, PieceRow};
pub(crate) use stand_in::{SizedRow, StandInRow};
pub(crate) use stands::{AimRow, PlaceRow};

use crate::aim::SizesAim;
use crate::keyed::Keyed;
use crate::kind::PieceKind;
use crate::length::Measure;
use crate::unit::Unit;
use crate::way_in::row::PointRow;
use crate::wishes::Criterion;

/// One measured room and what should stand in it. A length is a number in `units`, or a text with a unit of its own:
/// `3.52 m`, `352 cm`, `58 in`, `11 ft 6 in`, `5 1/2 in`.
#[derive(Debug, Clone, Default, Deserialize, JsonSchema)]
#[schemars(title = "Scenario")]
#[serde(deny_unknown_fields)]
pub(crate) struct Document {
    /// What the room is called.
    pub(crate) name: Option<String>,
    /// Unit of bare numbers: mm, cm, m, in or ft.
    #[schemars(required)]
    pub(crate) units: Option<Unit>,
    /// How far off a measured length may be; 0 is allowed; default 5 mm.
    pub(crate) measured_within: Option<Measure>,
    /// Height of the ceiling.
    pub(crate) ceiling: Option<Measure>,
    /// Degrees north of the equator, -90 to 90; with a bearing it brings in the sun.
    #[schemars(range(min = -90, max = 90))]
    pub(crate) latitude: Option<f64>,
    /// The walls, clockwise: stand inside, face a wall, then turn to the wall at its right-hand end.
    #[schemars(required, with = "Option<Vec<WallRow>>")]
    pub(crate) walls: Option<Vec<Option<WallRow>>>,
    /// Diagonals that check the outline, from the left end of one wall to the left end of another.
    #[schemars(with = "Option<Vec<DiagonalRow>>")]
    pub(crate) diagonals: Option<Vec<Option<DiagonalRow>>>,
    /// What stands off the walls for good, in plan coordinates; each convex.
    #[schemars(with = "Option<Vec<FixedRow>>")]
    pub(crate) fixed: Option<Vec<Option<FixedRow>>>,
    /// The furniture that is asked for; at least one seat (sofa, corner-sofa or armchair).
    #[schemars(required, with = "Option<Vec<PieceRow>>")]
    pub(crate) pieces: Option<Vec<Option<PieceRow>>>,
    /// What plans aim at with every piece: usual sizes or the largest; default usual.
    pub(crate) sizes: Option<SizesAim>,
    /// The way in, from the street on: what a piece must pass; with it, sizes are held to what can be carried in.
    #[schemars(with = "Option<Vec<PointRow>>")]
    pub(crate) way: Option<Vec<Option<PointRow>>>,
    /// The profile of clearances, and any clearance that differs from it.
    pub(crate) clearances: Option<ClearanceRows>,
    /// Only options that are decided so, as `rank --only`: `{ seat_back: [party wall, free], hand: left }`. Keys: seat_back,
    /// facing, hand, media_wall, second_seats, or the name of a second seat.
    pub(crate) only: Option<ChoiceRows>,
    /// No option that is decided so: `{ facing: street wall }`. Keys and values as in `only`.
    pub(crate) exclude: Option<ChoiceRows>,
    /// Who lives in the room.
    pub(crate) household: Option<HouseholdRow>,
    /// Whom the room is planned for: words for the heads of pages and sheets.
    pub(crate) room: Option<OrderRow>,
    /// 0 to 5, how much each criterion counts; default 3.
    pub(crate) wishes: Option<Keyed<Criterion, Option<f64>>>,
}

/// A wall: either its length (and corner), or the plan coordinates of its left-hand end.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[schemars(inline)]
#[serde(deny_unknown_fields)]
pub(crate) struct WallRow {
    /// Its name, unique; default `wall 1`, `wall 2`, ...
    pub(crate) name: Option<String>,
    /// Length from its left to its right end, as you face it from inside.
    pub(crate) length: Option<Measure>,
    /// Inside angle at its right-hand end, degrees; default 90; 270 is an outside corner.
    pub(crate) corner: Option<f64>,
    /// Plan coordinates [x, y] of its left-hand end, instead of `length` and `corner`; on all walls or on none.
    pub(crate) start: Option<[Measure; 2]>,
    /// Compass bearing you look along when you face it, degrees clockwise from north; on one wall at most.
    #[schemars(range(min = 0, max = 360))]
    pub(crate) bearing: Option<f64>,
    /// Kinds of piece that must not stand at it.
    pub(crate) keep_free: Option<Vec<PieceKind>>,
    /// Height from which the ceiling falls toward it; with `ceiling_to` and `ceiling_over`.
    pub(crate) ceiling_from: Option<Measure>,
    /// Height of the ceiling at the wall.
    pub(crate) ceiling_to: Option<Measure>,
    /// How far out from the wall the ceiling begins to fall.
    pub(crate) ceiling_over: Option<Measure>,
    /// What is on the wall; `at` runs from the wall's LEFT end as you face it from inside.
    #[schemars(with = "Option<Vec<ItemRow>>")]
    pub(crate) holds: Option<Vec<Option<ItemRow>>>,
}

/// A measured diagonal.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[schemars(inline)]
#[serde(deny_unknown_fields)]
pub(crate) struct DiagonalRow {
    /// The wall whose left end it starts from.
    #[schemars(required)]
    pub(crate) from: Option<String>,
    /// The wall whose left end it runs to.
    #[schemars(required)]
    pub(crate) to: Option<String>,
    /// Its length.
    #[schemars(required)]
    pub(crate) length: Option<Measure>,
}

/// Something that stands off the walls for good.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[schemars(inline)]
#[serde(deny_unknown_fields)]
pub(crate) struct FixedRow {
    /// What it is, in a word of yours: pillar, counter, stair.
    #[schemars(required)]
    pub(crate) kind: Option<String>,
    /// Its name, unique; default its kind, numbered where several have none.
    pub(crate) name: Option<String>,
    /// Its corners in plan coordinates, in turn; convex. A step has a `line` instead.
    pub(crate) corners: Option<Vec<[Measure; 2]>>,
    /// Of a `step` in the floor: both ends of its line, in plan coordinates. Nothing stands across it.
    pub(crate) line: Option<[[Measure; 2]; 2]>,
    /// Its height.
    pub(crate) height: Option<Measure>,
    /// Floor before it that stays clear and can be reached; 0: none. Default 900 mm before a counter, sink, cooker, hob, oven,
    /// fridge, dishwasher, washing-machine, wardrobe or stairs; others have none.
    #[serde(rename = "use")]
    pub(crate) use_depth: Option<Measure>,
    /// Where one stands to use it: a place in plan coordinates at that edge of it. Default its longest edge that floor lies
    /// before; of stairs the shortest, where one steps off them.
    pub(crate) used_at: Option<[Measure; 2]>,
}
