//! What is solved is kept: in the lines of the last whole run, and in a journal of the run under way.
//!
//! The journal grows by one line for each room solved. Where a run is interrupted, however roughly, its whole lines are
//! still there; half a line at the end is cut off before the next is written, and a line that does not read is passed
//! over, so that its room is solved anew. The lines of a run that ended stand in its result. A line is known again by its
//! content, so a changed scenario, table or program is solved anew.

use std::collections::{BTreeMap, BTreeSet};
use std::fs::{self, File, TryLockError};
use std::io::{self, BufRead, BufReader, Read, Seek, SeekFrom, Write};
use std::path::{Path, PathBuf};

use super::content::Content;
use super::of_rooms;
use super::record::{Record, untold};
use crate::process::failure::Failure;
use crate::render::batch::OfRoom;
use crate::render::batch::room_line::RoomLine;

/// Lines of rooms, in the order given: the result of a run.
pub(crate) const ROOMS: &str = "rooms.ndjson";
/// Lines of rooms solved so far.
pub(crate) const JOURNAL: &str = ".unfinished.ndjson";

/// Longest line that is taken for a room's, bytes: far beyond what a ranking of all options comes to.
pub(super) const LONGEST: u64 = 64 << 20;

/// Where a line is.
#[derive(Debug, Clone, Copy)]
struct Place {
    file: Holder,
    offset: u64,
    length: usize,
}

/// The file that holds a line.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Holder {
    Journal,
    LastRun,
}

/// All that is solved so far.
#[derive(Debug)]
pub(crate) struct Kept {
    journal_path: PathBuf,
    journal: File,
    end: u64,
    last_run: Option<File>,
    places: BTreeMap<Content, Place>,
}

impl Kept {
    /// Opens what is kept in `folder` and keeps other runs out of it until this one ends.
    ///
    /// # Errors
    /// The folder cannot be written to; another run is at work in it.
    pub(crate) fn open(folder: &Path, reports: bool) -> Result<Self, Failure> {
        let path = folder.join(JOURNAL);
        let failed = |path: &Path| {
            let name = path.display().to_string();
            move |why| Failure::Uncreatable { name, why }
        };
        let opened = File::options().read(true).append(true).create(true).open(&path);
        let journal = opened.map_err(failed(&path))?;
        match journal.try_lock() {
            Ok(()) => {}
            Err(TryLockError::WouldBlock) => return Err(Failure::InUse { name: folder.display().to_string() }),
            Err(TryLockError::Error(why)) => return Err(failed(&path)(why)),
        }
        let mut places = BTreeMap::new();
        let whole = Made::of(folder, reports);
        let last_run = File::open(folder.join(ROOMS)).ok();
        if let Some(file) = &last_run {
            index(file, Holder::LastRun, &whole, &mut places).map_err(failed(&folder.join(ROOMS)))?;
        }
        let end = index(&journal, Holder::Journal, &whole, &mut places).map_err(failed(&path))?;
        journal.set_len(end).map_err(failed(&path))?;
        Ok(Self { journal_path: path, journal, end, last_run, places })
    }

    /// All that is known without solving.
    pub(crate) fn known(&self) -> BTreeSet<Content> {
        self.places.keys().copied().collect()
    }

    /// Adds what came of a room.
    pub(crate) fn keep(&mut self, record: &Record) -> Result<(), Failure> {
        if self.places.contains_key(&record.content) {
            return Ok(());
        }
        let line = format!("{}\n", record.line);
        self.journal.write_all(line.as_bytes()).map_err(|why| self.unwritten(why))?;
        let place = Place { file: Holder::Journal, offset: self.end, length: record.line.len() };
        self.places.insert(record.content, place);
        self.end += line.len() as u64;
        Ok(())
    }

    /// The record's own line of a content that is kept.
    pub(crate) fn line(&self, content: Content) -> Result<String, Failure> {
        let read = || {
            let missing = || io::Error::from(io::ErrorKind::NotFound);
            let place = self.places.get(&content).ok_or_else(missing)?;
            let mut file = match place.file {
                Holder::Journal => &self.journal,
                Holder::LastRun => self.last_run.as_ref().ok_or_else(missing)?,
            };
            file.seek(SeekFrom::Start(place.offset))?;
            let mut line = Vec::with_capacity(place.length);
            file.take(place.length as u64).read_to_end(&mut line)?;
            String::from_utf8(line).map_err(io::Error::other)
        };
        let whole = read().map_err(|why| self.unwritten(why))?;
        let line = untold(&whole).map(|(_, line)| format!("{{{line}"));
        line.ok_or_else(|| self.unwritten(io::ErrorKind::InvalidData.into()))
    }

