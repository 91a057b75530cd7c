//! Outlines that diagonals fit: measures that contradict each other, corners that nothing fixes, slips.

use elbowroom_model::Point;
use elbowroom_model::survey::fit::{Fitted, Measures, fit};
use elbowroom_model::survey::trace::vectors;

use crate::plain_room::brief;

fn fitted(lengths: &[f64], diagonals: &[(usize, usize, f64)]) -> Fitted {
    fit(&Measures { lengths: lengths.to_vec(), corners: vec![None; lengths.len()], diagonals: diagonals.to_vec() })
        .unwrap()
}

/// A diagonal of 5006 over walls of 2000 and 3000 mm: all three lie on one line, each off by a third of the 6 mm (by hand). A whole
/// step of the adjustment leaps past that line, and is shortened.
#[test]
fn a_diagonal_longer_than_two_walls_together_takes_a_third_of_the_misfit() {
    let outline = fitted(&[2000.0, 3000.0, 4000.0, 3500.0], &[(0, 2, 5006.0)]);
    for (found, expected) in outline.lengths.iter().zip([2002.0, 3002.0, 4000.0, 3500.0]) {
        assert!((found - expected).abs() < 1e-3, "{outline:?}");
    }
    assert!((outline.diagonals[0] - 5004.0).abs() < 1e-3, "{outline:?}");
    assert!((outline.angles[0] - 180.0).abs() < 1e-3, "{outline:?}");
}

/// An L of six walls and one diagonal: what was measured holds to a hair, and only the corners that are left open give way.
#[test]
fn corners_that_nothing_fixes_give_way_to_every_measure() {
    let lengths = [5000.0, 3000.0, 2000.0, 2000.0, 3000.0, 5000.0];
    let outline = fitted(&lengths, &[(0, 2, 5900.0)]);
    assert!(!outline.fixed);
    let measured = lengths.iter().chain([&5900.0]);
    for (found, measured) in outline.lengths.iter().chain(&outline.diagonals).zip(measured) {
        assert!((found - measured).abs() < 0.1, "{outline:?}");
    }
    // 5000 and 3000 enclose acos(-(5900^2 - 5000^2 - 3000^2) / 30e6) = 91.554 degrees (by hand).
    assert!((outline.angles[0] - 91.554).abs() < 0.01, "{outline:?}");
}

/// The same 3-4-5 room with a corner stated: square is no slip, and 96 degrees are, 6 degrees being 440 mm at the mean wall.
#[test]
fn a_stated_corner_is_a_slip_by_the_arc_that_it_is_off() {
    let slips = |corner: &str| {
        let text = format!(
            "units: mm\nmeasured_within: 3\nwalls:\n  - {{ length: 4800, corner: {corner} }}\n  - {{ length: 3600 }}\n  - {{ length: 4800 }}\n  - {{ length: 3600 }}\ndiagonals: [{{ from: wall 1, to: wall 3, length: 6000 }}]\npieces: [{{ kind: sofa }}]\n"
        );
        let residuals = brief(&text).room.survey.residuals;
        residuals.into_iter().filter(|one| one.likely_slip).map(|one| one.of).collect::<Vec<_>>()
    };
    assert_eq!(slips("90"), [""; 0]);
    let told = slips("96");
    assert!(told.contains(&"corner at the right-hand end of wall 1".to_owned()), "{told:?}");
}

/// A wall that runs on as the first one does lies on the axis to the last digit, however its corners round.
#[test]
fn what_runs_as_the_first_wall_lies_on_the_axis() {
    for corner in [90.1, 91.6, 94.1, 100.1] {
        let drawn = vectors(&[1000.0; 3], &[corner, 360.0 - corner, 90.0]);
        assert_eq!(drawn[2], Point::new(1000.0, 0.0), "{corner}");
    }
}
