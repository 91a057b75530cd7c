//! The rules that a layout keeps, each under one name: in the search, in its re-check and in results.

use std::fmt;

use enum_map::Enum;
use serde::{Serialize, Serializer};
use strum::IntoStaticStr;

use super::Clearance;

/// Something that a layout must keep to. The order is the order in which equals are told.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Enum, IntoStaticStr)]
#[strum(serialize_all = "snake_case")]
pub enum Rule {
    /// Inside the walls.
    Room,
    /// Off its wall by its gap, a foot beyond at most.
    OffWall,
    /// Pieces do not overlap.
    Overlap,
    /// Out of a door's swing.
    DoorSwing,
    /// Out of a heater's or fire's zone.
    KeepClear,
    /// Out of what stands there for good.
    Fixed,
    /// So much stays clear.
    #[strum(transparent)]
    Clearance(Clearance),
    /// How the pieces of the group stand to each other.
    Group,
    /// A chair is turned to the heart of its group, two of a row as mirror images.
    Turned,
    /// How far a sitter turns to the screen.
    ScreenTurn,
    /// The back of a return keeps the gap of a seat from its wall.
    ReturnOffWall,
    /// The floor before a fixed thing that people use stays clear.
    Use,
    /// It stands where the file holds it.
    Held,
    /// It stands at no wall that is kept free of its kind.
    KeepFree,
    /// It stands where the ceiling is as high as it is, over its whole depth.
    Ceiling,
    /// Within the sizes it may have: its range, its steps, the size of another.
    Size,
    /// No larger than is asked for.
    Most,
    /// As large as the other rules let it be.
    Largest,
    /// A piece that is needed stands.
    Needed,
    /// It gets in by the way to the room.
    Way,
    /// Decided within the work allowed.
    Work,
    /// What settles ties.
    Centring,
}

impl Rule {
    /// Every rule, in the order of the vocabulary.
    pub fn all() -> impl Iterator<Item = Self> {
        (0..Self::LENGTH).map(Self::from_usize)
    }

    /// The stable name: `door_swing`, a clearance's key.
    #[must_use]
    pub fn key(self) -> &'static str {
        self.into()
    }

    /// Whether it is a rule of comfort: eased where no layout keeps it, and told first.
    #[must_use]
    pub const fn is_comfort(self) -> bool {
        match self {
            Self::ScreenTurn | Self::ReturnOffWall | Self::Use => true,
            Self::Clearance(clearance) => clearance.is_comfort(),
            _ => false,
        }
    }

    /// The clearance that it is; `None` where it is no one length.
    #[must_use]
    pub const fn clearance(self) -> Option<Clearance> {
        if let Self::Clearance(clearance) = self { Some(clearance) } else { None }
    }
}

impl From<Clearance> for Rule {
    fn from(clearance: Clearance) -> Self {
        Self::Clearance(clearance)
    }
}

impl fmt::Display for Rule {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.key())
    }
}

impl Serialize for Rule {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(self.key())
    }
}
