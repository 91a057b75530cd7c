//! The ratio run: ten problem rooms, the same programs by elbowroom and by HiGHS, one thread each, to the same proven
//! optimum. Writes the programs down for `cp_sat.py`, which does the same with CP-SAT.
//!
//! What a general solver cannot state is stated for all alike: the walkway as a strip that stays free, a door's swing and
//! other round gaps as the polygon around them. The time of the full problem (no strip, true routes, true rounds) stands
//! beside it. Elbowroom's time holds the writing of the program, HiGHS's too. Times are of the processor where the
//! system tells them (Linux), so that other work on the machine does not count.
//!
//! `cargo bench -p elbowroom-solver --features highs --bench ratio -- [ROOM]`
#![allow(missing_docs, clippy::unwrap_used, clippy::panic, reason = "a panic is how a bench fails")]
#![allow(clippy::print_stdout, reason = "the table is what the run is for")]

#[path = "../tests/solver/whole/milp.rs"]
mod milp;

use elbowroom_model::Brief;
use elbowroom_solver::arrangement::{Arrangement, enumerate};
use elbowroom_solver::program::Row;
use elbowroom_solver::routes::Floor;
use elbowroom_solver::search::{Aim, Effort, RoomGround, Stated, search, search_stated, stated};
use elbowroom_solver::site::Site;
use std::path::Path;
use std::sync::OnceLock;
use std::time::{Duration, Instant};

const ROOMS: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/../benches/rooms");

/// Where the programs are written for CP-SAT.
const PROGRAMS: &str = concat!(env!("CARGO_TARGET_TMPDIR"), "/programs");

/// A short time is measured as the mean of as many runs as fill this.
const FILL: Duration = Duration::from_millis(100);

/// Nodes that no room comes near.
const NODES: usize = 10_000_000;

#[derive(Default, Clone, Copy)]
struct Times {
    arrangements: usize,
    /// Linear programs that elbowroom solved.
    programs: usize,
    own: f64,
    highs: f64,
    full: f64,
}

fn main() {
    let only = std::env::args().skip(1).find(|argument| !argument.starts_with('-'));
    std::fs::create_dir_all(PROGRAMS).unwrap();
    println!(
        "{:<16} {:>8} {:>13} {:>11} {:>8} {:>9}",
        "room", "programs", "elbowroom ms", "HiGHS ms", "ratio", "full ms"
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
        sum.own += times.own;
        sum.highs += times.highs;
        sum.full += times.full;
    }
    print("sum", sum);
    println!("programs for cp_sat.py: {PROGRAMS}");
}

fn print(name: &str, Times { arrangements, programs, own, highs, full }: Times) {
    let [own_ms, highs_ms, full_ms] = [own, highs, full].map(|seconds| seconds * 1e3);
    let ratio = highs / own;
    println!("{name:<16} {arrangements:>8} {programs:>8} {own_ms:>12.2} {highs_ms:>11.1} {ratio:>8.1} {full_ms:>9.2}");
}

fn room(name: &str, path: &Path) -> Times {
    let text = std::fs::read_to_string(path).unwrap();
    let brief = elbowroom_model::scenario::read(&text, None).unwrap_or_else(|faults| panic!("{name}: {faults:?}"));
    let site = Site::of(&brief);
    let (ground, floor) = (RoomGround::of(&brief, &site), Floor::of(&brief, &site));
    let mut times = Times { full: full(&brief), ..Times::default() };
    for (number, arrangement) in enumerate(&brief, &site).arrangements.iter().enumerate() {
        let (own, seconds) = timed(|| search_stated(&ground, &floor, arrangement, NODES));
        times.programs += own.programs;
        let own = own.found.map(|found| found.objective);
        let start = now();
        let program = stated(&ground, arrangement).unwrap();
        let whole = milp::best(&program);
        times.highs += (now() - start).as_secs_f64();
        times.own += seconds;
        times.arrangements += 1;
        assert_same(name, arrangement, own, whole);
        write(&format!("{PROGRAMS}/{name}-{number:02}.json"), name, &program, own, seconds);
    }
    times
}

fn assert_same(name: &str, arrangement: &Arrangement, own: Option<f64>, whole: Option<f64>) {
    let same = match (own, whole) {
        (None, None) => true,
        (Some(own), Some(whole)) => (own - whole).abs() <= 1e-6 * whole.abs(),
        _ => false,
    };
    assert!(same, "{name} {}: elbowroom {own:?}, HiGHS {whole:?}", arrangement.key);
}

/// Seconds of the full problem: the room without its strip, every arrangement, with its routes and rounds as they are.
fn full(brief: &Brief) -> f64 {
    let mut brief = brief.clone();
    brief.room.fixed.retain(|fixed| fixed.kind != "strip");
    let site = Site::of(&brief);
    let (ground, floor) = (RoomGround::of(&brief, &site), Floor::of(&brief, &site));
    let enumeration = enumerate(&brief, &site);
    let effort = Effort { aim: Aim::Together, to_beat: f64::NEG_INFINITY, nodes: NODES, without: None };
    let each = enumeration.arrangements.iter();
    each.map(|arrangement| timed(|| search(&ground, &floor, arrangement, effort)).1).sum()
}

/// The answer and the mean seconds of one run.
fn timed<T>(run: impl Fn() -> T) -> (T, f64) {
    let answer = run();
    let (start, mut runs) = (now(), 0);
    while now() - start < FILL {
        std::hint::black_box(run());
        runs += 1;
    }
    (answer, (now() - start).as_secs_f64() / f64::from(runs))
}

/// Time that this thread has had of the processor; of the clock where the system does not tell.
fn now() -> Duration {
    static START: OnceLock<Instant> = OnceLock::new();
    let clock = START.get_or_init(Instant::now).elapsed();
    let told = std::fs::read_to_string("/proc/thread-self/schedstat").ok();
    let spent = told.and_then(|told| told.split_whitespace().next()?.parse().ok());
    spent.map_or(clock, Duration::from_nanos)
}

fn write(path: &str, room: &str, stated: &Stated, best: Option<f64>, seconds: f64) {
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
    });
    std::fs::write(path, written.to_string()).unwrap();
}
