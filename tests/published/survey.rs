//! Closing a survey, against printed examples.

use elbowroom_model::Point;
use elbowroom_model::survey::compass::close;
use elbowroom_model::survey::fit::{Measures, fit};

/// Departure east and latitude north of each leg as a vector.
fn legs(latitudes: &[f64], departures: &[f64]) -> Vec<Point> {
    latitudes.iter().zip(departures).map(|(latitude, departure)| Point::new(*departure, *latitude)).collect()
}

fn area(corners: &[Point]) -> f64 {
    let next = corners.iter().cycle().skip(1);
    (0.5 * corners.iter().zip(next).map(|(one, other)| one.cross(*other)).sum::<f64>()).abs()
}

/// Printed six-leg traverse, corrected by the compass rule (P). Correction to a leg = -(sum) x leg / girth.
#[test]
fn a_six_leg_traverse_closes_as_printed() {
    let lengths = [495.85, 850.62, 855.45, 1020.87, 1117.26, 660.08];
    let latitudes = [493.5672, 590.5342, -325.5265, -996.9916, -121.9557, 377.1895];
    let departures = [47.5251, 612.2285, 791.0924, 219.5069, -1110.5840, -541.6952];
    let measured = legs(&latitudes, &departures);
    for (leg, length) in measured.iter().zip(lengths) {
        assert!((leg.norm() - length).abs() < 0.005, "{} {length}", leg.norm());
    }
    let closed = close(&measured);
    assert!((closed.misclosure.y - 16.8171).abs() < 2e-4 && (closed.misclosure.x - 18.0737).abs() < 2e-4);
    assert!((closed.misclosure.norm() - 24.6876).abs() < 2e-4);
    let corrected = legs(
        &[491.8995, 587.6733, -328.4036, -1000.4252, -125.7134, 374.9694],
        &[45.7328, 609.1538, 788.0003, 215.8168, -1114.6225, -544.0812],
    );
    for (found, printed) in closed.legs.iter().zip(&corrected) {
        assert!((*found - *printed).norm() < 3e-4, "{found:?} {printed:?}");
    }
    let corners = elbowroom_model::survey::trace::corners(&closed.legs);
    assert!((area(&corners) - 1_715_250.05).abs() < 1.0, "{}", area(&corners));
}

/// Four-leg loop: Mahun, Open Access Surveying Library (P).
#[test]
fn a_four_leg_loop_misses_as_printed() {
    let measured = legs(&[-176.357, 203.395, 192.357, -219.312], &[-438.548, -73.093, 198.651, 313.065]);
    for (leg, length) in measured.iter().zip([472.68, 216.13, 276.52, 382.24]) {
        assert!((leg.norm() - length).abs() < 0.01, "{} {length}", leg.norm());
    }
    let closed = close(&measured);
    assert!((closed.misclosure.y - 0.083).abs() < 1e-9 && (closed.misclosure.x - 0.075).abs() < 1e-9);
    let left = closed.legs.iter().fold(Point::default(), |sum, leg| sum + *leg);
    assert!(left.norm() < 1e-9, "{left:?}");
}

/// Area by coordinates: Mahun, Open Access Surveying Library (P), 140 494 to 1.0.
#[test]
fn an_area_by_coordinates_is_as_printed() {
    let corners = [(406.31, 1259.97), (235.12, 1489.47), (65.81, 1126.40), (317.89, 942.04), (675.32, 1282.54)];
    let corners: Vec<Point> = corners.iter().map(|(x, y)| Point::new(*x, *y)).collect();
    assert!((area(&corners) - 140_494.0).abs() < 1.0, "{}", area(&corners));
}

/// Triangle 20, 25, 18: the angle that faces 20 is 52.41 degrees (OpenStax Precalculus, M).
#[test]
fn a_triangle_by_its_sides_has_the_printed_angle() {
    let measures = Measures { lengths: vec![25.0, 20.0, 18.0], corners: vec![None; 3], diagonals: Vec::new() };
    let fitted = fit(&measures).unwrap();
    // Walls 25, 20, 18 in turn: the corner between 18 and 25, at the right-hand end of the third, faces 20.
    assert!((fitted.angles[2] - 52.41).abs() < 0.005, "{:?}", fitted.angles);
    assert!((fitted.angles.iter().sum::<f64>() - 180.0).abs() < 1e-9);
}

/// A 3600 x 4800 room with a 6000 diagonal is square (D).
#[test]
fn a_room_with_a_true_diagonal_is_square() {
    let measures = Measures {
        lengths: vec![3600.0, 4800.0, 3600.0, 4800.0],
        corners: vec![None; 4],
        diagonals: vec![(0, 2, 6000.0)],
    };
    let fitted = fit(&measures).unwrap();
    assert!(fitted.fixed);
    for angle in &fitted.angles {
        assert!((angle - 90.0).abs() < 1e-9, "{:?}", fitted.angles);
    }
}
