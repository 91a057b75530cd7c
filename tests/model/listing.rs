//! Tables of pieces: what is understood, what is refused with its line, and that nothing is guessed.

mod rows;
mod workbooks;

use elbowroom_model::PieceKind;
use elbowroom_model::listing::{Asked, Decimals, Extra, Form, Listing, UNCOUNTED, read};
use proptest::prelude::*;

const ASKED: Asked<'static> =
    Asked { form: None, units: None, decimals: None, most_rows: 1000, uncounted: 1, extra: &[] };

fn sound(text: &str) -> Listing {
    read(text.as_bytes(), &ASKED).unwrap_or_else(|faults| panic!("{text}: {faults:#?}"))
}

/// Code and line of every fault.
fn faults(text: &str) -> Vec<(&'static str, usize)> {
    let faults = read(text.as_bytes(), &ASKED).unwrap_err();
    faults.told.iter().map(|fault| (fault.code, fault.place.map_or(0, |place| place.line))).collect()
}

fn faults_of(text: &str) -> Vec<&'static str> {
    faults(text).into_iter().map(|(code, _)| code).collect()
}

fn widths(listing: &Listing) -> Vec<f64> {
    listing.pieces.iter().map(|piece| piece.width).collect()
}

#[test]
fn the_same_rows_are_read_from_every_form() {
    let separated = "kind,name,width,depth,price,hand,return\nsofa,Heron,212 cm,95 cm,799,,\n\
                     corner-sofa,Tern/2,2.6 m,38 in,1299.50,left,200 cm\n";
    let lines = "{\"kind\":\"sofa\",\"name\":\"Heron\",\"width\":\"212 cm\",\"depth\":\"95 cm\",\"price\":799}\n\
                 {\"kind\":\"corner-sofa\",\"name\":\"Tern/2\",\"width\":\"2.6 m\",\"depth\":\"38 in\",\"price\":1299.5,\
                 \"hand\":\"left\",\"return\":\"200 cm\"}\n";
    let yaml = "- { kind: sofa, name: Heron, width: 212 cm, depth: 95 cm, price: 799 }\n\
                - { kind: corner-sofa, name: Tern/2, width: 2.6 m, depth: 38 in, price: 1299.50, hand: left, return: 200 cm }\n";
    let units = "units: cm\npieces:\n  - { kind: sofa, name: Heron, width: 212, depth: 95, price: 799 }\n  \
                 - { kind: corner-sofa, name: Tern/2, width: 260, depth: 38 in, price: 1299.50, hand: left, return: 200 }\n";
    let told = |text: &str| {
        let pieces = sound(text).pieces.into_iter();
        pieces
            .map(|piece| (piece.name, piece.kind, piece.width, piece.depth, piece.price, piece.hands))
            .collect::<Vec<_>>()
    };
    let first = told(separated);
    assert_eq!((first[1].1, first[1].2, first[1].3), (PieceKind::CornerSofa, 2600.0, 38.0 * 25.4));
    for other in [lines, yaml, units] {
        assert_eq!(told(other), first, "{other}");
    }
}

#[test]
fn a_return_that_says_how_far_it_juts_out_is_refused() {
    let list = |sizes: &str| format!("kind,name,width (cm),return (cm),depth (cm)\ncorner-sofa,Tern,{sizes}\n");
    assert_eq!(widths(&sound(&list("260,190,95"))), [2600.0]);
    for sizes in ["260,95,95", "260,124,95", "124,190,95"] {
        assert_eq!(faults(&list(sizes)), [("run_too_short", 2)], "{sizes}");
    }
    let told = read(list("260,95,90").as_bytes(), &ASKED).unwrap_err().told;
    assert!(told[0].remedy.contains("185 cm"), "{told:?}");
}

