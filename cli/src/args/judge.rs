//! The arguments of `judge`.

use std::path::{Path, PathBuf};

use crate::args::{FontArgs, OutputArgs, RoomArgs};
use crate::drawing::Stock;
use crate::process::destination::Destination;
use crate::process::failure::Failure;

/// Of `judge`.
#[derive(Debug, clap::Args)]
pub(crate) struct JudgeArgs {
    /// What is judged; what is ranked for comparison.
    #[command(flatten)]
    pub room: RoomArgs,
    /// Print the whole result as JSON
    #[arg(long)]
    pub json: bool,
    /// Draw the room as it stands into this file (.svg, .png or .pdf), what is broken marked by its number
    #[arg(long, value_name = "FILE")]
    pub draw: Option<PathBuf>,
    /// Draw over a file that is there already
    #[arg(long, requires = "draw")]
    pub force: bool,
    /// The paper; the largest listed scale that it holds is taken
    #[arg(long, value_name = "PAPER", default_value = "a4", value_parser = super::draw::paper())]
    pub paper: Stock,
    /// The letters.
    #[command(flatten)]
    pub font: FontArgs,
}

impl JudgeArgs {
    /// Where the drawing goes, where one is asked for.
    ///
    /// # Errors
    /// As of [`OutputArgs::destination`].
    pub(crate) fn drawing(&self, inputs: &[&Path]) -> Result<Option<Destination>, Failure> {
        let Some(draw) = &self.draw else { return Ok(None) };
        let output = OutputArgs { output: Some(draw.clone()), force: self.force };
        output.destination(inputs).map(Some)
    }
}
