//! Elbowroom's side of the ratio run: from the measured room on, walls and floor made ready, arrangements enumerated, the
//! program of each stated and solved. Warm is the mean of many runs; cold the median of first runs, each in a process of its own.

use super::{sought, spent};
use elbowroom_model::Brief;
use elbowroom_solver::Site;
use elbowroom_solver::arrangement::enumerate;
use elbowroom_solver::routes::Floor;
use elbowroom_solver::search::{Aim, Effort, RoomContext, Searched, Sought, search, search_stated};
use std::process::Command;
use std::time::Duration;

/// A short time is measured as the mean of as many runs as fill this.
const FILL: Duration = Duration::from_millis(200);

/// First runs in processes of their own.
const COLD_RUNS: usize = 5;

/// Nodes that no room comes near.
const NODES: usize = 10_000_000;

/// What must be better by less than this share is the same again.
const SAME: f64 = 1e-6;

/// The word that asks this program for one first run.
pub(crate) const COLD: &str = "cold";

/// What is asked of a room: the best layout of every arrangement, or only the best of the room, where an arrangement need only
/// be better than those before it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Asked {
    /// Of every arrangement.
    Every,
    /// Of the room.
    Best,
}

impl Asked {
    /// What the next layout must be above.
    pub(crate) fn least(self, best: f64) -> f64 {
        match self {
            Self::Best if best.is_finite() => best + SAME * best.abs(),
            _ => f64::NEG_INFINITY,
        }
    }

    pub(crate) const fn word(self) -> &'static str {
        match self {
            Self::Every => "every",
            Self::Best => "best",
        }
    }
}

/// Seconds of elbowroom for one room.
#[derive(Debug, Clone, Copy, Default)]
pub(crate) struct Own {
    pub(crate) warm: f64,
    pub(crate) cold: f64,
}

/// What elbowroom finds of every arrangement, and how long it takes.
pub(crate) fn run(name: &str, brief: &Brief, kind: Sought, asked: Asked) -> (Vec<Searched>, Own) {
    let (found, warm) = spent::mean(FILL, || layouts(brief, kind, asked));
    assert!(found.iter().all(|searched| is_proven(searched, asked)), "{name}: not all is proven");
    let mut runs: Vec<f64> = (0..COLD_RUNS).map(|_| first_run_elsewhere(name, kind, asked)).collect();
    runs.sort_by(f64::total_cmp);
    (found, Own { warm, cold: runs[COLD_RUNS / 2] })
}

fn is_proven(searched: &Searched, asked: Asked) -> bool {
    match &searched.found {
        Some(found) => found.bound - found.objective <= SAME * found.objective.abs().max(1.0),
        None => searched.is_complete || asked == Asked::Best,
    }
}

fn layouts(brief: &Brief, kind: Sought, asked: Asked) -> Vec<Searched> {
    let site = Site::of(brief);
    let arrangements = enumerate(brief, &site).arrangements;
    let (ground, floor) = (RoomContext::of(brief, &site), Floor::of(brief, &site));
    let mut best = f64::NEG_INFINITY;
    let search = |arrangement| {
        let searched = search_stated(&ground, &floor, arrangement, kind, NODES, asked.least(best));
        best = searched.found.as_ref().map_or(best, |found| found.objective.max(best));
        searched
    };
    arrangements.iter().map(search).collect()
}

/// Seconds of the very first run in this process.
pub(crate) fn first_run(brief: &Brief, kind: Sought, asked: Asked) -> f64 {
    let start = spent::now();
    std::hint::black_box(layouts(brief, kind, asked));
    (spent::now() - start).as_secs_f64()
}

fn first_run_elsewhere(name: &str, kind: Sought, asked: Asked) -> f64 {
    let this = std::env::current_exe().unwrap();
    let told = Command::new(this).args([COLD, sought::word(kind), name, asked.word()]).output().unwrap();
    String::from_utf8(told.stdout).unwrap().trim().parse().unwrap()
}

/// Seconds of the full problem: the room without its strip, every arrangement, with its routes and rounds as they are.
pub(crate) fn full(brief: &Brief) -> f64 {
    let mut brief = brief.clone();
    brief.room.fixed.retain(|fixed| fixed.kind != "strip");
    let effort = Effort::of(Aim::Together, NODES);
    let solve = || {
        let site = Site::of(&brief);
        let arrangements = enumerate(&brief, &site).arrangements;
        let (ground, floor) = (RoomContext::of(&brief, &site), Floor::of(&brief, &site));
        arrangements.iter().map(|arrangement| search(&ground, &floor, arrangement, effort).programs).sum::<usize>()
    };
    spent::mean(FILL, solve).1
}
