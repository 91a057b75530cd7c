//! Who lives in the room.

/// Who lives in the room, as far as the file says.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Household {
    /// How many are to sit; `None`: as many as the pieces have places for at their usual sizes.
    pub people: Option<u32>,
    /// Whether children live here; `None`: nobody says.
    pub children: Option<bool>,
}
