//! Decides: from a measured room and what is wanted in it to ranked, checked options.
//!
//! [`arrangement`] enumerates the discrete options; the search solves each for its largest pieces over linear programs
//! ([`program`]); [`routes`] measures the ways through; [`criteria`] judge what came out and [`ranking`] orders it.
//! Deterministic; no clock, no printing.

pub mod answer;
pub mod arrangement;
mod attempt;
mod best_by;
mod by_plan;
mod candidate;
pub mod cautions;
pub mod chairs;
pub mod comparison;
pub mod composition;
pub mod criteria;
mod equals;
pub mod for_children;
pub mod gaps;
pub mod geometry;
pub mod group_places;
pub mod judge;
mod layout;
mod leaf_gaps;
pub mod notice;
mod out_of_ways;
pub mod plan;
pub mod program;
mod rank;
pub mod ranking;
pub mod refusal;
mod rewished;
pub mod routes;
pub mod rules;
pub mod screen_overhang;
pub mod search;
pub mod setting_out;
pub mod shop;
mod site;
pub mod sizes;
pub mod stock;
mod stop;
mod twins;
pub mod verify;
pub mod way_in;

pub use best_by::best_by;
pub use layout::{Layout, Placed, Size};
pub use leaf_gaps::LeafGap;
pub use rank::{rank, sizes_in_full};
pub use rewished::{hang_on_wishes, rewished};
pub use site::{
    Body, BodyId, ClearZone, Fold, Landing, Leaf, Site, SiteWall, Swing, WIDEST_OPENING_WITH_LANDING, WallPlace,
};
pub use stop::Stop;

/// How much to do, counted in work, never in time.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Limits {
    /// Options that get the `alone` figures and what holds each size: the best of each of the first so many families.
    pub shown: usize,
    /// The first so many options get them instead, whatever their families.
    pub one_by_one: bool,
    /// Nodes of the search that one arrangement may take before it answers with a bound instead of a proof.
    pub nodes: usize,
    /// Rank by this criterion alone instead of by the wishes.
    pub by: Option<elbowroom_model::Criterion>,
}

impl Default for Limits {
    fn default() -> Self {
        Self { shown: 6, one_by_one: false, nodes: 3_000, by: None }
    }
}

/// Told as the work goes on, from any thread.
pub trait Watch: Sync {
    /// `done` of `all` arrangements are solved.
    fn solved(&self, done: usize, all: usize);

    /// Whether nobody wants the answer any more; once it is so, it stays so. Asked at each node, from any thread: the answer
    /// then comes at once, and what was not looked at by then is told as not decided.
    fn is_stopped(&self) -> bool {
        false
    }

    /// A part of the work begins on this thread; no other does before it ends.
    fn began(&self, _part: Part) {}

    /// The part that began on this thread has ended.
    fn ended(&self, _part: Part) {}
}

/// What the work consists of, for whoever wants to know how long each part takes.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Part {
    /// The room as rules see it, the arrangements, the widths of the empty room.
    Ground,
    /// The plan and the largest pieces of each arrangement.
    Search,
    /// Why an arrangement has no layout.
    Refusal,
    /// The widths and lengths of the ways through.
    Routes,
    /// Every rule checked again from the geometry.
    Check,
    /// Scores and their figures.
    Criteria,
    /// The order, and how firm it is.
    Order,
    /// How large each piece could be alone, and what holds it.
    Sizes,
    /// What would help where nothing fits.
    Remedies,
}

/// Runs a part of the work and tells both its ends.
pub(crate) fn part<T>(watch: &dyn Watch, part: Part, work: impl FnOnce() -> T) -> T {
    watch.began(part);
    let done = work();
    watch.ended(part);
    done
}

/// Watches nothing.
#[derive(Debug, Clone, Copy, Default)]
pub struct Unwatched;

impl Watch for Unwatched {
    fn solved(&self, _done: usize, _all: usize) {}
}
