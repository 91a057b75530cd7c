//! What counts, and how much.

use enum_map::{Enum, EnumMap};
use serde::{Deserialize, Serialize};
use strum::{EnumString, IntoStaticStr, VariantArray};

/// The criteria, in the order they are told.
#[derive(
    Debug,
    Clone,
    Copy,
    PartialEq,
    Eq,
    PartialOrd,
    Ord,
    Hash,
    Serialize,
    Deserialize,
    schemars::JsonSchema,
    Enum,
    EnumString,
    IntoStaticStr,
    VariantArray,
)]
#[serde(rename_all = "snake_case")]
#[strum(serialize_all = "snake_case")]
pub enum Criterion {
    /// The liked windows from the seat places.
    View,
    /// How the seats meet one who arrives.
    Entrance,
    /// Sight of what is to stay open, backs to what is not.
    Openness,
    /// The routes, their width and length.
    Ways,
    /// Distance and angle to the screen, and light on it.
    Screen,
    /// Distances between the seat places.
    Talk,
    /// Daylight at the seats.
    Daylight,
    /// Seat places and sizes.
    Seats,
    /// Centring and proportion.
    Balance,
    /// Radiators, windows and sockets that stay in reach.
    Upkeep,
    /// The seats about the fire.
    Fireside,
}

impl Criterion {
    /// Every criterion, in the order they are told.
    pub const ALL: &[Self] = Self::VARIANTS;

    /// The criterion as files write it.
    #[must_use]
    pub fn key(self) -> &'static str {
        self.into()
    }
}

/// How much each criterion counts, 0 to 5.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Wishes(EnumMap<Criterion, f64>);

impl Default for Wishes {
    /// Every criterion counts 3.
    fn default() -> Self {
        Self(EnumMap::from_fn(|_| 3.0))
    }
}

impl Wishes {
    /// How much `criterion` counts, 0 to 5.
    #[must_use]
    pub fn get(&self, criterion: Criterion) -> f64 {
        self.0[criterion]
    }

    /// The same wishes with one changed.
    #[must_use]
    pub fn with(mut self, criterion: Criterion, weight: f64) -> Self {
        self.0[criterion] = weight;
        self
    }
}
