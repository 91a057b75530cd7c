//! The arguments of `compare`.

use crate::args::{OptionArg, RoomArgs};

/// Of `compare`.
#[derive(Debug, clap::Args)]
pub(crate) struct CompareArgs {
    /// What is ranked.
    #[command(flatten)]
    pub room: RoomArgs,
    /// Two or three options, each by its place in the order or by its key
    #[arg(value_name = "OPTION", num_args = 2..=3, required = true)]
    pub options: Vec<OptionArg>,
}
