//! What makes one layout better than another: one file per criterion, each a figure that a tape can check, a score
//! made from it, a sentence and a basis. Weights and the order of options live in `ranking`.
//!
//! What several criteria ask is told apart by notion: where people sit ([`seat_places`]), what stands before their eyes
//! ([`obstacles`], [`sight`]), what one sees on coming in ([`isovist`]), where the sun stands ([`sun`]).

use elbowroom_model::{Brief, Criterion, PieceId};

use crate::layout::Layout;
use crate::routes::Route;
use crate::site::Site;
use setting::Setting;

mod across;
mod arrival;
pub mod curve;
pub mod isovist;
pub mod obstacles;
pub mod seat_places;
mod setting;
pub mod sight;
pub mod sun;
mod tolerance;
mod walk_line;

mod balance;
mod daylight;
mod entrance;
mod fireside;
mod openness;
pub mod screen;
mod seats;
mod talk;
mod upkeep;
pub mod view;
mod ways;

/// All that a criterion looks at.
#[derive(Debug, Clone, Copy)]
pub struct Scene<'a> {
    /// What was measured and asked.
    pub brief: &'a Brief,
    /// The room as the rules see it.
    pub site: &'a Site,
    /// The layout to judge.
    pub layout: &'a Layout,
    /// Its routes.
    pub routes: &'a [Route],
    /// The main seat, by its place in the brief.
    pub main_seat: PieceId,
}

/// What one criterion says of one layout.
#[derive(Debug, Clone, PartialEq)]
pub struct Judgement {
    /// Which criterion.
    pub criterion: Criterion,
    /// 0 to 100.
    pub score: f64,
    /// A figure that a tape can check.
    pub figure: f64,
    /// Unit of the figure: `deg`, `mm`, `m2`, `percent`, `count`.
    pub unit: &'static str,
    /// A sentence made from the figure.
    pub reason: String,
    /// Where the yardstick comes from.
    pub basis: String,
}

impl Judgement {
    fn new(criterion: Criterion, score: f64, (figure, unit): (f64, &'static str), reason: String, basis: &str) -> Self {
        debug_assert!(score.is_finite() && figure.is_finite(), "{criterion:?}: {score}, {figure}");
        Self { criterion, score: score.clamp(0.0, 100.0), figure, unit, reason, basis: basis.to_owned() }
    }
}

/// One criterion: what it says of a layout, and why it says nothing of a brief that it does not apply to.
struct Yardstick {
    judge: fn(&Setting) -> Option<Judgement>,
    left_out: fn(&Brief) -> Option<String>,
}

const fn yardstick(criterion: Criterion) -> Yardstick {
    match criterion {
        Criterion::View => Yardstick { judge: view::judge, left_out: view::left_out },
        Criterion::Entrance => Yardstick { judge: entrance::judge, left_out: entrance::left_out },
        Criterion::Openness => Yardstick { judge: openness::judge, left_out: openness::left_out },
        Criterion::Ways => Yardstick { judge: ways::judge, left_out: ways::left_out },
        Criterion::Screen => Yardstick { judge: screen::judge, left_out: screen::left_out },
        Criterion::Talk => Yardstick { judge: talk::judge, left_out: talk::left_out },
        Criterion::Daylight => Yardstick { judge: daylight::judge, left_out: daylight::left_out },
        Criterion::Seats => Yardstick { judge: seats::judge, left_out: seats::left_out },
        Criterion::Balance => Yardstick { judge: balance::judge, left_out: balance::left_out },
        Criterion::Upkeep => Yardstick { judge: upkeep::judge, left_out: upkeep::left_out },
        Criterion::Fireside => Yardstick { judge: fireside::judge, left_out: fireside::left_out },
    }
}

/// What each criterion that applies says of a layout, in the order of [`Criterion::ALL`].
///
/// Whether one applies is a matter of the brief alone, so that all layouts of a brief are judged by the same.
#[must_use]
pub fn judge(scene: &Scene) -> Vec<Judgement> {
    let setting = Setting::of(scene);
    let applying = Criterion::ALL.iter().copied().map(yardstick).filter(|one| (one.left_out)(scene.brief).is_none());
    applying.filter_map(|one| (one.judge)(&setting)).collect()
}

/// Which criteria are left out for this brief, and why: one sentence each.
#[must_use]
pub fn notices(brief: &Brief) -> Vec<String> {
    Criterion::ALL.iter().copied().filter_map(|criterion| (yardstick(criterion).left_out)(brief)).collect()
}
