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

use setting::Setting;
use yardstick::Yardstick;

pub mod across;
pub mod arrival;
pub mod curve;
mod glare;
pub mod isovist;
mod judged;
mod judgement;
pub mod obstacles;
mod on_wall;
mod one_or_more;
mod scene;
pub mod seat_places;
mod setting;
pub mod sight;
pub mod sun;
mod tolerance;
mod walk_line;
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
pub use judgement::{CriterionLeftOut, Finding, Judgement};
pub use scene::Scene;

/// A yardstick whose subject and finding are its own business.
struct AnyYardstick {
    judge: fn(Criterion, &Setting) -> Result<Judgement, Missing>,
    missing: fn(&Brief) -> Option<Missing>,
}

impl AnyYardstick {
    const fn of<Y: Yardstick<Finding: Into<Finding>>>() -> Self {
        Self { judge: judge_by::<Y>, missing: |brief| Y::subject(brief).err() }
    }
}

fn judge_by<Y: Yardstick<Finding: Into<Finding>>>(
    criterion: Criterion,
    setting: &Setting,
) -> Result<Judgement, Missing> {
    let subject = Y::subject(setting.brief())?;
    Ok(Judgement::of(criterion, Y::judge(setting, &subject)))
}

const fn yardstick(criterion: Criterion) -> AnyYardstick {
    match criterion {
        Criterion::View => AnyYardstick::of::<view::View>(),
        Criterion::Entrance => AnyYardstick::of::<entrance::Entrance>(),
        Criterion::Openness => AnyYardstick::of::<openness::Openness>(),
        Criterion::Ways => AnyYardstick::of::<ways::Ways>(),
        Criterion::Screen => AnyYardstick::of::<screen::Screen>(),
        Criterion::Talk => AnyYardstick::of::<talk::Talk>(),
        Criterion::Daylight => AnyYardstick::of::<daylight::Daylight>(),
        Criterion::Seats => AnyYardstick::of::<seats::Seats>(),
        Criterion::Balance => AnyYardstick::of::<balance::Balance>(),
        Criterion::Upkeep => AnyYardstick::of::<upkeep::Upkeep>(),
        Criterion::Fireside => AnyYardstick::of::<fireside::Fireside>(),
    }
}

/// What each criterion that applies says of a layout, in the order of [`Criterion::ALL`].
///
/// Whether one applies is a matter of the brief alone, so that all layouts of a brief are judged by the same.
#[must_use]
pub fn judge(scene: &Scene) -> Vec<Judgement> {
    let setting = Setting::of(scene);
    let by = |criterion| (yardstick(criterion).judge)(criterion, &setting).ok();
    Criterion::ALL.iter().copied().filter_map(by).collect()
}

/// Which criteria do not apply to this brief, and why.
#[must_use]
pub fn left_out(brief: &Brief) -> Vec<CriterionLeftOut> {
    let missing =
        |criterion| (yardstick(criterion).missing)(brief).map(|missing| CriterionLeftOut { criterion, missing });
    Criterion::ALL.iter().copied().filter_map(missing).collect()
}
