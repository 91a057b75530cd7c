//! What is read, and how it is worked on: alike for every command that takes a scenario.

use std::path::{Path, PathBuf};

use clap::builder::TypedValueParser;
use elbowroom_model::Unit;

use crate::args::values;

/// Most threads that may be asked for.
pub(super) const MOST_THREADS: u64 = 256;

/// The scenario file, and how it is read.
#[derive(Debug, Clone, clap::Args)]
pub(crate) struct ScenarioArgs {
    /// The scenario file; `-` reads standard input
    #[arg(value_name = "FILE")]
    pub file: PathBuf,
    /// Tell lengths in this unit instead of the file's
    #[arg(long, value_name = "UNIT", value_parser = values::unit())]
    pub units: Option<Unit>,
    /// A table of piece sizes of your own, over the built-in one
    #[arg(long, value_name = "FILE")]
    pub table: Option<PathBuf>,
    /// As if the file said so: `coffee table.width=120cm`, `passage=70cm`, `view=5`, `armchair=none`; may be given again
    #[arg(long, value_name = "PATH=VALUE")]
    pub set: Vec<String>,
}

impl ScenarioArgs {
    /// Every file that is read.
    pub(crate) fn files(&self) -> Vec<&Path> {
        [Some(&self.file), self.table.as_ref()].into_iter().flatten().map(PathBuf::as_path).collect()
    }
}

/// A room to be ranked.
#[derive(Debug, Clone, clap::Args)]
pub(crate) struct RoomArgs {
    /// What is read.
    #[command(flatten)]
    pub scenario: ScenarioArgs,
    /// Threads to work with; as many as the machine has where not given. The result is the same
    #[arg(long, value_name = "N", value_parser = clap::value_parser!(u64).range(1..=MOST_THREADS).map(|n| n as usize))]
    pub threads: Option<usize>,
    /// Only options that are decided so: `seat_back=canal wall`, `facing=bay`, `hand=left`, `media_wall=none`,
    /// `second_seats=opposite`; may be given again
    #[arg(long, value_name = "CHOICE=VALUE")]
    pub only: Vec<String>,
}
