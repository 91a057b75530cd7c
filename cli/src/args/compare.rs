//! The arguments of `compare`.

use crate::args::draw::paper;
use crate::args::{Form, OptionArg, OutputArgs, RoomArgs};
use crate::drawing::Stock;

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
    /// A sheet with the plans instead of text; the file's ending tells where not given
    #[arg(long, value_name = "FORM")]
    pub format: Option<Form>,
    /// The paper of the sheet
    #[arg(long, value_name = "PAPER", default_value = "a3", value_parser = paper())]
    pub paper: Stock,
}
