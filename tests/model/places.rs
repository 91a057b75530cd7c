//! A fault's place is the text that is at fault, whatever stands before it.

use crate::plain_room::{changed, faults, with};

/// The text at the place of the first fault, as byte offsets and as line and column say.
fn at_fault(text: &str) -> (String, String) {
    let place = faults(text)[0].place.expect("the fault has a place");
    let by_bytes = text[place.offset..place.offset + place.length].to_owned();
    let line = text.trim_start_matches('\u{feff}').lines().nth(place.line - 1).expect("the line is there");
    let by_column = line.chars().skip(place.column - 1).take(by_bytes.chars().count()).collect();
    (by_bytes, by_column)
}

fn assert_at(text: &str, expected: &str) {
    let (by_bytes, by_column) = at_fault(text);
    assert_eq!(by_bytes, expected, "by byte offsets");
    assert_eq!(by_column, expected, "by line and column");
}

#[test]
fn a_place_covers_what_is_at_fault() {
    assert_at(&changed(&[("180..240", "240..180")]), "240..180");
    assert_at(&with("wishes: { wiew: 5 }\n"), "wiew");
    assert_at(&changed(&[("hinge: left", "hinge: lefft")]), "lefft");
}

#[test]
fn a_place_holds_after_letters_of_several_bytes() {
    assert_at(
        &changed(&[("Plain room", "Grünes Zimmer · 居間"), ("name: bay, at: 82", "name: Erkerfenster-ä, at: x82")]),
        "x82",
    );
}

#[test]
fn a_place_holds_with_other_line_ends() {
    assert_at(&changed(&[("180..240", "240..180")]).replace('\n', "\r\n"), "240..180");
}

#[test]
fn a_place_holds_after_a_byte_order_mark() {
    assert_at(&format!("\u{feff}{}", changed(&[("180..240", "240..180")])), "240..180");
}

#[test]
fn a_comment_moves_no_place() {
    assert_at(&changed(&[("units: cm", "# in hundredths: ü\nunits: cm # yes"), ("180..240", "240..180")]), "240..180");
}
