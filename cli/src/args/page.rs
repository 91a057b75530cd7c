//! The arguments of `page`.

use std::path::PathBuf;

/// Of `page`.
#[derive(Debug, clap::Args)]
pub(crate) struct PageArgs {
    /// The scenario file, or a folder of them; this folder where not given
    #[arg(value_name = "FILE|FOLDER", default_value = ".")]
    pub place: PathBuf,
    /// The port to listen on; a free one where not given
    #[arg(long, value_name = "PORT", default_value_t = 0, hide_default_value = true)]
    pub port: u16,
    /// Open the page in the browser
    #[arg(long)]
    pub open: bool,
}
