//! Progress of long work, shown to somebody who watches.

use std::sync::OnceLock;
use std::time::{Duration, Instant};

use elbowroom_solver::Watch;
use indicatif::{ProgressBar, ProgressDrawTarget, ProgressStyle};

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
        match ProgressStyle::with_template(crate::words::PROGRESS) {
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
