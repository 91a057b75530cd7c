//! Lists of pieces with something wrong somewhere: read to the last row, or refused with every fault in its line.

use std::collections::BTreeSet;

use elbowroom_model::listing::{Asked, Decimals, Extra, Faults, Form, ListedPiece, Listing, MOST_FAULTS, read};
use elbowroom_model::quote::is_control;
use elbowroom_model::{Hand, Unit};
use serde_json::json;

use super::mutation::{Draw, fuzz};
use super::rows::{self, text_of};

/// Columns as a store's list has them.
const EXTRA: [Extra; 3] = [
    Extra { key: "where", also: &["place"] },
    Extra { key: "out", also: &["away"] },
    Extra { key: "value", also: &["worth"] },
];
/// Faults of a list as a whole: there is no line to them.
const OF_THE_WHOLE: [&str; 4] = ["empty_file", "too_many", "missing_column", "file_too_large"];

fn asked(draw: &mut Draw) -> Asked<'static> {
    Asked {
        form: [None, Some(Form::Separated), Some(Form::JsonLines), Some(Form::Yaml)][draw.from(0, 3) as usize],
        units: draw.one_in(3).then_some(Unit::Centimetre),
        decimals: [None, None, Some(Decimals::Comma), Some(Decimals::Point)][draw.from(0, 3) as usize],
        most_rows: if draw.one_in(10) { 2 } else { 10_000 },
        uncounted: 1,
        extra: if draw.one_in(2) { &EXTRA } else { &[] },
    }
}

/// How many rows a text may have, by each way to read it that `form` leaves open; `None` where the second reader of YAML
/// (D: serde_yaml, an older standard) knows of none.
fn rows_of(text: &str, form: Option<Form>) -> Option<BTreeSet<usize>> {
    let is = |one: Form| form.is_none_or(|form| form == one);
    let mut counts = BTreeSet::new();
    if is(Form::Separated) {
        counts.extend(rows::counts(text));
    }
    if is(Form::JsonLines) {
        counts.insert(text.lines().filter(|line| !line.trim().is_empty()).count());
    }
    let first = text.lines().map(str::trim).find(|line| !line.is_empty() && !line.starts_with('#')).unwrap_or_default();
    if form == Some(Form::Yaml) || (form.is_none() && (first.starts_with(['-', '[']) || first.contains(':'))) {
        let value = serde_yaml::from_str::<serde_yaml::Value>(text).ok()?;
        let list = value.get("pieces").unwrap_or(&value);
        counts.extend(list.as_sequence().map(Vec::len));
    }
    Some(counts)
}

fn is_sound(piece: &ListedPiece) -> bool {
    let sizes = [Some(piece.width), Some(piece.depth), piece.return_length, piece.height, piece.screen];
    let sides = piece.parts.iter().flat_map(|part| part.sides);
    let name = &piece.name;
    sizes.into_iter().flatten().chain(sides).all(|size| size.is_finite() && size > 0.0)
        && !name.is_empty()
        && !name.chars().any(is_control)
        && piece.score.is_none_or(|score| (0.0..=100.0).contains(&score))
}

/// A piece cell by cell, header first, lengths in millimetres.
fn cells(piece: &ListedPiece) -> Vec<(&'static str, String)> {
    let length = |length: Option<f64>| length.map(|length| format!("{length} mm")).unwrap_or_default();
    let hand = match piece.hands.as_slice() {
        [] => "",
        [Hand::Left] => "left",
        [Hand::Right] => "right",
        _ => "either",
    };
    let parts = piece.parts.iter().map(|part| {
        let [one, two, three] = part.sides;
        format!("{one} x {two} x {three} mm")
    });
    let mut cells = vec![
        ("kind", piece.kind.key().to_owned()),
        ("name", piece.name.clone()),
        ("width", length(Some(piece.width))),
        ("return", length(piece.return_length)),
        ("depth", length(Some(piece.depth))),
        ("height", length(piece.height)),
        ("hand", hand.to_owned()),
        ("chaise", piece.chaise.map(|yes| yes.to_string()).unwrap_or_default()),
        ("screen", length(piece.screen)),
        ("seats", piece.seats.map(|seats| seats.to_string()).unwrap_or_default()),
        ("price", piece.price.map(|price| price.words()).unwrap_or_default()),
        ("count", piece.count.to_string()),
        ("score", piece.score.map(|score| score.to_string()).unwrap_or_default()),
        ("legs off", length(piece.legs_off)),
        ("diagonal depth", length(piece.diagonal_depth)),
        ("seat height", length(piece.section.seat_height)),
        ("arm height", length(piece.section.arm_height)),
        ("back thickness", length(piece.section.back_thickness)),
        ("leg height", length(piece.section.leg_height)),
        ("parts", parts.collect::<Vec<_>>().join("; ")),
    ];
    cells.extend(EXTRA.iter().zip(&piece.more).map(|(extra, cell)| (extra.key, cell.clone())));
    cells
}

