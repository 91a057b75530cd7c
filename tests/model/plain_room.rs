//! A plain room, and the same with one thing changed.

use elbowroom_model::{Brief, Fault, scenario};

/// Four walls, a window, a door, a sofa and a table: no fault in it. Lines are counted by the tests.
pub(crate) const PLAIN: &str = "\
name: Plain room
units: cm
walls:
  - name: canal wall
    length: 486
    holds:
      - { kind: window, name: bay, at: 82, width: 220 }
  - name: stair wall
    length: 372
    holds:
      - { kind: door, name: hall door, at: 20, width: 83, hinge: left, swings: in, leads_to: entrance }
  - name: party wall
    length: 486
  - name: dining side
    length: 372
pieces:
  - { kind: sofa, width: 180..240 }
  - { kind: coffee-table }
";

/// The plain room with some of its text replaced.
pub(crate) fn changed(changes: &[(&str, &str)]) -> String {
    changes.iter().fold(PLAIN.to_owned(), |text, (from, to)| {
        assert_eq!(text.matches(from).count(), 1, "`{from}` stands once in the plain room");
        text.replace(from, to)
    })
}

/// The plain room with lines added at its end.
pub(crate) fn with(lines: &str) -> String {
    format!("{PLAIN}{lines}")
}

/// The brief of a sound text.
pub(crate) fn brief(text: &str) -> Brief {
    scenario::read(text, None).unwrap_or_else(|faults| panic!("{text}\n{faults:#?}"))
}

/// The faults of a text that has some.
pub(crate) fn faults(text: &str) -> Vec<Fault> {
    scenario::read(text, None).expect_err("the text has a fault")
}
