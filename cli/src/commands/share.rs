//! `share`: chosen options as one page for a client.

use std::io::Read;
use std::path::Path;

use elbowroom_model::listing::{Asked, UNCOUNTED};
use elbowroom_solver::Limits;
use elbowroom_solver::answer::Answer;
use elbowroom_solver::shop::{self, Effort, Unwatched};

use super::form;
use super::shop::MOST_ROWS;
use crate::args::{OptionArg, Page, ShareArgs};
use crate::process::exit::Exit;
use crate::process::failure::Failure;
use crate::process::outlet::Outlet;
use crate::process::{listed, source};
use crate::ranked::{chosen, chosen_each, ranked};
use crate::render::share::{self, Prices};

/// Reads, ranks, writes.
pub(super) fn run(
    args: &ShareArgs,
    stdin: &mut dyn Read,
    stdout: &mut Outlet<'_>,
    stderr: &mut Outlet<'_>,
) -> Result<Exit, Failure> {
    let scenario = &args.room.scenario;
    let read: Vec<_> = scenario.files().into_iter().chain(args.prices.as_deref()).collect();
    let named = [Some(&scenario.file), scenario.table.as_ref(), args.prices.as_ref()];
    if named.into_iter().flatten().filter(|path| source::is_standard_input(path)).count() > 1 {
        return Err(Failure::StandardInputTwice);
    }
    let destination = args.output.destination(&read)?;
    form::form::<Page>(args.format, &destination, &[])?;
    let answer = ranked(&args.room, &Limits { shown: 0, ..Limits::default() }, stdin, stderr)?;
    let mut options = chosen_each(&answer, &args.options)?;
    if options.is_empty() {
        chosen(&answer, &OptionArg::Rank(1))?;
        options = answer.families().iter().take(args.top).map(|family| family.best).collect();
    }
    let prices = args.prices.as_deref().map(|list| prices(list, args, &answer, stdin)).transpose()?;
    let shared = share::Shared { answer: &answer, options: &options, prices: prices.as_ref() };
    destination.write(share::page(&shared).as_bytes(), stdout)?;
    Ok(Exit::Done)
}

/// What the list has for each piece of each option.
fn prices(path: &Path, args: &ShareArgs, answer: &Answer, stdin: &mut dyn Read) -> Result<Prices, Failure> {
    let asked =
        Asked { decimals: args.decimals.mark(), most_rows: MOST_ROWS, uncounted: UNCOUNTED, ..Asked::default() };
    let list = listed::read(path, stdin, &asked)?.listing;
    let found = shop::shop(&answer.asked, &list.pieces, None, Effort::default(), &Unwatched);
    Ok(Prices::of(&found, &list))
}
