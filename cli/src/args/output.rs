//! Where a sheet goes.

use std::path::{Path, PathBuf};

use crate::process::destination::Destination;
use crate::process::failure::Failure;
use crate::process::inputs::see_that_none_is_written;
use crate::process::source;

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
    /// Where that is, standard output where nothing is named.
    ///
    /// # Errors
    /// It is one of the `inputs`; else as of [`Destination::at`].
    pub(crate) fn destination(&self, inputs: &[&Path]) -> Result<Destination, Failure> {
        let Some(path) = self.output.as_deref() else { return Ok(Destination::Stdout) };
        if !source::is_standard_input(path) {
            see_that_none_is_written(&[path], inputs.iter().copied())?;
        }
        Destination::at(path, self.force)
    }
}
