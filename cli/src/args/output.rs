//! Where a sheet goes.

use std::path::PathBuf;

/// The file that a sheet is written to.
#[derive(Debug, Clone, clap::Args)]
pub(crate) struct OutputArgs {
    /// The file to write; `-`, or none, prints it
    #[arg(short, long, value_name = "FILE")]
    pub output: Option<PathBuf>,
    /// Write over a file that is there already
    #[arg(long)]
    pub force: bool,
}
