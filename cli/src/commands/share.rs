//! `share`: chosen options as one page for a client.

use std::io::Read;

use elbowroom_solver::Limits;

use super::form;
use crate::args::{OptionArg, Page, ShareArgs};
use crate::process::exit::Exit;
use crate::process::failure::Failure;
use crate::process::outlet::Outlet;
use crate::ranked::{chosen, chosen_each, ranked};
use crate::render::share;

/// Reads, ranks, writes.
pub(super) fn run(
    args: &ShareArgs,
    stdin: &mut dyn Read,
    stdout: &mut Outlet<'_>,
    stderr: &mut Outlet<'_>,
) -> Result<Exit, Failure> {
    let destination = args.output.destination(&args.room.scenario.files())?;
    form::form::<Page>(args.format, &destination, &[])?;
    let answer = ranked(&args.room, &Limits { shown: 0, ..Limits::default() }, stdin, stderr)?;
    let mut options = chosen_each(&answer, &args.options)?;
    if options.is_empty() {
        chosen(&answer, &OptionArg::Rank(1))?;
        options = answer.families().iter().take(args.top).map(|family| family.best).collect();
    }
    destination.write(share::page(&share::Shared { answer: &answer, options: &options }).as_bytes(), stdout)?;
    Ok(Exit::Done)
}
