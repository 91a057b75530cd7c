//! `rank`: the arrangements that fit, best first.

use std::io::Read;

use elbowroom_solver::Limits;

use crate::args::RankArgs;
use crate::process::exit::Exit;
use crate::process::failure::Failure;
use crate::process::outlet::Outlet;
use crate::ranked::{ranked_against, timed};
use crate::render::rank;
use crate::result::rank::RankResult;
use crate::text::json;

/// Reads, ranks, prints.
pub(super) fn run(
    args: &RankArgs,
    stdin: &mut dyn Read,
    stdout: &mut Outlet<'_>,
    stderr: &mut Outlet<'_>,
) -> Result<Exit, Failure> {
    let limits = Limits { shown: args.shown(), one_by_one: args.all, by: args.by, ..Limits::default() };
    let (answer, as_it_is) = ranked_against(&args.room, &limits, stdin, stderr)?;
    let text = if args.json {
        json::text(&RankResult::of(&answer))?
    } else {
        let set = &args.room.scenario.set;
        let changed = as_it_is.as_ref().map(|before| rank::changed(set, before, &answer, stdout.look()));
        let told = rank::RankPage { answer: &answer, limits, full: args.is_full(), sketch: args.sketch };
        let explained = if args.explain_work {
            let (again, parts) = timed(&answer.asked, &limits)?;
            rank::explained(&again.work, &parts, stdout.look())
        } else {
            String::new()
        };
        changed.unwrap_or_default() + &rank::text(&told, stdout.look()) + &explained
    };
    stdout.write(&text)?;
    Ok(if answer.options.is_empty() { Exit::NothingFits } else { Exit::Done })
}
