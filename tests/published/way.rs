//! Getting furniture round a corner, against published values.

use elbowroom_model::way_in::{LoadPart, Profile};
use elbowroom_solver::way_in::narrowest;
use elbowroom_solver::way_in::turn::longest;

/// A rod round the corner of two corridors: `(a^(2/3) + b^(2/3))^(3/2)` (P, MathWorld "Moving Ladder Problem").
#[test]
fn a_rod_round_a_corner() {
    for (from, to, length, within) in [
        // (P) MathWorld: unit corridors.
        (1.0, 1.0, 2.828_427, 1e-6),
        // (P) corridors of 3 and 4, printed to two places.
        (3.0, 4.0, 9.87, 5e-3),
        // (M) a calculus exercise, corridors of 8 and 4 ft, printed to two places.
        (8.0, 4.0, 16.65, 5e-3),
    ] {
        assert!((longest(from, to, 0.0) - length).abs() < within, "{from} {to}: {}", longest(from, to, 0.0));
        let closed = (from.powf(2.0 / 3.0) + to.powf(2.0 / 3.0)).powf(1.5);
        assert!((longest(from, to, 0.0) - closed).abs() < 1e-9);
    }
}

/// A rectangle round the corner: Moretti, "A rectangle through a corner", College Mathematics Journal 33 (3), 2002, gives
/// corridors of 3 and 8 and a width of 1 (P): 12.8927 at a slope of 0.600861, which the longest cannot exceed.
#[test]
fn a_rectangle_round_a_corner() {
    let slope: f64 = 0.600_861;
    let angle = slope.atan();
    let there = 3.0 / angle.sin() + 8.0 / angle.cos() - 1.0 / (angle.sin() * angle.cos());
    assert!((there - 12.8927).abs() < 1e-4, "{there}");
    // (D) the least over all angles, by a fine scan.
    assert!((longest(3.0, 8.0, 1.0) - 12.856_318).abs() < 1e-6);
    assert!(longest(3.0, 8.0, 1.0) <= there);
    // (D) two halls of 1200 mm, a piece 950 deep.
    assert!((longest(1200.0, 1200.0, 950.0) - 1494.11).abs() < 5e-3);
}

/// The diagonal depth of furniture shops (P, reference.com, "How Do You Determine the Dimensions of a Sleeper Sofa?"): a straight
/// line from the top of the back to the front of the arm, and the distance of the bottom of the back from it. What that rule lets
/// through a door, the outline's least width does; the outline may lie narrower still, about another of its sides.
#[test]
fn the_diagonal_depth_of_furniture_shops() {
    let mut alike = 0;
    for (depth, height, arm, back) in [
        (920.0, 850.0, 560.0, 60.0),
        (1050.0, 800.0, 540.0, 100.0),
        (880.0, 900.0, 600.0, 120.0),
        (1000.0, 950.0, 520.0, 80.0),
    ] {
        // Of the corner at the origin from the line through (back, height) and (depth, arm).
        let (x, y): (f64, f64) = (depth - back, arm - height);
        let rule = (x * height - y * back).abs() / x.hypot(y);
        let profile = Some(Profile { front: arm, back });
        let part = LoadPart { profile, ..LoadPart::of_box("sofa".to_owned(), [2000.0, depth, height]) };
        let least = narrowest(&part).map_or(depth.min(height), |least| least.across);
        assert!(least <= rule + 1e-9, "{depth} {height}: {least} against {rule}");
        alike += usize::from((least - rule).abs() < 1e-6 && rule < depth.min(height));
    }
    assert!(alike >= 2, "the rule says nothing of these");
}
