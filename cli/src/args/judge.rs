//! The arguments of `judge`.

use crate::args::RoomArgs;

/// Of `judge`.
#[derive(Debug, clap::Args)]
pub(crate) struct JudgeArgs {
    /// What is judged; what is ranked for comparison.
    #[command(flatten)]
    pub room: RoomArgs,
    /// Print the whole result as JSON
    #[arg(long)]
    pub json: bool,
}
