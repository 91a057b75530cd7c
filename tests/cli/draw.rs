//! Plans, read back from the finished files by other libraries: SVG by an XML parser, PDF by a PDF reader.

use std::collections::BTreeMap;
use std::fs;

use lopdf::content::Content;
use lopdf::{Document, Object};
use tempfile::tempdir;

use crate::program::{program, root, run, run_with};

/// A room with a wall of 3600 mm, a door of 800 mm that swings in, and one that swings out.
pub(crate) const ROOM: &str = "\
name: Square room
units: mm
walls:
  - name: north
    length: 3600
    bearing: 0
    holds: [{ kind: window, at: 1000, width: 1400, view: liked }]
  - { name: east, length: 3000, holds: [{ kind: door, name: east door, at: 200, width: 800, hinge: left, swings: in, leads_to: entrance }] }
  - { name: south, length: 3600, holds: [{ kind: door, name: south door, at: 2600, width: 700, hinge: right, swings: out, leads_to: yard }] }
  - { name: west, length: 3000 }
pieces:
  - { kind: sofa, width: 1500, depth: 800 }
clearances: { profile: snug }
";

type Place = (f64, f64);

pub(crate) fn drawn(format: &str) -> Vec<u8> {
    let folder = tempdir().unwrap();
    let room = folder.path().join("room.yaml");
    fs::write(&room, ROOM).unwrap();
    let ended = program(&["draw", room.to_str().unwrap(), "--format", format]).output().unwrap();
    assert_eq!(ended.status.code(), Some(0), "{}", String::from_utf8_lossy(&ended.stderr));
    ended.stdout
}

/// Every path of a layer of an SVG, its places in order, and the radius of its arc where it has one.
fn paths(svg: &roxmltree::Document<'_>, layer: &str) -> Vec<(Vec<Place>, Option<f64>)> {
    let layer = svg.descendants().find(|node| node.attribute("class") == Some(layer)).unwrap();
    layer.children().filter(|node| node.has_tag_name("path")).map(|node| places(node.attribute("d").unwrap())).collect()
}

fn places(steps: &str) -> (Vec<Place>, Option<f64>) {
    let spaced: String =
        steps.chars().flat_map(|it| if it.is_alphabetic() { vec![' ', it, ' '] } else { vec![it] }).collect();
    let mut words = spaced.split_whitespace();
    let (mut places, mut radius) = (Vec::new(), None);
    while let Some(word) = words.next() {
        let mut figure = || words.next().unwrap().parse::<f64>().unwrap();
        match word {
            "M" | "L" => places.push((figure(), figure())),
            "A" => {
                radius = Some(figure());
                let _ = (figure(), figure(), figure(), figure());
                places.push((figure(), figure()));
            }
            "Z" => {}
            other => panic!("{other}"),
        }
    }
    (places, radius)
}

fn apart(one: Place, other: Place) -> f64 {
    (other.0 - one.0).hypot(other.1 - one.1)
}

/// 1:50 draws 3600 mm as 72 mm (ISO 5455, P).
#[test]
fn in_svg_3600_mm_measure_72_at_1_to_50() {
    let text = String::from_utf8(drawn("svg")).unwrap();
    let svg = roxmltree::Document::parse(&text).unwrap();
    let paper = svg.root_element();
    assert_eq!((paper.attribute("width"), paper.attribute("height")), (Some("297mm"), Some("210mm")));
    assert_eq!(paper.attribute("viewBox"), Some("0 0 297 210"));
    assert!(text.contains("Scale 1:50 on A4"));
    let lengths: Vec<f64> = paths(&svg, "measures").iter().map(|(places, _)| apart(places[0], places[1])).collect();
    for wall in [72.0, 60.0] {
        assert_eq!(lengths.iter().filter(|length| (**length - wall).abs() < 0.005).count(), 2, "{wall}: {lengths:?}");
    }
    let check = paths(&svg, "check-line");
    assert!((apart(check[0].0[0], check[0].0[1]) - 100.0).abs() < 0.005);
}

/// A hinged leaf is drawn square to the wall with a quarter circle of its own length (P).
#[test]
fn a_leaf_stands_square_to_its_wall_with_its_quarter_circle() {
    let text = String::from_utf8(drawn("svg")).unwrap();
    let svg = roxmltree::Document::parse(&text).unwrap();
    let items = paths(&svg, "items");
    let mut leaves = Vec::new();
    for pair in items.windows(2) {
        let ((arc, Some(radius)), (leaf, None)) = (&pair[0], &pair[1]) else { continue };
        let (pivot, tip, end) = (leaf[0], arc[0], arc[1]);
        assert!((apart(pivot, tip) - radius).abs() < 0.005 && (apart(pivot, end) - radius).abs() < 0.005);
        let square = (tip.0 - pivot.0) * (end.0 - pivot.0) + (tip.1 - pivot.1) * (end.1 - pivot.1);
        assert!(square.abs() < 0.01, "{square}");
        leaves.push(*radius);
    }
    assert_eq!(leaves, [800.0 / 50.0, 700.0 / 50.0]);
}

