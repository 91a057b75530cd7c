//! The ratio run: ten problem rooms, the same programs by elbowroom and by HiGHS, one thread each, to the same proven
//! optimum. Writes the programs down for `cp_sat.py`, which does the same with CP-SAT.
//!
//! What a general solver cannot state is stated for all alike: the walkway as a strip that stays free, a door's swing and
//! other round gaps as the polygon around them. The time of the full problem (no strip, true routes, true rounds) stands
//! beside it. The best layout of the room alone is asked for too: each arrangement need only be better than those before it.
//! Elbowroom's time holds all from the measured room on: its walls and floor made ready, and the program of each arrangement
//! written, of which what the arrangements have in common is written once, for HiGHS too. Times are of the processor where
//! the system tells them (Linux), so that other work on the machine does not count. Memory is asked for as the program does.
//!
//! `cargo bench -p elbowroom-solver --features highs --bench ratio -- [ROOM]`
#![allow(missing_docs, clippy::unwrap_used, clippy::panic, reason = "a panic is how a bench fails")]
#![allow(clippy::print_stdout, reason = "the table is what the run is for")]

#[path = "../tests/solver/whole/milp.rs"]
mod milp;
mod spent;

use elbowroom_model::Brief;
use elbowroom_solver::Site;
use elbowroom_solver::arrangement::{Arrangement, enumerate};
use elbowroom_solver::program::Row;
use elbowroom_solver::routes::Floor;
use elbowroom_solver::search::{Aim, Effort, RoomContext, Searched, Sought, Stated, search, search_stated, stated};
use mimalloc::MiMalloc;
use std::path::Path;
use std::time::Duration;

#[global_allocator]
static ALLOCATOR: MiMalloc = MiMalloc;

const ROOMS: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/../benches/rooms");

/// Where the programs are written for CP-SAT.
const PROGRAMS: &str = concat!(env!("CARGO_TARGET_TMPDIR"), "/programs");

/// A short time is measured as the mean of as many runs as fill this.
const FILL: Duration = Duration::from_millis(100);

/// Nodes that no room comes near.
const NODES: usize = 10_000_000;

/// Optima nearer to each other than this share are the same.
const SAME: f64 = 1e-6;

#[derive(Default, Clone, Copy)]
struct Times {
    arrangements: usize,
    /// Linear programs that elbowroom solved.
    programs: usize,
    /// Seconds for the best layout of every arrangement.
    all: Pair,
    /// Seconds for the best layout of the room: an arrangement need only be better than the best before it.
    best: Pair,
    full: f64,
}

#[derive(Default, Clone, Copy)]
struct Pair {
    own: f64,
    highs: f64,
}

impl Pair {
    fn plus(&mut self, other: Self) {
        self.own += other.own;
        self.highs += other.highs;
    }
}

fn main() {
    let only = std::env::args().skip(1).find(|argument| !argument.starts_with('-'));
    std::fs::create_dir_all(PROGRAMS).unwrap();
    println!(
        "{:<16} {:>8} {:>8} | {:>9} {:>9} {:>6} | {:>9} {:>9} {:>6} | {:>9}",
        "room", "arranged", "programs", "own ms", "HiGHS ms", "times", "best only", "HiGHS ms", "times", "full ms"
    );
    let mut sum = Times::default();
    let mut paths: Vec<_> = std::fs::read_dir(ROOMS).unwrap().map(|entry| entry.unwrap().path()).collect();
    paths.sort();
    for path in paths {
        let name = path.file_stem().unwrap().to_string_lossy().into_owned();
        if only.as_ref().is_some_and(|only| *only != name) {
            continue;
        }
        let times = room(&name, &path);
        print(&name, times);
        sum.arrangements += times.arrangements;
        sum.programs += times.programs;
        sum.all.plus(times.all);
        sum.best.plus(times.best);
        sum.full += times.full;
    }
    print("sum", sum);
    println!("programs for cp_sat.py: {PROGRAMS}");
}

fn print(name: &str, Times { arrangements, programs, all, best, full }: Times) {
    let pair = |Pair { own, highs }: Pair| format!("{:>9.2} {:>9.1} {:>6.1}", own * 1e3, highs * 1e3, highs / own);
    println!("{name:<16} {arrangements:>8} {programs:>8} | {} | {} | {:>9.2}", pair(all), pair(best), full * 1e3);
}

