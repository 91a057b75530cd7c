//! Chairs at an angle: by which angles, toward what, and two of a row alike. As laid out.

use elbowroom_model::{Brief, Turned};

use super::comfort::main_seat;
use super::plane::{P, add, dot, left, minus};
use super::stand::Stand;

/// Angles by which a chair may be turned, degrees (scenario format).
const ANGLES: [f64; 4] = [0.0, 15.0, 30.0, 45.0];
/// How far before the front of the main seat the heart of its group lies, mm.
const HEART: f64 = 700.0;
/// What rounding explains, degrees.
const NEAR: f64 = 0.1;

pub(super) fn complaints(brief: &Brief, stands: &[Stand<'_>]) -> Vec<String> {
    let Some(main) = main_seat(brief, stands) else { return Vec::new() };
    let may_turn = |stand: &&Stand<'_>| stand.piece.turned != Turned::No && stand.name() != main.name();
    let chairs: Vec<&Stand<'_>> = stands.iter().filter(may_turn).collect();
    let mut all: Vec<String> = chairs.iter().filter_map(|chair| alone(main, chair)).collect();
    for (i, one) in chairs.iter().enumerate() {
        all.extend(chairs[i + 1..].iter().filter_map(|other| pair(brief, main, one, other)));
    }
    all
}

fn alone(main: &Stand<'_>, chair: &Stand<'_>) -> Option<String> {
    let off = off_square(main, chair);
    if off < NEAR || chair.at_wall.is_some() {
        let is_asked = chair.piece.turned == Turned::Yes;
        return is_asked.then(|| format!("turned: {} stands square", chair.name()));
    }
    if !ANGLES.iter().any(|angle| (angle - off).abs() < NEAR) {
        return Some(format!("turned: {} by {off:.2} degrees", chair.name()));
    }
    // Of a corner sofa that lies before the middle of its bay.
    let along = if main.away.is_some() { (main.width + main.depth) / 2.0 } else { 0.0 };
    let heart = add(add(main.anchor, main.along(), along), main.facing, main.depth + HEART);
    let to = minus(heart, chair.anchor);
    let from_heart = |way: P| between(way, to);
    // By half of a right angle it may be turned from either of two ways.
    let squares = quarters(main.facing).into_iter().filter(|way| between(*way, chair.facing) < 45.0 + NEAR);
    let is_best = |square: P| {
        let sense = if dot(left(square), chair.facing) > 0.0 { 1.0 } else { -1.0 };
        let ways = ANGLES.map(|angle| rotated(square, sense * angle));
        ways.into_iter().all(|way| from_heart(way) > from_heart(chair.facing) - NEAR)
    };
    let is_best = squares.into_iter().any(is_best);
    (!is_best).then(|| format!("turned: {} would face the group better otherwise", chair.name()))
}

fn pair(brief: &Brief, main: &Stand<'_>, one: &Stand<'_>, other: &Stand<'_>) -> Option<String> {
    let row = one.piece.alike.filter(|row| other.piece.alike == Some(*row))?;
    let turns = [one, other].map(|chair| if chair.at_wall.is_some() { 0.0 } else { off_square(main, chair) });
    let of_row = |name: &str| brief.pieces.iter().any(|piece| piece.name == name && piece.alike == Some(row));
    let count = brief.pieces.iter().filter(|piece| of_row(&piece.name) && piece.name != main.name()).count();
    let is_square = turns.iter().all(|turn| *turn < NEAR);
    let are_mirrored = [main.facing, left(main.facing)].into_iter().any(|axis| {
        let image = minus(add([0.0, 0.0], axis, 2.0 * dot(one.facing, axis)), one.facing);
        between(image, other.facing) < NEAR
    });
    let is_right = is_square || if count > 2 { (turns[0] - turns[1]).abs() < NEAR } else { are_mirrored };
    (!is_right).then(|| format!("turned: {} and {} are no mirror images", one.name(), other.name()))
}

/// From the nearest way square to the main seat, degrees.
fn off_square(main: &Stand<'_>, chair: &Stand<'_>) -> f64 {
    quarters(main.facing).into_iter().map(|way| between(way, chair.facing)).fold(f64::INFINITY, f64::min)
}

fn quarters(way: P) -> [P; 4] {
    let back = minus([0.0, 0.0], way);
    [way, left(way), back, left(back)]
}

/// The angle between two directions, degrees.
fn between(a: P, b: P) -> f64 {
    dot(left(a), b).atan2(dot(a, b)).abs().to_degrees()
}

fn rotated(way: P, degrees: f64) -> P {
    let (sin, cos) = degrees.to_radians().sin_cos();
    add(add([0.0, 0.0], way, cos), left(way), sin)
}
