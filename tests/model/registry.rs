//! One identity for each rule, clearance, criterion and kind: a key that reads back, a row of data, a place in the schema.

use std::collections::BTreeSet;
use std::str::FromStr;

use elbowroom_model::tables::{Profile, Tables};
use elbowroom_model::{Clearance, Criterion, Hand, PieceKind, Rule, Unit, scenario};
use elbowroom_model::{Drawn, Front, KeepsClear, Stands};
use serde::Serialize;
use serde_json::Value;

const SIZES: &str = include_str!("../../model/data/sizes.yaml");
const CLEARANCES: &str = include_str!("../../model/data/clearances.yaml");

/// The keys at the left margin of a data file.
fn rows(data: &str) -> BTreeSet<&str> {
    let starts = |line: &&str| line.starts_with(|first: char| first.is_ascii_lowercase());
    data.lines().filter(starts).filter_map(|line| line.split(':').next()).collect()
}

fn keys(value: &Value) -> BTreeSet<&str> {
    value["properties"].as_object().unwrap().keys().map(String::as_str).collect()
}

/// Every value is written by its key, and reads back from it; no two have one key.
fn keyed<T>(all: &[T], key: impl Fn(T) -> &'static str) -> BTreeSet<&'static str>
where
    T: Copy + PartialEq + std::fmt::Debug + Serialize + FromStr<Err: std::fmt::Debug>,
{
    for &one in all {
        assert_eq!(serde_json::to_value(one).unwrap(), key(one));
        assert_eq!(key(one).parse::<T>().unwrap(), one);
    }
    let keys: BTreeSet<&str> = all.iter().map(|&one| key(one)).collect();
    assert_eq!(keys.len(), all.len(), "{keys:?}");
    keys
}

#[test]
fn a_clearance_has_its_key_its_row_and_its_place_in_the_schema() {
    let known = keyed(Clearance::ALL, Clearance::key);
    assert_eq!(rows(CLEARANCES), known);
    let schema: Value = serde_json::from_str(&scenario::schema()).unwrap();
    let mut listed = keys(&schema["properties"]["clearances"]);
    assert!(listed.remove("profile"));
    assert_eq!(listed, known);
}

#[test]
fn a_criterion_has_its_key_and_its_place_in_the_schema() {
    let known = keyed(Criterion::ALL, Criterion::key);
    let schema: Value = serde_json::from_str(&scenario::schema()).unwrap();
    assert_eq!(keys(&schema["properties"]["wishes"]), known);
}

#[test]
fn a_kind_has_its_key_its_row_and_its_place_in_the_schema() {
    let known = keyed(PieceKind::ALL, PieceKind::key);
    assert_eq!(rows(SIZES), known);
    let schema = scenario::schema();
    assert!(known.iter().all(|key| schema.contains(&format!("\"{key}\""))), "{schema}");
}

#[test]
fn what_a_kind_is_agrees_with_its_sizes() {
    let tables = Tables::built_in().unwrap();
    for &kind in PieceKind::ALL {
        let (row, sizes) = (kind.traits(), tables.sizes(kind));
        assert_eq!(kind.has_return(), sizes.return_length.is_some(), "{kind:?}");
        assert_eq!(kind.is_flat(), sizes.height == 0.0, "{kind:?}");
        assert_eq!(kind.is_dined_at(), sizes.steps.iter().any(|step| step.seats.is_some()), "{kind:?}");
        assert_eq!(kind.is_flat(), matches!(row.drawn, Drawn::Rug | Drawn::OpenFloor), "{kind:?}");
        assert_eq!(kind.is_seat(), row.drawn == Drawn::Upholstered, "{kind:?}");
        assert_eq!(kind.is_seat(), row.stands == Stands::AsSeat, "{kind:?}");
        // What keeps a front clear has one.
        assert!(row.keeps_clear == KeepsClear::Nothing || row.front != Front::None, "{kind:?}");
    }
}

#[test]
fn units_and_hands_are_written_by_their_keys() {
    assert_eq!(keyed(Unit::ALL, Unit::key).len(), 5);
    assert_eq!(keyed(Hand::ALL, Hand::key).len(), 2);
}

#[test]
fn a_clearance_is_a_rule_of_the_same_key() {
    let rules: Vec<Rule> = Rule::all().collect();
    let keys: BTreeSet<&str> = rules.iter().map(|rule| rule.key()).collect();
    assert_eq!(keys.len(), rules.len(), "{rules:?}");
    for &clearance in Clearance::ALL {
        let rule = Rule::from(clearance);
        assert_eq!((rule.key(), rule.clearance()), (clearance.key(), Some(clearance)));
        assert!(rules.contains(&rule));
    }
    let without_figure = rules.iter().filter(|rule| rule.clearance().is_none());
    assert_eq!(without_figure.count(), rules.len() - Clearance::ALL.len());
    assert!(rules.iter().all(|rule| serde_json::to_value(rule).unwrap() == rule.key()));
}

/// What is eased where nothing else fits is known by the same mark as a clearance and as a rule, and every profile asks it.
#[test]
fn a_clearance_of_comfort_is_a_rule_of_comfort_in_every_profile() {
    let tables = Tables::built_in().unwrap();
    for &clearance in Clearance::ALL {
        assert_eq!(Rule::from(clearance).is_comfort(), clearance.is_comfort(), "{clearance:?}");
        for profile in [Profile::Snug, Profile::Easy, Profile::Wheelchair] {
            let figure = tables.rules(profile).figure(clearance).figure;
            assert!(!clearance.is_comfort() || figure.is_some_and(|figure| figure > 0.0), "{clearance:?} {profile:?}");
        }
    }
}
