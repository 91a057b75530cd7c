//! What a criterion says of a layout, as data: figures, ids and small enumerations, no sentence.

use elbowroom_model::{Criterion, PieceId};

use super::balance::BalanceFinding;
use super::daylight::DaylightFinding;
use super::entrance::EntranceFinding;
use super::fireside::FiresideFinding;
use super::openness::OpennessFinding;
use super::screen::ScreenFinding;
use super::seats::SeatsFinding;
use super::talk::TalkFinding;
use super::upkeep::UpkeepFinding;
use super::view::ViewFinding;
use super::ways::WaysFinding;

/// What one criterion says of one layout.
#[derive(Debug, Clone, PartialEq)]
pub struct Judgement {
    /// Which criterion.
    pub criterion: Criterion,
    /// 0 to 100.
    pub score: f64,
    /// A figure that a tape can check.
    pub figure: f64,
    /// Unit of the figure.
    pub unit: FigureUnit,
    /// All that the score is made of.
    pub finding: Finding,
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

/// What was found, by criterion.
#[derive(Debug, Clone, PartialEq)]
pub enum Finding {
    /// Of [`Criterion::View`].
    View(ViewFinding),
    /// Of [`Criterion::Entrance`].
    Entrance(EntranceFinding),
    /// Of [`Criterion::Openness`].
    Openness(OpennessFinding),
    /// Of [`Criterion::Ways`].
    Ways(WaysFinding),
    /// Of [`Criterion::Screen`].
    Screen(ScreenFinding),
    /// Of [`Criterion::Talk`].
    Talk(TalkFinding),
    /// Of [`Criterion::Daylight`].
    Daylight(DaylightFinding),
    /// Of [`Criterion::Seats`].
    Seats(SeatsFinding),
    /// Of [`Criterion::Balance`].
    Balance(BalanceFinding),
    /// Of [`Criterion::Upkeep`].
    Upkeep(UpkeepFinding),
    /// Of [`Criterion::Fireside`].
    Fireside(FiresideFinding),
    /// Of any criterion: what it judges was asked for and does not stand in this layout.
    Absent(Absent),
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

impl Judgement {
    pub(super) fn new(criterion: Criterion, score: f64, figure: f64, unit: FigureUnit, finding: Finding) -> Self {
        debug_assert!(score.is_finite() && figure.is_finite(), "{criterion:?}: {score}, {figure}");
        Self { criterion, score: score.clamp(0.0, 100.0), figure, unit, finding }
    }

    /// What was asked for and does not stand counts nothing, and there are 0 of it.
    pub(super) fn absent(criterion: Criterion, what: Absent) -> Self {
        Self::new(criterion, 0.0, 0.0, FigureUnit::Count, Finding::Absent(what))
    }
}

/// A criterion that does not apply to a brief.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct CriterionLeftOut {
    /// Which criterion.
    pub criterion: Criterion,
    /// Why.
    pub missing: Missing,
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
}
