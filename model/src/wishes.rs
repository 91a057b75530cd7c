//! What counts, and how much.

use serde::{Deserialize, Serialize};

/// The eleven criteria, in the order they are told.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "snake_case")]
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
    pub const ALL: [Self; 11] = [
        Self::View,
        Self::Entrance,
        Self::Openness,
        Self::Ways,
        Self::Screen,
        Self::Talk,
        Self::Daylight,
        Self::Seats,
        Self::Balance,
        Self::Upkeep,
        Self::Fireside,
    ];

    /// The criterion as files write it.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::View => "view",
            Self::Entrance => "entrance",
            Self::Openness => "openness",
            Self::Ways => "ways",
            Self::Screen => "screen",
            Self::Talk => "talk",
            Self::Daylight => "daylight",
            Self::Seats => "seats",
            Self::Balance => "balance",
            Self::Upkeep => "upkeep",
            Self::Fireside => "fireside",
        }
    }
}

/// How much each criterion counts, 0 to 5.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Wishes([f64; 11]);

impl Default for Wishes {
    /// Every criterion counts 3.
    fn default() -> Self {
        Self([3.0; 11])
    }
}

impl Wishes {
    /// How much `criterion` counts, 0 to 5.
    #[must_use]
    pub fn get(&self, criterion: Criterion) -> f64 {
        self.0[criterion as usize]
    }

    /// The same wishes with one changed.
    #[must_use]
    pub fn with(mut self, criterion: Criterion, weight: f64) -> Self {
        self.0[criterion as usize] = weight;
        self
    }
}
