//! What walls hold: windows, doors, openings, and what heats, burns or feeds.

/// A window.
#[derive(Debug, Clone, PartialEq)]
pub struct Window {
    /// Height of its lower edge above the floor, mm.
    pub sill: f64,
    /// Height of its upper edge above the floor, mm.
    pub head: f64,
    /// What one sees through it.
    pub view: View,
    /// It opens, so being able to reach it counts.
    pub opens: bool,
    /// Someone must be able to step up to it (an escape window).
    pub must_reach: bool,
}

/// What one sees through a window.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum View {
    /// Worth facing.
    Liked,
    /// Neither sought nor shunned.
    #[default]
    Plain,
    /// Better not faced.
    Avoided,
}

/// A doorway with a door in it.
#[derive(Debug, Clone, PartialEq)]
pub struct Door {
    /// Side of the hinge as one faces the door from inside the room; `None` for a door that slides.
    pub hinge: Option<Hinge>,
    /// Which way the leaf goes.
    pub swings: Swings,
    /// How far a leaf that swings opens, where it rests, degrees; `None` where the file does not say.
    pub opens_to: Option<f64>,
    /// The space behind it.
    pub leads_to: LeadsTo,
}

/// How far a leaf opens of which nothing is said, degrees.
const QUARTER_TURN: f64 = 90.0;

impl Door {
    /// How far its leaf opens, degrees.
    #[must_use]
    pub fn opens_to(&self) -> f64 {
        self.opens_to.unwrap_or(QUARTER_TURN)
    }
}

/// Side of a hinge, as one faces the door from inside the room.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Hinge {
    /// At the left jamb.
    Left,
    /// At the right jamb.
    Right,
}

/// Which way a leaf goes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Swings {
    /// Into the room: it sweeps a quarter disc.
    In,
    /// Out of the room: it sweeps nothing here.
    Out,
    /// Along the wall: it sweeps nothing.
    Slides,
    /// In two halves that fold into the room: it takes half its width.
    Folds,
    /// Into the wall: it sweeps nothing.
    Pocket,
}

/// The space that a doorway leads to.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum LeadsTo {
    /// The way in.
    Entrance,
    /// Another space, by its name.
    Space(String),
}

impl LeadsTo {
    /// Whether one arrives through it.
    #[must_use]
    pub fn is_entrance(&self) -> bool {
        matches!(self, Self::Entrance)
    }
}

/// A doorway with no door, or the open side toward another space.
#[derive(Debug, Clone, PartialEq)]
pub struct Opening {
    /// The space behind it.
    pub leads_to: LeadsTo,
    /// How the seats should stand to it.
    pub stance: Stance,
}

/// How the seats should stand to an opening.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Stance {
    /// Keep sight of what adjoins.
    Open,
    /// Let the seats turn their backs on it.
    Away,
    /// It does not matter.
    #[default]
    None,
}

/// A radiator.
#[derive(Debug, Clone, PartialEq)]
pub struct Radiator {
    /// How far its front stands from the wall, mm.
    pub depth: f64,
    /// Its height, mm.
    pub height: f64,
    /// What is kept free before its front, mm.
    pub keep_clear: f64,
}

/// A chimney breast with its fire; the item's width is the breast's.
#[derive(Debug, Clone, PartialEq)]
pub struct Fireplace {
    /// How far its front stands from the wall, mm.
    pub depth: f64,
    /// The fire's mouth, where it is narrower than the breast; `None`: as wide.
    pub opening: Option<FireOpening>,
    /// Height of the breast or mantel, where it was measured, mm.
    pub height: Option<f64>,
    /// What is kept free before its mouth and round the mouth's two ends, mm.
    pub keep_clear: f64,
}

/// The mouth of a fire in its chimney breast.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FireOpening {
    /// From the breast's left end, as one faces it, to the mouth's left side, mm.
    pub at: f64,
    /// Width of the mouth, mm.
    pub width: f64,
}

/// What a socket carries.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Socket {
    /// Mains.
    Power,
    /// A television aerial.
    Aerial,
    /// A network or telephone line.
    Data,
}

/// The kinds of item that a wall holds.
#[derive(Debug, Clone, PartialEq)]
pub enum ItemKind {
    /// A window.
    Window(Window),
    /// A doorway with a door.
    Door(Door),
    /// A doorway with no door, or an open side.
    Opening(Opening),
    /// A radiator.
    Radiator(Radiator),
    /// A fireplace.
    Fireplace(Fireplace),
    /// A socket; `width` of the item is 0.
    Socket(Socket),
}

impl ItemKind {
    /// The space that one walks into through this item: `None` unless it is a door or an opening.
    #[must_use]
    pub fn leads_to(&self) -> Option<&LeadsTo> {
        match self {
            Self::Door(door) => Some(&door.leads_to),
            Self::Opening(opening) => Some(&opening.leads_to),
            Self::Window(_) | Self::Radiator(_) | Self::Fireplace(_) | Self::Socket(_) => None,
        }
    }

    /// The same, to change it.
    pub fn leads_to_mut(&mut self) -> Option<&mut LeadsTo> {
        match self {
            Self::Door(door) => Some(&mut door.leads_to),
            Self::Opening(opening) => Some(&mut opening.leads_to),
            Self::Window(_) | Self::Radiator(_) | Self::Fireplace(_) | Self::Socket(_) => None,
        }
    }
}
