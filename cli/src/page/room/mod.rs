//! A room that is open: the text of its file, every step that was done to it, and what came of it.
//!
//! Each step is saved whole or not at all before it counts. What stands on the disk is compared first: what something else
//! has written there is told, and never written over.

mod history;
mod seen;
mod solved;
mod step;
mod work;

use std::collections::VecDeque;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::PathBuf;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};

use elbowroom_model::filed::Change;
use elbowroom_model::{Brief, Fault, scenario};
use elbowroom_solver::{Limits, hang_on_wishes, rank, rewished};
use tokio::sync::watch;

use crate::process::source::{self, Unreadable};
use crate::process::whole::Whole;
use history::History;
pub(super) use seen::Seen;
pub(super) use solved::{Form, Solved};
pub(super) use step::{By, NotTaken, Step, Taken};
use step::{changed, crossed};
pub(super) use work::Stage;
use work::Work;

/// Texts that are known by their steps, so that a window that is so many behind can still be told what it crosses.
const KNOWN: usize = 100;

/// A room that is open.
pub(super) struct Room {
    name: String,
    path: PathBuf,
    held: Mutex<Held>,
    /// Rises with whatever is new.
    news: watch::Sender<u64>,
}

/// What is known of it.
#[derive(Default)]
struct Held {
    text: String,
    /// The last texts by their steps: what another window still stands on.
    known: VecDeque<(u64, Arc<str>)>,
    /// Rises with each text.
    step: u64,
    history: History,
    /// What the text says, or what is wrong with it.
    read: Option<Result<Arc<Brief>, Arc<Vec<Fault>>>>,
    solved: Option<Arc<Solved>>,
    work: Work,
}

impl Room {
    /// The room in this file, not read yet.
    pub(super) fn at(name: String, path: PathBuf) -> Self {
        Self { name, path, held: Mutex::default(), news: watch::Sender::new(0) }
    }

    /// The name of its file.
    pub(super) fn name(&self) -> &str {
        &self.name
    }

    /// Its file.
    pub(super) fn path(&self) -> &std::path::Path {
        &self.path
    }

    /// Tells of news.
    pub(super) fn news(&self) -> watch::Receiver<u64> {
        self.news.subscribe()
    }

    /// The room as its file has it now: what something else has written there is taken in, and can be taken back.
    pub(super) fn opened(self: &Arc<Self>) -> Result<Seen, Unreadable> {
        let on_disk = source::file(&self.path)?;
        let mut held = self.held();
        if held.read.is_none() || held.text != on_disk {
            if held.read.is_some() {
                let before = std::mem::take(&mut held.text);
                held.history.took(before);
            }
            self.take_in(&mut held, on_disk);
        }
        Ok(self.seen_of(&mut held))
    }

    /// What a file says, with nothing worked on.
    pub(super) fn glimpsed(path: &std::path::Path) -> Result<Seen, Unreadable> {
        let text = source::file(path)?;
        let read = scenario::read(&text, None).map(Arc::new).map_err(Arc::new);
        Ok(Seen { text, step: 0, read, solved: None, can: [false; 2], stage: Stage::Stopped })
    }

    /// The room as it is known, work on it begun anew where it rests.
    pub(super) fn seen(self: &Arc<Self>) -> Result<Seen, Unreadable> {
        let mut held = self.held();
        if held.read.is_none() {
            drop(held);
            return self.opened();
        }
        Ok(self.seen_of(&mut held))
    }

    /// Takes a step from the text of step `from`, and saves it; what something else has written since is taken in first, and
    /// stays where the changes touch other places.
    pub(super) fn step(self: &Arc<Self>, from: u64, step: &Step) -> Result<Taken, NotTaken> {
        let mut held = self.held();
        let on_disk = source::file(&self.path).map_err(|_| NotTaken::Unreadable)?;
        if held.read.is_none() {
            return Err(NotTaken::Behind);
        }
        let by = if held.text == on_disk { By::Window } else { By::Other };
        if by == By::Other {
            let before = std::mem::take(&mut held.text);
            held.history.took(before);
            self.take_in(&mut held, on_disk);
        }
        let beside = held.step != from;
        let text = match step {
            Step::Changes(changes) if beside => {
                let known = held.known.iter().find(|(known, _)| *known == from).map(|(_, text)| Arc::clone(text));
                let known = known.ok_or(NotTaken::Behind)?;
                let there = crossed(&known, &held.text, changes);
                if !there.is_empty() {
                    return Err(NotTaken::Crossed { by, there });
                }
                changed(&held.text, changes)?
            }
            _ if beside => return Err(if by == By::Other { NotTaken::OnDisk } else { NotTaken::Behind }),
            Step::Changes(changes) => changed(&held.text, changes)?,
            Step::Undo => held.history.last().ok_or(NotTaken::Nothing)?.to_owned(),
            Step::Redo => held.history.next().ok_or(NotTaken::Nothing)?.to_owned(),
        };
        if text == held.text {
            return Ok(Taken { seen: self.seen_of(&mut held), beside });
        }
        self.save(&text)?;
        let before = std::mem::take(&mut held.text);
        match step {
            Step::Changes(_) => held.history.took(before),
            Step::Undo => held.history.undid(before),
            Step::Redo => held.history.redid(before),
        }
        self.take_in(&mut held, text);
        Ok(Taken { seen: self.seen_of(&mut held), beside })
    }

