//! The scenario file's own types, as written: keys and values, nothing checked beyond their kind.
//!
//! Whatever may be left out, or was at fault and has been told of, is `None`. The doc comments are the descriptions of
//! the published schema.

use std::borrow::Cow;
use std::collections::BTreeMap;

use schemars::{JsonSchema, Schema, SchemaGenerator};
use serde::Deserialize;

use crate::keyed::{Keyed, properties};
use crate::kind::PieceKind;
use crate::length::{Measure, Unit};
use crate::rules::Clearance;
use crate::tables::Profile;
use crate::way::row::PointRow;
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
    /// The way in, from the street on: what a piece must pass; with it, sizes are held to what can be carried in.
    #[schemars(with = "Option<Vec<PointRow>>")]
    pub(crate) way: Option<Vec<Option<PointRow>>>,
    /// The profile of clearances, and any clearance that differs from it.
    pub(crate) clearances: Option<ClearanceRows>,
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
    /// What is on the wall; `at` runs from the wall's LEFT end as you face it from inside.
    #[schemars(with = "Option<Vec<ItemRow>>")]
    pub(crate) holds: Option<Vec<Option<ItemRow>>>,
}

/// Something on a wall.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[schemars(inline)]
#[serde(tag = "kind", rename_all = "kebab-case")]
pub(crate) enum ItemRow {
    /// A window.
    Window(WindowRow),
    /// A doorway with a door.
    Door(DoorRow),
    /// A doorway with no door, or the open side toward another space.
    Opening(OpeningRow),
    /// A radiator.
    Radiator(RadiatorRow),
    /// A fireplace with its breast and hearth.
    Fireplace(FireplaceRow),
    /// A socket.
    Socket(SocketRow),
}

/// A window.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[schemars(inline)]
#[serde(deny_unknown_fields)]
pub(crate) struct WindowRow {
    /// Its name, unique; default `window`, numbered where several have none.
    pub(crate) name: Option<String>,
    /// From the wall's left end to its left side.
    #[schemars(required)]
    pub(crate) at: Option<Measure>,
    /// Width along the wall.
    #[schemars(required)]
    pub(crate) width: Option<Measure>,
    /// Height of its lower edge above the floor; default 900 mm.
    pub(crate) sill: Option<Measure>,
    /// Height of its upper edge above the floor; default 2100 mm, or the ceiling if lower.
    pub(crate) head: Option<Measure>,
    /// What one sees through it; default plain.
    pub(crate) view: Option<ViewRow>,
    /// It opens, so being able to reach it counts; default true.
    pub(crate) opens: Option<bool>,
    /// Someone must be able to step up to it, as to an escape window; default false.
    pub(crate) must_reach: Option<bool>,
}

/// A doorway with a door.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[schemars(inline)]
#[serde(deny_unknown_fields)]
pub(crate) struct DoorRow {
    /// Its name, unique; default `door`, numbered where several have none.
    pub(crate) name: Option<String>,
    /// From the wall's left end to its left jamb.
    #[schemars(required)]
    pub(crate) at: Option<Measure>,
    /// Clear width of the doorway, taken as the width of the leaf too.
    #[schemars(required)]
    pub(crate) width: Option<Measure>,
    /// Side of the hinge as you face it from inside: left or right; required unless it slides.
    pub(crate) hinge: Option<HingeRow>,
    /// Which way the leaf goes: in, out or slides.
    #[schemars(required)]
    pub(crate) swings: Option<SwingsRow>,
    /// `entrance`, or the name of the space behind it.
    pub(crate) leads_to: Option<String>,
}

/// A doorway with no door, or an open side.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[schemars(inline)]
#[serde(deny_unknown_fields)]
pub(crate) struct OpeningRow {
    /// Its name, unique; default `opening`, numbered where several have none.
    pub(crate) name: Option<String>,
    /// From the wall's left end to its left side.
    #[schemars(required)]
    pub(crate) at: Option<Measure>,
    /// Width along the wall.
    #[schemars(required)]
    pub(crate) width: Option<Measure>,
    /// `entrance`, or the name of the space behind it.
    pub(crate) leads_to: Option<String>,
    /// How the seats should stand to it; default none.
    pub(crate) stance: Option<StanceRow>,
}

/// A radiator.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[schemars(inline)]
#[serde(deny_unknown_fields)]
pub(crate) struct RadiatorRow {
    /// Its name, unique; default `radiator`, numbered where several have none.
    pub(crate) name: Option<String>,
    /// From the wall's left end to its left end.
    #[schemars(required)]
    pub(crate) at: Option<Measure>,
    /// Width along the wall.
    #[schemars(required)]
    pub(crate) width: Option<Measure>,
    /// How far its front stands from the wall.
    #[schemars(required)]
    pub(crate) depth: Option<Measure>,
    /// Height of its upper edge above the floor; default 600 mm.
    pub(crate) height: Option<Measure>,
    /// Kept free before its front; default by the clearances.
    pub(crate) keep_clear: Option<Measure>,
}

