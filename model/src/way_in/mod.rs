//! The way in: what a piece must pass between the street and the room, and the boxes that are carried along it.
//!
//! Here live the points of a way as measured, the reading of them out of a scenario or a file of their own, and what is
//! carried. Whether it passes is the solver's to say.

mod load;
mod profile;
mod read;
pub(crate) mod resolve;
pub(crate) mod row;

pub use load::{Load, LoadPart};
pub use profile::Profile;
pub use read::{WayFile, read};

use crate::dimension::Dimension;
use crate::piece::PieceId;

/// The way from the street to the room.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Way {
    /// What must be passed, from the street on.
    pub points: Vec<WayPoint>,
    /// How far off a measured length of it may be, mm: every width and height counts as so much less.
    pub measured_within: f64,
    /// What was assumed where nothing was given.
    pub assumed: Vec<String>,
    /// Sizes of pieces that were lowered to what can be carried in; filled in by the solver.
    pub capped: Vec<Capped>,
}

/// A size that the way holds.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Capped {
    /// The piece.
    pub piece: PieceId,
    /// The size.
    pub dimension: Dimension,
    /// The point that holds it, by its place on the way; `None` where no point by itself does.
    pub by: Option<usize>,
}

/// Something to be passed.
#[derive(Debug, Clone, PartialEq)]
pub struct WayPoint {
    /// Its name in the words of the house, unique on the way.
    pub name: String,
    /// What it is.
    pub kind: PointKind,
}

/// What is to be passed; lengths mm, angles radians.
#[derive(Debug, Clone, Copy, PartialEq, strum::IntoStaticStr)]
#[strum(serialize_all = "kebab-case")]
pub enum PointKind {
    /// A doorway, with its clear width and height.
    Door {
        /// Between the stop and the open leaf.
        width: f64,
        /// From the threshold to the head.
        height: f64,
        /// Width of the hall along it, where one must turn to go through.
        from: Option<f64>,
    },
    /// A straight hall.
    Hall {
        /// At its narrowest.
        width: f64,
        /// Its ceiling; `None`: high enough for anything.
        ceiling: Option<f64>,
    },
    /// A turn at a right angle from one hall into another.
    Turn {
        /// Width of the hall that one comes from.
        from: f64,
        /// Width of the hall that one goes into.
        to: f64,
        /// Its ceiling; `None`: high enough for anything.
        ceiling: Option<f64>,
    },
    /// A straight flight.
    Stairs {
        /// Between wall and handrail.
        width: f64,
        /// Straight up from the line of the nosings.
        headroom: f64,
        /// Of the line of the nosings.
        pitch: f64,
    },
    /// A landing on which one turns.
    Landing {
        /// Which way the stairs go on.
        turn: LandingTurn,
        /// Width of the flight that one comes from.
        from: f64,
        /// Of that flight.
        pitch: f64,
        /// Along the way that one comes.
        depth: f64,
        /// Across it: of a half turn both flights and the well.
        width: f64,
        /// Its ceiling; `None`: high enough for anything.
        ceiling: Option<f64>,
    },
    /// A lift.
    Lift {
        /// Clear width of its door.
        door: f64,
        /// Clear height of its door.
        height: f64,
        /// Of the car, side to side.
        width: f64,
        /// Of the car, door to back.
        depth: f64,
        /// Of the car.
        ceiling: Option<f64>,
    },
}

/// How far one turns on a landing.
#[derive(Debug, Clone, Copy, PartialEq, Eq, serde::Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum LandingTurn {
    /// A quarter turn, to the left or right.
    Quarter,
    /// Back the way one came.
    Half,
}

impl Way {
    /// The point of the least clear width, the first of several.
    #[must_use]
    pub fn narrowest(&self) -> Option<(&WayPoint, f64)> {
        least(self.points.iter().map(|point| (point, point.kind.narrowest())))
    }

    /// The point of the least clear height, the first of several.
    #[must_use]
    pub fn lowest(&self) -> Option<(&WayPoint, f64)> {
        least(self.points.iter().filter_map(|point| Some((point, point.kind.lowest()?))))
    }
}

fn least<'a>(mut points: impl Iterator<Item = (&'a WayPoint, f64)>) -> Option<(&'a WayPoint, f64)> {
    let first = points.next()?;
    Some(points.fold(first, |least, one| if one.1 < least.1 { one } else { least }))
}

impl PointKind {
    /// Its narrowest clear width, mm.
    #[must_use]
    pub fn narrowest(&self) -> f64 {
        match *self {
            Self::Door { width, from, .. } => from.map_or(width, |from| from.min(width)),
            Self::Hall { width, .. } | Self::Stairs { width, .. } => width,
            Self::Turn { from, to, .. } => from.min(to),
            Self::Landing { from, depth, .. } => from.min(depth),
            Self::Lift { door, width, .. } => door.min(width),
        }
    }

    /// Its least clear height, mm; on stairs straight up from the nosings; `None` where none is given.
    #[must_use]
    pub fn lowest(&self) -> Option<f64> {
        let lowest = match *self {
            Self::Door { height, .. } => Some(height),
            Self::Hall { ceiling, .. } | Self::Turn { ceiling, .. } | Self::Landing { ceiling, .. } => ceiling,
            Self::Stairs { headroom, .. } => Some(headroom),
            Self::Lift { height, ceiling, .. } => Some(ceiling.map_or(height, |ceiling| ceiling.min(height))),
        };
        lowest.filter(|height| height.is_finite())
    }

    /// The kind as a file writes it.
    #[must_use]
    pub fn key(&self) -> &'static str {
        self.into()
    }
}
