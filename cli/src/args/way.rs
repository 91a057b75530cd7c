//! The arguments of `way`.

use std::path::PathBuf;

use crate::args::{DecimalsArg, ScenarioArgs};

/// Of `way`.
#[derive(Debug, clap::Args)]
pub(crate) struct WayArgs {
    /// A scenario with a way in, or a file of a way alone
    #[command(flatten)]
    pub file: ScenarioArgs,
    /// A list of real pieces (CSV, .xlsx, YAML or NDJSON) to be carried in, beside those of the file
    #[arg(long, value_name = "LIST")]
    pub pieces: Option<PathBuf>,
    /// How the list's figures are written
    #[command(flatten)]
    pub decimals: DecimalsArg,
    /// Print the whole result as JSON
    #[arg(long)]
    pub json: bool,
}