#[test]
fn commas_semicolons_tabs_marks_and_other_encodings_are_understood() {
    let rows = "kind;width cm;depth cm\nsofa;212,5;95\n";
    assert_eq!(widths(&sound(rows)), [2125.0]);
    assert_eq!(widths(&sound(&format!("\u{feff}{rows}"))), [2125.0]);
    assert_eq!(widths(&sound(&format!("sep=;\r\n{}", rows.replace('\n', "\r\n")))), [2125.0]);
    assert_eq!(widths(&sound("kind\tWidth (in)\tDepth [in]\nsofa\t84\t38\n")), [84.0 * 25.4]);
    assert_eq!(widths(&sound("kind,width,depth\nsofa,\"7 ft 1/2 in\",38\"\n")), [84.5 * 25.4]);
    for (mark, bytes) in [([0xff, 0xfe], u16::to_le_bytes as fn(u16) -> [u8; 2]), ([0xfe, 0xff], u16::to_be_bytes)] {
        let wide: Vec<u8> = mark.into_iter().chain(rows.encode_utf16().flat_map(bytes)).collect();
        assert_eq!(widths(&read(&wide, &ASKED).unwrap()), [2125.0]);
    }
}

#[test]
fn an_encoding_that_does_not_say_itself_is_refused_with_its_line() {
    let latin = b"kind,name,width cm,depth cm\nsofa,Heron,212,95\nsofa,Caf\xe9,212,95\n";
    let faults = read(latin, &ASKED).unwrap_err();
    assert_eq!((faults.told[0].code, faults.told[0].place.unwrap().line), ("not_text", 3));
    assert!(faults.told[0].message.contains("0xe9"), "{faults:?}");
    for bytes in [&b"kind\0,width"[..], b"\xff\xfek\0i", b"", b"\xef\xbb\xbf  \n"] {
        assert!(matches!(read(bytes, &ASKED).unwrap_err().told[0].code, "not_text" | "empty_file"), "{bytes:?}");
    }
}

#[test]
fn figures_are_understood_or_refused_and_never_guessed() {
    let width = |cell: &str| {
        let text = format!("kind;width;depth\nsofa;{cell};95 cm\n");
        read(text.as_bytes(), &ASKED).map(|listing| listing.pieces[0].width).map_err(|faults| faults.told[0].code)
    };
    for (cell, length) in [
        ("2,12 m", 2120.0),
        ("0,952 m", 952.0),
        ("1,1250 m", 1125.0),
        ("1.250,5 mm", 1250.5),
        ("1,250.5 mm", 1250.5),
        ("83 1/2 in", 83.5 * 25.4),
        ("6'11\"", 83.0 * 25.4),
    ] {
        assert_eq!(width(cell), Ok(length), "{cell}");
    }
    for (cell, code) in [
        ("1,250 mm", "two_readings"),
        ("212", "no_unit"),
        ("200..260 cm", "not_a_length"),
        ("-212 cm", "not_positive"),
        ("0 cm", "not_positive"),
        ("212 cmm", "unknown_unit"),
        ("1,2,3 m", "not_a_length"),
        ("1.2.3 m", "not_a_length"),
        ("12.34,56,78 m", "not_a_length"),
        ("=1+1", "not_a_length"),
        ("nan", "not_a_length"),
        ("99999999 m", "not_a_length"),
        ("about 2 m", "not_a_length"),
        ("", "missing_value"),
    ] {
        assert_eq!(width(cell), Err(code), "{cell}");
    }
}

#[test]
fn numbers_without_a_unit_are_one_fault_of_their_column() {
    let text = "kind;name;width;depth;height\nsofa;A;212;95;80\nsofa;B;212;95 cm;80\nsofa;C;212;95;\n";
    let told = read(text.as_bytes(), &ASKED).unwrap_err().told;
    let told: Vec<_> =
        told.iter().map(|fault| (fault.code, fault.place.unwrap().line, fault.message.as_str())).collect();
    assert_eq!(
        told,
        [
            ("no_unit", 1, "Under `depth` 2 numbers have no unit, the first on line 2."),
            ("no_unit", 1, "Under `height` 2 numbers have no unit, the first on line 2."),
            ("no_unit", 1, "Under `width` 3 numbers have no unit, the first on line 2."),
        ]
    );
    let lines = "{\"kind\":\"sofa\",\"width\":212,\"depth\":\"95 cm\"}\n";
    let told = read(lines.as_bytes(), &ASKED).unwrap_err().told;
    assert_eq!((told.len(), told[0].place.unwrap().line), (1, 1));
}

