//! Why an arrangement does not fit: the figure that a rule asks for, what is missing of it, and whose name is said.

use elbowroom_model::Rule;
use elbowroom_solver::Outcome;

use crate::support::ranked::ranked_briefly;

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

fn fits(outcome: &Outcome, key: &str) -> bool {
    outcome.options.iter().any(|option| option.key == key)
}

#[test]
fn what_stays_clear_of_a_stove_is_told_and_so_is_what_is_missing() {
    let outcome = ranked_briefly(&room(120.0, "sofa"));
    let refused = outcome.refused.iter().find(|refused| refused.key == "west").unwrap();
    let said = "The sofa would stand too near to the stove: 120 cm stay clear of it, and ";
    assert!(refused.rule == Rule::KeepClear && refused.why.starts_with(said), "{refused:?}");
    let short = refused.short_by.unwrap() / 10.0;
    assert!(fits(&ranked_briefly(&room((120.0 - short).floor(), "sofa")), "west"), "{refused:?}");
    assert!(!fits(&ranked_briefly(&room((120.0 - short).ceil() + 1.0, "sofa")), "west"), "{refused:?}");
}

#[test]
fn no_reason_is_told_twice() {
    for keep_clear in [100.0, 120.0, 170.0] {
        for refused in ranked_briefly(&room(keep_clear, "sofa")).refused {
            let sentences: Vec<&str> = refused.why.split(". ").map(|it| it.trim_end_matches('.')).collect();
            let different: std::collections::BTreeSet<_> = sentences.iter().collect();
            assert_eq!(different.len(), sentences.len(), "{}", refused.why);
        }
    }
}

/// A name that is no word takes no article, wherever it is said.
#[test]
fn names_that_are_no_words_take_no_article() {
    let mut said = 0;
    for keep_clear in [60.0, 120.0, 170.0] {
        let told = serde_json::to_string(&ranked_briefly(&room(keep_clear, "p0"))).unwrap();
        assert!(!told.contains("he p0") && !told.contains(" a p0") && !told.contains("A p0"), "{told}");
        said += told.matches("p0 ").count();
    }
    assert!(said > 5, "{said}");
}
