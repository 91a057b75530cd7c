//! The answers of a whole folder, as `batch` makes them and keeps them in a folder within it: what was solved before and is the same
//! is not solved again, and what an interrupted run had solved is there the next time.

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex, PoisonError};

use elbowroom_solver::Limits;

use super::shelf::Shelf;
use crate::batch::content::Terms;
use crate::batch::kept::{JOURNAL, ROOMS};
use crate::process::source;
use crate::render::batch::OfRoom;
use crate::render::batch::room_line::RoomLine;
use crate::text::json;

/// The folder within that of the rooms.
const ANSWERS: &str = "answers";

/// The run over all rooms: one at a time.
#[derive(Clone, Default)]
pub(super) struct RankedAll(Arc<Mutex<Run>>);

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
    /// How the run stands.
    pub(super) fn run(&self) -> Run {
        self.0.lock().unwrap_or_else(PoisonError::into_inner).clone()
    }

    /// Begins one with this work, which says why where it fails; false where one is under way.
    pub(super) fn begin(&self, work: impl FnOnce() -> Result<(), String> + Send + 'static) -> bool {
        let mut run = self.0.lock().unwrap_or_else(PoisonError::into_inner);
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
        *self.0.0.lock().unwrap_or_else(PoisonError::into_inner) = done.map_or_else(Run::Failed, |()| Run::Idle);
    }
}

impl Drop for Ended {
    fn drop(&mut self) {
        let mut run = self.0.0.lock().unwrap_or_else(PoisonError::into_inner);
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

/// How many rooms the run under way has solved.
pub(super) fn solved_so_far(folder: &Path) -> usize {
    fs::read(folder.join(JOURNAL)).map_or(0, |journal| journal.iter().filter(|byte| **byte == b'\n').count())
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
}
