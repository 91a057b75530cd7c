//! What would help where nothing fits: the room so changed is answered with an option.

use elbowroom_solver::Limits;
use elbowroom_solver::refusal::{Change, Lever, Remedy};

use crate::support::ranked::{brief_of, ranked_brief, ranked_briefly};
use crate::support::remedied::remedied;

/// Between returns 100 cm deep, 43 cm before each and a table 60 cm wide want 346 cm: at 300 cm it finds no place, whichever
/// width is planned, since the sofa may be bought so.
#[test]
fn a_seat_that_leaves_no_room_before_it_at_its_least_is_wanted_larger() {
    let text = "units: cm\nwalls:\n  - { name: a, length: 520 }\n  - { name: b, length: 680 }\n  - { name: c, length: 520, holds: \
                [{ kind: door, at: 40, width: 83, hinge: left, swings: out, leads_to: entrance }] }\n  - { name: d, length: 680 }\n\
                pieces:\n  - { kind: corner-sofa, width: 300..380, return: 170, second_return: 170, depth: 100 }\n  \
                - { kind: coffee-table, width: 60..110 }\n";
    let brief = brief_of(text);
    let answer = ranked_briefly(text);
    assert!(answer.options.is_empty());
    let raised = |remedy: &&Remedy| matches!(remedy.changes[..], [Change { lever: Lever::Raised(..), .. }]);
    let remedy = answer.remedies.iter().find(raised).unwrap_or_else(|| panic!("{:#?}", answer.remedies));
    assert!((3460.0..=3800.0).contains(&remedy.changes[0].to), "{remedy:?}");
    for remedy in &answer.remedies {
        let helped = ranked_brief(&remedied(&brief, remedy).unwrap(), Limits { shown: 0, ..Limits::default() });
        assert!(!helped.options.is_empty(), "{remedy:?}");
    }
}
