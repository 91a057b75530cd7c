//! What may stand on the command line: the commands, and a file for the arguments of each.
//!
//! What several commands take alike is said once: [`ScenarioArgs`] and [`RoomArgs`] for what is read and ranked,
//! [`OptionArg`] for which option is meant, [`OutputArgs`] for where the result goes. How a single value is read is
//! [`values`]'s. What the commands then do lives in `commands`.

mod batch;
mod card;
mod check;
mod compare;
mod completions;
mod decimals;
mod draw;
mod font;
mod judge;
mod leaf;
mod man;
mod new;
mod option;
mod output;
mod page;
mod rank;
mod report;
mod room;
mod share;
mod shop;
mod started;
mod tape;
mod values;
mod way;

use std::ffi::OsString;

use clap::{CommandFactory, Parser, Subcommand};

pub(crate) use batch::BatchArgs;
pub(crate) use card::CardArgs;
pub(crate) use check::CheckArgs;
pub(crate) use compare::{CompareArgs, CompareForm};
pub(crate) use completions::CompletionsArgs;
pub(crate) use decimals::DecimalsArg;
pub(crate) use draw::{DrawArgs, Form, Sheets};
pub(crate) use font::FontArgs;
pub(crate) use judge::JudgeArgs;
pub(crate) use leaf::LeafForm;
pub(crate) use man::ManArgs;
pub(crate) use new::NewArgs;
pub(crate) use option::OptionArg;
pub(crate) use output::OutputArgs;
pub(crate) use page::PageArgs;
pub(crate) use rank::RankArgs;
pub(crate) use report::{Page, ReportArgs};
pub(crate) use room::{RoomArgs, ScenarioArgs};
pub(crate) use share::ShareArgs;
pub(crate) use shop::{RowsForm, ShopArgs};
pub(crate) use started::as_started;
pub(crate) use tape::TapeArgs;
pub(crate) use way::WayArgs;

use crate::process::failure::Failure;
use crate::words;

/// From a measured living room to ranked, checked furniture arrangements with the largest sizes each piece may have.
#[derive(Debug, Parser)]
#[command(name = "elbowroom", version, after_help = words::exit::codes(), max_term_width = 100)]
pub(crate) struct Args {
    /// What to do.
    #[command(subcommand)]
    pub asked: Asked,
}

/// A command that reads, works and ends, or the page that stays.
#[derive(Debug, Subcommand)]
pub(crate) enum Asked {
    /// One that ends.
    #[command(flatten)]
    Command(Command),
    /// Measure, furnish and compare in the browser, on this machine alone
    Page(PageArgs),
}

/// What to do.
#[derive(Debug, Subcommand)]
pub(crate) enum Command {
    /// Rank the arrangements that fit a measured room, best first
    Rank(RankArgs),
    /// Set two or three options side by side: what one pays for what one gains
    Compare(CompareArgs),
    /// Tell how an option is marked on the floor full size, with low-tack tape
    Tape(TapeArgs),
    /// Tell what to take to the shop: how large each piece may be
    Card(CardArgs),
    /// Draw the plan of an option to scale
    Draw(DrawArgs),
    /// Write a result as one page that opens with no network
    Report(ReportArgs),
    /// Write chosen options as one page for a client, who marks one and sends that back
    Share(ShareArgs),
    /// Tell what a scenario file says once read, or everything that is wrong with it
    Check(CheckArgs),
    /// Judge the room as it stands: what is broken, its ways, its scores, what an option would gain
    Judge(JudgeArgs),
    /// Rank many rooms: a folder, a list, or lines of JSON
    Batch(BatchArgs),
    /// Tell whether each piece can be carried in, where it fails and by how much
    Way(WayArgs),
    /// Tell which pieces of a shop's list fit the room, and the best sets of them
    Shop(ShopArgs),
    /// Print the JSON Schema of a scenario file, for editors that complete and check
    Schema,
    /// Write a commented scenario to start from
    New(NewArgs),
    /// Print completions for a shell
    Completions(CompletionsArgs),
    /// Print a manual page
    Man(ManArgs),
}

/// Reads the command line. Help and version come back as failures that end well.
pub(crate) fn parse(args: impl IntoIterator<Item = OsString>) -> Result<Args, Failure> {
    Args::try_parse_from(args).map_err(Failure::CommandLine)
}

/// The command line as clap knows it, for completions and the manual page.
pub(crate) fn command() -> clap::Command {
    Args::command()
}

#[cfg(test)]
mod tests {
    use super::command;

    #[test]
    fn the_command_line_is_sound() {
        command().debug_assert();
    }
}
