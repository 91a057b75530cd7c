//! Screens that hang on a wall, as a file gives them.

use elbowroom_model::{Fault, Piece};

use crate::plain_room::{self, brief, changed};

/// The second piece of the plain room with this row in place of the coffee table.
fn piece(row: &str) -> Piece {
    brief(&changed(&[("kind: coffee-table", row)])).pieces[1].clone()
}

/// The faults of the plain room with this row in place of the coffee table.
fn faults(row: &str) -> Vec<Fault> {
    plain_room::faults(&changed(&[("kind: coffee-table", row), ("units: cm", "units: cm\nceiling: 255")]))
}

#[test]
fn its_width_follows_from_its_diagonal_and_its_depth_is_12_cm() {
    // 43 in across at 16:9: 951.9 mm wide, 535.5 mm high (D: 43 x 25.4 x 16 / sqrt 337, x 9 / sqrt 337).
    let screen = piece("kind: wall-screen, screen: 43 in");
    assert!((screen.width.least - 951.9).abs() < 0.1 && screen.width.least == screen.width.most, "{:?}", screen.width);
    assert!((screen.own_height() - 535.5).abs() < 0.1, "{}", screen.own_height());
    assert_eq!((screen.depth.least, screen.depth.most, screen.off_wall), (120.0, 120.0, 0.0));
    assert_eq!(screen.hung_centre(), Some(1100.0));
}

#[test]
fn its_middle_is_as_high_as_the_file_says() {
    let screen = piece("kind: wall-screen, screen: 43 in, centre: 4 ft 6 in");
    assert!((screen.hung_centre().unwrap() - 1371.6).abs() < 1e-9);
    assert!((screen.lower_edge() - (1371.6 - 267.7)).abs() < 0.1, "{}", screen.lower_edge());
}

#[test]
fn one_that_gives_no_diagonal_is_of_55_in() {
    assert_eq!(piece("kind: wall-screen").screen, Some(55.0 * 25.4));
}

#[test]
fn what_follows_from_the_diagonal_is_refused_with_the_key_to_give_instead() {
    for (key, remedy) in [("width: 120", "`screen`"), ("height: 70", "`centre`"), ("off_wall: 5", "`off_wall`")] {
        let found = faults(&format!("kind: wall-screen, {key}"));
        assert_eq!(found.len(), 1, "{found:#?}");
        assert_eq!(found[0].code, "key_of_another_kind");
        assert!(found[0].remedy.contains(remedy), "{}", found[0].remedy);
    }
    assert_eq!(faults("kind: media-unit, centre: 110")[0].code, "key_of_another_kind");
}

#[test]
fn a_screen_that_reaches_the_floor_or_the_ceiling_is_refused_by_how_much() {
    // A 55 in screen is 685 mm high: with its middle at 30 cm it would reach 4.2 cm into the floor.
    let low = faults("kind: wall-screen, screen: 55 in, centre: 30");
    assert_eq!((low.len(), low[0].code), (1, "hangs_off_its_wall"), "{low:#?}");
    assert!(low[0].message.contains("4.24 cm past the floor"), "{}", low[0].message);
    let high = faults("kind: wall-screen, screen: 55 in, centre: 4 m");
    assert_eq!((high.len(), high[0].code), (1, "hangs_off_its_wall"), "{high:#?}");
    assert!(high[0].message.contains("past the ceiling"), "{}", high[0].message);
}
