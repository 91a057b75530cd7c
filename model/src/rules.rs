//! The clearances in force.

use serde::{Deserialize, Serialize};

/// A clearance by name. The order is the order in which rules are told.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Rule {
    /// Width of a main route: entrance to another doorway.
    Walkway,
    /// Width of a lesser route: to a seat, a storage front, a desk; between pieces.
    Passage,
    /// From a seat's front to its coffee table: a place, not a least.
    SeatToTable,
    /// Between the fronts of seats that face each other.
    FacingSeats,
    /// From the front of a seat to the front of the media unit it faces, least.
    ScreenToSeat,
    /// Depth of the free floor just inside a doorway.
    DoorLanding,
    /// Kept before a window by what is taller than its sill.
    WindowFront,
    /// Kept behind the back of a seat at a wall.
    SeatOffWall,
    /// Kept behind a bookcase, sideboard or desk.
    StorageOffWall,
    /// Kept behind a media unit.
    MediaOffWall,
    /// Kept clear before a bookcase or sideboard.
    StorageFront,
    /// Kept clear before a desk.
    DeskFront,
    /// From a dining table's long side outward, with a chair.
    DiningChair,
    /// The same where people pass behind the chairs.
    DiningPassing,
    /// Default of what is kept clear before a radiator.
    RadiatorClear,
    /// Default of what is kept clear before and beside a fire.
    FireClear,
    /// Diameter of a free circle to turn a wheelchair in.
    TurningCircle,
}

impl Rule {
    /// Every rule, in the order they are told.
    pub const ALL: [Self; 17] = [
        Self::Walkway,
        Self::Passage,
        Self::SeatToTable,
        Self::FacingSeats,
        Self::ScreenToSeat,
        Self::DoorLanding,
        Self::WindowFront,
        Self::SeatOffWall,
        Self::StorageOffWall,
        Self::MediaOffWall,
        Self::StorageFront,
        Self::DeskFront,
        Self::DiningChair,
        Self::DiningPassing,
        Self::RadiatorClear,
        Self::FireClear,
        Self::TurningCircle,
    ];

    /// The rule as files write it: `seat_to_table`.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Walkway => "walkway",
            Self::Passage => "passage",
            Self::SeatToTable => "seat_to_table",
            Self::FacingSeats => "facing_seats",
            Self::ScreenToSeat => "screen_to_seat",
            Self::DoorLanding => "door_landing",
            Self::WindowFront => "window_front",
            Self::SeatOffWall => "seat_off_wall",
            Self::StorageOffWall => "storage_off_wall",
            Self::MediaOffWall => "media_off_wall",
            Self::StorageFront => "storage_front",
            Self::DeskFront => "desk_front",
            Self::DiningChair => "dining_chair",
            Self::DiningPassing => "dining_passing",
            Self::RadiatorClear => "radiator_clear",
            Self::FireClear => "fire_clear",
            Self::TurningCircle => "turning_circle",
        }
    }
}

/// The clearances in force, mm; 0 switches a clearance off.
#[derive(Debug, Clone, PartialEq)]
pub struct Rules {
    /// Name of the profile they start from: `snug`, `easy`, `wheelchair`.
    pub profile: String,
    /// The wheelchair profile: each window that opens must be reached.
    pub reach_opening_windows: bool,
    /// One figure for each of [`Rule::ALL`], in that order.
    figures: [RuleFigure; 17],
}

/// One clearance and where its figure comes from.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct RuleFigure {
    /// The clearance, mm; `None`: the rule is not in force (a turning circle that nobody asked for).
    pub figure: Option<f64>,
    /// The source, or `"the scenario"`.
    pub source: String,
}

impl Rules {
    /// Rules of `profile` with one figure for each of [`Rule::ALL`], in that order.
    #[must_use]
    pub fn new(profile: impl Into<String>, figures: [RuleFigure; 17]) -> Self {
        let profile = profile.into();
        let reach_opening_windows = profile == "wheelchair";
        Self { profile, reach_opening_windows, figures }
    }

    /// The clearance, mm; 0 where it is not in force.
    #[must_use]
    pub fn get(&self, rule: Rule) -> f64 {
        self.figures[rule as usize].figure.unwrap_or(0.0)
    }

    /// The clearance with its source.
    #[must_use]
    pub fn figure(&self, rule: Rule) -> &RuleFigure {
        &self.figures[rule as usize]
    }

    /// Diameter of the turning circle, where one is asked for.
    #[must_use]
    pub fn turning_circle(&self) -> Option<f64> {
        self.figure(Rule::TurningCircle).figure.filter(|diameter| *diameter > 0.0)
    }

    /// The same rules with one clearance changed; `source` says by whom.
    #[must_use]
    pub fn with(mut self, rule: Rule, figure: f64, source: &str) -> Self {
        self.figures[rule as usize] = RuleFigure { figure: Some(figure), source: source.to_owned() };
        self
    }
}
