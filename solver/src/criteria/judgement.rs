//! What a criterion says of a layout, as data: figures, ids and small enumerations, no sentence.

use elbowroom_model::Criterion;

use super::balance::BalanceFinding;
use super::daylight::DaylightFinding;
use super::entrance::EntranceFinding;
use super::fireside::FiresideFinding;
use super::judged::{Absent, FigureUnit, Judged, Missing};
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

/// The findings of all criteria as one type.
macro_rules! findings {
    ($($criterion:ident($finding:ident)),+ $(,)?) => {
        /// What was found, by criterion.
        #[derive(Debug, Clone, PartialEq)]
        pub enum Finding {
            $(
                #[doc = concat!("Of [`Criterion::", stringify!($criterion), "`].")]
                $criterion($finding),
            )+
            /// Of any criterion: what it judges was asked for and does not stand in this layout.
            Absent(Absent),
        }

        $(
            impl From<$finding> for Finding {
                fn from(finding: $finding) -> Self {
                    Self::$criterion(finding)
                }
            }
        )+
    };
}

findings! {
    View(ViewFinding),
    Entrance(EntranceFinding),
    Openness(OpennessFinding),
    Ways(WaysFinding),
    Screen(ScreenFinding),
    Talk(TalkFinding),
    Daylight(DaylightFinding),
    Seats(SeatsFinding),
    Balance(BalanceFinding),
    Upkeep(UpkeepFinding),
    Fireside(FiresideFinding),
}

impl Judgement {
    /// What the yardstick of a criterion said.
    pub(super) fn of<F: Into<Finding>>(criterion: Criterion, judged: Judged<F>) -> Self {
        let Judged { score, figure, unit, found } = judged;
        Self { criterion, score, figure, unit, finding: found.map_or_else(Finding::Absent, F::into) }
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
