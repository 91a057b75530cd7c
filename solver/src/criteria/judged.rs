//! What one yardstick says of one layout, and why it may say nothing.

use elbowroom_model::PieceId;

/// What one yardstick says of one layout.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Judged<F> {
    /// 0 to 100.
    pub(super) score: f64,
    /// A figure that a tape can check.
    pub(super) figure: f64,
    /// Unit of the figure.
    pub(super) unit: FigureUnit,
    /// All that the score is made of, or what does not stand.
    pub(super) found: Result<F, Absent>,
}

impl<F> Judged<F> {
    pub(super) fn new(score: f64, figure: f64, unit: FigureUnit, finding: F) -> Self {
        debug_assert!(score.is_finite() && figure.is_finite(), "{score}, {figure}");
        Self { score: score.clamp(0.0, 100.0), figure, unit, found: Ok(finding) }
    }

    /// What was asked for and does not stand counts nothing, and there are 0 of it.
    pub(super) const fn absent(what: Absent) -> Self {
        Self { score: 0.0, figure: 0.0, unit: FigureUnit::Count, found: Err(what) }
    }
}

/// Unit of a criterion's figure.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FigureUnit {
    /// Degrees.
    Degrees,
    /// Millimetres.
    Millimetres,
    /// Per cent.
    Percent,
    /// Whole things.
    Count,
}

impl FigureUnit {
    /// The unit as results write it.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Degrees => "deg",
            Self::Millimetres => "mm",
            Self::Percent => "percent",
            Self::Count => "count",
        }
    }
}

/// What was asked for, does not stand in a layout, and so counts nothing there.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Absent {
    /// No seat stands.
    Seats,
    /// The media unit does not stand.
    Screen(PieceId),
    /// Nothing stands that a way must lead to.
    Ways,
}

/// What a brief has not got, so that there is nothing for a criterion to judge.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Missing {
    /// A window that is marked liked or avoided.
    MarkedWindow,
    /// A door or opening that leads to the entrance.
    Entrance,
    /// An entrance, or an opening with a stance.
    EntranceOrStance,
    /// An entrance for routes to start at.
    Routes,
    /// A media unit.
    MediaUnit,
    /// A window.
    Window,
    /// A fireplace.
    Fireplace,
    /// A window, a radiator or a socket.
    NothingToKeep,
}
