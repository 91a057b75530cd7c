//! `compare`: two or three options side by side.

use std::io::Read;

use elbowroom_solver::Limits;

use crate::args::{CompareArgs, Form};
use crate::destination::Destination;
use crate::exit::Exit;
use crate::failure::Failure;
use crate::outlet::{Look, Outlet};
use crate::ranked::{chosen, ranked};
use crate::render::compare;

/// Reads, ranks, prints.
pub(super) fn run(
    args: &CompareArgs,
    stdin: &mut dyn Read,
    stdout: &mut Outlet<'_>,
    stderr: &mut Outlet<'_>,
) -> Result<Exit, Failure> {
    let destination = Destination::of(&args.output)?;
    let limits = Limits { shown: 0, ..Limits::default() };
    let (brief, outcome) = ranked(&args.room, &limits, stdin, stderr)?;
    let mut options = Vec::with_capacity(args.options.len());
    for meant in &args.options {
        let option = chosen(&outcome, meant)?;
        if options.iter().any(|other: &&elbowroom_solver::outcome::OptionFound| other.key == option.key) {
            return Err(Failure::SameOption { meant: meant.to_string() });
        }
        options.push(option);
    }
    let compared = compare::Compared { brief: &brief, outcome: &outcome, options: &options };
    let written = match form(args, &destination, stdout)? {
        None if destination == Destination::Stdout => compare::text(&compared, stdout.look()).into_bytes(),
        None => compare::text(&compared, Look::PLAIN).into_bytes(),
        Some(form) => super::draw::written(&compare::sheet(&compared, args.paper), form)?,
    };
    destination.write(&written, stdout)?;
    Ok(Exit::Done)
}

/// The form of the sheet; none for text.
fn form(args: &CompareArgs, destination: &Destination, stdout: &Outlet<'_>) -> Result<Option<Form>, Failure> {
    let of_ending = || destination.extension().and_then(|ending| Form::of_ending(&ending));
    match args.format.or_else(of_ending) {
        Some(Form::Png | Form::Pdf) if *destination == Destination::Stdout && stdout.is_terminal() => {
            Err(Failure::NoText("sheet as PNG or PDF"))
        }
        form => Ok(form),
    }
}
