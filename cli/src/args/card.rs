//! The arguments of `card`.

use clap::builder::TypedValueParser;

use crate::args::draw::paper;
use crate::args::{FontArgs, LeafForm, OptionArg, OutputArgs, RoomArgs};
use crate::drawing::Stock;

/// Options that one card holds at most: more do not fit a page.
const MOST_OPTIONS: u64 = 3;

/// Of `card`.
#[derive(Debug, clap::Args)]
pub(crate) struct CardArgs {
    /// What is ranked.
    #[command(flatten)]
    pub room: RoomArgs,
    /// The option to shop for, by its place in the order or by its key
    #[arg(long, value_name = "KEY|RANK", conflicts_with = "top")]
    pub option: Option<OptionArg>,
    /// Shop for any of the best options of so many ways to put the main seat, 1 to 3
    #[arg(long, value_name = "N", default_value_t = 1, value_parser = clap::value_parser!(u64).range(1..=MOST_OPTIONS).map(|n| n as usize))]
    pub top: usize,
    /// Where it goes.
    #[command(flatten)]
    pub output: OutputArgs,
    /// The letters.
    #[command(flatten)]
    pub font: FontArgs,
    /// The form; the file's ending tells where not given, else text
    #[arg(long, value_name = "FORM")]
    pub format: Option<LeafForm>,
    /// The paper of a PDF
    #[arg(long, value_name = "PAPER", default_value = "a4", value_parser = paper())]
    pub paper: Stock,
}