    /// The run is whole and its lines stand in its result: the journal goes.
    pub(crate) fn close(self) -> Result<(), Failure> {
        fs::remove_file(&self.journal_path).map_err(|why| self.unwritten(why))
    }

    fn unwritten(&self, why: io::Error) -> Failure {
        Failure::BrokenOff { name: self.journal_path.display().to_string(), why }
    }
}

/// The files of rooms that are there.
struct Made {
    plans: BTreeMap<String, Vec<String>>,
    /// Where reports are wanted.
    reports: Option<BTreeMap<String, Vec<String>>>,
}

impl Made {
    fn of(folder: &Path, reports: bool) -> Self {
        let reports = reports.then(|| of_rooms::there(folder, OfRoom::Report));
        Self { plans: of_rooms::there(folder, OfRoom::Plan), reports }
    }

    /// Whether all that a room is to have is there.
    fn has_all(&self, content: Content, told: &RoomLine) -> bool {
        let has_plan = told.best().is_none() || of_rooms::has(&self.plans, content);
        let has_report = |there| told.result.is_none() || of_rooms::has(there, content);
        has_plan && self.reports.as_ref().is_none_or(has_report)
    }
}

/// Notes every whole line of `file` that reads and whose room has its files; says where the last whole line ends.
fn index(file: &File, holder: Holder, made: &Made, places: &mut BTreeMap<Content, Place>) -> io::Result<u64> {
    let mut reader = BufReader::with_capacity(1 << 16, file);
    let (mut line, mut start, mut read, mut too_long) = (Vec::new(), 0, 0, false);
    loop {
        line.clear();
        let more = reader.by_ref().take(LONGEST).read_until(b'\n', &mut line)? as u64;
        let ended = line.pop_if(|byte| *byte == b'\n').is_some();
        if !ended && more < LONGEST {
            return Ok(start);
        }
        if let Some((content, told)) = sound(&line).filter(|_| ended && !too_long)
            && made.has_all(content, &told)
        {
            places.insert(content, Place { file: holder, offset: start, length: line.len() });
        }
        read += more;
        too_long = !ended;
        if ended {
            start = read;
        }
    }
}

/// A line that reads as a room's, and its content.
fn sound(line: &[u8]) -> Option<(Content, RoomLine)> {
    let line = std::str::from_utf8(line).ok()?;
    let (content, _) = untold(line)?;
    let told = RoomLine::of(line).ok()?;
    (Content::of_name(&told.content) == Some(content)).then_some((content, told))
}

#[cfg(test)]
mod tests {
    use std::io::Write;

    use elbowroom_solver::Limits;

    use super::{JOURNAL, Kept};
    use crate::batch::content::Terms;
    use crate::batch::record::{Record, record};
    use crate::process::failure::Failure;

    fn made(text: &str) -> Record {
        record(Ok(text), &Terms::new(Limits::default(), None, None), None).unwrap()
    }

    #[test]
    fn whole_lines_are_known_again_and_half_a_line_is_cut_off() {
        let folder = tempfile::tempdir().unwrap();
        let records = ["units: a", "units: b", "units: c"].map(made);
        let mut kept = Kept::open(folder.path(), false).unwrap();
        kept.keep(&records[0]).unwrap();
        kept.keep(&records[1]).unwrap();
        drop(kept);
        let mut journal = std::fs::File::options().append(true).open(folder.path().join(JOURNAL)).unwrap();
        journal.write_all(&records[2].line.as_bytes()[..50]).unwrap();
        let mut kept = Kept::open(folder.path(), false).unwrap();
        assert_eq!(kept.known().len(), 2);
        kept.keep(&records[2]).unwrap();
        for record in &records {
            assert_eq!(kept.line(record.content).unwrap(), record.line);
        }
    }

    #[test]
    fn two_runs_do_not_work_in_one_folder() {
        let folder = tempfile::tempdir().unwrap();
        let first = Kept::open(folder.path(), false).unwrap();
        assert!(matches!(Kept::open(folder.path(), false), Err(Failure::InUse { .. })));
        drop(first);
        Kept::open(folder.path(), false).unwrap();
    }
}
