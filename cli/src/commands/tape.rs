//! `tape`: how an option is marked on the floor.

use std::io::Read;

use elbowroom_solver::Limits;

use super::leaf;
use crate::args::{LeafForm, TapeArgs};
use crate::process::exit::Exit;
use crate::process::failure::Failure;
use crate::process::outlet::Outlet;
use crate::ranked::{chosen, ranked};
use crate::render::tape;

/// Reads, ranks, lays out, writes.
pub(super) fn run(
    args: &TapeArgs,
    stdin: &mut dyn Read,
    stdout: &mut Outlet<'_>,
    stderr: &mut Outlet<'_>,
) -> Result<Exit, Failure> {
    let destination = args.output.destination(&args.room.scenario.files())?;
    let typeface = args.font.typeface()?;
    let form = leaf::form(args.format, &destination, stdout)?;
    // A tape sheet tells no size that an option could have alone.
    let limits = Limits { shown: 0, ..Limits::default() };
    let answer = ranked(&args.room, &limits, stdin, stderr)?;
    let option = chosen(&answer, &args.option)?;
    let roll = args.roll.unwrap_or_else(|| tape::usual_roll(answer.brief.units));
    let plan = match form {
        LeafForm::Text => None,
        LeafForm::Html => Some(tape::IN_PAGE),
        LeafForm::Pdf => Some(tape::ON_PAPER),
    };
    let sheet = tape::leaf(&tape::Laid { answer: &answer, option, roll, plan });
    let made = leaf::Made { sheet: &sheet, form, stock: args.paper, typeface: &typeface };
    leaf::write(&made, &destination, stdout, stderr)?;
    Ok(Exit::Done)
}
