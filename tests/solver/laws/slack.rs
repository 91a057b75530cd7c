//! More room or softer rules never make anything worse, less room never makes anything better.
//!
//! `seat_to_table` is a place and not a least, and off-wall gaps move the strip that a piece at a wall stands in: they
//! are no rules to loosen. What a route needs is its width in the empty room where that is less than its rule, so
//! rooms whose routes change what they need are no evidence and are passed over.
//!
//! What gets no worse is the plan. The largest pieces hang on where the plan has them, and what it aims at on the length of
//! the wall: of those there is no such law.

use std::collections::BTreeMap;

use elbowroom_model::{Brief, Clearance};
use elbowroom_solver::Limits;
use elbowroom_solver::answer::{Answer, PlanValue};
use elbowroom_solver::routes::End;
use proptest::prelude::proptest;

use super::drawn::{middle, rectangles, rooms};
use super::few;
use super::told::{Image, by_decisions, costs_no_more};
use crate::support::plan::Plan;
use crate::support::ranked::{brief_of, ranked_brief};

fn solved(brief: &Brief) -> Answer {
    ranked_brief(brief, Limits { shown: 0, ..Limits::default() })
}

/// What each route needs, by its ends; the same in every option.
fn needs(answer: &Answer) -> BTreeMap<(String, String), f64> {
    let routes = answer.options.iter().flat_map(|option| &option.routes);
    let name = |end: End| end.name(&answer.brief).to_owned();
    routes.map(|route| ((name(route.from), name(route.to)), route.needs)).collect()
}

/// No option is lost.
fn assert_none_lost(before: &Answer, after: &Answer, what: &str, text: &str) {
    let (old, new) = (by_decisions(before, Image::Same), by_decisions(after, Image::Same));
    for decisions in old.keys() {
        assert!(new.contains_key(decisions), "{what}: lost {decisions:?}\n{:#?}\n{text}", after.refused);
    }
}

/// No option is lost and none has a plan that costs more.
fn assert_no_worse(before: &Answer, after: &Answer, what: &str, text: &str) {
    assert_none_lost(before, after, what, text);
    let (old, new) = (by_decisions(before, Image::Same), by_decisions(after, Image::Same));
    for (decisions, option) in &old {
        let (was, is) = (&option.planned, &new[decisions].planned);
        let rose = is.proven && !costs_no_more(is.value, was.value);
        assert!(!rose, "{what}: {decisions:?} rose from {was:?} to {is:?}\n{text}");
    }
}

/// Rules that are leasts and nothing else.
const LEASTS: [Clearance; 8] = [
    Clearance::Walkway,
    Clearance::Passage,
    Clearance::FacingSeats,
    Clearance::ScreenToSeat,
    Clearance::DoorLanding,
    Clearance::WindowFront,
    Clearance::StorageFront,
    Clearance::DeskFront,
];

/// One of the rules, and a figure for it that asks for less. (A passage under `seat_to_table` would let a table stop the way to
/// its seat.)
fn loosened(brief: &Brief, rule: usize, keep: f64) -> (Clearance, f64) {
    let rule = LEASTS[rule % LEASTS.len()];
    let now = brief.rules.get(rule);
    let least = if rule == Clearance::Passage { brief.rules.get(Clearance::SeatToTable) } else { 0.0 };
    (rule, (now * keep).max(least).min(now))
}

/// Loosening one of the rules by a part of it makes no plan worse.
pub(super) fn assert_loosening_loses_nothing(plan: &Plan, rule: usize, keep: f64) {
    let text = plan.text();
    let brief = brief_of(&text);
    let (rule, figure) = loosened(&brief, rule, keep);
    let loose = Brief { rules: brief.rules.clone().with(rule, figure, "a law"), ..brief.clone() };
    assert_no_worse(&solved(&brief), &solved(&loose), &format!("{} {figure}", rule.key()), &text);
}

/// What the cheapest plan costs, by what is told of each.
fn cheapest(answer: &Answer, told: impl Fn(&PlanValue) -> f64) -> Option<f64> {
    answer.options.iter().map(|option| told(&option.planned)).min_by(f64::total_cmp)
}

