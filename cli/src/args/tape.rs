//! The arguments of `tape`.

use elbowroom_model::Unit;
use elbowroom_model::length;

use crate::args::draw::paper;
use crate::args::{FontArgs, LeafForm, OptionArg, OutputArgs, RoomArgs};
use crate::drawing::Stock;

/// Rolls that are taken, mm.
const ROLLS: std::ops::RangeInclusive<f64> = 1_000.0..=1_000_000.0;

/// Of `tape`.
#[derive(Debug, clap::Args)]
pub(crate) struct TapeArgs {
    /// What is ranked.
    #[command(flatten)]
    pub room: RoomArgs,
    /// The option to lay out, by its place in the order or by its key
    #[arg(long, value_name = "KEY|RANK", default_value = "1")]
    pub option: OptionArg,
    /// Length of a roll of tape: `25 m`, `150 ft`; a bare number is metres; 50 m where not given, 180 ft for feet and inches
    #[arg(long, value_name = "LENGTH", value_parser = roll)]
    pub roll: Option<f64>,
    /// Where it goes.
    #[command(flatten)]
    pub output: OutputArgs,
    /// The letters.
    #[command(flatten)]
    pub font: FontArgs,
    /// The form; the file's ending tells where not given, else text
    #[arg(long, value_name = "FORM")]
    pub format: Option<LeafForm>,
    /// The paper of a PDF
    #[arg(long, value_name = "PAPER", default_value = "a4", value_parser = paper())]
    pub paper: Stock,
}

/// Reads the length of a roll, mm.
fn roll(given: &str) -> Result<f64, String> {
    let length = length::parse(given, Unit::Metre).map_err(|error| format!("`{given}` {error}"))?;
    if ROLLS.contains(&length) { Ok(length) } else { Err("a roll is 1 m to 1 km long".to_owned()) }
}
