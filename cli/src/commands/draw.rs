//! `draw`: the plan of an option.

use std::io::Read;

use elbowroom_solver::Limits;

use super::{form, letters};
use crate::args::{DrawArgs, Form, Sheets};
use crate::drawing::Sheet;
use crate::process::exit::Exit;
use crate::process::failure::Failure;
use crate::process::outlet::Outlet;
use crate::ranked::{chosen, ranked};
use crate::render::plan::{self, Purpose};
use crate::words;

/// Reads, ranks, draws, writes.
pub(super) fn run(
    args: &DrawArgs,
    stdin: &mut dyn Read,
    stdout: &mut Outlet<'_>,
    stderr: &mut Outlet<'_>,
) -> Result<Exit, Failure> {
    let destination = args.output.destination(&args.room.scenario.files())?;
    let typeface = args.font.typeface()?;
    let form = form::form(args.format, &destination, &[])?.unwrap_or(Form::Svg);
    let purposes = purposes(args.sheet, form)?;
    form::see_drawing(form, words::SVG_INSTEAD, &destination, stdout)?;
    // A plan tells no size that an option could have alone.
    let limits = Limits { shown: 0, ..Limits::default() };
    let answer = ranked(&args.room, &limits, stdin, stderr)?;
    let option = chosen(&answer, &args.option)?;
    let shown = plan::Shown::Option { answer: &answer, option };
    let sheets: Vec<Sheet> = purposes.iter().map(|purpose| plan::sheet(shown, *purpose, args.paper)).collect();
    letters::tell(&sheets, &typeface, stderr);
    destination.write(&form::drawn(&sheets, form, &typeface)?, stdout)?;
    Ok(Exit::Done)
}

/// Whom the sheets are for.
///
/// # Errors
/// Two sheets are asked for in a form that holds one.
fn purposes(asked: Option<Sheets>, form: Form) -> Result<&'static [Purpose], Failure> {
    match (asked, form) {
        (None | Some(Sheets::Both), Form::Pdf) => Ok(&[Purpose::Client, Purpose::Working]),
        (None | Some(Sheets::Client), _) => Ok(&[Purpose::Client]),
        (Some(Sheets::Working), _) => Ok(&[Purpose::Working]),
        (Some(Sheets::Both), Form::Svg | Form::Png) => Err(Failure::OneSheet),
    }
}
