//! Bad rows: all of them at once, each with its line.

use elbowroom_model::listing::{Asked, MOST_FAULTS, read};

use super::{ASKED, faults, sound};

#[test]
fn all_bad_rows_are_told_at_once_with_their_lines() {
    let text = "kind,name,width cm,depth cm,count,score,hand,return cm\n\
                \n\
                sofa,Heron,212,95,1,50,,\n\
                soffa,Tern,212,95,1,50,,\n\
                sofa,Heron,212,95,1,50,,\n\
                sofa,Gull,212,,1.5,101,,\n\
                sofa,Ruff,212,95,1,50,left,\n\
                corner-sofa,Coot,212,95,1,50,up,\n\
                sofa,Short,212\n\
                sofa,Wide,212,5,95,1,50,,,7\n\
                sofa,\"Two\nlines\",212,95,1,50,,\n\
                sofa,Last,x,95,1,50,,\n";
    let expected = [
        ("unknown_kind", 4),
        ("name_twice", 5),
        ("missing_value", 6),
        ("score_out_of_range", 6),
        ("wrong_type", 6),
        ("key_of_another_kind", 7),
        ("missing_value", 8),
        ("unknown_name", 8),
        ("wrong_count", 9),
        ("wrong_count", 10),
        ("control_character", 11),
        ("not_a_length", 13),
    ];
    assert_eq!(faults(text), expected);
}

#[test]
fn quotes_that_close_wrongly_or_never_are_told_with_their_line() {
    assert_eq!(faults("kind,name,width cm,depth cm\nsofa,\"He\"ron,212,95\n"), [("wrong_quoting", 2)]);
    let never = "kind,name,width cm,depth cm\nsofa,Heron,212,95\nsofa,\"Tern,212,95\nsofa,Gull,212,95\n";
    assert_eq!(faults(never), [("wrong_quoting", 3)]);
    let doubled = "kind,name,width cm,depth cm\nsofa,\"The \"\"Heron\"\", large\",212,95\n";
    assert_eq!(sound(doubled).pieces[0].name, "The \"Heron\", large");
}

#[test]
fn what_stands_before_the_header_and_how_lines_end_leave_every_line_in_its_place() {
    let table = "kind;name;width cm;depth cm\nsofa;Heron;212;95\nsofa;Tern;x;95\nsofa;Gull;212\n";
    assert_eq!(faults(table), [("not_a_length", 3), ("wrong_count", 4)]);
    for end in ["\r\n", "\r"] {
        assert_eq!(faults(&table.replace('\n', end)), [("not_a_length", 3), ("wrong_count", 4)], "{end:?}");
    }
    assert_eq!(faults(&format!("sep=;\n  \n;;;\n{table}")), [("not_a_length", 6), ("wrong_count", 7)]);
    assert_eq!(faults("sep=;\nkind;name;width cm;depth cm\nsofa;\"He\"ron;212;95\n"), [("wrong_quoting", 3)]);
    let latin = b"kind;name;width cm;depth cm\rsofa;Caf\xe9;212;95\r";
    assert_eq!(read(latin, &ASKED).unwrap_err().told[0].place.unwrap().line, 2);
    // What the line names must be able to part cells.
    for mark in ["sep=\u{e9}", "sep=", "sep=\"", "sep=5"] {
        assert_eq!(faults(&format!("{mark}\nkind;name\n")), [("wrong_separator", 1)], "{mark}");
    }
    assert_eq!(faults(",,\n ,\n"), [("empty_file", 0)]);
}

#[test]
fn a_key_that_stands_twice_is_told_and_neither_of_its_values_taken() {
    assert_eq!(
        faults("{\"kind\":\"sofa\",\"width\":\"2 m\",\"width\":\"3 m\",\"depth\":\"1 m\"}\n"),
        [("key_twice", 1)]
    );
    let twice =
        "pieces:\n  - { kind: sofa, width: 2 m, depth: 1 m }\npieces:\n  - { kind: sofa, width: 3 m, depth: 1 m }\n";
    assert_eq!(faults(twice), [("key_twice", 3)]);
    assert_eq!(faults("units: cm\nunits: in\npieces:\n  - { kind: sofa, width: 20, depth: 10 }\n"), [("key_twice", 2)]);
    // A key without a value is still a key, and has its line.
    assert_eq!(
        faults("\n{\"kind\":\"sofa\",\"width\":\"2 m\",\"depth\":\"1 m\",\"pri cm\":null}\n"),
        [("unknown_column", 2)]
    );
}

#[test]
fn more_rows_than_are_taken_are_counted_and_refused() {
    let mut text = "kind,width cm,depth cm\n".to_owned();
    text.push_str(&"sofa,212,95\n".repeat(1_000_000));
    let faults = read(text.as_bytes(), &ASKED).unwrap_err();
    assert_eq!((faults.told.len(), faults.told[0].code), (1, "too_many"));
    assert!(faults.told[0].message.contains("1000000"), "{faults:?}");
    let asked = Asked { most_rows: 1_000_000, ..ASKED };
    assert_eq!(read(text.as_bytes(), &asked).unwrap().pieces.len(), 1_000_000);
    let bad = text.replace("212", "?");
    let faults = read(bad.as_bytes(), &asked).unwrap_err();
    assert_eq!((faults.told.len(), faults.beyond), (MOST_FAULTS, 1_000_000 - MOST_FAULTS));
}

#[test]
fn a_part_of_a_section_is_no_more_than_its_whole() {
    let heads = "kind,name,width cm,depth cm,height cm,seat_height cm,arm height cm,back_thickness cm,leg_height cm\n";
    let sound = sound(&format!("{heads}sofa,Heron,212,95,85,45,60,20,12\n"));
    let section = sound.pieces[0].section;
    assert_eq!((section.seat_height, section.arm_height), (Some(450.0), Some(600.0)));
    assert_eq!((section.back_thickness, section.leg_height), (Some(200.0), Some(120.0)));
    let told = faults(&format!("{heads}sofa,Heron,212,95,85,86,60,96,46\nsofa,Tern,212,95,85,45,85.1,95,45\n"));
    let whole = "more_than_its_whole";
    assert_eq!(told, [(whole, 2), (whole, 2), (whole, 3)]);
}