/// A fireplace.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[schemars(inline)]
#[serde(deny_unknown_fields)]
pub(crate) struct FireplaceRow {
    /// Its name, unique; default `fireplace`, numbered where several have none.
    pub(crate) name: Option<String>,
    /// From the wall's left end to its left end.
    #[schemars(required)]
    pub(crate) at: Option<Measure>,
    /// Width along the wall.
    #[schemars(required)]
    pub(crate) width: Option<Measure>,
    /// How far its front stands from the wall.
    #[schemars(required)]
    pub(crate) depth: Option<Measure>,
    /// Height of the breast or mantel.
    pub(crate) height: Option<Measure>,
    /// Kept free before its front and round its front's ends; default by the clearances.
    pub(crate) keep_clear: Option<Measure>,
}

/// A socket.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[schemars(inline)]
#[serde(deny_unknown_fields)]
pub(crate) struct SocketRow {
    /// Its name, unique; default `socket`, numbered where several have none.
    pub(crate) name: Option<String>,
    /// From the wall's left end.
    #[schemars(required)]
    pub(crate) at: Option<Measure>,
    /// What it carries; default power.
    pub(crate) carries: Option<CarriesRow>,
}

/// What one sees through a window.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub(crate) enum ViewRow {
    /// Worth facing.
    Liked,
    /// Neither sought nor shunned.
    Plain,
    /// Better not faced.
    Avoided,
}

/// Side of a hinge, as you face the door from inside the room.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub(crate) enum HingeRow {
    /// At the left jamb.
    Left,
    /// At the right jamb.
    Right,
}

/// Which way a leaf goes.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub(crate) enum SwingsRow {
    /// Into the room.
    In,
    /// Out of the room.
    Out,
    /// Along the wall.
    Slides,
}

/// How the seats should stand to an opening.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub(crate) enum StanceRow {
    /// Keep sight of what adjoins.
    Open,
    /// Let the seats turn their backs on it.
    Away,
    /// It does not matter.
    None,
}

/// What a socket carries.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub(crate) enum CarriesRow {
    /// Mains.
    Power,
    /// A television aerial.
    Aerial,
    /// A network or telephone line.
    Data,
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
    /// Its corners in plan coordinates, in turn; convex.
    #[schemars(required)]
    pub(crate) corners: Option<Vec<[Measure; 2]>>,
    /// Its height.
    pub(crate) height: Option<Measure>,
}

/// A piece of furniture, or several alike. A size is a range (`200..260`, `..260`, `200..`) or one length that is fixed;
/// without one the table's sizes hold.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
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
    /// Of a corner sofa: the side of the return as you SIT on the main run; default either.
    pub(crate) hand: Option<HandRow>,
    /// Along its back; of a corner sofa the main run, the corner included.
    pub(crate) width: Option<Measure>,
    /// Of a corner sofa: whole length of the return along its back, the corner included, and not how far it juts out: 300 mm
    /// or more beyond the depth.
    #[serde(rename = "return")]
    pub(crate) return_length: Option<Measure>,
    /// Away from its back; of a corner sofa both runs.
    pub(crate) depth: Option<Measure>,
    /// Above the floor.
    pub(crate) height: Option<Measure>,
    /// Of a corner sofa: the return has no back, so one sees over it; default false.
    pub(crate) chaise: Option<bool>,
    /// Gap kept behind its backs where they stand at a wall; default by the clearances.
    pub(crate) off_wall: Option<Measure>,
    /// Of a media unit: the diagonal of its 16:9 screen.
    pub(crate) screen: Option<Measure>,
    /// Of a dining table: how many sit at it.
    pub(crate) seats: Option<u32>,
    /// Of a dining table: people pass behind the chairs; default false.
    pub(crate) passing: Option<bool>,
    /// It must stand in the room; false: only if it fits; default true.
    pub(crate) needed: Option<bool>,
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

/// The profile and the clearances that differ from it.
#[derive(Debug, Clone, Default, PartialEq, Deserialize)]
pub(crate) struct ClearanceRows {
    /// The table that the clearances start from.
    pub(crate) profile: Option<Profile>,
    /// Clearances set by themselves.
    #[serde(flatten)]
    pub(crate) figures: BTreeMap<Clearance, Option<Measure>>,
}

impl JsonSchema for ClearanceRows {
    fn inline_schema() -> bool {
        true
    }

    fn schema_name() -> Cow<'static, str> {
        "Clearances".into()
    }

    fn json_schema(generator: &mut SchemaGenerator) -> Schema {
        let mut schema = Keyed::<Clearance, Measure>::json_schema(generator);
        let mut profile = generator.subschema_for::<Option<Profile>>();
        profile.insert("description".to_owned(), "The table that the clearances start from; default easy.".into());
        let mut keys = properties::<Clearance, Option<Measure>>(generator);
        keys.insert("profile".to_owned(), profile.to_value());
        schema.insert("properties".to_owned(), keys.into());
        schema
    }
}