    /// The room as it would be with a change, which is not saved; nothing where the text cannot be changed so.
    pub(super) fn as_if(&self, change: &Change) -> Option<Seen> {
        let text = self.held().text.clone();
        let text = changed(&text, std::slice::from_ref(change)).ok()?;
        let read = scenario::read(&text, None).map(Arc::new).map_err(Arc::new);
        Some(Seen { text, step: 0, read, solved: None, can: [false; 2], stage: Stage::Stopped })
    }

    /// Does something to its file while no step is taken.
    pub(super) fn between_steps<T>(&self, done: impl FnOnce() -> T) -> T {
        let _held = self.held();
        done()
    }

    /// Stops the work on it; it begins anew where somebody asks.
    pub(super) fn rest(&self) {
        self.held().work.stop();
    }

    /// Keeps no answer any longer; it is worked out anew where somebody asks. Every step can still be taken back.
    pub(super) fn forget_answer(&self) {
        let mut held = self.held();
        held.solved = None;
        if !held.work.is_halted() {
            held.work.stop();
        }
    }

    /// Stops the work on it until its text changes or somebody has it go on.
    pub(super) fn halt(&self) {
        self.held().work.halt();
        self.tell();
    }

    /// Has work that was stopped go on.
    pub(super) fn go_on(self: &Arc<Self>) {
        let mut held = self.held();
        if let Some(Ok(brief)) = &held.read {
            let brief = Arc::clone(brief);
            self.begin(&mut held, brief);
        }
    }

    fn held(&self) -> MutexGuard<'_, Held> {
        self.held.lock().unwrap_or_else(PoisonError::into_inner)
    }

    fn save(&self, text: &str) -> Result<(), NotTaken> {
        let mut file = Whole::start(self.path.clone()).map_err(NotTaken::Failed)?;
        file.add(text).map_err(NotTaken::Failed)?;
        file.put().map_err(NotTaken::Failed)
    }

    /// Reads a text and has it worked on; where only wishes are others, what is known is ranked anew at once.
    fn take_in(self: &Arc<Self>, held: &mut Held, text: String) {
        let before = held.read.take().and_then(Result::ok);
        held.step += 1;
        let known = (held.step, Arc::from(text.as_str()));
        held.known.push_back(known);
        if held.known.len() > KNOWN {
            held.known.pop_front();
        }
        let read = scenario::read(&text, None).map(Arc::new).map_err(Arc::new);
        held.text = text;
        held.read = Some(read.clone());
        let Ok(brief) = read else {
            held.work.stop();
            return self.tell();
        };
        let known = held.solved.clone().filter(|solved| before.is_some_and(|before| solved.is_of(&before)));
        let same =
            known.filter(|solved| solved.is_of(&Brief { wishes: solved.answer.asked.wishes, ..(*brief).clone() }));
        let Some(known) = same else { return self.begin(held, brief) };
        // What was ranked anew before its own run had ended is not the last word.
        let goes_on = !held.work.is_done() || hang_on_wishes(&known.answer.brief, &brief.wishes);
        held.solved = Some(Arc::new(known.reordered(rewished(&known.answer, &brief.wishes), held.step)));
        if goes_on {
            self.begin(held, brief);
        }
        self.tell();
    }

    fn seen_of(self: &Arc<Self>, held: &mut Held) -> Seen {
        held.work.somebody_asks();
        let read = held.read.clone().unwrap_or_else(|| Err(Arc::new(Vec::new())));
        if let (Ok(brief), true) = (&read, held.work.is_idle()) {
            self.begin(held, Arc::clone(brief));
        }
        let stage = if read.is_err() { Stage::Faulty } else { held.work.stage() };
        Seen {
            text: held.text.clone(),
            step: held.step,
            read,
            solved: held.solved.clone(),
            can: held.history.can(),
            stage,
        }
    }

    /// Begins to work on a brief; what was under way is stopped and not waited for.
    fn begin(self: &Arc<Self>, held: &mut Held, brief: Arc<Brief>) {
        let (room, step, run) = (Arc::clone(self), held.step, held.work.begun());
        std::thread::spawn(move || {
            // A page tells what options could have alone nowhere: sheets that do ask the command line for it.
            let limits = Limits { shown: 0, ..Limits::default() };
            let answer = catch_unwind(AssertUnwindSafe(|| rank(&brief, &limits, run.as_ref())));
            let mut held = room.held();
            if held.work.ended(&run, answer.is_ok())
                && let Ok(answer) = answer
            {
                // What a run leaves lies scattered among what it has let go: copied to one place, the rest goes back to the system.
                let gathered = answer.clone();
                drop(answer);
                held.solved = Some(Arc::new(Solved::new(gathered, step)));
            }
            drop(held);
            room.tell();
        });
    }

    fn tell(&self) {
        self.news.send_modify(|news| *news += 1);
    }
}

#[cfg(test)]
mod tests;
