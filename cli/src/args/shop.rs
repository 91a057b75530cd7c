//! The arguments of `shop`.

use std::path::{Path, PathBuf};

use clap::ValueEnum;
use elbowroom_model::listing::Money;
use elbowroom_solver::shop::Order;

use crate::args::{DecimalsArg, OutputArgs, RoomArgs};
use crate::process::destination::Destination;
use crate::process::failure::Failure;

/// Most sets that can be asked for.
const MOST_SETS: u64 = 100;
/// Sets that are told where nobody says how many.
const SETS: usize = 3;

/// Of `shop`.
#[derive(Debug, clap::Args)]
pub(crate) struct ShopArgs {
    /// The room.
    #[command(flatten)]
    pub room: RoomArgs,
    /// The candidates: CSV, .xlsx, YAML or NDJSON with kind, name and sizes, and price, count in hand, score where known
    #[arg(value_name = "CANDIDATES")]
    pub candidates: PathBuf,
    /// How the list's figures are written
    #[command(flatten)]
    pub decimals: DecimalsArg,
    /// Tell the best sets too, one for each piece of the room, with the layout of each
    #[arg(long)]
    pub sets: bool,
    /// What a set may cost, in the list's currency; sets with a piece that has no price are left aside
    #[arg(long, value_name = "AMOUNT", requires = "sets", value_parser = money)]
    pub budget: Option<Money>,
    /// What makes one set better than another
    #[arg(long, value_name = "ORDER", requires = "sets", default_value = "score")]
    pub by: OrderArg,
    /// Sets to tell
    #[arg(long, value_name = "N", requires = "sets", default_value_t = SETS, value_parser = clap::builder::TypedValueParser::map(clap::value_parser!(u64).range(1..=MOST_SETS), |n| n as usize))]
    pub top: usize,
    /// Print the whole result as JSON
    #[arg(long, conflicts_with = "csv")]
    pub json: bool,
    /// Print a row of a spreadsheet for each candidate
    #[arg(long, conflicts_with = "sets")]
    pub csv: bool,
    /// Write a row of a spreadsheet for each candidate into this file (.csv or .xlsx)
    #[arg(long, value_name = "FILE")]
    pub rows: Option<PathBuf>,
    /// Write over a file that is there already
    #[arg(long, requires = "rows")]
    pub force: bool,
}

/// How rows are written.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub(crate) enum RowsForm {
    /// Text, cells parted by commas
    Csv,
    /// A workbook
    Xlsx,
}

impl ShopArgs {
    /// Where the rows go, where they are asked for.
    ///
    /// # Errors
    /// As of [`OutputArgs::destination`].
    pub(crate) fn destination_of_rows(&self) -> Result<Option<Destination>, Failure> {
        let Some(rows) = &self.rows else { return Ok(None) };
        let inputs: Vec<&Path> = self.room.scenario.files().into_iter().chain([self.candidates.as_path()]).collect();
        let output = OutputArgs { output: Some(rows.clone()), force: self.force };
        output.destination(&inputs).map(Some)
    }
}

/// What makes one set better than another.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub(crate) enum OrderArg {
    /// The score of the best option that it makes
    Score,
    /// The lower price
    Price,
    /// The scores that the list gives its pieces
    Liking,
}

impl OrderArg {
    /// As the solver takes it.
    pub(crate) const fn order(self) -> Order {
        match self {
            Self::Score => Order::Score,
            Self::Price => Order::Price,
            Self::Liking => Order::Liking,
        }
    }
}

fn money(text: &str) -> Result<Money, String> {
    Money::read(text, None).map(|(money, _)| money).map_err(|error| format!("it {error}; write 2500 or 2500.00"))
}
