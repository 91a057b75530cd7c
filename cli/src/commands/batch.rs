//! `batch`: many rooms, into a folder or as a stream.

use std::io::Read;
use std::path::Path;

use elbowroom_solver::Limits;

use crate::args::BatchArgs;
use crate::batch::content::Terms;
use crate::batch::finish::{Wanted, finish};
use crate::batch::given::Given;
use crate::batch::kept::Kept;
use crate::batch::record::{content, record, told_under};
use crate::batch::rooms::{Rooms, rooms};
use crate::batch::worker_pool::work;
use crate::batch::{left, of_rooms, sweep};
use crate::process::exit::Exit;
use crate::process::failure::Failure;
use crate::process::inputs::{STANDARD_OUTPUT, see_that_none_is_written};
use crate::process::outlet::Outlet;
use crate::render::batch::{compared, summary};
use crate::watch::RoomsBar;
use crate::words::batch as words;

/// Solves the rooms that the command line names.
pub(super) fn run(
    args: &BatchArgs,
    stdin: &mut (dyn Read + Send),
    stdout: &mut Outlet<'_>,
    stderr: &mut Outlet<'_>,
) -> Result<Exit, Failure> {
    if let Some(stock) = &args.stock {
        return super::stock::run(args, stock, stdin, stdout, stderr);
    }
    let limits = Limits { shown: args.shown(), by: args.by, ..Limits::default() };
    let terms = Terms::read(args.table.as_deref(), limits, args.units)?;
    let rooms = rooms(&args.rooms, stdin)?;
    if rooms.count == Some(0) {
        return Err(Failure::NoRooms { name: args.rooms.display().to_string() });
    }
    match &args.output {
        Some(folder) => into_folder(args, folder, &terms, rooms, stdout, stderr),
        None => as_stream(args, &terms, rooms, stdout),
    }
}

/// A line for each room, in the order given, as soon as it and those before it are solved.
fn as_stream(args: &BatchArgs, terms: &Terms, rooms: Rooms<'_>, stdout: &mut Outlet<'_>) -> Result<Exit, Failure> {
    // A file that grows by what is read from it has no end.
    see_that_none_is_written(&[STANDARD_OUTPUT], rooms.inputs(args))?;
    let solve = |given: Given| {
        let record = record(given.scenario(), terms, None)?;
        told_under(given.source.as_deref(), &record.line)
    };
    work(args.threads(), rooms.given, solve, |line| stdout.write(&format!("{}\n", line?)))?;
    Ok(Exit::Done)
}

/// Lines, rows, pages and plans in a folder, where what was solved before is not solved again.
fn into_folder(
    args: &BatchArgs,
    folder: &Path,
    terms: &Terms,
    rooms: Rooms<'_>,
    stdout: &mut Outlet<'_>,
    stderr: &mut Outlet<'_>,
) -> Result<Exit, Failure> {
    left::see(&left::of_rooms(folder, args.xlsx), rooms.inputs(args), args.force)?;
    of_rooms::make_folders(folder, args.reports)?;
    let mut kept = Kept::open(folder, args.reports)?;
    sweep(folder);
    let known = kept.known();
    let bar = RoomsBar::new(rooms.count, stderr);
    let solve = |given: Given| {
        let content = content(given.scenario(), terms);
        // A report that is handed on need not tell where its maker keeps files.
        let file = given.source.as_deref().map(|source| source.rsplit('/').next().unwrap_or(source));
        let report = args.reports.then(|| file.unwrap_or_default());
        let made = (!known.contains(&content)).then(|| record(given.scenario(), terms, report)).transpose()?;
        Ok::<_, Failure>((given.source, content, made))
    };
    let (mut order, mut solved) = (Vec::new(), 0);
    work(args.threads(), rooms.given, solve, |done| {
        let (source, content, made) = done?;
        if let Some(record) = made {
            of_rooms::put(folder, source.as_deref(), &record)?;
            kept.keep(&record)?;
            solved += 1;
        }
        order.push((source, content));
        bar.one_more();
        Ok(())
    })?;
    bar.clear();
    let mut compared_rooms = Vec::new();
    let wanted = Wanted { reports: args.reports, xlsx: args.xlsx, units: args.units };
    let mut done = finish(folder, &kept, &order, wanted, |told| {
        if args.compare {
            compared_rooms.push(told);
        }
    })?;
    kept.close()?;
    done.tally.kept = order.len() - solved;
    stdout.write(&summary(&done, &folder.display().to_string(), stdout.look()))?;
    if args.compare {
        let text = compared(&compared_rooms, stdout.look());
        stdout.write(&text.unwrap_or_else(|| words::NO_VARIANTS.to_owned()))?;
    }
    Ok(Exit::Done)
}
