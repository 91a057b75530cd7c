//! `rank`: the arrangements that fit, best first.

use std::io::Read;
use std::time::Instant;

use elbowroom_model::Brief;
use elbowroom_solver::{Limits, Outcome, Unwatched, Watch};

use crate::args::RankArgs;
use crate::exit::Exit;
use crate::failure::Failure;
use crate::outlet::Outlet;
use crate::render::{json, rank};
use crate::watch::Bar;

/// Reads, ranks, prints.
pub(super) fn run(
    args: &RankArgs,
    stdin: &mut dyn Read,
    stdout: &mut Outlet<'_>,
    stderr: &mut Outlet<'_>,
) -> Result<Exit, Failure> {
    let started = Instant::now();
    let (_, brief) = super::brief(&args.file, args.table.as_deref(), args.units, stdin)?;
    let mut outcome = ranked(args, &brief, stderr.is_terminal())?;
    outcome.work.seconds = started.elapsed().as_secs_f64();
    let text = if args.json {
        json::text(&outcome)?
    } else {
        rank::text(&rank::Told { brief: &brief, outcome: &outcome, shown: args.top, by: args.by }, stdout.look())
    };
    stdout.write(&text)?;
    Ok(if outcome.options.is_empty() { Exit::NothingFits } else { Exit::Done })
}

/// Ranks in as many threads as asked for; where somebody watches, long work shows how far it is.
fn ranked(args: &RankArgs, brief: &Brief, watched: bool) -> Result<Outcome, Failure> {
    let limits = Limits { shown: args.top, by: args.by, ..Limits::default() };
    let bar = watched.then(Bar::new);
    let watch: &dyn Watch = bar.as_ref().map_or(&Unwatched, |bar| bar);
    let outcome = match args.threads {
        Some(threads) => {
            let pool = rayon::ThreadPoolBuilder::new().num_threads(threads).build()?;
            pool.install(|| elbowroom_solver::rank(brief, &limits, watch))
        }
        None => elbowroom_solver::rank(brief, &limits, watch),
    };
    if let Some(bar) = &bar {
        bar.clear();
    }
    Ok(outcome)
}
