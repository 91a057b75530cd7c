//! Progress of long work, shown to somebody who watches.

use std::collections::{BTreeMap, HashMap};
use std::sync::{Mutex, OnceLock};
use std::thread::ThreadId;
use std::time::{Duration, Instant};

use elbowroom_solver::{Part, Watch, shop};
use indicatif::{ProgressBar, ProgressDrawTarget, ProgressState, ProgressStyle};

use crate::process::outlet::Outlet;
use crate::words::progress;

/// Work that ends sooner shows no bar: it would only flicker.
const PATIENCE: Duration = Duration::from_millis(700);

/// A bar on standard error, drawn once the work has gone on for a while.
pub(crate) struct Bar {
    started: Instant,
    bar: OnceLock<ProgressBar>,
}

impl Bar {
    /// A bar for work that starts now.
    pub(crate) fn new() -> Self {
        Self { started: Instant::now(), bar: OnceLock::new() }
    }

    /// Takes the bar off the screen.
    pub(crate) fn clear(&self) {
        if let Some(bar) = self.bar.get() {
            bar.finish_and_clear();
        }
    }

    fn drawn(all: usize) -> ProgressBar {
        let bar = ProgressBar::with_draw_target(Some(all as u64), ProgressDrawTarget::stderr());
        match ProgressStyle::with_template(progress::ARRANGEMENTS) {
            Ok(style) => bar.with_style(style),
            Err(_) => bar,
        }
    }
}

impl Watch for Bar {
    fn solved(&self, done: usize, all: usize) {
        if self.started.elapsed() < PATIENCE {
            return;
        }
        let bar = self.bar.get_or_init(|| Self::drawn(all));
        bar.set_length(all as u64);
        // Threads report in any order; the bar never runs back.
        if done as u64 > bar.position() {
            bar.set_position(done as u64);
        }
    }
}

/// A count on standard error of what was tried, where nobody knows how much there will be.
pub(crate) struct CountBar(ProgressBar);

impl CountBar {
    /// A count for work that starts now.
    pub(crate) fn new() -> Self {
        let bar = ProgressBar::with_draw_target(None, ProgressDrawTarget::stderr_with_hz(5));
        match ProgressStyle::with_template(progress::TRIED) {
            Ok(style) => Self(bar.with_style(style)),
            Err(_) => Self(bar),
        }
    }

    /// Takes the count off the screen.
    pub(crate) fn clear(&self) {
        self.0.finish_and_clear();
    }
}

impl shop::Watch for CountBar {
    fn solved(&self, more: usize) {
        self.0.inc(more as u64);
    }
}

/// A bar over many rooms: how many are done, how fast, and how long it will take.
pub(crate) struct RoomsBar(ProgressBar);

impl RoomsBar {
    /// A bar for work that starts now, over so many rooms where that is known; hidden where nobody watches.
    pub(crate) fn new(count: Option<usize>, stderr: &Outlet<'_>) -> Self {
        let shown = stderr.is_terminal();
        let target = if shown { ProgressDrawTarget::stderr_with_hz(5) } else { ProgressDrawTarget::hidden() };
        let bar = ProgressBar::with_draw_target(count.map(|count| count as u64), target);
        let template = if count.is_some() { progress::ROOMS } else { progress::ROOMS_OPEN };
        let rate = |state: &ProgressState, to: &mut dyn std::fmt::Write| {
            let _ = write!(to, "{:.1}", state.per_sec());
        };
        match ProgressStyle::with_template(template) {
            Ok(style) => Self(bar.with_style(style.with_key("rate", rate))),
            Err(_) => Self(bar),
        }
    }

    /// One more room is done.
    pub(crate) fn one_more(&self) {
        self.0.inc(1);
    }

    /// Takes the bar off the screen.
    pub(crate) fn clear(&self) {
        self.0.finish_and_clear();
    }
}

/// How long each part of the work took. On one thread the parts add up to the whole.
#[derive(Debug, Default)]
pub(crate) struct Stopwatch {
    running: Mutex<HashMap<ThreadId, Instant>>,
    taken: Mutex<BTreeMap<Part, Duration>>,
}

impl Stopwatch {
    /// What each part took so far, in the order in which they come.
    pub(crate) fn taken(&self) -> Vec<(Part, Duration)> {
        self.taken.lock().map(|taken| taken.iter().map(|(part, took)| (*part, *took)).collect()).unwrap_or_default()
    }
}

impl Watch for Stopwatch {
    fn solved(&self, _done: usize, _all: usize) {}

    fn began(&self, _part: Part) {
        if let Ok(mut running) = self.running.lock() {
            running.insert(std::thread::current().id(), Instant::now());
        }
    }

    fn ended(&self, part: Part) {
        let began = self.running.lock().ok().and_then(|mut running| running.remove(&std::thread::current().id()));
        if let (Some(began), Ok(mut taken)) = (began, self.taken.lock()) {
            *taken.entry(part).or_default() += began.elapsed();
        }
    }
}
