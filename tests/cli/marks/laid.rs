//! Marks of the table, the rug, and sizes.

use super::{NORTH, clean, cornered, living, only, piece};
use crate::support::judge::standing::{Sizes, Standing};
use crate::support::judge::{Kept, Mark, Scene};

#[test]
fn a_table_off_the_axis() {
    only(Mark::TableOffAxis, &living().moved("coffee-table", [110.0, 0.0]));
    clean(&living().moved("coffee-table", [90.0, 0.0]));
}

/// Before a corner sofa: half of its least, the gap to the return and 50, less half of the bay, where that is over 100.
#[test]
fn a_table_before_a_corner_sofa_may_keep_off_the_return() {
    let with_gap = |seat_to_table: f64, by: f64| {
        let mut scene = cornered().moved("coffee-table", [by, 0.0]);
        scene.pieces[1].least.width = 600.0;
        Scene { kept: Kept { seat_to_table, ..scene.kept }, ..scene }
    };
    only(Mark::TableOffAxis, &with_gap(400.0, 110.0));
    clean(&with_gap(500.0, 190.0));
    only(Mark::TableOffAxis, &with_gap(500.0, 210.0));
}

#[test]
fn a_rug_short_of_the_sofa() {
    only(Mark::RugShort, &living().moved("rug", [0.0, 600.0]));
    clean(&living().moved("rug", [0.0, 400.0]));
    let narrow = |width: f64| living().with("rug", piece("rug", [3000.0, 500.0], NORTH, [width, 2400.0]));
    only(Mark::RugShort, &narrow(1850.0));
    clean(&narrow(1950.0));
}

#[test]
fn a_rug_off_the_axis() {
    only(Mark::RugOffAxis, &living().moved("rug", [160.0, 0.0]));
    clean(&living().moved("rug", [140.0, 0.0]));
}

fn sofa(width: f64) -> Standing {
    piece("sofa", [3000.0, 50.0], NORTH, [width, 950.0])
}

/// The size table: sofas usually 2100 wide and 950 deep, screens' units 1600, tables 1000 by 600.
#[test]
fn a_piece_over_its_usual_size() {
    only(Mark::Stretched, &living().with("sofa", sofa(2320.0)));
    clean(&living().with("sofa", sofa(2300.0)));
    // Unless whoever wrote the file wants no less.
    let least = Sizes { width: 2400.0, ..Sizes::default() };
    clean(&living().with("sofa", Standing { least, ..sofa(2400.0) }));
    let unit = |width: f64| piece("media-unit", [3000.0, 4950.0], super::SOUTH, [width, 450.0]);
    only(Mark::Stretched, &living().with("media-unit", unit(1780.0)));
    clean(&living().with("media-unit", unit(1740.0)));
}

#[test]
fn a_table_over_its_usual_size_or_its_share_of_the_sofa() {
    let table = |width: f64, depth: f64| piece("coffee-table", [3000.0, 1400.0], NORTH, [width, depth]);
    only(Mark::Stretched, &living().with("coffee-table", table(1120.0, 600.0)));
    only(Mark::Stretched, &living().with("coffee-table", table(1000.0, 680.0)));
    clean(&living().with("coffee-table", table(1090.0, 650.0)));
    assert!(living().with("sofa", sofa(1500.0)).with("coffee-table", table(1050.0, 600.0)).has(Mark::Stretched));
    assert!(!living().with("sofa", sofa(1600.0)).with("coffee-table", table(1050.0, 600.0)).has(Mark::Stretched));
}

/// A table may fill a bay: half over its usual size.
#[test]
fn a_table_in_a_bay_may_be_larger() {
    let table = |depth: f64| piece("coffee-table", [1700.0, 1450.0], NORTH, [500.0, depth]);
    clean(&cornered().with("coffee-table", table(880.0)));
    only(Mark::Stretched, &cornered().with("coffee-table", table(920.0)));
}

#[test]
fn a_return_over_its_usual_length() {
    let mut scene = cornered().without("floor-lamp").without("armchair");
    scene.pieces[0].parts[1] = super::block([50.0, 1050.0], [1050.0, 2600.0]);
    only(Mark::Stretched, &scene);
    scene.pieces[0].parts[1] = super::block([50.0, 1050.0], [1050.0, 2550.0]);
    clean(&scene);
}
