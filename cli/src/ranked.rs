//! From what the command line names to a brief, its result, and the option that is meant: alike for every command.

use std::io::Read;
use std::time::Instant;

use elbowroom_model::{Brief, scenario};
use elbowroom_solver::outcome::OptionFound;
use elbowroom_solver::{Limits, Outcome, Unwatched, Watch};

use crate::args::{OptionArg, RoomArgs, ScenarioArgs};
use crate::failure::Failure;
use crate::outlet::Outlet;
use crate::source::{self, Source};
use crate::watch::Bar;

/// Reads a scenario and the table of sizes over it, and has lengths told in another unit where one is given.
pub(crate) fn brief(args: &ScenarioArgs, stdin: &mut dyn Read) -> Result<(Source, Brief), Failure> {
    if source::is_standard_input(&args.file) && args.table.as_deref().is_some_and(source::is_standard_input) {
        return Err(Failure::StandardInputTwice);
    }
    let scenario = source::read(&args.file, stdin)?;
    let table = args.table.as_deref().map(|table| source::read(table, stdin)).transpose()?;
    match scenario::read(&scenario.text, table.as_ref().map(|table| table.text.as_str())) {
        Ok(mut brief) => {
            brief.units = args.units.unwrap_or(brief.units);
            Ok((scenario, brief))
        }
        Err(faults) => Err(Failure::Faults { scenario, faults }),
    }
}

/// Reads a scenario and ranks it.
pub(crate) fn ranked(
    args: &RoomArgs,
    limits: &Limits,
    stdin: &mut dyn Read,
    stderr: &Outlet<'_>,
) -> Result<(Brief, Outcome), Failure> {
    let started = Instant::now();
    let (_, brief) = brief(&args.scenario, stdin)?;
    let mut outcome = solved(&brief, limits, args.threads, stderr)?;
    outcome.work.seconds = started.elapsed().as_secs_f64();
    Ok((brief, outcome))
}

/// Ranks a brief in as many threads as asked for; where somebody watches, long work shows how far it is.
pub(crate) fn solved(
    brief: &Brief,
    limits: &Limits,
    threads: Option<usize>,
    stderr: &Outlet<'_>,
) -> Result<Outcome, Failure> {
    let bar = stderr.is_terminal().then(Bar::new);
    let watch: &dyn Watch = bar.as_ref().map_or(&Unwatched, |bar| bar);
    let outcome = match threads {
        Some(threads) => {
            let pool = rayon::ThreadPoolBuilder::new().num_threads(threads).build()?;
            pool.install(|| elbowroom_solver::rank(brief, limits, watch))
        }
        None => elbowroom_solver::rank(brief, limits, watch),
    };
    if let Some(bar) = &bar {
        bar.clear();
    }
    Ok(outcome)
}

/// The option that is meant, where it is one of those that fit.
#[allow(dead_code, reason = "the sheets take it; they come next")]
pub(crate) fn chosen<'a>(outcome: &'a Outcome, meant: &OptionArg) -> Result<&'a OptionFound, Failure> {
    if outcome.options.is_empty() {
        let remedies = outcome.remedies.iter().map(|remedy| remedy.sentence.clone()).collect();
        return Err(Failure::NothingFits { remedies });
    }
    let found = outcome.options.iter().find(|option| match meant {
        OptionArg::Rank(rank) => option.rank == *rank,
        OptionArg::Key(key) => option.key == *key,
    });
    found.ok_or_else(|| Failure::NoSuchOption { meant: meant.to_string(), options: outcome.options.len() })
}
