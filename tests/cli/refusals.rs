//! Why an arrangement does not fit: the figure that a rule asks for, what is missing of it, and whose name is said.

use serde_json::Value;

use crate::program::run_with;

/// A sofa before a stove with so much kept clear of it, cm.
fn room(keep_clear: f64, sofa: &str) -> String {
    format!(
        "units: cm\nmeasured_within: 0\nwalls:\n  - {{ name: north, length: 300, holds: [{{ kind: fireplace, name: stove, at: 110, \
         width: 80, depth: 40, keep_clear: {keep_clear} }}] }}\n  - {{ name: east, length: 290 }}\n  - {{ name: south, length: 300, \
         holds: [{{ kind: door, name: hall door, at: 10, width: 80, hinge: left, swings: out, leads_to: entrance }}] }}\n  - {{ name: \
         west, length: 290 }}\npieces:\n  - {{ kind: sofa, name: '{sofa}', width: 190..200, depth: 90..95 }}\nclearances: {{ profile: \
         snug }}\n"
    )
}

/// What came of a room, as JSON.
fn ranked(text: &str) -> Value {
    serde_json::from_str(&run_with(&["rank", "--json", "-"], text.as_bytes()).stdout).unwrap()
}

fn list<'a>(result: &'a Value, field: &str) -> &'a [Value] {
    result[field].as_array().unwrap()
}

fn fits(result: &Value, key: &str) -> bool {
    list(result, "options").iter().any(|option| option["key"] == key)
}

#[test]
fn what_stays_clear_of_a_stove_is_told_and_so_is_what_is_missing() {
    let result = ranked(&room(120.0, "sofa"));
    let refused = list(&result, "refused").iter().find(|refused| refused["key"] == "west").unwrap();
    let said = "The sofa would stand too near to the stove: 120 cm stay clear of it; it is ";
    assert!(refused["rule"] == "keep_clear" && refused["why"].as_str().unwrap().starts_with(said), "{refused:?}");
    let short = refused["short_by"].as_f64().unwrap() / 10.0;
    assert!(fits(&ranked(&room((120.0 - short).floor(), "sofa")), "west"), "{refused:?}");
    assert!(!fits(&ranked(&room((120.0 - short).ceil() + 1.0, "sofa")), "west"), "{refused:?}");
}

#[test]
fn no_reason_is_told_twice() {
    for keep_clear in [100.0, 120.0, 170.0] {
        for refused in list(&ranked(&room(keep_clear, "sofa")), "refused") {
            let why = refused["why"].as_str().unwrap();
            let sentences: Vec<&str> = why.split(". ").map(|it| it.trim_end_matches('.')).collect();
            let different: std::collections::BTreeSet<_> = sentences.iter().collect();
            assert_eq!(different.len(), sentences.len(), "{why}");
        }
    }
}

/// A name that is no word takes no article, wherever it is said.
#[test]
fn names_that_are_no_words_take_no_article() {
    let mut said = 0;
    for keep_clear in [60.0, 120.0, 170.0] {
        let told = ranked(&room(keep_clear, "p0")).to_string();
        assert!(!told.contains("he p0") && !told.contains(" a p0") && !told.contains("A p0"), "{told}");
        said += told.matches("p0 ").count();
    }
    assert!(said > 5, "{said}");
}
