//! Solving beside the page: begun with each text, told as it goes, stopped where its text is no longer the last.

use std::sync::atomic::{AtomicBool, AtomicUsize, Ordering};
use std::sync::{Arc, Mutex, PoisonError};
use std::time::{Duration, Instant};

use elbowroom_solver::Watch;

/// A browser that has not asked for so long has gone away, and its work stops.
const PATIENCE: Duration = Duration::from_secs(8);

/// How the work stands.
#[derive(Default)]
pub(super) struct Work {
    run: Option<Arc<Run>>,
    state: State,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
enum State {
    /// Nothing was begun, or nobody wanted it any more: it begins anew where somebody asks.
    #[default]
    Idle,
    Busy,
    Done,
    Failed,
    /// Somebody stopped it.
    Halted,
}

/// One run of the solver.
pub(super) struct Run {
    stopped: AtomicBool,
    done: AtomicUsize,
    all: AtomicUsize,
    asked: Mutex<Instant>,
}

impl Watch for Run {
    fn solved(&self, done: usize, all: usize) {
        self.all.store(all, Ordering::Relaxed);
        self.done.fetch_max(done, Ordering::Relaxed);
    }

    fn is_stopped(&self) -> bool {
        let asked = *self.asked.lock().unwrap_or_else(PoisonError::into_inner);
        if asked.elapsed() > PATIENCE {
            self.stopped.store(true, Ordering::Relaxed);
        }
        self.stopped.load(Ordering::Relaxed)
    }
}

impl Work {
    /// Work that begins now, in place of what was under way.
    pub(super) fn begun(&mut self) -> Arc<Run> {
        self.stop();
        let run = Arc::new(Run {
            stopped: AtomicBool::new(false),
            done: AtomicUsize::new(0),
            all: AtomicUsize::new(0),
            asked: Mutex::new(Instant::now()),
        });
        *self = Self { run: Some(Arc::clone(&run)), state: State::Busy };
        run
    }

    /// A run has ended, well or not; false where another has taken its place meanwhile, or nobody wants what came of it.
    pub(super) fn ended(&mut self, run: &Arc<Run>, well: bool) -> bool {
        if !self.run.as_ref().is_some_and(|last| Arc::ptr_eq(last, run)) {
            return false;
        }
        let is_stopped = run.stopped.load(Ordering::Relaxed);
        self.run = None;
        self.state = match (is_stopped, well) {
            (true, _) => State::Idle,
            (false, true) => State::Done,
            (false, false) => State::Failed,
        };
        !is_stopped
    }

    /// Somebody wants to know.
    pub(super) fn somebody_asks(&self) {
        if let Some(run) = &self.run {
            *run.asked.lock().unwrap_or_else(PoisonError::into_inner) = Instant::now();
        }
    }

    /// Stops what is under way; it begins anew where somebody asks.
    pub(super) fn stop(&mut self) {
        if let Some(run) = self.run.take() {
            run.stopped.store(true, Ordering::Relaxed);
        }
        self.state = State::Idle;
    }

    /// Stops what is under way, for good.
    pub(super) fn halt(&mut self) {
        if self.state == State::Busy {
            self.stop();
            self.state = State::Halted;
        }
    }

    /// Whether the answer is that of the text.
    pub(super) fn is_done(&self) -> bool {
        self.state == State::Done
    }

    /// Whether somebody stopped it for good.
    pub(super) fn is_halted(&self) -> bool {
        self.state == State::Halted
    }

    /// Whether nothing is under way that should be.
    pub(super) fn is_idle(&self) -> bool {
        self.state == State::Idle
    }

    /// How it stands, for whoever asks.
    pub(super) fn stage(&self) -> Stage {
        match (self.state, &self.run) {
            (State::Done, _) => Stage::Done,
            (State::Failed, _) => Stage::Failed,
            (State::Halted, _) => Stage::Stopped,
            (_, Some(run)) => {
                Stage::Busy { done: run.done.load(Ordering::Relaxed), all: run.all.load(Ordering::Relaxed) }
            }
            (_, None) => Stage::Busy { done: 0, all: 0 },
        }
    }
}

/// How the work on a room stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(in crate::page) enum Stage {
    /// So many of so many arrangements are looked at.
    Busy {
        /// Looked at.
        done: usize,
        /// Of so many; 0 where that is not known yet.
        all: usize,
    },
    /// The answer is that of the text.
    Done,
    /// The text is at fault: there is nothing to work on.
    Faulty,
    /// The work broke off.
    Failed,
    /// Nobody asked any more, or somebody stopped it.
    Stopped,
}