#[test]
fn what_gives_no_count_is_one_or_as_many_as_one_likes() {
    let text = b"kind;name;width cm;depth cm;count\nsofa;A;212;95;\nsofa;B;212;95;2\n";
    let counts = |uncounted| {
        let listing = read(text, &Asked { uncounted, ..ASKED }).unwrap();
        listing.pieces.iter().map(|piece| piece.count).collect::<Vec<_>>()
    };
    assert_eq!((counts(1), counts(UNCOUNTED)), (vec![1, 2], vec![UNCOUNTED, 2]));
}

#[test]
fn a_price_without_a_currency_beside_one_with_is_a_fault() {
    let text = "kind;name;width cm;depth cm;price\nsofa;A;212;95;799 EUR\nsofa;B;212;95;640\nsofa;C;212;95;\n";
    assert_eq!(faults(text), [("no_currency", 3)]);
    sound("kind;name;width cm;depth cm;price EUR\nsofa;A;212;95;799 EUR\nsofa;B;212;95;640\n");
    sound("kind;name;width cm;depth cm;price\nsofa;A;212;95;799\nsofa;B;212;95;640\n");
}

#[test]
fn a_point_before_three_digits_is_refused_where_the_list_has_decimal_commas() {
    let text = "kind;width cm;depth cm\nsofa;1.212;95,5\n";
    assert_eq!(faults(text), [("two_readings", 2)]);
    assert_eq!(widths(&sound("kind;width m;depth cm\nsofa;1.212;95\n")), [1212.0]);
    for (decimals, length) in [(Decimals::Comma, 12120.0), (Decimals::Point, 12.12)] {
        let asked = Asked { decimals: Some(decimals), ..ASKED };
        let listing = read(b"kind;width cm;depth cm\nsofa;1.212;95\n", &asked).unwrap();
        assert_eq!(listing.pieces[0].width, length);
    }
}

#[test]
fn prices_are_exact_and_of_one_currency() {
    let price = |cell: &str| {
        let text = format!("kind\twidth cm\tdepth cm\tprice\nsofa\t212\t95\t{cell}\n");
        let listing = read(text.as_bytes(), &ASKED).map_err(|faults| faults.told[0].code)?;
        Ok((listing.pieces[0].price.unwrap().hundredths, listing.currency))
    };
    let with = |currency: &str| Some(currency.to_owned());
    for (cell, found) in [
        ("799", (79_900, None)),
        ("799,5", (79_950, None)),
        ("€ 1.299,00", (129_900, with("€"))),
        ("$1,299.00", (129_900, with("$"))),
        ("1 299,00 kr", (129_900, with("KR"))),
        ("1299,- EUR", (129_900, with("EUR"))),
        ("0.10", (10, None)),
    ] {
        assert_eq!(price(cell), Ok(found), "{cell}");
    }
    for cell in [
        "1,299",
        "1.299",
        "€ 1.299",
        "-5",
        "12.345678",
        "free",
        "1e400",
        "$ 5 EUR",
        "5-",
        "=5",
        "+5",
        "5 %",
        "(5)",
        "289,0;0",
    ] {
        assert_eq!(price(cell), Err("not_a_price"), "{cell}");
    }
    let two = "kind;width cm;depth cm;price (EUR)\nsofa;212;95;799\narmchair;80;80;$ 99\n";
    assert_eq!(faults(two), [("two_currencies", 3)]);
}

#[test]
fn columns_are_found_by_name_and_the_nearest_is_offered() {
    let faults = read(b"kind,nmae,widht cm,depht,colour\nsofa,Heron,212,95 cm,red\n", &ASKED).unwrap_err();
    let told: Vec<_> = faults.told.iter().map(|fault| (fault.code, fault.remedy.as_str())).collect();
    for word in ["name", "width", "depth"] {
        assert!(told.contains(&("unknown_column", format!("Did you mean `{word}`?").as_str())), "{word}: {told:?}");
    }
    assert!(told.iter().all(|(_, remedy)| !remedy.contains("count")), "{told:?}");
    let text = "Type,Model,W (cm),D (cm),weight,Colour,fabric grade\nsofa,Heron,212,95,40,red,3\n";
    assert_eq!(sound(text).passed_over, ["weight", "Colour", "fabric grade"]);
    assert_eq!(faults_of("kind,width,w,depth\nsofa,212 cm,1 cm,95 cm\n"), ["column_twice"]);
    assert_eq!(faults_of("kind,width cm\nsofa,212\n"), ["missing_column"]);
}

