//! `compare`: two or three options side by side.

use std::io::Read;

use elbowroom_solver::Limits;

use super::form;
use crate::args::CompareArgs;
use crate::process::destination::Destination;
use crate::process::exit::Exit;
use crate::process::failure::Failure;
use crate::process::outlet::Outlet;
use crate::ranked::{chosen, ranked};
use crate::render::compare;
use crate::text::look::Look;
use crate::words;

/// Reads, ranks, prints.
pub(super) fn run(
    args: &CompareArgs,
    stdin: &mut dyn Read,
    stdout: &mut Outlet<'_>,
    stderr: &mut Outlet<'_>,
) -> Result<Exit, Failure> {
    let destination = args.output.destination(&args.room.scenario.files())?;
    let form = form::form(args.format, &destination, &["txt", "text"])?;
    if let Some(form) = form {
        form::see_drawing(form, words::TEXT_INSTEAD, &destination, stdout)?;
    }
    let limits = Limits { shown: 0, ..Limits::default() };
    let answer = ranked(&args.room, &limits, stdin, stderr)?;
    let mut options = Vec::with_capacity(args.options.len());
    for meant in &args.options {
        let option = chosen(&answer, meant)?;
        if options.iter().any(|other: &&elbowroom_solver::answer::RankedOption| other.key == option.key) {
            return Err(Failure::SameOption { meant: meant.to_string() });
        }
        options.push(option);
    }
    let compared = compare::Compared { answer: &answer, options: &options };
    let written = match form {
        None if destination == Destination::Stdout => compare::text(&compared, stdout.look()).into_bytes(),
        None => compare::text(&compared, Look::PLAIN).into_bytes(),
        Some(form) => form::drawn(&[compare::sheet(&compared, args.paper)], form)?,
    };
    destination.write(&written, stdout)?;
    Ok(Exit::Done)
}
