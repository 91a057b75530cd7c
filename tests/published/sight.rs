//! Sight: the angle that a window fills, and the area that lies open to the eye.

use elbowroom_model::{PieceId, Point};
use elbowroom_solver::criteria::isovist::{floor_seen, isovist_area};
use elbowroom_solver::criteria::obstacles::{Obstacle, Whose};
use elbowroom_solver::criteria::sight::{Barriers, Eye, Target, seen};
use elbowroom_solver::criteria::view::grade;
use elbowroom_solver::geometry::Convex;

fn points(corners: &[(f64, f64)]) -> Vec<Point> {
    corners.iter().map(|&(x, y)| Point::new(x, y)).collect()
}

/// P (second-hand): EN 17037 sight angles: below 14 degrees is under the minimum, 28 is medium, 54 high.
#[test]
fn sight_angles_of_en_17037_are_graded() {
    let grades = [13.9, 14.0, 28.0, 54.0].map(grade);
    assert!(grades[0] < grades[1], "13.9 degrees is below the minimum");
    assert_eq!(grades[1..], [50.0, 75.0, 100.0]);
}

/// D: twice the arc tangent of 0.6 over the distance.
#[test]
fn a_window_of_1200_on_the_axis_fills_its_angle() {
    let target = Target { left: Point::new(-600.0, 0.0), right: Point::new(600.0, 0.0), foot: 900.0, head: 2100.0 };
    for (distance, degrees) in [(3000.0, 22.62), (2000.0, 33.40)] {
        let eye = Eye { at: Point::new(0.0, -distance), height: 1200.0 };
        let seen = seen(eye, Some(Point::new(0.0, 1.0)), &target, &Barriers::default());
        assert!((seen.angle - degrees).abs() < 0.005, "{}", seen.angle);
        assert!((seen.share - 1.0).abs() < 1e-12);
    }
}

/// D: the isovist of an L-shaped plan from the middle of its upper arm: the arm, 2 by 1, and the half of the lower one
/// that lies below the line over the inside corner.
#[test]
fn the_isovist_of_an_l_shaped_plan_is_found() {
    let outline = points(&[(1.0, 1.0), (1.0, 3.0), (3.0, 3.0), (3.0, 2.0), (2.0, 2.0), (2.0, 1.0)]);
    let area = isovist_area(Point::new(2.5, 2.5), &outline, &[]);
    assert!((area - 2.5).abs() < 1e-9, "{area}");
}

/// P: Benedikt 1979, by definition: in a convex room the isovist is the room, from wherever one looks.
#[test]
fn the_isovist_of_a_convex_room_is_the_room() {
    let outline = points(&[(0.0, 0.0), (500.0, 4000.0), (5200.0, 3500.0), (4800.0, -300.0)]);
    let area = area(&outline);
    for at in [(1000.0, 1000.0), (4000.0, 3000.0), (600.0, 300.0), (2500.0, 1700.0)] {
        let seen = isovist_area(Point::new(at.0, at.1), &outline, &[]);
        assert!((seen - area).abs() < 1e-6 * area, "{at:?}: {seen} {area}");
    }
}

/// D: similar triangles. An eye at 1700 over a wall 850 high and 1000 off loses the floor from it to twice as far.
#[test]
fn a_low_wall_hides_its_shadow() {
    let outline = points(&[(0.0, 0.0), (0.0, 1000.0), (10_000.0, 1000.0), (10_000.0, 0.0)]);
    let wall = Convex::counter_clockwise(points(&[(1000.0, 0.0), (1001.0, 0.0), (1001.0, 1000.0), (1000.0, 1000.0)]));
    let seen = |height| {
        let wall = Obstacle::new(wall.clone(), height, Whose::Piece(PieceId(0)));
        floor_seen(Eye { at: Point::new(0.001, 500.0), height: 1700.0 }, &outline, &[wall])
    };
    let lost = 10_000_000.0 - seen(850.0);
    // The shadow reaches from 1000 to twice 1001 (the eye is a thousandth inside), over the whole width.
    assert!((lost - 1002.0 * 1000.0).abs() < 10.0, "{lost}");
    assert!((10_000_000.0 - seen(1700.0) - 9_000_000.0).abs() < 10.0);
}

fn area(outline: &[Point]) -> f64 {
    let next = outline.iter().cycle().skip(1);
    0.5 * outline.iter().zip(next).map(|(a, b)| a.cross(*b)).sum::<f64>().abs()
}