/// Seats that may stand nearer to each other may stand as far apart as before, the chair with one end of its back at a wall that
/// it looks away from aslant (drawn at random).
#[test]
fn seats_that_may_stand_nearer_stand_no_worse() {
    let text = "units: mm
measured_within: 5
walls:
  - name: wall a
    start: [0, 0]
  - name: wall b
    start: [3570, 0]
    holds:
      - { kind: window, name: item 1, at: 60, width: 730, sill: 330, head: 2100, view: plain, must_reach: false }
  - name: wall c
    start: [4280, -710]
  - name: wall d
    start: [4280, -4590]
  - name: wall e
    start: [0, -4590]
    holds:
      - { kind: door, name: item 0, at: 360, width: 860, hinge: left, swings: in, leads_to: entrance }
      - { kind: fireplace, name: item 2, at: 1420, width: 680, depth: 380, keep_clear: 440 }
pieces:
  - { kind: day-bed, width: 490, name: main seat }
  - { kind: armchair, width: 1960..2030, name: piece 0 }
clearances:
  profile: wheelchair
  door_landing: 1490
wishes:
  openness: 2
  daylight: 3
";
    let brief = brief_of(text);
    let nearer = brief.rules.clone().with(Clearance::FacingSeats, 1244.16, "a law");
    assert_no_worse(&solved(&brief), &solved(&Brief { rules: nearer, ..brief.clone() }), "nearer", text);
}

proptest! {
    #![proptest_config(few(6))]

    /// Loosening one rule by a part of it.
    #[test]
    fn loosening_a_rule_loses_nothing(plan in rooms(), rule in 0..LEASTS.len(), keep in 0.4_f64..0.95) {
        assert_loosening_loses_nothing(&plan, rule, keep);
    }

    /// Raising the most of one dimension of one piece.
    #[test]
    fn raising_a_most_loses_nothing(plan in rooms(), piece in 0_usize..4, by in 20.0_f64..300.0) {
        let text = plan.text();
        let brief = brief_of(&text);
        let mut larger = brief.clone();
        let piece = piece % larger.pieces.len();
        larger.pieces[piece].width.most += by;
        assert_no_worse(&solved(&brief), &solved(&larger), &format!("{} {by}", brief.pieces[piece].name), &text);
    }

    /// Moving one wall of a rectangle outward.
    #[test]
    fn a_larger_room_loses_nothing(plan in rectangles(), by in 1_u32..40) {
        let (text, by) = (plan.text(), f64::from(by) * 10.0);
        let (before, after) = (solved(&brief_of(&text)), solved(&brief_of(&longer(&plan, by).text())));
        if needs(&after).iter().all(|(route, need)| needs(&before).get(route).is_none_or(|was| need <= was)) {
            assert_none_lost(&before, &after, &format!("wall b out by {by}"), &text);
        }
    }

    /// Leaving one piece out never makes the plan of the others cost more.
    #[test]
    fn a_piece_less_leaves_more_for_the_rest(plan in rooms(), piece in 0_usize..4) {
        let text = plan.text();
        let brief = brief_of(&text);
        let piece = piece % brief.pieces.len();
        let mut fewer = brief.clone();
        let left_out = fewer.pieces.remove(piece).name;
        // A seat must remain, and what stands opposite it decides which arrangements there are.
        if !fewer.pieces.iter().any(|piece| piece.kind.is_seat()) || brief.pieces[piece].kind.is_seat() {
            return Ok(());
        }
        let (before, after) = (solved(&brief), solved(&fewer));
        if let Some(was) = cheapest(&before, |plan| plan.value) {
            // What is not proven may cost as little as its bound.
            let now = cheapest(&after, |plan| if plan.proven { plan.value } else { plan.bound });
            assert!(now.is_some_and(|now| costs_no_more(now, was)), "without {left_out}: {was} to {now:?}\n{text}");
        }
    }

    /// An obstacle makes no plan cheaper, and no option where there was none.
    #[test]
    fn an_obstacle_never_helps(plan in rooms(), dx in -120_i32..120, dy in -120_i32..120, side in 5_u32..60) {
        let text = plan.text();
        let (x, y) = middle(&plan);
        let low = (x + f64::from(dx) * 10.0, y + f64::from(dy) * 10.0);
        let high = (low.0 + f64::from(side) * 10.0, low.1 + f64::from(side) * 10.0);
        let (before, after) = (solved(&brief_of(&text)), solved(&brief_of(&plan.block("cask", low, high).text())));
        if needs(&before).iter().all(|(route, need)| needs(&after).get(route).is_none_or(|now| now >= need)) {
            let was = by_decisions(&before, Image::Same);
            for (decisions, option) in by_decisions(&after, Image::Same) {
                let Some(was) = was.get(&decisions).map(|was| &was.planned) else {
                    let why = before.refused.iter().find(|refusal| refusal.key == option.key);
                    panic!("{decisions:?} by a cask {low:?} {high:?}\n{why:#?}\n{text}")
                };
                let now = option.planned.value;
                assert!(now >= was.bound - 1.0, "{decisions:?}: {was:?} to {now} by a cask {low:?} {high:?}\n{text}");
            }
        }
    }
}

/// A rectangle with wall `b` moved out: items on wall `c` keep their place on the plan.
fn longer(plan: &Plan, by: f64) -> Plan {
    let mut plan = plan.clone();
    plan.walls[1].start.0 += by;
    plan.walls[2].start.0 += by;
    for held in &mut plan.walls[2].holds {
        held.at += by;
    }
    plan
}