/// The pieces written down in `form`.
fn written(pieces: &[ListedPiece], form: Form) -> String {
    let rows = pieces.iter().map(cells);
    let object = |row: Vec<(&'static str, String)>| {
        let said = row.into_iter().filter(|(_, cell)| !cell.is_empty());
        json!(said.map(|(key, cell)| (key.to_owned(), json!(cell))).collect::<serde_json::Map<_, _>>()).to_string()
    };
    match form {
        Form::Separated => {
            let quoted = |cell: &str| format!("\"{}\"", cell.replace('"', "\"\""));
            let header: Vec<&str> = pieces.first().map(cells).unwrap_or_default().iter().map(|(key, _)| *key).collect();
            let rows = rows.map(|row| row.iter().map(|(_, cell)| quoted(cell)).collect::<Vec<_>>().join(","));
            std::iter::once(header.join(",")).chain(rows).map(|row| row + "\r\n").collect()
        }
        Form::JsonLines => rows.map(|row| object(row) + "\n").collect(),
        Form::Yaml => rows.map(|row| format!("- {}\n", object(row))).collect(),
        Form::Workbook => panic!("a workbook is no text"),
    }
}

/// What was read, written down and read again is the same.
fn reads_back(listing: &Listing, asked: &Asked<'_>) {
    let bare = |pieces: &[ListedPiece]| -> Vec<ListedPiece> {
        pieces.iter().cloned().map(|piece| ListedPiece { line: 0, ..piece }).collect()
    };
    for form in [Form::Separated, Form::JsonLines, Form::Yaml] {
        let text = written(&listing.pieces, form);
        // YAML knows no such signs, and takes no long list.
        let unknown = |sign: char| (sign.is_control() && sign != '\n') || matches!(sign, '\u{fffe}' | '\u{ffff}');
        if form == Form::Yaml && (text.len() > 20_000 || text.contains(unknown)) {
            continue;
        }
        let again = Asked { form: Some(form), decimals: Some(Decimals::Point), units: None, ..asked.clone() };
        let again = read(text.as_bytes(), &again).unwrap_or_else(|faults| panic!("no more read: {text}\n{faults:#?}"));
        assert_eq!(bare(&again.pieces), bare(&listing.pieces), "reads otherwise: {text}");
    }
}

fn faults_hold(faults: &Faults, lines: usize) {
    assert!(!faults.told.is_empty() && faults.told.len() <= MOST_FAULTS, "refused without a fault");
    for fault in &faults.told {
        let told = [Some(&fault.message), Some(&fault.remedy), fault.item.as_ref()];
        let mut told = told.into_iter().flatten();
        assert!(
            told.all(|text| text.len() < 2000 && !text.is_empty() && !text.chars().any(is_control)),
            "tells {fault:?}"
        );
        match fault.place {
            Some(place) => assert!((1..=lines).contains(&place.line), "of {lines} lines: {fault:?}"),
            None => assert!(
                OF_THE_WHOLE.contains(&fault.code) || fault.message.contains("UTF-16"),
                "without a line: {fault:?}"
            ),
        }
    }
    assert!(faults.told.is_sorted_by_key(|fault| fault.place.map_or(0, |place| place.line)), "in no order");
}

/// The list is read to its last row, or refused with every fault in its line.
pub(crate) fn check(bytes: &[u8], draw: &mut Draw) {
    let (asked, text) = (asked(draw), text_of(bytes));
    let lines = text.split('\n').count();
    match read(bytes, &asked) {
        Ok(listing) => {
            assert!(listing.pieces.iter().all(is_sound), "unsound: {listing:?}");
            let names: BTreeSet<&String> = listing.pieces.iter().map(|piece| &piece.name).collect();
            assert_eq!(names.len(), listing.pieces.len(), "two of one name");
            if let Some(rows) = rows_of(&text, asked.form) {
                assert!(rows.contains(&listing.pieces.len()), "of {rows:?} rows {} are read", listing.pieces.len());
            }
            let told = listing.pieces.iter().map(|piece| piece.line);
            assert!(told.is_sorted() && listing.pieces.iter().all(|piece| piece.line <= lines), "lines are off");
            reads_back(&listing, &asked);
        }
        Err(faults) => faults_hold(&faults, lines),
    }
}

#[test]
fn lists_with_something_wrong_are_read_whole_or_refused() {
    fuzz("pieces", 6_000, check);
}
