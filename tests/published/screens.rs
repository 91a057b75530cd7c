//! Screens: sizes of 16:9 pictures and the distances that published rules give.

use elbowroom_model::{screen_height, screen_width};
use elbowroom_solver::criteria::screen::{HEAD_TURN, HIGH_DEFINITION, ULTRA_HIGH_DEFINITION, distance_filling};

const INCH: f64 = 25.4;

/// D: exact arithmetic on 16:9.
#[test]
fn a_picture_of_16_by_9_has_its_width_and_height_from_its_diagonal() {
    assert!((screen_width(1.0) - 0.871_576).abs() < 5e-7);
    assert!((screen_height(1.0) - 0.490_261).abs() < 5e-7);
    let diagonal = 55.0 * INCH;
    assert!((screen_width(diagonal) - 1217.6).abs() < 0.05);
    assert!((screen_height(diagonal) - 684.9).abs() < 0.05);
}

/// D: half the width over the tangent of 15 degrees.
#[test]
fn a_screen_fills_thirty_degrees_from_1_626_diagonals() {
    assert!((distance_filling(30.0, 1.0) - 1.626_382).abs() < 5e-7);
}

/// P: SMPTE EG 18 as published (read second-hand): 81.5 in for a screen of 50 in; from 144 in a screen of 88 in.
#[test]
fn smpte_eg_18_distances_are_met() {
    assert!((distance_filling(30.0, 50.0) - 81.5).abs() < 0.3);
    let diagonal = 144.0 / distance_filling(30.0, 1.0);
    assert!((diagonal - 88.5).abs() < 0.05 && (diagonal - 88.0).abs() < 0.6, "{diagonal}");
}

/// P: distances at 30 and at 20 degrees for common sizes, printed to the centimetre.
#[test]
fn printed_distances_for_common_sizes_are_met() {
    let at_30 = [(32.0, 132.0), (40.0, 166.0), (50.0, 207.0), (60.0, 248.0)];
    let at_20 = [(32.0, 201.0), (40.0, 251.0), (50.0, 314.0)];
    for (degrees, printed) in [(30.0, at_30.as_slice()), (20.0, at_20.as_slice())] {
        for (inches, centimetres) in printed {
            let distance = distance_filling(degrees, inches * INCH) / 10.0;
            assert!((distance - centimetres).abs() <= 1.0, "{inches} in at {degrees} degrees: {distance}");
        }
    }
}

/// P: BBC R&D, a 46 in picture is 57 cm high, and 3 m are 5.3 heights (of the rounded height).
#[test]
fn a_46_inch_picture_at_three_metres_is_5_3_heights_off() {
    let height = screen_height(46.0 * INCH);
    assert!((height - 570.0).abs() < 5.0, "{height}");
    assert!((3000.0 / height - 5.3).abs() < 0.07);
}

/// D: one minute of arc to a line, for 1080 and 2160 lines; the picture heights in use (P: BBC R&D, ITU-R BT.1127; M:
/// ITU-R BT.2022 and BT.500 print 3.1 to 3.2 and 1.6) are these rounded.
#[test]
fn one_arc_minute_a_line_gives_the_picture_heights_in_use() {
    let minute = (1.0_f64 / 60.0).to_radians();
    for (lines, heights, in_use) in [(1080.0, 3.183, HIGH_DEFINITION), (2160.0, 1.592, ULTRA_HIGH_DEFINITION)] {
        let exact = 1.0 / (lines * minute.tan());
        assert!((exact - heights).abs() < 1e-3, "{exact}");
        assert!((exact / in_use - 1.0).abs() < 0.07);
    }
}

/// P: NUREG-0700 rev. 3, 11.3.1.2-2 (from MIL-STD-1472G): turns of the head to 15 degrees are preferred, to 35 allowed, to 60
/// where the head may turn; second-hand: 45 is natural (Architectural Institute of Japan, handbook 3, 1980, p. 42).
#[test]
fn a_head_turn_is_graded_where_the_published_limits_are() {
    assert_eq!([HEAD_TURN.at(0.0), HEAD_TURN.at(15.0)], [1.0, 1.0]);
    assert!(HEAD_TURN.at(16.0) < 1.0 && HEAD_TURN.at(35.0) > 0.75 && HEAD_TURN.at(45.0) == 0.5);
    assert_eq!([HEAD_TURN.at(60.0), HEAD_TURN.at(90.0)], [0.0, 0.0]);
}
