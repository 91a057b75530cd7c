//! Tall storage at places that cost alike stands where the room is judged best, not where the order of the file has it.
//!
//! The room is one of a real dwelling out of open data (`tests/data/rooms.md`); a point is a point of 100, and what is judged so
//! near to each other is as good (common practice, no source).

use std::collections::BTreeMap;

use elbowroom_solver::answer::RankedOption;

use crate::support::dwellings::dwellings;
use crate::support::plan::{Plan, PlanPiece};
use crate::support::ranked::ranked_briefly;

/// Scores that no reader tells apart.
const AS_GOOD: f64 = 0.5;

/// The room that has a long wall with two free ends.
const ROOM: &str = "resplan-0-0";

fn furnished(plan: Plan) -> Plan {
    let optional = |kind| PlanPiece::of(kind).also("needed", false);
    let screen = PlanPiece::of("media-unit").also("screen", "55 in");
    let plan = Plan { measured_within: 10.0, ..plan }.piece(PlanPiece::of("corner-sofa")).piece(optional("armchair"));
    plan.piece(PlanPiece::of("coffee-table")).piece(screen).piece(optional("bookcase")).piece(optional("floor-lamp"))
}

/// Scores of the plans that ease nothing and cost so much, by the keys of their options.
fn scores(plan: &Plan) -> BTreeMap<String, (f64, f64)> {
    let is_clean = |option: &&RankedOption| option.eased.is_empty();
    let answer = ranked_briefly(&plan.text());
    answer.options.iter().filter(is_clean).map(|it| (it.key.clone(), (it.planned.value.round(), it.score))).collect()
}

#[test]
fn of_places_that_cost_alike_a_bookcase_has_the_one_that_is_judged_best() {
    let (_, plan) = dwellings(furnished).into_iter().find(|(id, _)| id == ROOM).unwrap();
    let mut reversed = plan.clone();
    reversed.pieces.reverse();
    let (scores, again) = (scores(&plan), scores(&reversed));
    let alike = scores.iter().filter_map(|(key, told)| Some((key, told, again.get(key)?)));
    let alike: Vec<_> = alike.filter(|(_, one, other)| (one.0 - other.0).abs() <= 1.0).collect();
    assert!(alike.len() > 10, "{}", alike.len());
    for (key, one, other) in alike {
        assert!((one.1 - other.1).abs() < AS_GOOD, "{key}: {} and {}", one.1, other.1);
    }
}
