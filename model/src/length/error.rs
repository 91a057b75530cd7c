//! Why a text is no length, as a value.

/// Why a text is no length.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum LengthError {
    /// There is nothing in it.
    #[error("is empty")]
    Empty,
    /// It is not a number with a unit.
    #[error("is not a length")]
    NotALength,
    /// The unit is none that is known; the nearest one that is.
    #[error("has the unknown unit `{unit}`")]
    UnknownUnit {
        /// As written.
        unit: String,
        /// The nearest known one, where one is near.
        nearest: Option<&'static str>,
    },
    /// A comma where a point belongs.
    #[error("has a comma in it")]
    Comma,
    /// Several numbers that are not feet and then inches.
    #[error("joins units that do not go together")]
    Compound,
    /// Twelve inches or more beside feet: a slip, for they would be a foot more.
    #[error("has 12 inches or more beside its feet")]
    InchesBeyondAFoot,
    /// A length of feet and inches in a range.
    #[error("has feet and inches together in a range")]
    CompoundInRange,
    /// A range whose lower end alone has a unit.
    #[error("has a unit at its lower end alone")]
    UnitAtLowerEndAlone,
    /// A dash where the two dots of a range belong.
    #[error("has a dash where the two dots of a range belong")]
    Dash,
    /// A range where one length is meant.
    #[error("is a range where one length is meant")]
    Range,
    /// Beyond what can be a length in a room.
    #[error("is no length that a room can have")]
    OutOfBounds,
}
