//! The arguments of `draw`.

use clap::builder::{PossibleValuesParser, TypedValueParser};

use crate::args::{FontArgs, OptionArg, OutputArgs, RoomArgs};
use crate::drawing::Stock;

/// The forms that a drawing can have.
#[derive(Debug, Clone, Copy, PartialEq, Eq, clap::ValueEnum)]
pub(crate) enum Form {
    /// Lines and letters, for screens and drawing programs
    Svg,
    /// A picture of 150 dots to the inch
    Png,
    /// True to scale, for printing
    Pdf,
}

/// The sheets that an option can have.
#[derive(Debug, Clone, Copy, PartialEq, Eq, clap::ValueEnum)]
pub(crate) enum Sheets {
    /// Furniture, names, sizes, the clearances that matter most
    Client,
    /// Ways, sight lines, floor kept free, every gap, sockets
    Working,
    /// One after the other, in a PDF
    Both,
}

/// Of `draw`.
#[derive(Debug, clap::Args)]
pub(crate) struct DrawArgs {
    /// What is ranked.
    #[command(flatten)]
    pub room: RoomArgs,
    /// The option to draw, by its place in the order or by its key
    #[arg(long, value_name = "KEY|RANK", default_value = "1")]
    pub option: OptionArg,
    /// Where it goes.
    #[command(flatten)]
    pub output: OutputArgs,
    /// The letters.
    #[command(flatten)]
    pub font: FontArgs,
    /// The form; the file's ending tells where not given
    #[arg(long, value_name = "FORM")]
    pub format: Option<Form>,
    /// Whom the sheet is for; where not given, both in a PDF, the client's in a picture
    #[arg(long, value_name = "SHEET")]
    pub sheet: Option<Sheets>,
    /// The paper; the largest listed scale that it holds is taken
    #[arg(long, value_name = "PAPER", default_value = "a4", value_parser = paper())]
    pub paper: Stock,
}

/// Reads the name of a paper.
pub(crate) fn paper() -> impl TypedValueParser<Value = Stock> {
    PossibleValuesParser::new(Stock::ALL.iter().map(|stock| stock.key())).try_map(|given| given.parse::<Stock>())
}
