//! The answers of a whole folder, as `batch` makes them and keeps them in a folder within it: what was solved before and is the same
//! is not solved again, and what an interrupted run had solved is there the next time.

use std::collections::BTreeMap;
use std::fs;
use std::io::{self, Read};
use std::path::PathBuf;
use std::sync::atomic::{AtomicBool, AtomicUsize, Ordering};
use std::sync::{Arc, Mutex, PoisonError};

use elbowroom_solver::Limits;

use super::shelf::Shelf;
use crate::batch::content::Terms;
use crate::batch::kept::ROOMS;
use crate::process::source;
use crate::render::batch::OfRoom;
use crate::render::batch::room_line::RoomLine;
use crate::text::json;

/// The folder within that of the rooms.
const ANSWERS: &str = "answers";

/// The run over all rooms: one at a time.
#[derive(Clone, Default)]
pub(super) struct RankedAll {
    run: Arc<Mutex<Run>>,
    far: Arc<Far>,
}

/// How far a run is, and whether it is to go on.
#[derive(Debug, Default)]
struct Far {
    begun: AtomicUsize,
    all: AtomicUsize,
    stopped: AtomicBool,
}

/// The rooms as a run reads them: a line at a time, so that it takes no more of them once it is stopped.
pub(super) struct Lines {
    text: String,
    at: usize,
    far: Arc<Far>,
}

impl Read for Lines {
    fn read(&mut self, into: &mut [u8]) -> io::Result<usize> {
        let rest = self.text.as_bytes().get(self.at..).unwrap_or_default();
        let begins = self.at == 0 || self.text.as_bytes().get(self.at - 1) == Some(&b'\n');
        if rest.is_empty() || (begins && self.far.stopped.load(Ordering::Relaxed)) {
            return Ok(0);
        }
        let line = rest.iter().position(|byte| *byte == b'\n').map_or(rest.len(), |end| end + 1);
        let count = line.min(into.len());
        into[..count].copy_from_slice(&rest[..count]);
        self.at += count;
        if begins {
            self.far.begun.fetch_add(1, Ordering::Relaxed);
        }
        Ok(count)
    }
}

/// How a run stands.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub(super) enum Run {
    /// None is under way.
    #[default]
    Idle,
    /// One is.
    Busy,
    /// The last one broke off, and why.
    Failed(String),
}

/// What is known of a room.
pub(super) struct RankedRoom {
    /// What was found.
    pub(super) line: RoomLine,
    /// Its file has changed since.
    pub(super) is_old: bool,
    /// The name of its small plan, where it has one.
    pub(super) plan: Option<String>,
}

impl RankedAll {
    /// The rooms of a run that begins, and how many they are.
    pub(super) fn lines(&self, text: String) -> Lines {
        self.far.begun.store(0, Ordering::Relaxed);
        self.far.all.store(text.lines().count(), Ordering::Relaxed);
        self.far.stopped.store(false, Ordering::Relaxed);
        Lines { text, at: 0, far: Arc::clone(&self.far) }
    }

    /// Which room the run is at, and of how many.
    pub(super) fn far(&self) -> [usize; 2] {
        [&self.far.begun, &self.far.all].map(|count| count.load(Ordering::Relaxed))
    }

    /// Has the run end after the rooms that it is at; what is solved by then is kept.
    pub(super) fn stop(&self) {
        self.far.stopped.store(true, Ordering::Relaxed);
    }

    /// How the run stands.
    pub(super) fn run(&self) -> Run {
        self.run.lock().unwrap_or_else(PoisonError::into_inner).clone()
    }

    /// Begins one with this work, which says why where it fails; false where one is under way.
    pub(super) fn begin(&self, work: impl FnOnce() -> Result<(), String> + Send + 'static) -> bool {
        let mut run = self.run.lock().unwrap_or_else(PoisonError::into_inner);
        if *run == Run::Busy {
            return false;
        }
        *run = Run::Busy;
        let all = self.clone();
        std::thread::spawn(move || {
            let ended = Ended(all);
            let done = work();
            ended.with(done);
        });
        true
    }
}

/// Ends the run whatever happens to it.
struct Ended(RankedAll);

impl Ended {
    fn with(&self, done: Result<(), String>) {
        *self.0.run.lock().unwrap_or_else(PoisonError::into_inner) = done.map_or_else(Run::Failed, |()| Run::Idle);
    }
}

