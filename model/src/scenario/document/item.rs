//! What a wall holds, as written.

use schemars::JsonSchema;
use serde::Deserialize;

use crate::length::Measure;

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
    /// A chimney breast with its fire.
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
    /// Side of the hinge as you face it from inside: left or right; required where it swings.
    pub(crate) hinge: Option<HingeRow>,
    /// Which way the leaf goes: in, out, slides, folds (into the room, half its width deep) or pocket (into the wall).
    #[schemars(required)]
    pub(crate) swings: Option<SwingsRow>,
    /// How far a leaf that swings opens, degrees: where it rests, and stops who walks there; default 90.
    #[schemars(range(min = 90, max = 180))]
    pub(crate) opens_to: Option<f64>,
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

/// A chimney breast with its fire.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[schemars(inline)]
#[serde(deny_unknown_fields)]
pub(crate) struct FireplaceRow {
    /// Its name, unique; default `fireplace`, numbered where several have none.
    pub(crate) name: Option<String>,
    /// From the wall's left end to the breast's left end.
    #[schemars(required)]
    pub(crate) at: Option<Measure>,
    /// Width of the breast along the wall.
    #[schemars(required)]
    pub(crate) width: Option<Measure>,
    /// How far its front stands from the wall.
    #[schemars(required)]
    pub(crate) depth: Option<Measure>,
    /// Width of the fire's mouth; default the whole breast.
    pub(crate) opening: Option<Measure>,
    /// From the breast's left end to the mouth's left side; default: the mouth in the middle.
    pub(crate) opening_at: Option<Measure>,
    /// Height of the breast or mantel.
    pub(crate) height: Option<Measure>,
    /// Kept free before the fire's mouth and round the mouth's ends; default by the clearances.
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
    /// In two halves, into the room.
    Folds,
    /// Into the wall.
    Pocket,
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
