//! Sheets for who has names in other letters, and for who has a PDF read aloud.

use std::fs;

use lopdf::{Document, Object, decode_text_string};
use tempfile::tempdir;

use crate::draw::{ROOM, drawn};
use crate::program::{root, run};

/// A room named in Chinese: the letters are told, a sheet is made all the same, and what is no font is refused.
#[test]
fn letters_that_the_sheets_cannot_show_are_told() {
    let folder = tempdir().unwrap();
    let room = folder.path().join("room.yaml");
    fs::write(&room, ROOM.replace("Square room", "\u{5ba2}\u{5385}")).unwrap();
    let (room, plan) = (room.to_str().unwrap(), folder.path().join("plan.pdf"));
    let draw = |more: &[&str]| run(&[&["draw", room, "--force", "-o", plan.to_str().unwrap()], more].concat());
    let told = draw(&[]);
    assert_eq!(told.code, Some(0));
    assert!(told.stderr.starts_with("Our font has no \u{5385} \u{5ba2}: boxes stand for them"), "{}", told.stderr);
    assert!(fs::read(&plan).unwrap().starts_with(b"%PDF"));
    let tape = run(&["tape", room, "--force", "-o", plan.to_str().unwrap()]);
    assert!(tape.stderr.contains("--font FILE"), "{}", tape.stderr);
    // Ours has the letters no more when it is given again.
    let ours = root().join("cli/fonts/DejaVuSansCondensed.ttf");
    assert_eq!(draw(&["--font", ours.to_str().unwrap()]).stderr, told.stderr);
    let refused = draw(&["--font", room]);
    assert_eq!(refused.code, Some(2));
    assert!(refused.stderr.contains("room.yaml is no font"), "{}", refused.stderr);
}

/// As ISO 32000-1, 14.7 and 14.8, has a tagged document: its language, its parts, and words for each figure.
#[test]
fn a_pdf_says_its_language_and_its_parts_to_whoever_has_it_read_aloud() {
    let document = Document::load_mem(&drawn("pdf")).unwrap();
    let catalog = document.catalog().unwrap();
    assert_eq!(catalog.get(b"Lang").and_then(Object::as_str).unwrap(), b"en");
    let marked = document.get_dict_in_dict(catalog, b"MarkInfo").unwrap().get(b"Marked").unwrap();
    assert!(marked.as_bool().unwrap());
    let parts = |kind: &[u8]| {
        let dictionaries = document.objects.values().filter_map(|object| object.as_dict().ok());
        let found = dictionaries.filter(|part| part.get(b"S").and_then(Object::as_name).is_ok_and(|it| it == kind));
        found.cloned().collect::<Vec<_>>()
    };
    // The client's sheet and the working one.
    let figures = parts(b"Figure");
    assert_eq!(figures.len(), 2);
    for figure in figures {
        let words = decode_text_string(figure.get(b"Alt").unwrap()).unwrap();
        assert!(words.contains("sofa"), "{words:?}");
    }
    assert!(parts(b"P").len() > 20);
}

/// As ISO 32000-1, 14.8.4.3.4, has a table: rows of cells under cells that head them.
#[test]
fn tables_of_a_pdf_are_told_as_rows_of_cells_under_their_heads() {
    let folder = tempdir().unwrap();
    let (room, card) = (folder.path().join("room.yaml"), folder.path().join("card.pdf"));
    fs::write(&room, ROOM).unwrap();
    let made = run(&["card", room.to_str().unwrap(), "-o", card.to_str().unwrap()]);
    assert_eq!(made.code, Some(0), "{}", made.stderr);
    let document = Document::load(&card).unwrap();
    let kind = |part: &lopdf::Dictionary| part.get(b"S").and_then(Object::as_name).unwrap_or_default().to_vec();
    // What a part holds, those of its children that are parts themselves.
    let held = |part: &lopdf::Dictionary| -> Vec<lopdf::Dictionary> {
        let held = match part.get(b"K") {
            Ok(Object::Array(all)) => all.clone(),
            Ok(one) => vec![one.clone()],
            Err(_) => Vec::new(),
        };
        let found = held.iter().filter_map(|one| document.dereference(one).ok()?.1.as_dict().ok());
        found.filter(|part| part.has(b"S")).cloned().collect()
    };
    let parts = document.objects.values().filter_map(|object| object.as_dict().ok());
    let tables: Vec<_> = parts.filter(|part| kind(part) == b"Table").collect();
    let rows_of = |table: &&lopdf::Dictionary| -> Vec<Vec<Vec<u8>>> {
        let rows = held(table);
        assert!(rows.iter().all(|row| kind(row) == b"TR"));
        rows.iter().map(|row| held(row).iter().map(kind).collect()).collect()
    };
    let tables: Vec<Vec<Vec<Vec<u8>>>> = tables.iter().map(rows_of).collect();
    assert!(!tables.is_empty());
    for cells in &tables {
        assert!(cells.iter().all(|row| row.len() == cells[0].len() && !row.is_empty()), "a row lacks a cell");
        assert!(cells.iter().flatten().all(|cell| cell == b"TH" || cell == b"TD"));
    }
    let is_headed = |cells: &Vec<Vec<Vec<u8>>>| {
        let of = |row: &[Vec<u8>], kind: &[u8]| row.iter().all(|cell| cell == kind);
        cells.len() > 1 && of(&cells[0], b"TH") && cells[1..].iter().all(|row| of(row, b"TD"))
    };
    assert!(tables.iter().any(is_headed), "the first row heads the others");
}