#[test]
fn names_are_text_and_nothing_else() {
    let text = "kind,name,width cm,depth cm\nsofa,../../etc/heron,212,95\nsofa,=1+1,212,95\nsofa,C:\\heron,212,95\nsofa,,212,95\n";
    let names: Vec<String> = sound(text).pieces.into_iter().map(|piece| piece.name).collect();
    assert_eq!(names, ["../../etc/heron", "=1+1", "C:\\heron", "sofa, line 5"]);
    assert_eq!(faults("kind,name,width cm,depth cm\nsofa,\u{1b}[2J,212,95\n"), [("control_character", 2)]);
}

#[test]
fn parts_legs_and_columns_of_ones_own_are_handed_on() {
    let extra = [Extra { key: "place", also: &["where"] }];
    let asked = Asked { extra: &extra, ..ASKED };
    let text =
        "kind,width cm,depth cm,legs off,parts,Where\nsofa,212,95,15 cm,110 x 95 x 60 cm; 102x95x60 cm,bay 4/7\n";
    let listing = read(text.as_bytes(), &asked).unwrap();
    let piece = &listing.pieces[0];
    assert_eq!((piece.legs_off, piece.parts.len(), piece.more[0].as_str()), (Some(150.0), 2, "bay 4/7"));
    assert_eq!(piece.parts[1].sides, [1020.0, 950.0, 600.0]);
}

#[test]
fn forms_are_known_by_name_or_by_look() {
    let names = ["a.csv", "a.TSV", "x/b.ndjson", "c.jsonl", "d.yaml", "e.yml", "f.xls", "noending"].map(Form::of_name);
    let (csv, lines, yaml) = (Some(Form::Separated), Some(Form::JsonLines), Some(Form::Yaml));
    assert_eq!(names, [csv, csv, lines, lines, yaml, yaml, None, None]);
    assert_eq!(faults("{\"kind\": \"sofa\"\n{\"kind\": {}}\n")[0], ("not_json", 1));
    assert_eq!(faults("- kind: sofa\n  width: 2 m\n  width: 3 m\n  depth: 1 m\n"), [("key_twice", 3)]);
    assert_eq!(faults("pieces: 3\n"), [("wrong_type", 1)]);
    assert_eq!(faults("units: ell\npieces: []\n")[0], ("unknown_unit", 1));
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(400))]

    /// Any bytes are read or refused, in every form.
    #[test]
    fn any_bytes_are_read_or_refused(bytes in proptest::collection::vec(any::<u8>(), 0..400), form in 0..4_usize) {
        let form = [None, Some(Form::Separated), Some(Form::JsonLines), Some(Form::Yaml)][form];
        let _ = read(&bytes, &Asked { form, ..ASKED });
    }

    /// So is text that looks like a list.
    #[test]
    fn text_like_a_list_is_read_or_refused(text in "((kind|name|width|sofa|2,5|1\\.2|\"|,|;|\t|\n|\r|cm|x|\\{|\\}|:|- |€|ft|'|½| )){0,60}") {
        if let Ok(listing) = read(text.as_bytes(), &ASKED) {
            for piece in listing.pieces {
                prop_assert!(piece.width > 0.0 && piece.width.is_finite() && !piece.name.is_empty());
            }
        }
    }

    /// A length written with a decimal comma, a point, or marks between thousands is the same length.
    #[test]
    fn every_way_to_write_a_length_gives_the_same(whole in 1_000_u32..9_999_999, tenth in 0_u32..10) {
        let grouped = |mark: char| {
            let digits: Vec<char> = whole.to_string().chars().rev().collect();
            let groups: Vec<String> = digits.chunks(3).map(|group| group.iter().rev().collect()).rev().collect();
            groups.join(&mark.to_string())
        };
        let wanted = f64::from(whole) + f64::from(tenth) / 10.0;
        for cell in [format!("{whole},{tenth}"), format!("{whole}.{tenth}"), format!("{},{tenth}", grouped('.')), format!("{}.{tenth}", grouped(','))] {
            let text = format!("kind;width mm;depth cm\nsofa;{cell};95\n");
            let listing = read(text.as_bytes(), &ASKED);
            prop_assert_eq!(listing.map(|listing| listing.pieces[0].width).map_err(|faults| format!("{faults:?}")), Ok(wanted), "{}", cell);
        }
    }
}
