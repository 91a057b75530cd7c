//! The clearances: rules that are one length, which a profile or the file sets.

use enum_map::Enum;
use serde::{Deserialize, Serialize};
use strum::{EnumString, IntoStaticStr, VariantArray};

/// A clearance by name. The order is the order in which they are told.
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
pub enum Clearance {
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
    /// Before every seat's front, of any piece but the main seat's own table.
    LegRoom,
    /// Before the main seat's front, of walls and fixed things; half of it before other seats.
    FrontOpen,
    /// Between two seats that do not stand back to back.
    BetweenSeats,
    /// A table's middle from the middle of the front that it serves, at most.
    TableAxis,
    /// The screen's middle from the axis of the main seat that faces it, at most.
    ScreenAxis,
    /// Kept clear each side of the axis from the main seat to the screen that it faces.
    ScreenSight,
    /// So much of a piece at a wall may stand before a doorway or past the wall's end.
    SolidWall,
    /// Kept clear before every doorway and opening, of all but rugs.
    BeforeOpening,
    /// A seat's back is no further from what is behind it, or leaves a way there.
    BehindSeat,
    /// Edge of a dining table that each of its places has, on its long sides and, where those are too few, at its ends.
    DiningPlaces,
    /// Between the seats of a group of its own and those of any other group.
    BetweenGroups,
    /// Free floor beside the latch of a door that swings in.
    LatchSide,
    /// Depth of the free floor before a door that swings in, and beside its latch.
    PullSide,
}

impl Clearance {
    /// Every clearance, in the order they are told.
    pub const ALL: &[Self] = Self::VARIANTS;

    /// Whether it is asked only where a profile or the file sets it.
    #[must_use]
    pub const fn is_by_profile(self) -> bool {
        matches!(self, Self::LatchSide | Self::PullSide)
    }

    /// Whether it is one of comfort: eased where no layout keeps it, and told first.
    #[must_use]
    pub const fn is_comfort(self) -> bool {
        matches!(
            self,
            Self::LegRoom
                | Self::FrontOpen
                | Self::BetweenSeats
                | Self::TableAxis
                | Self::ScreenAxis
                | Self::ScreenSight
                | Self::SolidWall
                | Self::BeforeOpening
                | Self::BehindSeat
                | Self::DiningPlaces
        )
    }

    /// The clearance as files write it: `seat_to_table`.
    #[must_use]
    pub fn key(self) -> &'static str {
        self.into()
    }
}
