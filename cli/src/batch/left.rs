//! What a run over many rooms leaves in its folder, and what each file of it is known by: a run replaces what an earlier
//! one left, nothing that it reads, and nothing of anybody else's unless it is told to.

use std::fs::{self, File};
use std::io::{BufRead, BufReader, Read};
use std::path::{Path, PathBuf};

use super::kept::{JOURNAL, LONGEST, ROOMS};
use super::record::untold;
use crate::process::failure::Failure;
use crate::process::inputs::see_that_none_is_written;
use crate::process::source;
use crate::render::batch::{PAGE_START, ROWS_START, is_page_name};
use crate::render::crew::CALENDAR_START;
use crate::render::stock::PICKS_START;
use crate::result::stock::STOCK_START;
use crate::text::cells::BYTE_ORDER_MARK;
use crate::text::workbook::is_as_made;

/// Rows for a spreadsheet.
pub(super) const ROWS: &str = "rooms.csv";
/// How the name of a workbook ends, that stands beside rows of the same name.
pub(crate) const WORKBOOK: &str = "xlsx";
/// The pick list of an assignment.
pub(crate) const PICKS: &str = "picks.csv";
/// Everything of an assignment.
pub(crate) const STOCK: &str = "stock.json";

/// The folder for a crew.
pub(crate) const CREW: &str = "picks";
/// All that a crew carries, in its folder.
pub(crate) const LOADS: &str = "loads.csv";
/// What is in it beside a sheet for each day.
const CREW_FILES: [&str; 3] = ["calendar.ics", LOADS, "returns.txt"];

/// What a file of a run is known by.
#[derive(Debug, Clone, Copy)]
enum Mark {
    /// It starts so.
    Start(&'static str),
    /// Its first line is that of a room that was solved.
    Line,
    /// It is a workbook that nobody has saved since.
    AsMade,
    /// It lies beside a calendar of a run.
    WithCalendar,
}

/// A file that a run writes, or takes away.
#[derive(Debug)]
pub(crate) struct Left {
    path: PathBuf,
    mark: Mark,
}

/// The files of a run over rooms: those it always leaves, the workbook where one is asked for, and the pages that are there
/// already.
pub(crate) fn of_rooms(folder: &Path, xlsx: bool) -> Vec<Left> {
    let usual = [(ROOMS, Mark::Line), (JOURNAL, Mark::Start("{\"content\":\"")), (ROWS, Mark::Start(ROWS_START))];
    let mut left: Vec<Left> = usual.into_iter().map(|(name, mark)| Left { path: folder.join(name), mark }).collect();
    let entries = fs::read_dir(folder).into_iter().flatten().flatten();
    let pages = entries.filter(|entry| entry.file_name().to_str().is_some_and(is_page_name));
    left.extend(books([folder.join(ROWS)], xlsx));
    left.extend(pages.map(|page| Left { path: page.path(), mark: Mark::Start(PAGE_START) }));
    left.sort_by(|one, other| one.path.cmp(&other.path));
    left
}

/// The files of an assignment of stock; its workbooks where they are asked for.
pub(crate) fn of_stock(folder: &Path, xlsx: bool) -> Vec<Left> {
    let files = [(PICKS, Mark::Start(PICKS_START)), (STOCK, Mark::Start(STOCK_START))];
    let mut left: Vec<Left> = files.into_iter().map(|(name, mark)| Left { path: folder.join(name), mark }).collect();
    let crew = folder.join(CREW);
    let entries = fs::read_dir(&crew).into_iter().flatten().flatten();
    let days = entries.filter(|entry| entry.file_name().to_str().is_some_and(|name| day_of(name).is_some()));
    let days = days.map(|entry| entry.path());
    let all = CREW_FILES.map(|name| crew.join(name)).into_iter().chain(days);
    left.extend(books([folder.join(PICKS), crew.join(LOADS)], xlsx));
    left.extend(all.map(|path| Left { path, mark: Mark::WithCalendar }));
    left.sort_by(|one, other| one.path.cmp(&other.path));
    left
}

/// Workbooks beside these rows, that are written where they are asked for; else one of an earlier run is taken away.
fn books<const N: usize>(rows: [PathBuf; N], asked: bool) -> impl Iterator<Item = Left> {
    let left = rows.into_iter().map(|rows| Left { path: rows.with_extension(WORKBOOK), mark: Mark::AsMade });
    left.filter(move |left| asked || is_of_a_run(&left.path, left.mark))
}

/// Takes away a workbook that an earlier run left, where none is asked for now: it would tell what is no longer so. One that
/// somebody has saved again is theirs.
pub(crate) fn drop_book(path: &Path, asked: bool) {
    if !asked && is_of_a_run(path, Mark::AsMade) {
        // One that cannot be taken away is only in the way.
        let _ = fs::remove_file(path);
    }
}

/// The day of a sheet for a crew, by its file's name.
pub(crate) fn day_of(name: &str) -> Option<&str> {
    let day = name.strip_suffix(".pdf")?;
    let is_digit =
        |(place, sign): (usize, char)| if [4, 7].contains(&place) { sign == '-' } else { sign.is_ascii_digit() };
    (day.len() == 10 && day.chars().enumerate().all(is_digit)).then_some(day)
}

/// The folder is one that a run left for a crew.
pub(crate) fn is_of_the_crew(folder: &Path) -> bool {
    is_of_a_run(&folder.join(CREW_FILES[0]), Mark::Start(CALENDAR_START))
}

/// Sees that nothing is lost by writing these files.
///
/// # Errors
/// One of them is read by this run; or some are there that no run left, and they must not be replaced.
pub(crate) fn see<'a>(left: &[Left], inputs: impl IntoIterator<Item = &'a Path>, force: bool) -> Result<(), Failure> {
    let paths: Vec<&Path> = left.iter().map(|left| left.path.as_path()).collect();
    see_that_none_is_written(&paths, inputs)?;
    let foreign = left.iter().filter(|left| left.path.exists() && !is_of_a_run(&left.path, left.mark));
    let foreign: Vec<String> = foreign.map(|left| source::name(&left.path)).collect();
    if force || foreign.is_empty() { Ok(()) } else { Err(Failure::Foreign(foreign)) }
}

/// The page at `path` is one that a run left.
pub(crate) fn is_page(path: &Path) -> bool {
    is_of_a_run(path, Mark::Start(PAGE_START))
}

/// The file is one that a run left. So is an empty one, and the start of one: there is nothing else in it to lose.
fn is_of_a_run(path: &Path, mark: Mark) -> bool {
    if !fs::metadata(path).is_ok_and(|there| there.is_file()) {
        return false;
    }
    let Ok(file) = File::open(path) else { return false };
    match mark {
        Mark::Start(start) => {
            let mut head = Vec::new();
            let read = file.take((BYTE_ORDER_MARK.len() + start.len()) as u64).read_to_end(&mut head);
            let head = head.strip_prefix(BYTE_ORDER_MARK.as_bytes()).unwrap_or(&head);
            read.is_ok() && start.as_bytes().starts_with(head.get(..start.len()).unwrap_or(head))
        }
        Mark::AsMade => file.metadata().is_ok_and(|file| file.len() == 0) || is_as_made(file),
        Mark::WithCalendar => path.parent().is_some_and(is_of_the_crew),
        Mark::Line => {
            let mut line = String::new();
            let read = BufReader::new(file).take(LONGEST).read_line(&mut line);
            read.is_ok() && (line.is_empty() || untold(line.trim_end()).is_some())
        }
    }
}
