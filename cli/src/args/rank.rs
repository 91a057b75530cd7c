//! The arguments of `rank`.

use clap::builder::{ArgPredicate, TypedValueParser};
use elbowroom_model::Criterion;

use crate::args::{RoomArgs, values};

/// Options that are shown where nobody says how many.
pub(super) const SHOWN: usize = 6;
/// Most options that `rank` can be asked to show: each one shown costs a search for every size. `--all` asks for so many.
pub(super) const MOST_SHOWN: u64 = 1000;

/// Of `rank`.
#[derive(Debug, clap::Args)]
pub(crate) struct RankArgs {
    /// What is ranked.
    #[command(flatten)]
    pub room: RoomArgs,
    /// Print the whole result as JSON
    #[arg(long)]
    pub json: bool,
    /// Tell every size, way, gap, reason and caution, and not only what one screen holds
    #[arg(long, conflicts_with = "json")]
    pub full: bool,
    /// Sketch the first option in the terminal
    #[arg(long, conflicts_with = "json")]
    pub sketch: bool,
    /// Ways to put the main seat (its wall or the way it faces, and its hand) of which the best option is shown at length [6
    /// where not given]; only these options get the most each size could be alone, and what holds it
    #[arg(long, value_name = "N", default_value_if("all", ArgPredicate::IsPresent, "1000"), value_parser = clap::value_parser!(u64).range(1..=MOST_SHOWN).map(|n| n as usize))]
    pub top: Option<usize>,
    /// Show option by option, and not the best of each way to put the main seat: all, or the first `--top`
    #[arg(long)]
    pub all: bool,
    /// Tell also what was searched and given up, by which rule, and how long each part took (on one thread)
    #[arg(long, conflicts_with_all = ["json", "threads"])]
    pub explain_work: bool,
    /// Rank by this criterion alone instead of by the wishes
    #[arg(long, value_name = "CRITERION", value_parser = values::criterion())]
    pub by: Option<Criterion>,
}

impl RankArgs {
    /// Options that are shown at length: one screen has room for none.
    pub(crate) fn shown(&self) -> usize {
        if self.json || self.is_full() { self.top.unwrap_or(SHOWN) } else { 0 }
    }

    /// Whether more is asked for than one screen holds.
    pub(crate) const fn is_full(&self) -> bool {
        self.full || self.sketch || self.explain_work || self.top.is_some()
    }
}
