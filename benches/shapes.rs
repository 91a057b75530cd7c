//! Pairs of shapes and a room's outline with what `solver::geometry` says of them, a line each, for `shapely_shapes.py`, which
//! asks GEOS the same.
#![allow(missing_docs, clippy::print_stdout, clippy::unwrap_used, reason = "a bench is read by its output")]
#![allow(unreachable_pub, dead_code, reason = "the draw is that of the tests")]

#[path = "../tests/support/varied.rs"]
mod varied;

use elbowroom_model::Point;
use elbowroom_solver::geometry::{Convex, Outline, apart, convex_parts, gap, hull_and_pockets, meets, overlap_depth};
use serde_json::{Value, json};
use varied::Draw;

/// Pairs where no other number is given.
const PAIRS: u64 = 100_000;

fn share(draw: &mut Draw) -> f64 {
    draw.from(0, 1 << 30) as f64 / (1_u64 << 30) as f64
}

fn between(draw: &mut Draw, low: f64, high: f64) -> f64 {
    low + share(draw) * (high - low)
}

fn turned(by: f64, (x, y): (f64, f64)) -> Point {
    Point::new(x * by.cos() - y * by.sin(), x * by.sin() + y * by.cos())
}

/// A block, a block at an angle, a convex polygon of up to nine corners on an ellipse, or a segment, about a middle.
fn shape(draw: &mut Draw, middle: Point) -> Vec<Point> {
    let (width, depth) = (between(draw, 100.0, 2600.0).round(), between(draw, 100.0, 1400.0).round());
    let (w, d) = (width / 2.0, depth / 2.0);
    let by = if draw.one_in(3) { between(draw, 0.0, std::f64::consts::TAU) } else { 0.0 };
    let corners: Vec<(f64, f64)> = match draw.from(0, 9) {
        0 => vec![(-w, 0.0), (w, 0.0)],
        1..=3 => {
            let count = draw.from(3, 9);
            let mut angles: Vec<f64> = (0..count).map(|_| between(draw, 0.0, std::f64::consts::TAU)).collect();
            angles.sort_by(f64::total_cmp);
            angles.dedup_by(|one, other| (*one - *other).abs() < 0.01);
            if angles.len() < 3 {
                angles = vec![0.3, 2.1, 4.4];
            }
            angles.into_iter().map(|angle| (w * angle.cos(), d * angle.sin())).collect()
        }
        _ => vec![(-w, -d), (w, -d), (w, d), (-w, d)],
    };
    corners.into_iter().map(|corner| middle + turned(by, corner)).collect()
}

/// A room's outline, counter-clockwise: a rectangle, one with a corner out of it, or a ring of any simple form.
fn room(draw: &mut Draw) -> Vec<Point> {
    let (w, d) = (between(draw, 2500.0, 7000.0).round(), between(draw, 2200.0, 5500.0).round());
    let (x, y) = ((w * between(draw, 0.1, 0.6)).round(), (d * between(draw, 0.1, 0.6)).round());
    let corners: Vec<(f64, f64)> = match draw.from(0, 3) {
        0 => vec![(0.0, 0.0), (w, 0.0), (w, d), (0.0, d)],
        1 => vec![(0.0, 0.0), (w, 0.0), (w, d - y), (w - x, d - y), (w - x, d), (0.0, d)],
        2 => vec![(0.0, 0.0), (w, 0.0), (w, d), (w - x, d), (w - x, d - y), (x / 2.0, d - y), (x / 2.0, d), (0.0, d)],
        // From a middle every corner is seen: the ring does not cross itself.
        _ => {
            let count = draw.from(5, 11);
            let corner = |corner: u64| {
                let (angle, far) = (corner as f64 * std::f64::consts::TAU / count as f64, between(draw, 0.4, 1.0));
                (w / 2.0 * (1.0 + far * angle.cos()), d / 2.0 * (1.0 + far * angle.sin()))
            };
            (0..count).map(corner).collect()
        }
    };
    corners.into_iter().map(|(x, y)| Point::new(x, y)).collect()
}

/// The second moved so that it touches the first exactly, all but touches it, or stays where it is.
fn brought_near(draw: &mut Draw, first: &Convex, second: Vec<Point>) -> Vec<Point> {
    let between = gap(first, &Convex::counter_clockwise(second.iter().copied()));
    let way = between.at[0] - between.at[1];
    let share = match draw.from(0, 5) {
        0 => 1.0,
        1 => 1.0 - 1e-7,
        2 => 1.0 - 1e-3,
        _ => 0.0,
    };
    second.into_iter().map(|corner| corner + way * share).collect()
}

fn told(corners: &[Point]) -> Value {
    corners.iter().map(|corner| json!([corner.x, corner.y])).collect()
}

fn line(number: u64) -> Value {
    let draw = &mut Draw(number);
    let room = room(draw);
    let middle = |draw: &mut Draw| Point::new(between(draw, 0.0, 6000.0).round(), between(draw, 0.0, 5000.0).round());
    let first = middle(draw);
    let first = shape(draw, first);
    let of_first = Convex::counter_clockwise(first.iter().copied());
    let second = middle(draw);
    let second = shape(draw, second);
    let second = brought_near(draw, &of_first, second);
    let of_second = Convex::counter_clockwise(second.iter().copied());
    let (outline, gap) = (Outline::within(&room), gap(&of_first, &of_second));
    let (parts, hull) = (convex_parts(&room), hull_and_pockets(&room));
    json!({
        "first": told(&first),
        "second": told(&second),
        "room": told(&room),
        "gap": gap.clear,
        "at": told(&gap.at),
        "apart": apart(&of_first, &of_second),
        "meets": meets(&of_first, &of_second),
        "depth": overlap_depth(&of_first, &of_second),
        "common": of_first.common_area(&of_second),
        "area": of_first.area(),
        "covers": outline.covers(&of_first),
        "overshoot": outline.overshoot(&of_first),
        "parts": parts.iter().map(|part| told(part.corners())).collect::<Vec<_>>(),
        "hull": hull.hull.area(),
        "pockets": hull.pockets.iter().map(Convex::area).sum::<f64>(),
    })
}

fn main() {
    let asked = std::env::args().skip(1).find_map(|word| word.parse().ok());
    for number in 0..asked.unwrap_or(PAIRS) {
        println!("{}", line(number));
    }
}
