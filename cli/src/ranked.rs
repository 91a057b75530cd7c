//! From what the command line names to a brief, its result, and the option that is meant: alike for every command.

use std::io::Read;
use std::time::{Duration, Instant};

use elbowroom_model::{Brief, Fault, Only, scenario};
use elbowroom_solver::answer::{Answer, RankedOption};
use elbowroom_solver::{Limits, Part, Unwatched, Watch};

use crate::args::{OptionArg, RoomArgs, ScenarioArgs};
use crate::process::failure::Failure;
use crate::process::outlet::Outlet;
use crate::process::source::{self, Source};
use crate::watch::{Bar, Stopwatch};
use crate::words::answer as said;

/// Reads a scenario and the table of sizes over it, as if it said what is set otherwise, and has lengths told in another
/// unit where one is given.
pub(crate) fn brief(args: &ScenarioArgs, stdin: &mut dyn Read) -> Result<(Source, Brief), Failure> {
    let sources = Sources::read(args, stdin)?;
    match sources.brief(args, &args.set) {
        Ok(brief) => Ok((sources.scenario, brief)),
        Err(faults) => Err(Failure::Faults { scenario: sources.scenario, faults }),
    }
}

/// Reads a scenario that is to be ranked, held to the decisions that are wanted.
pub(crate) fn room(args: &RoomArgs, stdin: &mut dyn Read) -> Result<Brief, Failure> {
    let (scenario, mut brief) = brief(&args.scenario, stdin)?;
    match wanted(&args.only, &brief) {
        Ok(only) => {
            brief.only = only;
            Ok(brief)
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
) -> Result<Answer, Failure> {
    let sources = Sources::read(&args.scenario, stdin)?;
    match sources.ranked(args, &args.scenario.set, limits, stderr) {
        Ok(found) => found,
        Err(faults) => Err(Failure::Faults { scenario: sources.scenario, faults }),
    }
}

/// Reads a scenario and ranks it; where something of it is set otherwise, also ranks the file as it is, if that is sound.
pub(crate) fn ranked_against(
    args: &RoomArgs,
    limits: &Limits,
    stdin: &mut dyn Read,
    stderr: &Outlet<'_>,
) -> Result<(Answer, Option<Answer>), Failure> {
    let sources = Sources::read(&args.scenario, stdin)?;
    let answer = match sources.ranked(args, &args.scenario.set, limits, stderr) {
        Ok(found) => found?,
        Err(faults) => return Err(Failure::Faults { scenario: sources.scenario, faults }),
    };
    let as_it_is = (!args.scenario.set.is_empty()).then(|| sources.ranked(args, &[], limits, stderr));
    let as_it_is = as_it_is.and_then(Result::ok).transpose()?;
    Ok((answer, as_it_is))
}

/// Reads a scenario and ranks it, with the figures of options that are shown for the first so many, and for the option
/// that is meant where one is.
pub(crate) fn shown_to(
    args: &RoomArgs,
    meant: Option<&OptionArg>,
    limits: &Limits,
    stdin: &mut dyn Read,
    stderr: &Outlet<'_>,
) -> Result<Answer, Failure> {
    let answer = match meant {
        None => return ranked(args, limits, stdin, stderr),
        Some(OptionArg::Rank(rank)) => {
            let shown = (*rank).min(MOST_SHOWN);
            return ranked(args, &Limits { shown, one_by_one: true, ..*limits }, stdin, stderr);
        }
        Some(OptionArg::Key(_)) => ranked(args, &Limits { shown: 0, ..*limits }, stdin, stderr)?,
    };
    // Where a key stands in the order is known only once all are ranked.
    let shown = meant.map(|meant| chosen(&answer, meant)).transpose()?.map_or(0, |option| option.rank);
    solved(&answer.asked, &Limits { shown, one_by_one: true, ..*limits }, args.threads, stderr)
}

/// Options that get the figures of those that are shown at most.
const MOST_SHOWN: usize = 1000;

/// The texts that a run reads.
struct Sources {
    scenario: Source,
    table: Option<Source>,
}

/// A result, or why there is none; or what is at fault in the file.
type Found = Result<Result<Answer, Failure>, Vec<Fault>>;

impl Sources {
    fn read(args: &ScenarioArgs, stdin: &mut dyn Read) -> Result<Self, Failure> {
        if source::is_standard_input(&args.file) && args.table.as_deref().is_some_and(source::is_standard_input) {
            return Err(Failure::StandardInputTwice);
        }
        let scenario = source::read(&args.file, stdin)?;
        let table = args.table.as_deref().map(|table| source::read(table, stdin)).transpose()?;
        Ok(Self { scenario, table })
    }

    fn brief(&self, args: &ScenarioArgs, settings: &[String]) -> Result<Brief, Vec<Fault>> {
        let table = self.table.as_ref().map(|table| table.text.as_str());
        let mut brief = scenario::read_set(&self.scenario.text, table, settings)?;
        brief.units = args.units.unwrap_or(brief.units);
        Ok(brief)
    }

    fn ranked(&self, args: &RoomArgs, settings: &[String], limits: &Limits, stderr: &Outlet<'_>) -> Found {
        let started = Instant::now();
        let mut brief = self.brief(&args.scenario, settings)?;
        brief.only = wanted(&args.only, &brief)?;
        let solved = solved(&brief, limits, args.threads, stderr);
        Ok(solved.map(|mut answer| {
            answer.work.seconds = started.elapsed().as_secs_f64();
            answer
        }))
    }
}

/// The decisions that are wanted, or every fault of them.
fn wanted(only: &[String], brief: &Brief) -> Result<Vec<Only>, Vec<Fault>> {
    let (wanted, faults): (Vec<_>, Vec<_>) =
        only.iter().map(|text| Only::read(text, &brief.room, &brief.pieces)).partition(Result::is_ok);
    if faults.is_empty() {
        Ok(wanted.into_iter().flatten().collect())
    } else {
        Err(faults.into_iter().filter_map(Result::err).map(|fault| *fault).collect())
    }
}

/// Ranks a brief in as many threads as asked for; where somebody watches, long work shows how far it is.
pub(crate) fn solved(
    brief: &Brief,
    limits: &Limits,
    threads: Option<usize>,
    stderr: &Outlet<'_>,
) -> Result<Answer, Failure> {
    let bar = stderr.is_terminal().then(Bar::new);
    let watch: &dyn Watch = bar.as_ref().map_or(&Unwatched, |bar| bar);
    let answer = match threads {
        Some(threads) => {
            let pool = rayon::ThreadPoolBuilder::new().num_threads(threads).build()?;
            pool.install(|| elbowroom_solver::rank(brief, limits, watch))
        }
        None => elbowroom_solver::rank(brief, limits, watch),
    };
    if let Some(bar) = &bar {
        bar.clear();
    }
    Ok(answer)
}

/// Ranks a brief on one thread, and tells how long each part took.
pub(crate) fn timed(brief: &Brief, limits: &Limits) -> Result<(Answer, Vec<(Part, Duration)>), Failure> {
    let pool = rayon::ThreadPoolBuilder::new().num_threads(1).build()?;
    let (started, stopwatch) = (Instant::now(), Stopwatch::default());
    let mut answer = pool.install(|| elbowroom_solver::rank(brief, limits, &stopwatch));
    answer.work.seconds = started.elapsed().as_secs_f64();
    Ok((answer, stopwatch.taken()))
}

/// The options that are meant, in their order, each of them one of those that fit and none named twice.
pub(crate) fn chosen_each<'a>(answer: &'a Answer, meant: &[OptionArg]) -> Result<Vec<&'a RankedOption>, Failure> {
    let mut options: Vec<&RankedOption> = Vec::with_capacity(meant.len());
    for meant in meant {
        let option = chosen(answer, meant)?;
        if options.iter().any(|other| other.key == option.key) {
            return Err(Failure::SameOption { meant: meant.to_string() });
        }
        options.push(option);
    }
    Ok(options)
}

/// The option that is meant, where it is one of those that fit.
pub(crate) fn chosen<'a>(answer: &'a Answer, meant: &OptionArg) -> Result<&'a RankedOption, Failure> {
    if answer.options.is_empty() {
        let remedies = said::remedies(answer);
        return Err(Failure::NothingFits { undecided: answer.undecided(), remedies });
    }
    let found = answer.options.iter().find(|option| match meant {
        OptionArg::Rank(rank) => option.rank == *rank,
        OptionArg::Key(key) => option.key == *key,
    });
    found.ok_or_else(|| Failure::NoSuchOption { meant: meant.to_string(), options: answer.options.len() })
}
