//! The commands, a file each: what is read, what is asked of the model or the solver, what is written.
//! How a result looks is `render`'s; why a run fails is `failure`'s.

mod check;
mod completions;
mod man;
mod new;
mod rank;
mod schema;

use std::io::Read;
use std::path::Path;

use elbowroom_model::{Brief, Unit, scenario};

use crate::args::{Args, Command};
use crate::exit::Exit;
use crate::failure::Failure;
use crate::outlet::Outlet;
use crate::source::{self, Source};

/// Does what the command line asks.
pub(crate) fn run(
    args: Args,
    stdin: &mut dyn Read,
    stdout: &mut Outlet<'_>,
    stderr: &mut Outlet<'_>,
) -> Result<Exit, Failure> {
    match args.command {
        Command::Rank(args) => rank::run(&args, stdin, stdout, stderr),
        Command::Check(args) => check::run(&args, stdin, stdout),
        Command::Schema => schema::run(stdout),
        Command::New(args) => new::run(&args, stdout, stderr),
        Command::Completions(args) => completions::run(&args, stdout),
        Command::Man(args) => man::run(&args, stdout),
    }
}

/// Reads a scenario and the table of sizes over it, and has lengths told in `units` where they are given.
fn brief(
    file: &Path,
    table: Option<&Path>,
    units: Option<Unit>,
    stdin: &mut dyn Read,
) -> Result<(Source, Brief), Failure> {
    if source::is_standard_input(file) && table.is_some_and(source::is_standard_input) {
        return Err(Failure::StandardInputTwice);
    }
    let scenario = source::read(file, stdin)?;
    let table = table.map(|table| source::read(table, stdin)).transpose()?;
    match scenario::read(&scenario.text, table.as_ref().map(|table| table.text.as_str())) {
        Ok(mut brief) => {
            brief.units = units.unwrap_or(brief.units);
            Ok((scenario, brief))
        }
        Err(faults) => Err(Failure::Faults { scenario, faults }),
    }
}
