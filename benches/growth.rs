//! How the work grows with the pieces and with the corners of a room: time of the processor for one ranking, and the
//! exponent of a line through the logarithms. Draws them too.
//!
//! `cargo bench -p elbowroom-solver --bench growth -- benches/growth.svg`
#![allow(missing_docs, clippy::unwrap_used, reason = "a bench is read by its output; a panic is how it fails")]
#![allow(clippy::print_stdout, reason = "the table is what the run is for")]

mod spent;

use elbowroom_model::{Brief, scenario};
use elbowroom_solver::answer::Answer;
use elbowroom_solver::{Limits, Unwatched, rank};
use plotters::prelude::{
    BLACK, ChartBuilder, Circle, Color, Cross, IntoDrawingArea, IntoLogRange, LineSeries, PointSeries, SVGBackend,
    SeriesLabelPosition, TriangleMarker, WHITE,
};
use std::fmt::Write as _;
use std::time::Duration;

/// Pieces in the order in which they come; from the fifth on they stand if they fit.
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
fn timed(brief: &Brief) -> (f64, Answer) {
    let pool = rayon::ThreadPoolBuilder::new().num_threads(1).build().unwrap();
    let limits = Limits { shown: 0, ..Limits::default() };
    let (answer, seconds) = pool.install(|| spent::mean(FILL, || rank(brief, &limits, &Unwatched)));
    (seconds, answer)
}

/// Slope of the line through the logarithms, by least squares.
fn exponent(points: &[(f64, f64)]) -> f64 {
    let logs: Vec<(f64, f64)> = points.iter().map(|(size, time)| (size.ln(), time.ln())).collect();
    let count = logs.len() as f64;
    let (mx, my) = (logs.iter().map(|p| p.0).sum::<f64>() / count, logs.iter().map(|p| p.1).sum::<f64>() / count);
    logs.iter().map(|(x, y)| (x - mx) * (y - my)).sum::<f64>() / logs.iter().map(|(x, _)| (x - mx).powi(2)).sum::<f64>()
}

/// Time in seconds against size.
type Points = Vec<(f64, f64)>;

fn series(name: &str, rooms: impl Iterator<Item = (usize, Brief)>) -> Points {
    println!("{name:>8} {:>9} {:>8} {:>9} {:>8} {:>7}", "arranged", "nodes", "programs", "ms", "proven");
    let mut points = Vec::new();
    for (size, brief) in rooms {
        let (seconds, answer) = timed(&brief);
        let arranged = answer.work.arrangements - answer.work.dropped;
        let proven = answer.options.iter().filter(|option| option.largest.proven).count();
        let (nodes, programs, all) = (answer.work.nodes, answer.work.programs, answer.options.len());
        println!("{size:>8} {arranged:>9} {nodes:>8} {programs:>9} {:>8.1} {proven:>3}/{all}", seconds * 1e3);
        points.push((size as f64, seconds));
    }
    println!("time grows with the {:.1}th power of the {name}\n", exponent(&points));
    points
}

/// Both axes by powers; each line has its own marks.
fn draw(path: &str, [pieces, corners, oblique]: [&Points; 3]) -> Result<(), Box<dyn std::error::Error>> {
    let sheet = SVGBackend::new(path, (760, 480)).into_drawing_area();
    sheet.fill(&WHITE)?;
    let most = [pieces, corners, oblique].into_iter().flatten().map(|point| point.1).fold(0.0, f64::max);
    let mut chart = ChartBuilder::on(&sheet)
        .margin(16)
        .x_label_area_size(44)
        .y_label_area_size(64)
        .build_cartesian_2d((2.0..44.0f64).log_scale(), (1e-1..most * 2e3).log_scale())?;
    chart.configure_mesh().x_desc("pieces, or corners of the room").y_desc("one ranking, ms").draw()?;
    let scaled = |points: &Points| -> Points { points.iter().map(|(size, time)| (*size, time * 1e3)).collect() };
    let line = |points: &Points| LineSeries::new(scaled(points), BLACK.mix(0.6));
    chart.draw_series(line(pieces))?;
    chart
        .draw_series(PointSeries::of_element(scaled(pieces), 5, BLACK.filled(), &Circle::new))?
        .label("pieces")
        .legend(|(x, y)| Circle::new((x + 8, y), 5, BLACK.filled()));
    chart.draw_series(line(corners))?;
    chart
        .draw_series(PointSeries::of_element(scaled(corners), 5, BLACK.stroke_width(2), &Cross::new))?
        .label("corners, five pieces")
        .legend(|(x, y)| Cross::new((x + 8, y), 5, BLACK.stroke_width(2)));
    chart.draw_series(line(oblique))?;
    chart
        .draw_series(PointSeries::of_element(scaled(oblique), 6, BLACK.stroke_width(1), &TriangleMarker::new))?
        .label("pieces, room askew")
        .legend(|(x, y)| TriangleMarker::new((x + 8, y), 6, BLACK.stroke_width(1)));
    chart
        .configure_series_labels()
        .position(SeriesLabelPosition::UpperLeft)
        .background_style(WHITE)
        .border_style(BLACK.mix(0.4))
        .draw()?;
    Ok(sheet.present()?)
}

fn main() {
    let path = std::env::args().skip(1).find(|argument| !argument.starts_with('-'));
    let pieces = series("pieces", (2..=12).map(|pieces| (pieces, room(pieces, &outline(0, 0.0)))));
    let alcoves = (0..=9).map(|alcoves| (4 + 4 * alcoves, room(5, &outline(alcoves, 0.0))));
    let corners = series("corners", alcoves);
    // An alcove and the whole askew in the plan: no axis of any piece is one of the plan's.
    let oblique = series("oblique", (2..=8).map(|pieces| (pieces, room(pieces, &outline(1, 27.0)))));
    if let Some(path) = path {
        draw(&path, [&pieces, &corners, &oblique]).unwrap();
    }
}
