//! The group as a whole: two chairs as a pair, all within a talk's reach, nobody turned away.

use crate::support::checker::plane::{add, dot, length, minus};

use super::standing::{Run, Standing};
use super::{Mark, Odd, Scene};

/// How far two chairs may be off each other's mirror image, or out of line, mm.
const MIRRORED: f64 = 100.0;
/// How far the middle between them may be off, where they stand side by side, mm.
const CENTRED: f64 = 150.0;
/// Unit vectors with a product over this look the same way, within 10 degrees.
const SAME_WAY: f64 = 0.984_8;
/// 10 ft: a conversation group (HUD Manual of Acceptable Practices 1973, published), mm.
const GROUP: f64 = 3048.0;
/// A head is so far before the middle of its seat, as one leans in to talk, mm (ours, no source).
const LEANING: f64 = 300.0;
/// A seat turned further from the heart of the group is turned away, degrees.
const TURNED: f64 = 75.0;
/// The heart of a group without a table is so far before the main seat, mm (ours, no source).
const HEART: f64 = 800.0;

pub(super) fn odd(scene: &Scene) -> Vec<Odd> {
    let Some(main) = scene.main() else { return Vec::new() };
    let axis = main.front();
    let heart = scene.table().map_or_else(|| axis.place(0.0, HEART), Standing::middle);
    let mut all = Vec::new();
    let chairs: Vec<&Standing> = scene.others().into_iter().filter(|seat| seat.kind == "armchair").collect();
    if let [one, other] = chairs[..] {
        let off = askew(&axis, axis.ahead(heart), one, other);
        if off > 0.0 {
            all.push(Odd::of(Mark::PairAskew, &[&one.name, &other.name], off));
        }
    }
    all.extend(wide(&scene.seats()));
    for seat in scene.others() {
        let looking = Run { middle: seat.middle(), ..seat.front() };
        let turn = looking.turn_to(heart);
        if turn > TURNED {
            all.push(Odd::of(Mark::TurnedAway, &[&seat.name], turn));
        }
    }
    all
}

/// How far two chairs are over what is allowed of the best of: mirrored; where they look the same way, centred on the axis
/// together, or on one side with their middle beside the heart.
fn askew(axis: &Run, heart: f64, one: &Standing, other: &Standing) -> f64 {
    let [(x, y), (u, v)] = [one, other].map(|seat| (axis.aside(seat.middle()), axis.ahead(seat.middle())));
    let over = |off: f64, allowed: f64| off.abs() - allowed;
    let mirrored = over(x + u, MIRRORED).max(over(y - v, MIRRORED));
    if dot(one.facing, other.facing) < SAME_WAY {
        return mirrored;
    }
    let centred = over(f64::midpoint(x, u), CENTRED).max(over(y - v, MIRRORED));
    let beside = over(f64::midpoint(y, v) - heart, CENTRED).max(over(x - u, MIRRORED));
    mirrored.min(centred).min(beside)
}

/// The two seats farthest apart, where that is too far.
fn wide(seats: &[&Standing]) -> Option<Odd> {
    let head = |seat: &Standing| add(seat.middle(), seat.facing, LEANING);
    let pairs = seats.iter().enumerate().flat_map(|(place, one)| {
        seats[place + 1..].iter().map(move |other| (*one, *other, length(minus(head(one), head(other)))))
    });
    let farthest = pairs.max_by(|one, other| one.2.total_cmp(&other.2));
    let (one, other, apart) = farthest.filter(|(_, _, apart)| *apart > GROUP)?;
    Some(Odd::of(Mark::GroupWide, &[&one.name, &other.name], apart))
}
