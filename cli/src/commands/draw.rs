//! `draw`: the plan of an option.

use std::io::Read;

use elbowroom_solver::Limits;

use super::form;
use crate::args::{DrawArgs, Form};
use crate::process::exit::Exit;
use crate::process::failure::Failure;
use crate::process::outlet::Outlet;
use crate::ranked::{chosen, ranked};
use crate::render::plan;
use crate::words;

/// Reads, ranks, draws, writes.
pub(super) fn run(
    args: &DrawArgs,
    stdin: &mut dyn Read,
    stdout: &mut Outlet<'_>,
    stderr: &mut Outlet<'_>,
) -> Result<Exit, Failure> {
    let destination = args.output.destination(&args.room.scenario.files())?;
    let form = form::form(args.format, &destination, &[])?.unwrap_or(Form::Svg);
    form::see_drawing(form, words::SVG_INSTEAD, &destination, stdout)?;
    // A plan tells no size that an option could have alone.
    let limits = Limits { shown: 0, ..Limits::default() };
    let answer = ranked(&args.room, &limits, stdin, stderr)?;
    let option = chosen(&answer, &args.option)?;
    let sheet = plan::sheet(plan::Shown::Option { answer: &answer, option }, args.paper);
    destination.write(&form::drawn(&sheet, form)?, stdout)?;
    Ok(Exit::Done)
}