/// Straight lines of a page, each as long as it is on paper, mm.
fn lines_of_pdf(document: &Document) -> Vec<f64> {
    let page = *document.get_pages().get(&1).unwrap();
    let content = Content::decode(&document.get_page_content(page).unwrap()).unwrap();
    let number = |object: &Object| f64::from(object.as_float().unwrap());
    let mut stack = Vec::new();
    let mut scale = [1.0, 0.0, 0.0, 1.0];
    let (mut from, mut lines) = ((0.0, 0.0), Vec::new());
    for operation in content.operations {
        let given: Vec<f64> = match operation.operator.as_str() {
            "cm" | "m" | "l" => operation.operands.iter().map(number).collect(),
            _ => Vec::new(),
        };
        match operation.operator.as_str() {
            "q" => stack.push(scale),
            "Q" => scale = stack.pop().unwrap(),
            "cm" => {
                let [a, b, c, d] = scale;
                let times = |x: f64, y: f64| [x * a + y * c, x * b + y * d];
                let ([ra, rb], [rc, rd]) = (times(given[0], given[1]), times(given[2], given[3]));
                scale = [ra, rb, rc, rd];
            }
            "m" => from = (given[0], given[1]),
            "l" => {
                let (x, y) = (given[0] - from.0, given[1] - from.1);
                let points = (x * scale[0] + y * scale[2]).hypot(x * scale[1] + y * scale[3]);
                lines.push(points / 72.0 * 25.4);
                from = (given[0], given[1]);
            }
            _ => {}
        }
    }
    lines
}

/// Everything that a page says, run together: its letters as its fonts' own tables tell them.
fn words_of_pdf(document: &Document) -> String {
    let page = *document.get_pages().get(&1).unwrap();
    let fonts = document.get_page_fonts(page).unwrap();
    let letters_of = |font: &lopdf::Dictionary| {
        let table =
            font.get(b"ToUnicode").and_then(Object::as_reference).and_then(|id| document.get_object(id)).unwrap();
        let table = String::from_utf8(table.as_stream().unwrap().decompressed_content().unwrap()).unwrap();
        let pairs = table.lines().filter_map(|line| {
            let (glyph, letters) = line.trim().strip_prefix('<')?.strip_suffix('>')?.split_once("> <")?;
            let units: Vec<u16> = letters.as_bytes().chunks(4).map(hex).collect();
            Some((hex(glyph.as_bytes()), String::from_utf16(&units).ok()?))
        });
        pairs.collect::<BTreeMap<u16, String>>()
    };
    let letters: BTreeMap<Vec<u8>, BTreeMap<u16, String>> =
        fonts.iter().map(|(name, font)| (name.clone(), letters_of(font))).collect();
    let content = Content::decode(&document.get_page_content(page).unwrap()).unwrap();
    let (mut font, mut words) = (None, String::new());
    for operation in &content.operations {
        match operation.operator.as_str() {
            "Tf" => font = letters.get(operation.operands[0].as_name().unwrap()),
            "Tj" => put_words(&operation.operands, font.unwrap(), &mut words),
            "TJ" => put_words(operation.operands[0].as_array().unwrap(), font.unwrap(), &mut words),
            _ => {}
        }
    }
    words
}

fn put_words(strings: &[Object], font: &BTreeMap<u16, String>, words: &mut String) {
    for string in strings.iter().filter_map(|object| object.as_str().ok()) {
        for glyph in string.chunks(2) {
            words.push_str(&font[&u16::from_be_bytes([glyph[0], glyph[1]])]);
        }
    }
}

fn hex(digits: &[u8]) -> u16 {
    u16::from_str_radix(std::str::from_utf8(digits).unwrap(), 16).unwrap()
}

/// PDF counts 72 points to the inch (ISO 32000, P), and an inch is 25.4 mm.
#[test]
fn in_pdf_3600_mm_measure_72_at_1_to_50() {
    let document = Document::load_mem(&drawn("pdf")).unwrap();
    let page = *document.get_pages().get(&1).unwrap();
    let page = document.get_dictionary(page).unwrap();
    let sides: Vec<f64> =
        page.get(b"MediaBox").unwrap().as_array().unwrap().iter().map(|it| f64::from(it.as_float().unwrap())).collect();
    assert!(
        (sides[2] - 297.0 / 25.4 * 72.0).abs() < 0.01 && (sides[3] - 210.0 / 25.4 * 72.0).abs() < 0.01,
        "{sides:?}"
    );
    let lines = lines_of_pdf(&document);
    for length in [72.0, 60.0, 100.0] {
        assert!(lines.iter().any(|line| (line - length).abs() < 0.005), "{length}: {lines:?}");
    }
    let text = words_of_pdf(&document);
    for words in ["Square room", "sofa", "east door"] {
        assert!(text.contains(words), "{words}: {text}");
    }
}

