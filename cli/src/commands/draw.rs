//! `draw`: the plan of an option.

use std::io::Read;

use elbowroom_solver::Limits;

use crate::args::{DrawArgs, Form};
use crate::destination::Destination;
use crate::drawing::{Font, Sheet, pdf, png, svg};
use crate::exit::Exit;
use crate::failure::Failure;
use crate::outlet::Outlet;
use crate::ranked::{chosen, ranked};
use crate::render::plan;

/// Reads, ranks, draws, writes.
pub(super) fn run(
    args: &DrawArgs,
    stdin: &mut dyn Read,
    stdout: &mut Outlet<'_>,
    stderr: &mut Outlet<'_>,
) -> Result<Exit, Failure> {
    let destination = Destination::of(&args.output)?;
    let form = form(args, &destination, stdout)?;
    // A plan tells no size that an option could have alone.
    let limits = Limits { shown: 0, ..Limits::default() };
    let (brief, outcome) = ranked(&args.room, &limits, stdin, stderr)?;
    let option = chosen(&outcome, &args.option)?;
    let sheet = plan::sheet(plan::Shown { brief: &brief, outcome: &outcome, option }, args.paper);
    destination.write(&written(&sheet, form)?, stdout)?;
    Ok(Exit::Done)
}

/// The form that was asked for, or else that of the file's ending, or else SVG.
fn form(args: &DrawArgs, destination: &Destination, stdout: &Outlet<'_>) -> Result<Form, Failure> {
    let of_ending = || destination.extension().and_then(|ending| Form::of_ending(&ending));
    let form = args.format.or_else(of_ending).unwrap_or(Form::Svg);
    match (form, destination) {
        (Form::Png | Form::Pdf, Destination::Stdout) if stdout.is_terminal() => Err(Failure::NoText(match form {
            Form::Png => "PNG",
            Form::Svg | Form::Pdf => "PDF",
        })),
        _ => Ok(form),
    }
}

pub(super) fn written(sheet: &Sheet, form: Form) -> Result<Vec<u8>, Failure> {
    match form {
        Form::Svg => Ok(svg(sheet, Font::Within).into_bytes()),
        Form::Png => png(sheet),
        Form::Pdf => pdf(std::slice::from_ref(sheet)),
    }
}
