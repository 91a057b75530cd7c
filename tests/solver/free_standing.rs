//! A seat that stands free stands clear of the wall behind it, but for a wide opening that it stands before.

use elbowroom_solver::answer::RankedOption;

use crate::support::ranked::{brief_of, ranked};

/// 2.9 m by 6.2 m, too narrow for a sofa, its table and a metre behind it; an opening 1.6 m wide at one end of a long wall.
const FLAT: &str = "
units: cm
walls:
  - { name: balcony end, length: 290, holds: [{ kind: window, at: 80, width: 120, sill: 60, head: 215 }] }
  - { name: right wall, length: 620 }
  - { name: entry end, length: 290, holds: [{ kind: door, at: 25, width: 85, hinge: left, swings: in, leads_to: entrance }] }
  - { name: left wall, length: 620, holds: [{ kind: opening, at: 30, width: 160, leads_to: kitchen }] }
pieces:
  - { kind: sofa, seats: 2 }
  - { kind: armchair }
  - { kind: coffee-table }
  - { kind: wall-screen, screen: 50 in }
";

#[test]
fn a_free_seat_is_a_passage_off_the_wall_that_it_is_not_before_an_opening_of() {
    let (brief, answer) = (brief_of(FLAT), ranked(FLAT));
    let is_before_left_wall = |option: &&RankedOption| {
        let main = option.layout.of(option.main_seat);
        option.choices.seat_back.is_none() && main.is_some_and(|main| main.facing.x > 0.9)
    };
    let options: Vec<&RankedOption> = answer.options.iter().filter(is_before_left_wall).collect();
    for option in &options {
        let main = option.layout.of(option.main_seat).unwrap();
        let passage = brief.rules.get(elbowroom_model::Clearance::Passage);
        // The left wall runs from (0, -6200) to the origin; its opening lies 300 to 1900 mm from that end.
        let is_before_opening = (-5900.0..=-4300.0).contains(&main.anchor.y);
        assert!(main.anchor.x >= passage || is_before_opening, "{}: {:?}", option.key, main.anchor);
    }
    assert!(!options.is_empty(), "{:?}", answer.refused);
}
