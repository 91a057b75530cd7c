//! What walkers make of a plan, by what it costs in balance: prices are those of `model/data/composition.yaml`.

use elbowroom_model::PieceKind;

use super::room::{parted, two_doors};
use super::stage::{Stage, UP};

/// What a plan costs that costs nothing by the terms of the search.
fn cost(mut stage: Stage) -> f64 {
    stage.composition = Some(Vec::new());
    stage.balance().placement
}

/// The way from door to door leads between the sofa and its screen, or behind the sofa.
#[test]
fn a_main_way_across_the_group_costs_once() {
    let way = |at| cost(two_doors(at).route("hall door", "kitchen door", 1200.0, 5000.0));
    assert_eq!([way(2000.0), way(5000.0)], [600.0, 0.0]);
}

/// Half of what is lacking to a walkway of 900 between the lamp's side and the line that is walked, 5400 from the north.
#[test]
fn a_lamp_by_a_main_way_costs_what_it_is_too_near() {
    let with_lamp = |back: f64| {
        let stage = two_doors(5000.0).route("hall door", "kitchen door", 900.0, 5000.0);
        cost(stage.piece(PieceKind::FloorLamp, (500.0, back), UP, (300.0, 300.0)))
    };
    let near = with_lamp(-4800.0);
    assert!((near - 150.0).abs() < 1.0, "{near}");
    assert_eq!(with_lamp(-4400.0), 0.0);
}

/// A disc of 600 gets through a gap of 800, not through one of 400: half the room of 30 m2 lies behind.
#[test]
fn floor_that_one_cannot_walk_to_costs_once() {
    let cut_off = |gap| parted(gap).ways().floor.cut_off;
    assert_eq!(cut_off(800.0), 0.0);
    // The southern half of 2850, less the sofa.
    let behind = 5000.0 * 2850.0 - 2100.0 * 900.0;
    assert!((cut_off(400.0) / behind - 1.0).abs() < 0.03, "{}", cut_off(400.0));
    let without_way = |gap| {
        let mut stage = parted(gap);
        stage.routes.clear();
        cost(stage)
    };
    assert_eq!([without_way(800.0), without_way(400.0)], [0.0, 800.0]);
}
