//! `report`: a result as one page.

use std::io::Read;

use elbowroom_solver::Limits;

use super::form;
use crate::args::{Page, ReportArgs};
use crate::process::exit::Exit;
use crate::process::failure::Failure;
use crate::process::outlet::Outlet;
use crate::ranked::ranked;
use crate::render::report;

/// Reads, ranks, writes. A room in which nothing fits has a report too: it tells what would help.
pub(super) fn run(
    args: &ReportArgs,
    stdin: &mut dyn Read,
    stdout: &mut Outlet<'_>,
    stderr: &mut Outlet<'_>,
) -> Result<Exit, Failure> {
    let destination = args.output.destination(&args.room.scenario.files())?;
    form::form::<Page>(None, &destination, &[])?;
    let limits = Limits { shown: args.top, one_by_one: args.all, ..Limits::default() };
    let answer = ranked(&args.room, &limits, stdin, stderr)?;
    // The name alone: a page that is handed on need not tell where its maker keeps files.
    let file = args.room.scenario.file.file_name().unwrap_or_default().to_string_lossy();
    let page = report::page(&report::ReportPage { answer: &answer, limits, file: &file });
    destination.write(page.as_bytes(), stdout)?;
    Ok(if answer.options.is_empty() { Exit::NothingFits } else { Exit::Done })
}
