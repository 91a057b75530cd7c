//! The commands, a file each: what is read, what is asked of the model or the solver, what is written.
//! How a result looks is `render`'s; how a run ends is `process`'.

mod batch;
mod card;
mod check;
mod compare;
mod completions;
mod crew;
mod draw;
mod form;
mod judge;
mod leaf;
mod letters;
mod man;
mod new;
mod rank;
mod report;
mod rows;
mod schema;
mod share;
mod shop;
mod stock;
mod tape;
mod way;

use std::io::Read;

use crate::args::Command;
use crate::process::exit::Exit;
use crate::process::failure::Failure;
use crate::process::outlet::Outlet;

/// Does what the command line asks.
pub(crate) fn run(
    command: Command,
    stdin: &mut (dyn Read + Send),
    stdout: &mut Outlet<'_>,
    stderr: &mut Outlet<'_>,
) -> Result<Exit, Failure> {
    match command {
        Command::Rank(args) => rank::run(&args, stdin, stdout, stderr),
        Command::Tape(args) => tape::run(&args, stdin, stdout, stderr),
        Command::Card(args) => card::run(&args, stdin, stdout, stderr),
        Command::Compare(args) => compare::run(&args, stdin, stdout, stderr),
        Command::Draw(args) => draw::run(&args, stdin, stdout, stderr),
        Command::Report(args) => report::run(&args, stdin, stdout, stderr),
        Command::Share(args) => share::run(&args, stdin, stdout, stderr),
        Command::Check(args) => check::run(&args, stdin, stdout),
        Command::Judge(args) => judge::run(&args, stdin, stdout, stderr),
        Command::Batch(args) => batch::run(&args, stdin, stdout, stderr),
        Command::Way(args) => way::run(&args, stdin, stdout),
        Command::Shop(args) => shop::run(&args, stdin, stdout, stderr),
        Command::Schema => schema::run(stdout),
        Command::New(args) => new::run(&args, stdout, stderr),
        Command::Completions(args) => completions::run(&args, stdout),
        Command::Man(args) => man::run(&args, stdout),
    }
}
