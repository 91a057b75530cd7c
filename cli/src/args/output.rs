//! Where a sheet goes.

use std::path::PathBuf;

use crate::process::destination::Destination;
use crate::process::failure::Failure;

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

impl OutputArgs {
    /// Where that is, standard output where nothing is named; errors as of [`Destination::at`].
    pub(crate) fn destination(&self) -> Result<Destination, Failure> {
        self.output.as_deref().map_or(Ok(Destination::Stdout), |path| Destination::at(path, self.force))
    }
}
