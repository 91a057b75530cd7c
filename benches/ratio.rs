//! The ratio run: ten problem rooms, the same programs by elbowroom and by HiGHS, one thread each, to the same proven
//! optimum. Writes the programs down for `cp_sat.py`, which does the same with CP-SAT. An optimum that differs ends the run.
//!
//! What a general solver cannot state is stated for all alike: the walkway as a strip that stays free, a door's swing and
//! other round gaps as the polygon around them. The time of the full problem (no strip, true routes, true rounds) stands
//! beside it. Three kinds of program: the largest pieces, their sizes alone with nothing that settles ties, the plan.
//! HiGHS is asked twice: with the program as stated and its usual options, and tuned, with the program made ready for it. Every
//! time holds all from the measured room on: its walls, its arrangements, the program of each stated, made ready, written and
//! solved; what the arrangements have in common is stated once for all. Times are of the processor where the system tells them
//! (Linux), so that other work on the machine does not count. Memory is asked for as the program does.
//!
//! `cargo bench -p elbowroom-solver --features highs --bench ratio -- [largest|sizes|plan] [ROOM]`
#![allow(missing_docs, clippy::unwrap_used, clippy::panic, reason = "a panic is how a bench fails")]
#![allow(clippy::print_stdout, reason = "the table is what the run is for")]

mod for_cp_sat;
#[path = "../tests/solver/whole/milp.rs"]
mod milp;
mod own;
#[path = "../tests/solver/whole/prepared.rs"]
mod prepared;
#[path = "../tests/solver/whole/ranges.rs"]
mod ranges;
mod sought;
mod spent;
#[path = "../tests/solver/whole/tuned.rs"]
mod tuned;

use elbowroom_model::Brief;
use elbowroom_solver::Site;
use elbowroom_solver::arrangement::enumerate;
use elbowroom_solver::search::{RoomContext, Searched, Sought, Stated, stated};
use mimalloc::MiMalloc;
use own::{Asked, Own};
use std::path::PathBuf;

#[global_allocator]
static ALLOCATOR: MiMalloc = MiMalloc;

const ROOMS: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/../benches/rooms");

/// Where the programs are written for CP-SAT.
const PROGRAMS: &str = concat!(env!("CARGO_TARGET_TMPDIR"), "/programs");

/// Optima nearer to each other than this share are the same.
const SAME: f64 = 1e-6;

/// Seconds for one room.
#[derive(Default, Clone, Copy)]
struct Times {
    own: Own,
    stated: f64,
    tuned: f64,
}

/// A line of a table.
struct Line {
    room: String,
    arrangements: usize,
    /// Linear programs that elbowroom solved.
    programs: usize,
    times: Times,
    /// Of the full problem.
    full: f64,
}

fn main() {
    let arguments: Vec<String> = std::env::args().skip(1).filter(|argument| !argument.starts_with('-')).collect();
    if arguments.first().is_some_and(|first| first == own::COLD) {
        let asked = if arguments[3] == Asked::Best.word() { Asked::Best } else { Asked::Every };
        println!("{}", own::first_run(&read(&arguments[2]), sought::of(&arguments[1]).unwrap(), asked));
        return;
    }
    let asked_for = |name: &str| arguments.iter().any(|argument| argument == name);
    let is_any_kind = !arguments.iter().any(|argument| sought::of(argument).is_some());
    let rooms = rooms();
    let is_any_room = !rooms.iter().any(|room| asked_for(room));
    for (word, kind) in sought::KINDS.into_iter().filter(|(word, _)| is_any_kind || asked_for(word)) {
        let folder = PathBuf::from(PROGRAMS).join(word);
        std::fs::create_dir_all(&folder).unwrap();
        let mut lines = [Vec::new(), Vec::new()];
        for room in rooms.iter().filter(|room| is_any_room || asked_for(room)) {
            let brief = read(room);
            let (every, found) = line(room, &brief, kind, Asked::Every);
            let (best, _) = line(room, &brief, kind, Asked::Best);
            let own = [every.times.own, best.times.own];
            let written = for_cp_sat::room(room, &brief, kind, &found, own);
            std::fs::write(folder.join(format!("{room}.json")), written.to_string()).unwrap();
            lines[0].push(every);
            lines[1].push(best);
        }
        print(&format!("{word}, every arrangement"), &lines[0]);
        print(&format!("{word}, the best layout of the room alone"), &lines[1]);
    }
    println!("programs for cp_sat.py: {PROGRAMS}");
}

fn rooms() -> Vec<String> {
    let paths = std::fs::read_dir(ROOMS).unwrap().map(|entry| entry.unwrap().path());
    let mut rooms: Vec<String> = paths.map(|path| path.file_stem().unwrap().to_string_lossy().into_owned()).collect();
    rooms.sort();
    rooms
}

