//! Where the sun stands.

use elbowroom_solver::criteria::sun::{Almanac, sun_at};

/// P: Reda and Andreas, NREL/TP-560-34302: 2003-10-17 12:30:30 at UTC-7, 39.742476 north, 105.1786 west: zenith 50.11162
/// and azimuth 194.34024 degrees by the full algorithm; 0.1 for a short one. pvlib (PyPI) gives the same.
#[test]
fn the_worked_example_of_nrel_is_met() {
    // Noon of 1 January 2000 is day 2 451 545.0; 2003-10-17 at 19:30:30 UTC is 2 452 930.312 847.
    let days = 2_452_930.312_847 - 2_451_545.0;
    let sun = Almanac::at(days).over(39.742_476, -105.1786);
    assert!((90.0 - sun.altitude - 50.11162).abs() < 0.1, "{}", 90.0 - sun.altitude);
    assert!((sun.bearing - 194.34024).abs() < 0.1, "{}", sun.bearing);
}

/// D: at noon the sun stands as far from overhead as latitude is from declination.
#[test]
fn noon_at_39_degrees_with_declination_10() {
    assert!((sun_at(39.0, 10.0, 0.0).altitude - 61.0).abs() < 1e-9);
}

/// D: latitude 40, declination 23.35, two hours after noon.
#[test]
fn two_hours_after_noon_at_midsummer() {
    let sun = sun_at(40.0, 23.35, 30.0);
    assert!((sun.altitude - 59.75).abs() < 0.01, "{}", sun.altitude);
    assert!(sun.bearing > 180.0, "the afternoon sun stands in the west");
}
