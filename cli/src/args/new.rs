//! The arguments of `new`.

use std::path::PathBuf;

/// Of `new`.
#[derive(Debug, clap::Args)]
pub(crate) struct NewArgs {
    /// The file to write; `-` prints it
    #[arg(value_name = "FILE", default_value = "room.yaml")]
    pub file: PathBuf,
    /// Write over a file that is there already
    #[arg(long)]
    pub force: bool,
}