fn read(room: &str) -> Brief {
    let text = std::fs::read_to_string(format!("{ROOMS}/{room}.yaml")).unwrap();
    elbowroom_model::scenario::read(&text, None).unwrap_or_else(|faults| panic!("{room}: {faults:?}"))
}

fn line(room: &str, brief: &Brief, kind: Sought, asked: Asked) -> (Line, Vec<Searched>) {
    let (found, own) = own::run(room, brief, kind, asked);
    let optima: Vec<Option<f64>> = found.iter().map(|each| each.found.as_ref().map(|found| found.objective)).collect();
    let mut times = Times { own, ..Times::default() };
    for (seconds, best) in [(&mut times.stated, milp::best as Writer), (&mut times.tuned, tuned::best as Writer)] {
        let (others, spent) = by_highs(brief, kind, asked, best);
        assert_same(room, asked, &optima, &others);
        *seconds = spent;
    }
    let programs = found.iter().map(|searched| searched.programs).sum();
    let is_full = kind == Sought::Largest && asked == Asked::Every;
    let full = if is_full { own::full(brief) } else { 0.0 };
    (Line { room: room.to_owned(), arrangements: found.len(), programs, times, full }, found)
}

/// What HiGHS finds best of a stated program above some value.
type Writer = fn(&Stated, f64) -> Option<f64>;

/// What HiGHS finds of every arrangement, and the seconds from the measured room on.
fn by_highs(brief: &Brief, kind: Sought, asked: Asked, by: Writer) -> (Vec<Option<f64>>, f64) {
    let start = spent::now();
    let site = Site::of(brief);
    let arrangements = enumerate(brief, &site).arrangements;
    let ground = RoomContext::of(brief, &site);
    let mut best = f64::NEG_INFINITY;
    let solve = |arrangement| {
        let found = by(&stated(&ground, arrangement, kind).unwrap(), asked.least(best));
        best = found.map_or(best, |found| found.max(best));
        found
    };
    let found = arrangements.iter().map(solve).collect();
    (found, (spent::now() - start).as_secs_f64())
}

/// Every optimum is the same; where the best alone is asked for, that one.
fn assert_same(room: &str, asked: Asked, own: &[Option<f64>], others: &[Option<f64>]) {
    let (own, others) = match asked {
        Asked::Every => (own.to_vec(), others.to_vec()),
        Asked::Best => (vec![highest(own)], vec![highest(others)]),
    };
    for (number, (own, other)) in own.into_iter().zip(others).enumerate() {
        let same = match (own, other) {
            (None, None) => true,
            (Some(own), Some(other)) => (own - other).abs() <= SAME * other.abs().max(1.0),
            _ => false,
        };
        assert!(same, "{room}, {} {number}: elbowroom {own:?}, HiGHS {other:?}", asked.word());
    }
}

fn highest(all: &[Option<f64>]) -> Option<f64> {
    all.iter().copied().flatten().reduce(f64::max)
}

fn print(title: &str, lines: &[Line]) {
    println!("\n{title}: ms, and how many times elbowroom's (warm; in brackets cold)\n");
    println!(
        "| room | arrangements | programs | elbowroom | cold | HiGHS as stated | times | HiGHS tuned | times | full |"
    );
    println!("| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |");
    let mut sum = Line { room: "sum".to_owned(), arrangements: 0, programs: 0, times: Times::default(), full: 0.0 };
    for line in lines {
        print_line(line);
        sum.arrangements += line.arrangements;
        sum.programs += line.programs;
        sum.full += line.full;
        let (all, one) = (&mut sum.times, line.times);
        all.own.warm += one.own.warm;
        all.own.cold += one.own.cold;
        all.stated += one.stated;
        all.tuned += one.tuned;
    }
    print_line(&sum);
    let least = |other: fn(&Times) -> f64, own: fn(&Own) -> f64| {
        let all = lines.iter().map(|line| other(&line.times) / own(&line.times.own));
        all.fold(f64::INFINITY, f64::min)
    };
    let both =
        |other: fn(&Times) -> f64| format!("{:.0} ({:.0})", least(other, |own| own.warm), least(other, |own| own.cold));
    println!("| least | | | | | | {} | | {} | |", both(|times| times.stated), both(|times| times.tuned));
}

fn print_line(Line { room, arrangements, programs, times, full }: &Line) {
    let Times { own, stated, tuned } = times;
    let against = |other: &f64| format!("{:.0} | {:.0} ({:.0})", other * 1e3, other / own.warm, other / own.cold);
    let full = if *full > 0.0 { format!("{:.0}", full * 1e3) } else { String::new() };
    let (warm, cold) = (own.warm * 1e3, own.cold * 1e3);
    println!(
        "| {room} | {arrangements} | {programs} | {warm:.1} | {cold:.1} | {} | {} | {full} |",
        against(stated),
        against(tuned)
    );
}
