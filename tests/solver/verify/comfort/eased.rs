//! What a layout owns to giving only in part, and what it gives.

use elbowroom_model::{Brief, Clearance, PieceId, PieceKind, Rule};
use elbowroom_solver::rules::{Cause, With};
use elbowroom_solver::verify::{CheckedRoom, Wrong, envelope, growth, shortfalls, verify};
use elbowroom_solver::{Layout, Placed};
use serde_json::json;

use super::super::{SOUTH, arrangement, placed, told};
use crate::support::checker::{self, Part};
use crate::support::rooms::{Furnish, piece, rectangle};

/// A sofa and an armchair 100 mm apart, where 150 are wanted (common practice, no source).
fn brief() -> Brief {
    rectangle(5000.0, 4000.0)
        .rule(Clearance::BetweenSeats, 150.0)
        .piece(piece(PieceKind::Sofa))
        .piece(piece(PieceKind::Armchair))
}

fn stands(gap: f64) -> Vec<Placed> {
    let sofa = placed(0, (1000.0, 0.0), SOUTH, (2000.0, 900.0));
    vec![sofa, placed(1, (2450.0 + gap, 0.0), SOUTH, (900.0, 900.0))]
}

fn cause(rule: impl Into<Rule>) -> Cause {
    Cause { rule: rule.into(), piece: PieceId(1), with: With::Piece(PieceId(0)) }
}

fn layout(gap: f64, eased: Vec<Cause>) -> Layout {
    Layout { placed: stands(gap), eased, ..Layout::default() }
}

#[test]
fn a_layout_may_give_less_where_it_owns_to_it() {
    let brief = brief();
    let checked = CheckedRoom::of(&brief);
    let broken = |layout: &Layout| -> Vec<(Rule, Wrong)> {
        let breaches = verify(&checked, layout, &arrangement(), &[]);
        breaches.into_iter().map(|breach| (breach.rule, breach.wrong)).collect()
    };
    let between = cause(Clearance::BetweenSeats);
    assert_eq!(broken(&layout(100.0, vec![between])), [], "in either order of the two");
    assert_eq!(broken(&layout(100.0, vec![])), [(Clearance::BetweenSeats.into(), Wrong::SeatsTouch)]);
    let other = broken(&layout(100.0, vec![cause(Clearance::LegRoom)]));
    assert_eq!(other, [(Clearance::BetweenSeats.into(), Wrong::SeatsTouch)], "another rule is no excuse");
    assert_eq!(broken(&layout(200.0, vec![cause(Rule::Overlap)])), [(Rule::Overlap, Wrong::Eased)]);
    let hard = cause(Clearance::FacingSeats);
    assert_eq!(broken(&layout(200.0, vec![hard])), [(Clearance::FacingSeats.into(), Wrong::Eased)]);
}

#[test]
fn what_is_given_and_wanted_is_told() {
    let brief = brief().rule(Clearance::TableAxis, 100.0);
    let checked = CheckedRoom::of(&brief);
    let of = |apart: f64| {
        let short = shortfalls(&checked, &layout(apart, Vec::new()), &arrangement());
        short.into_iter().map(|it| (it.rule, it.given.map(f64::round), it.wanted)).collect::<Vec<_>>()
    };
    assert_eq!(of(100.0), [(Clearance::BetweenSeats.into(), Some(100.0), Some(150.0))], "there is no table");
    assert_eq!(of(200.0), []);
}

#[test]
fn the_second_check_holds_a_pair_to_what_is_told() {
    let check = |told_given: f64, between: [&str; 2], rule: &str| {
        let brief = brief();
        let mut option = told(&brief, &stands(100.0), &[]);
        option["eased"] = json!([{ "rule": rule, "between": between, "wanted": 150.0, "given": told_given }]);
        checker::of_part(&brief, &option, Part::Comfort)
    };
    assert_eq!(check(100.0, ["armchair", "sofa"], "between_seats"), [""; 0]);
    assert_eq!(check(100.0, ["sofa", "armchair"], "between_seats"), [""; 0]);
    assert_eq!(check(102.0, ["sofa", "armchair"], "between_seats").len(), 1, "more is told than is given");
    assert_eq!(check(100.0, ["sofa", "sofa"], "overlap").len(), 3, "not eased, no rule of comfort, and no such length");
}

#[test]
fn growth_stops_at_what_is_wanted_and_at_what_is_given() {
    let brief = brief();
    let checked = CheckedRoom::of(&brief);
    let wider = |gap: f64, eased: Vec<Cause>| {
        let found = growth(&checked, &layout(gap, eased), &arrangement());
        found.iter().any(|breach| breach.between[0].name(&brief) == "sofa" && is_width(breach.wrong))
    };
    assert!(wider(171.5, vec![]), "20 mm are left");
    assert!(!wider(150.0, vec![]), "none is left");
    assert!(!wider(100.0, vec![cause(Clearance::BetweenSeats)]), "an eased pair keeps what it has");
}

fn is_width(wrong: Wrong) -> bool {
    wrong == Wrong::CanGrow(elbowroom_model::Dimension::Width)
}

#[test]
fn smaller_pieces_keep_what_is_eased_and_are_asked_for_no_axis() {
    let brief = brief().rule(Clearance::ScreenAxis, 140.0).rule(Clearance::FrontOpen, 3500.0);
    let checked = CheckedRoom::of(&brief);
    let eased = layout(100.0, vec![cause(Clearance::BetweenSeats)]);
    assert_eq!(envelope(&checked, &eased, &arrangement(), 1), []);
    let rules = envelope(&checked, &layout(100.0, vec![]), &arrangement(), 1).into_iter().map(|breach| breach.rule);
    assert!(rules.into_iter().all(|rule| rule == Clearance::BetweenSeats.into()));
}
