//! `compare`: two or three options side by side.

use std::io::Read;

use elbowroom_solver::Limits;

use super::{form, letters};
use crate::args::{CompareArgs, CompareForm, Form};
use crate::drawing::Sheet;
use crate::process::destination::Destination;
use crate::process::exit::Exit;
use crate::process::failure::Failure;
use crate::process::outlet::Outlet;
use crate::ranked::{chosen_each, ranked};
use crate::render::{compare, leaf};
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
    let typeface = args.font.typeface()?;
    let form = form::form(args.format, &destination, &[])?.unwrap_or(CompareForm::Text);
    match form {
        CompareForm::Text | CompareForm::Html | CompareForm::Svg => {}
        CompareForm::Pdf => form::see_terminal("PDF", words::TEXT_INSTEAD, &destination, stdout)?,
        CompareForm::Png => form::see_terminal("PNG", words::TEXT_INSTEAD, &destination, stdout)?,
    }
    let limits = Limits { shown: 0, ..Limits::default() };
    let answer = ranked(&args.room, &limits, stdin, stderr)?;
    let options = chosen_each(&answer, &args.options)?;
    let compared = compare::Compared { answer: &answer, options: &options };
    let look = if destination == Destination::Stdout { stdout.look() } else { Look::PLAIN };
    let sheet = compare::leaf(&compared, args.paper.landscape().width - 2.0 * leaf::MARGIN);
    let mut drawn = |sheets: &[Sheet], form| {
        letters::tell(sheets, &typeface, stderr);
        form::drawn(sheets, form, &typeface)
    };
    let written = match form {
        CompareForm::Text => leaf::text(&sheet, look).into_bytes(),
        CompareForm::Html => leaf::html(&sheet).into_bytes(),
        CompareForm::Pdf => drawn(&leaf::pages(&sheet, args.paper), Form::Pdf)?,
        CompareForm::Svg => drawn(&[leaf::on_one(&sheet, args.paper)], Form::Svg)?,
        CompareForm::Png => drawn(&[leaf::on_one(&sheet, args.paper)], Form::Png)?,
    };
    destination.write(&written, stdout)?;
    Ok(Exit::Done)
}
