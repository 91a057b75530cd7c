//! Chairs that may stand turned toward the others.

use elbowroom_model::{Brief, Fault, Turned, scenario};

fn read(row: &str) -> Result<Brief, Vec<Fault>> {
    let walls = "units: cm\nwalls:\n  - { length: 500, holds: [{ kind: door, at: 20, width: 83, swings: slides, leads_to: entrance }] }\n  - { length: 400 }\n  - { length: 500 }\n  - { length: 400 }\npieces:\n";
    scenario::read(&format!("{walls}  - {row}\n"), None)
}

#[test]
fn a_chair_stands_square_unless_the_file_says_otherwise() {
    let turned = |row: &str| read(row).unwrap().pieces[0].turned;
    assert_eq!(turned("{ kind: armchair }"), Turned::No);
    for answer in Turned::ALL {
        // `no` and `yes` are words here, not truths.
        assert_eq!(turned(&format!("{{ kind: armchair, turned: {} }}", answer.key())), *answer);
    }
    let pair = read("{ kind: armchair, count: 2, turned: either }").unwrap();
    assert!(pair.pieces.iter().all(|chair| chair.turned == Turned::Either));
}

/// Tools that write YAML take `yes` for a truth value, and people take one for the other.
#[test]
fn yes_and_no_are_read_however_they_are_written() {
    let piece = |row: &str| read(row).unwrap().pieces.remove(0);
    for (said, answer) in [("true", Turned::Yes), ("Yes", Turned::Yes), ("false", Turned::No), ("NO", Turned::No)] {
        assert_eq!(piece(&format!("{{ kind: armchair, turned: {said} }}")).turned, answer, "{said}");
    }
    for (said, answer) in [("yes", true), ("no", false), ("true", true), ("\"no\"", false)] {
        assert_eq!(piece(&format!("{{ kind: armchair, needed: {said} }}")).needed, answer, "{said}");
    }
    assert_eq!(read("{ kind: armchair, needed: perhaps }").unwrap_err()[0].code, "wrong_type");
}

/// Quotes would not help: `"true"` is no answer either.
#[test]
fn another_word_or_an_angle_is_told_the_words_that_are_known() {
    let remedy = |said: &str| {
        let faults = read(&format!("{{ kind: armchair, turned: {said} }}")).unwrap_err();
        assert_eq!(faults.len(), 1, "{faults:#?}");
        faults[0].remedy.clone()
    };
    let known = "Known here: no, yes, either.";
    for (said, answer) in [("on", "yes"), ("\"true\"", "yes"), ("off", "no")] {
        assert_eq!(remedy(said), format!("Write `{answer}`. {known}"), "{said}");
        read(&format!("{{ kind: armchair, turned: {answer} }}")).expect("what the remedy says is read");
    }
    assert_eq!(remedy("30"), known);
    assert_eq!(remedy("[30]"), known);
}

#[test]
fn only_a_chair_can_be_turned() {
    for row in ["{ kind: sofa, turned: either }", "{ kind: corner-sofa, turned: no }"] {
        let faults = read(row).unwrap_err();
        assert_eq!(faults[0].code, "key_of_another_kind", "{row}");
        assert!(faults[0].message.contains("`turned` is no key of"), "{}", faults[0].message);
        assert_eq!(faults[0].remedy, "Leave `turned` out; it belongs to the kind armchair.");
    }
}

#[test]
fn an_answer_that_is_none_is_told_with_those_that_are() {
    let faults = read("{ kind: armchair, turned: maybe }").unwrap_err();
    let told = format!("{} {}", faults[0].message, faults[0].remedy);
    assert!(["no", "yes", "either"].iter().all(|answer| told.contains(answer)), "{told}");
}
