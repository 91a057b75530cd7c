//! What makes one layout better than another: one file per criterion, each a figure that a tape can check, a score
//! made from it, and what was found as data. Weights and the order of options live in `ranking`.
//!
//! A criterion that applies to a brief says something of every layout of it. Where a layout has not got what a criterion
//! judges, it holds that what was asked for and does not stand counts nothing ([`Absent`]), and what the room does not
//! offer is not counted: the parts that remain are weighed alone.
//!
//! What several criteria ask is told apart by notion: where people sit ([`seat_places`]), what stands before their eyes
//! ([`obstacles`], [`sight`]), what one sees on coming in ([`isovist`]), where the sun stands ([`sun`]).

use elbowroom_model::{Brief, Criterion};

use criteria_context::CriteriaContext;
pub(crate) use criteria_context::Walkers;
use judged::Judged;
use yardstick::Yardstick;

pub mod across;
mod across_group;
pub mod arrival;
mod criteria_context;
pub mod curve;
mod glare;
mod grid;
pub mod isovist;
mod judged;
mod layout_in_room;
pub mod obstacles;
mod on_axis;
mod on_wall;
mod one_or_more;
mod places;
pub mod seat_places;
pub mod sight;
pub mod sun;
mod tolerance;
mod walk_line;
pub mod walked_floor;
mod walkers;
mod yardstick;

pub mod balance;
pub mod daylight;
pub mod entrance;
pub mod fireside;
pub mod openness;
pub mod screen;
pub mod seats;
pub mod talk;
pub mod upkeep;
pub mod view;
pub mod ways;

pub use judged::{Absent, FigureUnit, Missing};
pub use layout_in_room::LayoutInRoom;

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

/// A criterion that does not apply to a brief.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct CriterionLeftOut {
    /// Which criterion.
    pub criterion: Criterion,
    /// Why.
    pub missing: Missing,
}

/// The list of criteria: from each its variant of [`Finding`] and its place in [`yardstick`].
macro_rules! criteria {
    ($($criterion:ident: $yardstick:ty => $finding:ty),+ $(,)?) => {
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

        const fn yardstick(criterion: Criterion) -> AnyYardstick {
            match criterion {
                $(Criterion::$criterion => AnyYardstick::of::<$yardstick>(),)+
            }
        }
    };
}

criteria! {
    View: view::View => view::ViewFinding,
    Entrance: entrance::Entrance => entrance::EntranceFinding,
    Openness: openness::Openness => openness::OpennessFinding,
    Ways: ways::Ways => ways::WaysFinding,
    Screen: screen::Screen => screen::ScreenFinding,
    Talk: talk::Talk => talk::TalkFinding,
    Daylight: daylight::Daylight => daylight::DaylightFinding,
    Seats: seats::Seats => seats::SeatsFinding,
    Balance: balance::Balance => balance::BalanceFinding,
    Upkeep: upkeep::Upkeep => upkeep::UpkeepFinding,
    Fireside: fireside::Fireside => fireside::FiresideFinding,
}

impl Judgement {
    /// What the yardstick of a criterion said.
    fn of<F: Into<Finding>>(criterion: Criterion, judged: Judged<F>) -> Self {
        let Judged { score, figure, unit, found } = judged;
        Self { criterion, score, figure, unit, finding: found.map_or_else(Finding::Absent, F::into) }
    }
}

/// A yardstick whose subject and finding are its own business.
struct AnyYardstick {
    judge: fn(Criterion, &CriteriaContext) -> Result<Judgement, Missing>,
    missing: fn(&Brief) -> Option<Missing>,
}

impl AnyYardstick {
    const fn of<Y: Yardstick<Finding: Into<Finding>>>() -> Self {
        Self { judge: judge_by::<Y>, missing: |brief| Y::subject(brief).err() }
    }
}

fn judge_by<Y: Yardstick<Finding: Into<Finding>>>(
    criterion: Criterion,
    context: &CriteriaContext,
) -> Result<Judgement, Missing> {
    let subject = Y::subject(context.brief())?;
    Ok(Judgement::of(criterion, Y::judge(context, &subject)))
}

/// What each criterion that applies says of a layout, in the order of [`Criterion::ALL`].
///
/// Whether one applies is a matter of the brief alone, so that all layouts of a brief are judged by the same.
#[must_use]
pub fn judge(in_room: &LayoutInRoom) -> Vec<Judgement> {
    judge_with_walkers(in_room).0
}

/// The same, and what walkers make of the layout: terms of composition that the search does not weigh.
pub(crate) fn judge_with_walkers(in_room: &LayoutInRoom) -> (Vec<Judgement>, Walkers) {
    let mut context = CriteriaContext::of(in_room);
    context.walkers = walkers::walkers(&context);
    let by = |criterion| (yardstick(criterion).judge)(criterion, &context).ok();
    (Criterion::ALL.iter().copied().filter_map(by).collect(), context.walkers.clone())
}

/// What walkers make of a layout, by itself.
pub(crate) fn walkers_of(in_room: &LayoutInRoom) -> Walkers {
    walkers::walkers(&CriteriaContext::of(in_room))
}

/// Which criteria do not apply to this brief, and why.
#[must_use]
pub fn left_out(brief: &Brief) -> Vec<CriterionLeftOut> {
    let missing =
        |criterion| (yardstick(criterion).missing)(brief).map(|missing| CriterionLeftOut { criterion, missing });
    Criterion::ALL.iter().copied().filter_map(missing).collect()
}
