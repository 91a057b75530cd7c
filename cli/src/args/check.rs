//! The arguments of `check`.

use crate::args::ScenarioArgs;

/// Of `check`.
#[derive(Debug, clap::Args)]
pub(crate) struct CheckArgs {
    /// What is read.
    #[command(flatten)]
    pub scenario: ScenarioArgs,
}