#[test]
fn the_ending_tells_the_form_and_the_same_option_goes_by_rank_or_key() {
    let folder = tempdir().unwrap();
    let scenario = root().join("scenarios").join("narrow.yaml").display().to_string();
    let starts: [(&str, &[u8]); 3] = [("svg", b"<svg"), ("png", b"\x89PNG"), ("pdf", b"%PDF")];
    for (ending, start) in starts {
        let path = folder.path().join(format!("plan.{ending}"));
        let ended = run(&["draw", &scenario, "-o", path.to_str().unwrap()]);
        assert_eq!((ended.code, ended.stdout.as_str()), (Some(0), ""), "{}", ended.stderr);
        assert!(fs::read(&path).unwrap().starts_with(start), "{ending}");
    }
    let json: serde_json::Value =
        serde_json::from_str(&run(&["rank", &scenario, "--json", "--top", "1"]).stdout).unwrap();
    let key = json["options"][1]["key"].as_str().unwrap();
    assert_eq!(run(&["draw", &scenario, "--option", "2"]).stdout, run(&["draw", &scenario, "--option", key]).stdout);
}

#[test]
fn an_option_that_is_not_there_is_told_and_so_is_a_room_where_nothing_fits() {
    let scenario = |name: &str| root().join("scenarios").join(name).display().to_string();
    let missing = run(&["draw", &scenario("narrow.yaml"), "--option", "999"]);
    assert_eq!((missing.code, missing.stdout.as_str()), (Some(2), ""));
    assert!(missing.stderr.contains("no option is called 999"), "{}", missing.stderr);
    let nothing = run(&["draw", &scenario("nothing-fits.yaml")]);
    assert_eq!((nothing.code, nothing.stdout.as_str()), (Some(3), ""));
    assert!(nothing.stderr.contains("What would help"), "{}", nothing.stderr);
}

/// Approved Document M and Lifetime Homes ask for a circle of 1500 mm (P): 30 mm at 1:50. Its centre is the result's own.
#[test]
fn the_turning_circle_is_drawn_true_to_scale_where_the_result_has_it() {
    let scenario = root().join("scenarios/wheelchair.yaml").display().to_string();
    let svg = run(&["draw", &scenario]).stdout;
    let svg = roxmltree::Document::parse(&svg).unwrap();
    let (circle, cross): (Vec<_>, Vec<_>) =
        paths(&svg, "turning-circle").into_iter().partition(|(_, radius)| radius.is_some());
    let [(round, Some(radius))] = circle.as_slice() else { panic!("{circle:?}") };
    assert!((radius - 15.0).abs() < 0.001, "{radius}");
    let centre = ((round[0].0 + round[1].0) / 2.0, (round[0].1 + round[1].1) / 2.0);
    let result: serde_json::Value =
        serde_json::from_str(&run(&["rank", &scenario, "--json", "--top", "1"]).stdout).unwrap();
    let told = &result["options"][0]["turning_circle"];
    assert_eq!(told["diameter"].as_f64(), Some(1500.0), "{told}");
    // Measured from a corner of the room, which the plan has where its first wall starts.
    let walls = paths(&svg, "walls");
    let corner = walls[0].0[0];
    let off = |axis: usize| told["centre"][axis].as_f64().unwrap() / 50.0;
    assert!((centre.0 - corner.0 - off(0)).abs() < 0.01 && (corner.1 - centre.1 - off(1)).abs() < 0.01, "{told}");
    assert_eq!(cross.len(), 2, "{cross:?}");
    let plain = String::from_utf8(drawn("svg")).unwrap();
    assert!(!plain.contains("turning-circle"), "no rule asks for one");
}

#[test]
fn names_are_shown_and_never_obeyed() {
    let room =
        ROOM.replace("Square room", "'</text><script>alert(1)</script>'").replace("name: east door", "name: 'a & <b>'");
    let svg = run_with(&["draw", "-"], room.as_bytes());
    assert_eq!(svg.code, Some(0), "{}", svg.stderr);
    let svg = roxmltree::Document::parse(&svg.stdout).unwrap();
    assert!(svg.descendants().all(|node| !node.has_tag_name("script")));
    let said = |words: &str| {
        svg.descendants().any(|node| node.has_tag_name("text") && node.text().is_some_and(|text| text.contains(words)))
    };
    assert!(said("<script>") && said("a & <b>"));
}
