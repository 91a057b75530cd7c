//! `card`: what to take to the shop.

use std::io::Read;

use elbowroom_solver::Limits;

use super::leaf;
use crate::args::CardArgs;
use crate::process::exit::Exit;
use crate::process::failure::Failure;
use crate::process::outlet::Outlet;
use crate::ranked::{chosen, shown_to};
use crate::render::card;

/// Reads, ranks, writes.
pub(super) fn run(
    args: &CardArgs,
    stdin: &mut dyn Read,
    stdout: &mut Outlet<'_>,
    stderr: &mut Outlet<'_>,
) -> Result<Exit, Failure> {
    let destination = args.output.destination(&args.room.scenario.files())?;
    let typeface = args.font.typeface()?;
    let form = leaf::form(args.format, &destination, stdout)?;
    let limits = Limits { shown: args.top, ..Limits::default() };
    let answer = shown_to(&args.room, args.option.as_ref(), &limits, stdin, stderr)?;
    let options = match &args.option {
        Some(meant) => vec![chosen(&answer, meant)?],
        None => {
            chosen(&answer, &crate::args::OptionArg::Rank(1))?;
            answer.families().iter().take(args.top).map(|family| family.best).collect()
        }
    };
    let sheet = card::leaf(&card::Shopped { answer: &answer, options: &options });
    let made = leaf::Made { sheet: &sheet, form, stock: args.paper, typeface: &typeface };
    leaf::write(&made, &destination, stdout, stderr)?;
    Ok(Exit::Done)
}