impl Drop for Ended {
    fn drop(&mut self) {
        let mut run = self.0.run.lock().unwrap_or_else(PoisonError::into_inner);
        if *run == Run::Busy {
            *run = Run::Failed(String::new());
        }
    }
}

/// Where the answers of a folder are kept; none for a room by itself.
pub(super) fn folder(shelf: &Shelf) -> Option<PathBuf> {
    match shelf {
        Shelf::Folder(folder) => Some(folder.join(ANSWERS)),
        Shelf::File(_) => None,
    }
}

/// The rooms of a folder as lines that `batch` takes: those on the shelf, and nothing that a link or a folder below leads to.
pub(super) fn lines(shelf: &Shelf) -> String {
    let line = |name: &String| {
        let text = source::file(&shelf.path(name)?).ok()?;
        json::line(&serde_json::json!({ "source": name, "scenario": text })).ok()
    };
    shelf.names().iter().filter_map(line).map(|line| line + "\n").collect()
}

/// A small plan by its name, as SVG; none where the name is of no such plan.
pub(super) fn plan(shelf: &Shelf, name: &str) -> Option<String> {
    let is_plain = name.chars().all(|letter| letter.is_ascii_alphanumeric() || matches!(letter, '-' | '.'));
    OfRoom::Plan.content_of(name).filter(|_| is_plain)?;
    fs::read_to_string(folder(shelf)?.join(OfRoom::Plan.folder()).join(name)).ok()
}

/// What is known of each room of the last run, by its file's name.
pub(super) fn rooms(shelf: &Shelf) -> BTreeMap<String, RankedRoom> {
    let Some(folder) = folder(shelf) else { return BTreeMap::new() };
    let Ok(text) = fs::read_to_string(folder.join(ROOMS)) else { return BTreeMap::new() };
    // As `batch` ranks where nobody says how far.
    let terms = Terms::new(Limits { shown: 1, ..Limits::default() }, None, None);
    let known = text.lines().filter_map(|line| RoomLine::of(line).ok()).filter_map(|line| {
        let name = line.source.clone()?;
        let now = source::file(&shelf.path(&name)?).ok()?;
        let is_old = terms.content(&now).to_string() != line.content;
        let plan = OfRoom::Plan.name(Some(&name), &line.content);
        let plan = folder.join(&plan).is_file().then(|| plan.rsplit('/').next().unwrap_or_default().to_owned());
        Some((name, RankedRoom { line, is_old, plan }))
    });
    known.collect()
}

#[cfg(test)]
mod tests {
    use std::io::Read;
    use std::time::Duration;

    use super::{RankedAll, Run};

    fn ended(all: &RankedAll) -> Run {
        for _ in 0..1000 {
            if all.run() != Run::Busy {
                break;
            }
            std::thread::sleep(Duration::from_millis(5));
        }
        all.run()
    }

    #[test]
    fn there_is_one_run_at_a_time_and_it_ends_whatever_happens() {
        let all = RankedAll::default();
        let (go, wait) = std::sync::mpsc::channel::<()>();
        assert!(all.begin(move || wait.recv().map_err(|why| why.to_string())));
        assert!(!all.begin(|| Ok(())), "one is under way");
        go.send(()).unwrap();
        assert_eq!(ended(&all), Run::Idle);
        assert!(all.begin(|| Err("no room".to_owned())));
        assert_eq!(ended(&all), Run::Failed("no room".to_owned()));
        assert!(all.begin(|| panic!("on purpose")));
        assert_eq!(ended(&all), Run::Failed(String::new()));
    }

    #[test]
    fn a_run_that_is_stopped_reads_no_further_room() {
        let all = RankedAll::default();
        let mut lines = all.lines("one\ntwo\nthree\n".to_owned());
        let mut some = [0; 64];
        assert_eq!((lines.read(&mut some).unwrap(), all.far()), (4, [1, 3]));
        // A line that is begun is read to its end.
        assert_eq!(lines.read(&mut some[..2]).unwrap(), 2);
        all.stop();
        assert_eq!(lines.read(&mut some).unwrap(), 2);
        assert_eq!((lines.read(&mut some).unwrap(), all.far()), (0, [2, 3]));
        assert_eq!(all.lines("one\n".to_owned()).read(&mut some).unwrap(), 4);
    }
}
