//! The points of a way as a file has them. The doc comments are the descriptions of the published schema.

use schemars::JsonSchema;
use serde::Deserialize;

use super::LandingTurn;
use crate::length::Measure;

/// Something to be passed on the way in.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[schemars(inline)]
#[serde(tag = "kind", rename_all = "kebab-case")]
pub(crate) enum PointRow {
    /// A doorway.
    Door(WayDoorRow),
    /// A straight hall.
    Hall(HallRow),
    /// A turn at a right angle from one hall into another.
    Turn(TurnRow),
    /// A straight flight of stairs.
    Stairs(StairsRow),
    /// A lift.
    Lift(LiftRow),
}

/// A doorway on the way in.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[schemars(inline)]
#[serde(deny_unknown_fields)]
pub(crate) struct WayDoorRow {
    /// Its name; default `door`, numbered where several have none.
    pub(crate) name: Option<String>,
    /// Clear width with the leaf open; of the room's own door the width on its wall.
    pub(crate) width: Option<Measure>,
    /// Clear height; default 1981 mm.
    pub(crate) height: Option<Measure>,
    /// Name of the room's door or opening that this is, instead of a name and a width.
    pub(crate) room_door: Option<String>,
    /// Width of the hall along it, where one must turn at a right angle to go through.
    pub(crate) from: Option<Measure>,
}

/// A straight hall.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[schemars(inline)]
#[serde(deny_unknown_fields)]
pub(crate) struct HallRow {
    /// Its name; default `hall`, numbered where several have none.
    pub(crate) name: Option<String>,
    /// Clear width at its narrowest, radiators and handrails counted.
    #[schemars(required)]
    pub(crate) width: Option<Measure>,
    /// Height of its ceiling, lamps counted; where none is given it stops nothing.
    pub(crate) ceiling: Option<Measure>,
}

/// A turn from one hall into another.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[schemars(inline)]
#[serde(deny_unknown_fields)]
pub(crate) struct TurnRow {
    /// Its name; default `turn`, numbered where several have none.
    pub(crate) name: Option<String>,
    /// Clear width of the hall that one comes from.
    #[schemars(required)]
    pub(crate) from: Option<Measure>,
    /// Clear width of the hall that one goes into.
    #[schemars(required)]
    pub(crate) to: Option<Measure>,
    /// Height of its ceiling; where none is given it stops nothing.
    pub(crate) ceiling: Option<Measure>,
}

/// A straight flight.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[schemars(inline)]
#[serde(deny_unknown_fields)]
pub(crate) struct StairsRow {
    /// Its name; default `stairs`, numbered where several have none.
    pub(crate) name: Option<String>,
    /// Clear width between wall and handrail.
    #[schemars(required)]
    pub(crate) width: Option<Measure>,
    /// Clear height straight up from the line of the nosings.
    #[schemars(required)]
    pub(crate) headroom: Option<Measure>,
    /// Pitch of the flight, degrees, above 0 and below 90; default 42.
    pub(crate) pitch: Option<f64>,
    /// The landing on which one turns at its end.
    pub(crate) landing: Option<LandingRow>,
}

/// A landing on which one turns.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[schemars(inline)]
#[serde(deny_unknown_fields)]
pub(crate) struct LandingRow {
    /// How far one turns: quarter or half.
    #[schemars(required)]
    pub(crate) turn: Option<LandingTurn>,
    /// Clear depth, along the way that one comes.
    #[schemars(required)]
    pub(crate) depth: Option<Measure>,
    /// Clear width across it; of a half turn both flights and the well between them.
    #[schemars(required)]
    pub(crate) width: Option<Measure>,
    /// Height above it; where none is given it stops nothing.
    pub(crate) ceiling: Option<Measure>,
}

/// A lift.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[schemars(inline)]
#[serde(deny_unknown_fields)]
pub(crate) struct LiftRow {
    /// Its name; default `lift`, numbered where several have none.
    pub(crate) name: Option<String>,
    /// Clear width of its door.
    #[schemars(required)]
    pub(crate) door: Option<Measure>,
    /// Clear height of its door; default 1981 mm.
    pub(crate) height: Option<Measure>,
    /// Width of the car, side to side.
    #[schemars(required)]
    pub(crate) width: Option<Measure>,
    /// Depth of the car, door to back.
    #[schemars(required)]
    pub(crate) depth: Option<Measure>,
    /// Height inside the car; where none is given only its door counts.
    pub(crate) ceiling: Option<Measure>,
}
