//! The arguments of `compare`.

use crate::args::draw::paper;
use crate::args::{FontArgs, OptionArg, OutputArgs, RoomArgs};
use crate::drawing::Stock;

/// A form of a comparison.
#[derive(Debug, Clone, Copy, PartialEq, Eq, clap::ValueEnum)]
pub(crate) enum CompareForm {
    /// Plain text
    #[value(alias = "txt")]
    Text,
    /// One page that needs nothing beside itself
    #[value(alias = "htm")]
    Html,
    /// Paper, to print
    Pdf,
    /// A drawing, all on one sheet
    Svg,
    /// A picture of 150 dots to the inch, all on one sheet
    Png,
}

/// Of `compare`.
#[derive(Debug, clap::Args)]
pub(crate) struct CompareArgs {
    /// What is ranked.
    #[command(flatten)]
    pub room: RoomArgs,
    /// Two or three options, each by its place in the order or by its key
    #[arg(value_name = "OPTION", num_args = 2..=3, required = true)]
    pub options: Vec<OptionArg>,
    /// Where it goes.
    #[command(flatten)]
    pub output: OutputArgs,
    /// The letters.
    #[command(flatten)]
    pub font: FontArgs,
    /// A page or a sheet with the plans instead of text; the file's ending tells where not given
    #[arg(long, value_name = "FORM")]
    pub format: Option<CompareForm>,
    /// The paper of the sheet
    #[arg(long, value_name = "PAPER", default_value = "a4", value_parser = paper())]
    pub paper: Stock,
}
