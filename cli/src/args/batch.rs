//! The arguments of `batch`.

use std::path::{Path, PathBuf};
use std::thread::available_parallelism;

use clap::builder::TypedValueParser;
use elbowroom_model::{Criterion, Unit};

use crate::args::rank::MOST_SHOWN;
use crate::args::room::MOST_THREADS;
use crate::args::values;

/// Ways to put the main seat that a report of many draws.
const REPORTED: usize = 3;

/// Of `batch`.
#[derive(Debug, clap::Args)]
pub(crate) struct BatchArgs {
    /// A folder of scenarios, a list of files (one a line), or lines of JSON (`.ndjson`; `-`: standard input)
    #[arg(value_name = "ROOMS")]
    pub rooms: PathBuf,
    /// The folder for lines, rows, pages and plans; run again, it solves what is not there yet. Without it, a line of
    /// JSON for each room is printed
    #[arg(short, long, value_name = "FOLDER")]
    pub output: Option<PathBuf>,
    /// Write over files that are there and that no run of `batch` left; never over one that is read
    #[arg(long, requires = "output")]
    pub force: bool,
    /// Assign the pieces of this stock (CSV, .xlsx, YAML or NDJSON) to the rooms; ROOMS may then also be a CSV or .xlsx of
    /// bookings: room, from, to, priority, must, client, address
    #[arg(long, value_name = "FILE", conflicts_with = "compare")]
    pub stock: Option<PathBuf>,
    /// List what changed between rooms of one name
    #[arg(long, requires = "output")]
    pub compare: bool,
    /// A report of each room as well, and a link to it on the pages
    #[arg(long, requires = "output", conflicts_with = "stock")]
    pub reports: bool,
    /// Each table as a spreadsheet (.xlsx) too, beside its CSV
    #[arg(long, requires = "output")]
    pub xlsx: bool,
    /// Ways to put the main seat, in each room, whose best option gets the most each size could be alone, what holds it, and a
    /// part of its own in a report: 1 where not given, 3 in reports
    #[arg(long, value_name = "N", value_parser = clap::value_parser!(u64).range(1..=MOST_SHOWN).map(|n| n as usize))]
    pub top: Option<usize>,
    /// Rank by this criterion alone instead of by the wishes
    #[arg(long, value_name = "CRITERION", value_parser = values::criterion())]
    pub by: Option<Criterion>,
    /// Tell lengths in this unit instead of each file's own
    #[arg(long, value_name = "UNIT", value_parser = values::unit())]
    pub units: Option<Unit>,
    /// A table of piece sizes of your own, over the built-in one
    #[arg(long, value_name = "FILE")]
    pub table: Option<PathBuf>,
    /// A font file (TTF, OTF) for letters of names that our own font has not, on the sheets of the crew
    #[arg(long, value_name = "FONT", requires = "stock")]
    pub font: Option<PathBuf>,
    /// Rooms to work on side by side; as many as the machine has threads where not given. The result is the same
    #[arg(long, value_name = "N", value_parser = clap::value_parser!(u64).range(1..=MOST_THREADS).map(|n| n as usize))]
    pub threads: Option<usize>,
}

impl BatchArgs {
    /// Rooms that are worked on side by side.
    pub(crate) fn threads(&self) -> usize {
        self.threads.unwrap_or_else(|| available_parallelism().map_or(1, usize::from))
    }

    /// Ways to put the main seat that are told at length.
    pub(crate) fn shown(&self) -> usize {
        self.top.unwrap_or(if self.reports { REPORTED } else { 1 })
    }

    /// Every file that is read, beside those that the rooms lead to.
    pub(crate) fn files(&self) -> impl Iterator<Item = &Path> {
        let files = [Some(&self.rooms), self.stock.as_ref(), self.table.as_ref()];
        files.into_iter().flatten().map(PathBuf::as_path)
    }
}
