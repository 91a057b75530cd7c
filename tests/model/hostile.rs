//! Text that means harm, or no good: a fault and never a panic, in little time.

use elbowroom_model::{quote::is_control, scenario};
use proptest::prelude::*;

use crate::plain_room::{PLAIN, with};

/// Faults of hostile text; no message may hold what could steer a terminal.
fn refused(text: &str) -> Vec<&'static str> {
    let faults = scenario::read(text, None).expect_err("refused");
    for fault in &faults {
        let told = [&fault.message, &fault.remedy].map(String::as_str);
        assert!(!told.into_iter().chain(fault.item.as_deref()).any(|text| text.chars().any(is_control)), "{fault:?}");
        assert!(fault.message.len() < 2000, "{fault:?}");
    }
    faults.into_iter().map(|fault| fault.code).collect()
}

#[test]
fn aliases_that_explode_are_refused() {
    let mut bomb = "a: &a [x, x, x, x, x, x, x, x, x, x]\n".to_owned();
    for (name, before) in ('b'..='j').zip('a'..) {
        bomb += &format!("{name}: &{name} [{}]\n", format!("*{before},").repeat(10).trim_end_matches(','));
    }
    assert_eq!(refused(&bomb), ["too_much"]);
}

#[test]
fn an_alias_within_itself_is_refused() {
    assert!(!refused("a: &a [*a]\nb: *a\n").is_empty());
    assert!(!refused("a: *nobody\n").is_empty());
}

#[test]
fn deep_nesting_is_refused() {
    assert_eq!(refused(&"[".repeat(1 << 20)), ["too_much"]);
    assert_eq!(refused(&"{a: ".repeat(1 << 18)), ["too_much"]);
    let block: String = (0..1000).map(|depth| format!("{}a:\n", " ".repeat(depth))).collect();
    assert_eq!(refused(&block), ["too_much"]);
    assert_eq!(refused(&"- ".repeat(1 << 18)), ["too_much"]);
}

#[test]
fn a_mebibyte_of_anything_is_refused_or_read() {
    for piece in [
        "- a\n",
        "a: 1\n",
        "? \n",
        "&a ",
        "!!str ",
        "\"",
        "'",
        "|\n ",
        "%YAML\n",
        "---\n",
        "\u{1f6cb}",
        "#\n",
        "x",
        "<<: {a: 1}\n",
    ] {
        let text = piece.repeat((1 << 20) / piece.len());
        assert!(!refused(&text).is_empty(), "{piece}");
    }
    let comment = format!("{PLAIN}# {}\n", "x".repeat((1 << 20) - PLAIN.len() - 3));
    assert!(scenario::read(&comment, None).is_ok());
}

#[test]
fn a_long_name_is_cut_where_a_message_repeats_it() {
    let name = "n".repeat(1 << 19);
    assert!(!refused(&with(&format!("wishes: {{ {name}: 3 }}\n"))).is_empty());
    assert!(!refused(&with(&format!("units: \"{name}\"\n"))).is_empty());
}

#[test]
fn control_codes_never_come_back() {
    let codes = refused(
        "units: \"\\e]0;x\\a\"\n\"\\e[2J\": 1\nwalls: [{ name: \"\\e[31m\", length: \"\\e 3\" }]\npieces: [{ kind: \"\\u202e\" }]\n",
    );
    assert!(codes.len() >= 4, "{codes:?}");
}

#[test]
fn binary_and_broken_text_is_refused() {
    let bytes: Vec<u8> = (0..=255).cycle().take(5000).collect();
    assert_eq!(refused(&String::from_utf8_lossy(&bytes)), ["binary_file"]);
    assert!(!refused("\u{fffd}\u{fffd}\u{1}\u{2}").is_empty());
    assert!(!refused("units:\tcm\n\twalls: 3\n").is_empty());
    assert!(!refused("hello").is_empty());
    assert!(!refused("[]").is_empty());
    assert!(!refused("{}").is_empty());
}

#[test]
fn figures_beyond_reason_are_refused() {
    for figure in ["1e400", "-1e400", ".inf", "-.inf", ".nan", "99999999999999999999999999", "1e-400", "-0.0", "0x0"] {
        assert!(!refused(&PLAIN.replacen("length: 486", &format!("length: {figure}"), 1)).is_empty(), "{figure}");
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 256, failure_persistence: None, ..ProptestConfig::default() })]

    /// Whatever is done to a sound file, it is read or refused.
    #[test]
    fn a_damaged_file_never_panics(at in 0..PLAIN.len(), length in 0_usize..40, put in "\\PC{0,6}|[\\[\\]{}:,&*!|>'\"%@`#~ \n-]{0,6}") {
        let (from, to) = (at, (at + length).min(PLAIN.len()));
        let text = format!("{}{put}{}", &PLAIN[..from], &PLAIN[to..]);
        if let Err(faults) = scenario::read(&text, None) {
            prop_assert!(!faults.is_empty());
            for fault in faults {
                let place = fault.place.map_or(0..0, |place| place.offset..place.offset + place.length);
                prop_assert!(text.get(place).is_some(), "{:?}", fault.place);
            }
        }
    }

    /// Figures of any size at any place are read or refused.
    #[test]
    fn wild_figures_never_panic(figures in proptest::collection::vec(proptest::num::f64::ANY, 6)) {
        let mut text = PLAIN.to_owned();
        for (from, figure) in ["486\n    holds", "82", "220", "20,", "83", "180..240"].into_iter().zip(&figures) {
            let tail = from.trim_start_matches(|c: char| c.is_ascii_digit() || c == '.');
            text = text.replacen(from, &format!("{figure:?}{tail}"), 1);
        }
        let _ = scenario::read(&text, None);
    }
}
