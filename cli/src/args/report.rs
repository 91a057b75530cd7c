//! The arguments of `report`.

use clap::builder::{ArgPredicate, TypedValueParser};

use crate::args::rank::SHOWN;
use crate::args::{OutputArgs, RoomArgs};

/// Most options that a report can be asked to draw. `--all` asks for so many.
const MOST_DRAWN: u64 = 100;

/// The one form of a report.
#[derive(Debug, Clone, Copy, PartialEq, Eq, clap::ValueEnum)]
pub(crate) enum Page {
    /// One page that needs nothing beside itself
    #[value(alias = "htm")]
    Html,
}

/// Of `report`.
#[derive(Debug, clap::Args)]
pub(crate) struct ReportArgs {
    /// What is ranked.
    #[command(flatten)]
    pub room: RoomArgs,
    /// Where it goes.
    #[command(flatten)]
    pub output: OutputArgs,
    /// Ways to put the main seat of which the best option is drawn and told at length
    #[arg(long, value_name = "N", default_value_t = SHOWN, default_value_if("all", ArgPredicate::IsPresent, "100"), value_parser = clap::value_parser!(u64).range(1..=MOST_DRAWN).map(|n| n as usize))]
    pub top: usize,
    /// Draw option by option, and not the best of each way to put the main seat: up to 100, or the first `--top`
    #[arg(long)]
    pub all: bool,
}
