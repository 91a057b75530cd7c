//! What may stand on the command line.

use std::ffi::OsString;
use std::path::PathBuf;

use clap::builder::{PossibleValuesParser, TypedValueParser};
use clap::{CommandFactory, Parser, Subcommand};
use elbowroom_model::{Criterion, Unit};

use crate::failure::Failure;
use crate::words;

/// Options that `rank` shows where nobody says how many.
const SHOWN: usize = 6;
/// Most options that `rank` can be asked to show: each one shown costs a search for every size.
const MOST_SHOWN: u64 = 1000;
/// Most threads that may be asked for.
const MOST_THREADS: u64 = 256;

/// The units of length, as files and the command line write them.
const UNITS: [(&str, Unit); 5] =
    [("mm", Unit::Millimetre), ("cm", Unit::Centimetre), ("m", Unit::Metre), ("in", Unit::Inch), ("ft", Unit::Foot)];

/// From a measured living room to ranked, checked furniture arrangements with the largest sizes each piece may have.
#[derive(Debug, Parser)]
#[command(name = "elbowroom", version, after_help = words::exit_codes(), max_term_width = 100)]
pub(crate) struct Args {
    /// What to do.
    #[command(subcommand)]
    pub command: Command,
}

/// What to do.
#[derive(Debug, Subcommand)]
pub(crate) enum Command {
    /// Rank the arrangements that fit a measured room, best first
    Rank(RankArgs),
    /// Tell what a scenario file says once read, or everything that is wrong with it
    Check(CheckArgs),
    /// Print the JSON Schema of a scenario file, for editors that complete and check
    Schema,
    /// Write a commented scenario to start from; never overwrites
    New(NewArgs),
    /// Print completions for a shell
    Completions(CompletionsArgs),
    /// Print a manual page
    Man(ManArgs),
}

/// Of `rank`.
#[derive(Debug, clap::Args)]
pub(crate) struct RankArgs {
    /// The scenario file; `-` reads standard input
    #[arg(value_name = "FILE")]
    pub file: PathBuf,
    /// Print the whole result as JSON
    #[arg(long)]
    pub json: bool,
    /// Options to show; they also get the most each size could be alone, and what holds it
    #[arg(long, value_name = "N", default_value_t = SHOWN, value_parser = clap::value_parser!(u64).range(1..=MOST_SHOWN).map(|n| n as usize))]
    pub top: usize,
    /// Rank by this criterion alone instead of by the wishes
    #[arg(long, value_name = "CRITERION", value_parser = criterion())]
    pub by: Option<Criterion>,
    /// Tell lengths in this unit instead of the file's
    #[arg(long, value_name = "UNIT", value_parser = unit())]
    pub units: Option<Unit>,
    /// A table of piece sizes of your own, over the built-in one
    #[arg(long, value_name = "FILE")]
    pub table: Option<PathBuf>,
    /// Threads to work with; as many as the machine has where not given. The result is the same
    #[arg(long, value_name = "N", value_parser = clap::value_parser!(u64).range(1..=MOST_THREADS).map(|n| n as usize))]
    pub threads: Option<usize>,
}

/// Of `check`.
#[derive(Debug, clap::Args)]
pub(crate) struct CheckArgs {
    /// The scenario file; `-` reads standard input
    #[arg(value_name = "FILE")]
    pub file: PathBuf,
    /// Tell lengths in this unit instead of the file's
    #[arg(long, value_name = "UNIT", value_parser = unit())]
    pub units: Option<Unit>,
    /// A table of piece sizes of your own, over the built-in one
    #[arg(long, value_name = "FILE")]
    pub table: Option<PathBuf>,
}

/// Of `new`.
#[derive(Debug, clap::Args)]
pub(crate) struct NewArgs {
    /// The file to write; `-` prints it
    #[arg(value_name = "FILE", default_value = "room.yaml")]
    pub file: PathBuf,
}

/// Of `completions`.
#[derive(Debug, clap::Args)]
pub(crate) struct CompletionsArgs {
    /// The shell
    #[arg(value_name = "SHELL")]
    pub shell: clap_complete::Shell,
}

/// Of `man`.
#[derive(Debug, clap::Args)]
pub(crate) struct ManArgs {
    /// The command to tell of; the program as a whole where not given
    #[arg(value_name = "COMMAND", value_parser = PossibleValuesParser::new(["rank", "check", "schema", "new", "completions", "man"]))]
    pub command: Option<String>,
}

/// Reads the command line. Help and version come back as failures that end well.
pub(crate) fn parse(args: impl IntoIterator<Item = OsString>) -> Result<Args, Failure> {
    Args::try_parse_from(args).map_err(Failure::CommandLine)
}

/// The command line as clap knows it, for completions and the manual page.
pub(crate) fn command() -> clap::Command {
    Args::command()
}

/// Reads a unit of length.
fn unit() -> impl TypedValueParser<Value = Unit> {
    PossibleValuesParser::new(UNITS.map(|(word, _)| word)).map(|given| {
        let found = UNITS.iter().find(|(word, _)| *word == given);
        found.map_or_else(Unit::default, |(_, unit)| *unit)
    })
}

/// Reads the name of a criterion.
fn criterion() -> impl TypedValueParser<Value = Criterion> {
    PossibleValuesParser::new(Criterion::ALL.map(Criterion::key)).try_map(|given| {
        let found = Criterion::ALL.into_iter().find(|criterion| criterion.key() == given);
        found.ok_or("no such criterion")
    })
}

#[cfg(test)]
mod tests {
    use super::command;

    #[test]
    fn the_command_line_is_sound() {
        command().debug_assert();
    }
}