fn room(name: &str, path: &Path) -> Times {
    let text = std::fs::read_to_string(path).unwrap();
    let brief = elbowroom_model::scenario::read(&text, None).unwrap_or_else(|faults| panic!("{name}: {faults:?}"));
    let site = Site::of(&brief);
    let arrangements = enumerate(&brief, &site).arrangements;
    let (all, own) = spent::mean(FILL, || layouts(&brief, &site, &arrangements, |_| f64::NEG_INFINITY));
    let (best, best_own) = spent::mean(FILL, || layouts(&brief, &site, &arrangements, above));
    let programs = all.iter().map(|searched| searched.programs).sum();
    let mut times = Times { arrangements: arrangements.len(), programs, full: full(&brief), ..Times::default() };
    (times.all.own, times.best.own) = (own, best_own);
    let ground = RoomContext::of(&brief, &site);
    let mut to_beat = f64::NEG_INFINITY;
    for (number, arrangement) in arrangements.iter().enumerate() {
        let found = all[number].found.as_ref().map(|found| found.objective);
        let (whole, highs) = by_highs(&ground, arrangement, f64::NEG_INFINITY);
        assert_same(name, arrangement, found, whole);
        times.all.highs += highs;
        let (whole, highs) = by_highs(&ground, arrangement, above(to_beat));
        assert_same(name, arrangement, best[number].found.as_ref().map(|found| found.objective), whole);
        times.best.highs += highs;
        let each = arrangements.len() as f64;
        let program = stated(&ground, arrangement, Sought::Largest).unwrap();
        write(&format!("{PROGRAMS}/{name}-{number:02}.json"), name, &program, found, (own / each, best_own / each));
        to_beat = found.unwrap_or(to_beat).max(to_beat);
    }
    times
}

/// The best layout of every arrangement of a room; `least` says from the best so far what the next must be above.
fn layouts(brief: &Brief, site: &Site, arrangements: &[Arrangement], least: impl Fn(f64) -> f64) -> Vec<Searched> {
    let (ground, floor) = (RoomContext::of(brief, site), Floor::of(brief, site));
    let mut best = f64::NEG_INFINITY;
    let search = |arrangement| {
        let searched = search_stated(&ground, &floor, arrangement, Sought::Largest, NODES, least(best));
        best = searched.found.as_ref().map_or(best, |found| found.objective.max(best));
        searched
    };
    arrangements.iter().map(search).collect()
}

/// What HiGHS finds that is not below `least`, and how long stating and solving take it.
fn by_highs(ground: &RoomContext<'_>, arrangement: &Arrangement, least: f64) -> (Option<f64>, f64) {
    let start = spent::now();
    let whole = milp::best(&stated(ground, arrangement, Sought::Largest).unwrap(), least);
    (whole, (spent::now() - start).as_secs_f64())
}

/// A little more, so that the same again is no better.
fn above(value: f64) -> f64 {
    if value.is_finite() { value + SAME * value.abs() } else { value }
}

fn assert_same(name: &str, arrangement: &Arrangement, own: Option<f64>, whole: Option<f64>) {
    let same = match (own, whole) {
        (None, None) => true,
        (Some(own), Some(whole)) => (own - whole).abs() <= SAME * whole.abs(),
        _ => false,
    };
    assert!(same, "{name} {}: elbowroom {own:?}, HiGHS {whole:?}", arrangement.key);
}

/// Seconds of the full problem: the room without its strip, every arrangement, with its routes and rounds as they are.
fn full(brief: &Brief) -> f64 {
    let mut brief = brief.clone();
    brief.room.fixed.retain(|fixed| fixed.kind != "strip");
    let site = Site::of(&brief);
    let arrangements = enumerate(&brief, &site).arrangements;
    let effort = Effort::of(Aim::Together, NODES);
    let solve = || {
        let (ground, floor) = (RoomContext::of(&brief, &site), Floor::of(&brief, &site));
        arrangements.iter().map(|arrangement| search(&ground, &floor, arrangement, effort).programs).sum::<usize>()
    };
    spent::mean(FILL, solve).1
}

fn write(path: &str, room: &str, stated: &Stated, best: Option<f64>, (seconds, best_seconds): (f64, f64)) {
    let rows = |rows: &[Row]| -> Vec<serde_json::Value> {
        rows.iter().map(|row| serde_json::json!({ "terms": row.terms.as_slice(), "most": row.most })).collect()
    };
    let choices = stated.choices.iter().map(|choice| {
        let alternatives: Vec<_> = choice.alternatives.iter().map(|alternative| rows(alternative)).collect();
        serde_json::json!({ "when": choice.when, "alternatives": alternatives })
    });
    let written = serde_json::json!({
        "room": room,
        "objective": stated.objective,
        "constant": stated.constant,
        "bounds": stated.bounds,
        "always": rows(&stated.always),
        "ways": stated.ways,
        "choices": choices.collect::<Vec<_>>(),
        "best": best,
        "seconds": seconds,
        "best_seconds": best_seconds,
    });
    std::fs::write(path, written.to_string()).unwrap();
}
