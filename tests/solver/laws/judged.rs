//! Every option of a room is judged by the same criteria, and its score is their weighted mean. What the search finds passes
//! the check.

use elbowroom_model::Criterion;
use elbowroom_solver::answer::Answer;
use elbowroom_solver::criteria::left_out;
use elbowroom_solver::refusal::Why;
use proptest::prelude::{any, proptest};

use super::drawn::rooms;
use super::few;
use super::sizes::rooms_on_file;
use crate::support::plan::Plan;
use crate::support::ranked::{brief_of, ranked_briefly};

/// The plan with some of its pieces asked for only where they fit.
fn with_some_optional(mut plan: Plan, which: u8) -> Plan {
    for (place, piece) in plan.pieces.iter_mut().enumerate() {
        if which >> place & 1 == 1 {
            piece.also.push(("needed", "false".to_owned()));
        }
    }
    plan
}

/// The search and the check agree on what the rules say: nothing that was found is refused for not passing.
fn assert_all_pass(answer: &Answer, text: &str) {
    for refusal in &answer.refused {
        assert!(!matches!(refusal.why, Why::NotVerified(_)), "{refusal:#?}\n{text}");
    }
}

#[test]
fn what_is_found_in_a_room_on_file_passes_the_check() {
    for (name, text) in rooms_on_file() {
        assert_all_pass(&ranked_briefly(&text), &name);
    }
}

/// Behind a day bed that looks west, the north wall comes a hand's breadth nearer in ten metres (drawn at random).
#[test]
fn what_is_found_beside_a_wall_a_hair_aslant_passes_the_check() {
    let text = "units: mm
measured_within: 5
walls:
  - { name: wall a, start: [0, 0] }
  - { name: wall b, start: [5360, -50] }
  - name: wall c
    start: [5195, -3680]
    holds:
      - { kind: door, name: hall door, at: 3940, width: 680, hinge: right, swings: in, leads_to: entrance }
      - { kind: fireplace, name: hearth, at: 1910, width: 1980, depth: 190, keep_clear: 320 }
  - { name: wall d, start: [0, -3680] }
pieces:
  - { kind: day-bed, name: main seat }
clearances: { profile: easy, seat_to_table: 530 }
wishes: { fireside: 2, view: 4 }
";
    let answer = ranked_briefly(text);
    assert!(!answer.options.is_empty());
    assert_all_pass(&answer, text);
}

/// Behind a seat that looks past a corner a bench at the wall comes near with one end, which backs nobody (drawn at random).
#[test]
fn what_is_found_before_a_bench_aslant_passes_the_check() {
    let text = "units: mm
measured_within: 0
walls:
  - { name: wall e, start: [0, -2630] }
  - name: wall a
    start: [0, 0]
    holds: [{ kind: opening, name: arch, at: 270, width: 1310, leads_to: dining, stance: none }]
  - { name: wall b, start: [3230, 0] }
  - { name: wall c, start: [4040, -980] }
  - { name: wall d, start: [4040, -2630] }
pieces:
  - { kind: cabinet, width: 1690..2830, needed: false }
  - { kind: bench, name: long bench }
  - { kind: bench, name: short bench, needed: false }
  - { kind: sofa, width: 550..680 }
  - { kind: sideboard, width: 910 }
clearances: { profile: wheelchair, radiator_clear: 510 }
wishes: { screen: 0 }
";
    let answer = ranked_briefly(text);
    assert!(answer.options.iter().any(|option| option.key == "free-wall-b"));
    assert_all_pass(&answer, text);
}

proptest! {
    #![proptest_config(few(12))]

    #[test]
    fn what_is_found_passes_the_check(plan in rooms()) {
        let text = plan.text();
        assert_all_pass(&ranked_briefly(&text), &text);
    }

    #[test]
    fn all_options_are_judged_by_every_criterion_that_the_room_has(plan in rooms(), which in any::<u8>()) {
        let text = with_some_optional(plan, which).text();
        let brief = brief_of(&text);
        let missing: Vec<Criterion> = left_out(&brief).iter().map(|left_out| left_out.criterion).collect();
        let applying: Vec<Criterion> = Criterion::ALL.iter().copied().filter(|one| !missing.contains(one)).collect();
        for option in ranked_briefly(&text).options {
            let judged: Vec<Criterion> = option.judgements.iter().map(|it| it.criterion).collect();
            assert_eq!(judged, applying, "{}\n{text}", option.key);
            let weights: f64 = judged.iter().map(|criterion| brief.wishes.get(*criterion)).sum();
            let sum: f64 = option.judgements.iter().map(|it| it.score * brief.wishes.get(it.criterion)).sum();
            let mean = sum / weights;
            assert!((option.score - mean).abs() < 0.1, "{}: {} {mean}\n{text}", option.key, option.score);
        }
    }
}
