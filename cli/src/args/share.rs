//! The arguments of `share`.

use std::path::PathBuf;

use clap::builder::TypedValueParser;

use crate::args::{DecimalsArg, OptionArg, OutputArgs, Page, RoomArgs};

/// Options that a client is shown at most: more cannot be chosen among.
const MOST_SHARED: usize = 6;

/// Of `share`.
#[derive(Debug, clap::Args)]
pub(crate) struct ShareArgs {
    /// What is ranked.
    #[command(flatten)]
    pub room: RoomArgs,
    /// The options to show, each by its place in the order or by its key, in the order in which they are to stand; the
    /// best of the first ways to put the main seat where not given
    #[arg(value_name = "OPTION", num_args = 0..=MOST_SHARED, conflicts_with = "top")]
    pub options: Vec<OptionArg>,
    /// Show the best options of so many ways to put the main seat, 1 to 6
    #[arg(long, value_name = "N", default_value_t = 3, value_parser = clap::value_parser!(u64).range(1..=MOST_SHARED as u64).map(|n| n as usize))]
    pub top: usize,
    /// Tell what each piece costs at least, by this list (as `shop` reads it): the lowest price of what fits there. No price is
    /// told without it, and nothing else of the list in any case
    #[arg(long, value_name = "LIST")]
    pub prices: Option<PathBuf>,
    /// How the list's figures are written
    #[command(flatten)]
    pub decimals: DecimalsArg,
    /// Where it goes.
    #[command(flatten)]
    pub output: OutputArgs,
    /// The form, which is one page
    #[arg(long, value_name = "FORM", hide = true)]
    pub format: Option<Page>,
}
