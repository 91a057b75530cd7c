//! What hangs: on its wall or the front of a breast, over what is lower than its lower edge, before no hole in the wall.

use elbowroom_model::{
    Door, Fireplace, ItemKind, LeadsTo, Opening, Piece, PieceKind, Radiator, SizeRange, Stance, Swings, View, Window,
};
use elbowroom_solver::Placed;

use super::{HAIR, Part, SOUTH, at_wall, broken, edge, placed, second_check};
use crate::support::rooms::{Furnish, piece, rectangle};

/// 55 in at 16:9, its middle at 1100: 1217.6 wide, from 757.6 to 1442.4 (derived).
const WIDTH: f64 = 1217.6;

fn screen() -> Piece {
    let mut screen = piece(PieceKind::WallScreen);
    (screen.height, screen.screen) = (757.6, Some(1397.0));
    screen.depth = SizeRange::fixed(120.0);
    screen
}

/// The middle of its back at a place along the north wall, so far off it.
fn hung(piece: usize, x: f64, off: f64) -> Placed {
    at_wall(placed(piece, (x, -off), SOUTH, (WIDTH, 120.0)), 0)
}

#[test]
fn it_hangs_on_its_wall() {
    let brief = rectangle(5000.0, 4000.0).within(10.0).piece(screen());
    edge("off_wall", &brief, 10.0, 10.0 + HAIR, |off| vec![hung(0, 2500.0, off)]);
}

#[test]
fn it_hangs_over_what_is_no_higher_than_its_lower_edge() {
    let low = |height| {
        let mut low = piece(PieceKind::Sideboard);
        low.height = height;
        rectangle(5000.0, 4000.0).piece(screen()).piece(low)
    };
    let stands = || vec![hung(0, 2500.0, 0.0), at_wall(placed(1, (2500.0, -10.0), SOUTH, (1500.0, 450.0)), 0)];
    for (height, rules) in [(757.6, vec![]), (758.6, vec!["overlap"])] {
        assert_eq!(broken(&low(height), stands()), rules, "{height}");
        let second = second_check(&low(height), &stands(), &[], Part::Places);
        assert_eq!(second.iter().any(|it| it.starts_with("2 overlap")), !rules.is_empty(), "{second:?}");
    }
}

#[test]
fn it_hangs_over_a_low_fixed_thing_and_over_no_radiator() {
    let counter = [(1500.0, -600.0), (3500.0, -600.0), (3500.0, 0.0), (1500.0, 0.0)];
    let brief = rectangle(5000.0, 4000.0).fixed("counter", &counter).piece(screen());
    let with = |height| {
        let mut brief = brief.clone();
        brief.room.fixed[0].height = height;
        brief
    };
    assert_eq!(broken(&with(Some(700.0)), vec![hung(0, 2500.0, 0.0)]), [""; 0]);
    assert_eq!(broken(&with(Some(900.0)), vec![hung(0, 2500.0, 0.0)]), ["fixed"]);
    assert_eq!(broken(&with(None), vec![hung(0, 2500.0, 0.0)]), ["fixed"], "nobody knows how high it is");
    let heats = ItemKind::Radiator(Radiator { depth: 110.0, height: 600.0, keep_clear: 100.0 });
    let brief = rectangle(5000.0, 4000.0).item("radiator", 0, 1900.0, 1200.0, heats).piece(screen());
    assert!(broken(&brief, vec![hung(0, 2500.0, 0.0)]).contains(&"fixed"));
}

#[test]
fn it_covers_no_window_doorway_or_opening() {
    let window =
        |sill| ItemKind::Window(Window { sill, head: 2100.0, view: View::Plain, opens: true, must_reach: false });
    let holes = [
        window(1400.0),
        ItemKind::Opening(Opening { leads_to: LeadsTo::Entrance, stance: Stance::None }),
        ItemKind::Door(Door { hinge: None, swings: Swings::Slides, opens_to: None, leads_to: LeadsTo::Entrance }),
    ];
    for hole in holes {
        let brief = rectangle(5000.0, 4000.0).item("hole", 0, 2000.0, 1500.0, hole).piece(screen());
        let stands = vec![hung(0, 3600.0, 0.0)];
        assert!(broken(&brief, stands.clone()).contains(&"off_wall"), "{brief:?}");
        assert!(!second_check(&brief, &stands, &[], Part::Places).is_empty());
        assert!(!broken(&brief, vec![hung(0, 3500.0 + WIDTH / 2.0, 0.0)]).contains(&"off_wall"));
    }
    let high = rectangle(5000.0, 4000.0).item("clerestory", 0, 2000.0, 1500.0, window(1500.0)).piece(screen());
    assert_eq!(broken(&high, vec![hung(0, 2600.0, 0.0)]), [""; 0], "it hangs under a high window");
}

#[test]
fn over_a_fire_it_hangs_on_the_front_of_the_breast_and_past_neither_end() {
    let fire = ItemKind::Fireplace(Fireplace { depth: 350.0, opening: None, height: None, keep_clear: 900.0 });
    let brief = rectangle(5000.0, 4000.0).item("fire", 0, 1500.0, 1500.0, fire).piece(screen());
    let middle = 1500.0 + WIDTH / 2.0;
    let clear =
        |stands: Vec<Placed>| (broken(&brief, stands.clone()), second_check(&brief, &stands, &[], Part::Places));
    assert_eq!(clear(vec![hung(0, 2250.0, 350.0)]), (vec![], vec![]));
    assert_eq!(clear(vec![hung(0, middle, 350.0)]), (vec![], vec![]));
    let (past, second) = clear(vec![hung(0, middle - 2.0 * HAIR, 350.0)]);
    assert!(past.contains(&"off_wall") && past.contains(&"keep_clear"), "past the breast: {past:?}");
    assert!(second.iter().any(|it| it.contains("off_wall")), "{second:?}");
    assert!(clear(vec![hung(0, 2250.0, 349.0)]).0.contains(&"off_wall"), "in the breast");
    // In the alcove beside it, behind the plane of its front, it may hang too.
    assert_eq!(clear(vec![hung(0, 3000.0 + WIDTH / 2.0, 0.0)]), (vec![], vec![]));
}
