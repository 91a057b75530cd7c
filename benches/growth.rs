//! How the work grows with the pieces and with the corners of a room: time of the processor for one ranking, and the
//! exponent of a line through the logarithms.
//!
//! `cargo bench -p elbowroom-solver --bench growth`
#![allow(missing_docs, clippy::unwrap_used, reason = "a bench is read by its output; a panic is how it fails")]
#![allow(clippy::print_stdout, reason = "the table is what the run is for")]

use elbowroom_model::{Brief, scenario};
use elbowroom_solver::{Limits, Outcome, Unwatched, rank};
use std::fmt::Write as _;
use std::time::{Duration, Instant};

/// Pieces in the order in which they come; from the fourth on they stand if they fit.
const PIECES: [&str; 12] = [
    "kind: sofa",
    "kind: coffee-table",
    "kind: media-unit, screen: 55 in",
    "kind: armchair",
    "kind: bookcase",
    "kind: side-table",
    "kind: floor-lamp",
    "kind: sideboard",
    "kind: desk",
    "kind: rug",
    "kind: bookcase, name: second bookcase",
    "kind: floor-lamp, name: second lamp",
];
const MUST_STAND: usize = 4;

/// A short time is the mean of as many runs as fill this.
const FILL: Duration = Duration::from_millis(200);

type At = (f64, f64);

/// Corners of a room of 7 by 5.2 m with alcoves 400 mm deep in its long walls, clockwise from the left end of the upper
/// one: four corners each.
fn outline(alcoves: usize, turned: f64) -> Vec<At> {
    const WIDTH: f64 = 7000.0;
    const DEPTH: f64 = 5200.0;
    let (above, below) = (alcoves.div_ceil(2), alcoves / 2);
    let mut corners = along_wall(above, WIDTH, 0.0, 400.0);
    let mut lower = along_wall(below, WIDTH, -DEPTH, -400.0);
    lower.reverse();
    corners.extend(lower);
    let (sin, cos) = turned.to_radians().sin_cos();
    corners.into_iter().map(|(x, y)| (x * cos - y * sin, x * sin + y * cos)).collect()
}

fn along_wall(alcoves: usize, width: f64, y: f64, deep: f64) -> Vec<At> {
    let step = width / (2 * alcoves + 1) as f64;
    let mut corners = vec![(0.0, y)];
    for alcove in 0..alcoves {
        let (from, to) = (step * (2 * alcove + 1) as f64, step * (2 * alcove + 2) as f64);
        corners.extend([(from, y), (from, y + deep), (to, y + deep), (to, y)]);
    }
    corners.push((width, y));
    corners
}

/// The room with the first so many pieces: a door in its right wall, a window in its left.
fn room(pieces: usize, corners: &[At]) -> Brief {
    let mut text = "name: Growing\nunits: mm\nmeasured_within: 0\nwalls:\n".to_owned();
    let longest = |place: usize| {
        let (a, b) = (corners[place], corners[(place + 1) % corners.len()]);
        (a.0 - b.0).hypot(a.1 - b.1)
    };
    let ends: Vec<usize> = (0..corners.len()).filter(|place| (longest(*place) - 5200.0).abs() < 1.0).collect();
    for (place, (x, y)) in corners.iter().enumerate() {
        let held = match ends.iter().position(|end| *end == place) {
            Some(0) => "kind: door, name: door, at: 300, width: 830, hinge: left, swings: in, leads_to: entrance",
            Some(1) => "kind: window, name: window, at: 1600, width: 2000, view: liked",
            _ => "",
        };
        let holds = if held.is_empty() { String::new() } else { format!(", holds: [{{ {held} }}]") };
        let _ = writeln!(text, "  - {{ name: wall {place}, start: [{x:.6}, {y:.6}]{holds} }}");
    }
    text.push_str("pieces:\n");
    for (place, piece) in PIECES.iter().take(pieces).enumerate() {
        let needed = if place < MUST_STAND { "" } else { ", needed: false" };
        let _ = writeln!(text, "  - {{ {piece}{needed} }}");
    }
    scenario::read(&text, None).unwrap()
}

/// Mean time of one ranking on one thread, and what came of it.
fn timed(brief: &Brief) -> (f64, Outcome) {
    let pool = rayon::ThreadPoolBuilder::new().num_threads(1).build().unwrap();
    let once = || pool.install(|| rank(brief, &Limits { shown: 0, ..Limits::default() }, &Unwatched));
    let outcome = once();
    let (started, mut runs) = (Instant::now(), 0);
    while runs == 0 || started.elapsed() < FILL {
        once();
        runs += 1;
    }
    (started.elapsed().as_secs_f64() / f64::from(runs), outcome)
}

/// Slope of the line through the logarithms, by least squares.
fn exponent(points: &[(f64, f64)]) -> f64 {
    let logs: Vec<(f64, f64)> = points.iter().map(|(size, time)| (size.ln(), time.ln())).collect();
    let count = logs.len() as f64;
    let (mx, my) = (logs.iter().map(|p| p.0).sum::<f64>() / count, logs.iter().map(|p| p.1).sum::<f64>() / count);
    logs.iter().map(|(x, y)| (x - mx) * (y - my)).sum::<f64>() / logs.iter().map(|(x, _)| (x - mx).powi(2)).sum::<f64>()
}

fn series(name: &str, rooms: impl Iterator<Item = (usize, Brief)>) {
    println!("{name:>8} {:>9} {:>8} {:>9} {:>8} {:>7}", "arranged", "nodes", "programs", "ms", "proven");
    let mut points = Vec::new();
    for (size, brief) in rooms {
        let (seconds, outcome) = timed(&brief);
        let arranged = outcome.work.arrangements - outcome.work.dropped;
        let proven = outcome.options.iter().filter(|option| option.proven).count();
        let (nodes, programs, all) = (outcome.work.nodes, outcome.work.programs, outcome.options.len());
        println!("{size:>8} {arranged:>9} {nodes:>8} {programs:>9} {:>8.1} {proven:>3}/{all}", seconds * 1e3);
        points.push((size as f64, seconds));
    }
    println!("time grows with the {:.1}th power of the {name}\n", exponent(&points));
}

fn main() {
    series("pieces", (2..=12).map(|pieces| (pieces, room(pieces, &outline(0, 0.0)))));
    let alcoves = (0..=9).map(|alcoves| (4 + 4 * alcoves, room(5, &outline(alcoves, 0.0))));
    series("corners", alcoves);
    // The same room askew in the plan: no axis of any piece is one of the plan's.
    series("oblique", (2..=8).map(|pieces| (pieces, room(pieces, &outline(1, 27.0)))));
}
