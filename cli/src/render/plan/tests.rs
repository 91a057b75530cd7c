//! Plans of every option of every demo room, read back from the finished SVG by another library.

use elbowroom_solver::answer::Answer;

use elbowroom_solver::{Limits, Unwatched};
use resvg::tiny_skia::Point;
use resvg::usvg::{Node, Options, Tree, fontdb};

use super::{Shown, sheet};
use crate::drawing::{Font, Sheet, Stock, Weight, svg};

/// Every demo room in which something fits, with its result.
fn ranked() -> Vec<Answer> {
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/../scenarios");
    let files = std::fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path());
    let files = files.filter(|path| path.extension().is_some_and(|ending| ending == "yaml"));
    let briefs =
        files.map(|path| elbowroom_model::scenario::read(&std::fs::read_to_string(path).unwrap(), None).unwrap());
    let limits = Limits { shown: 0, ..Limits::default() };
    let ranked = briefs.map(|brief| elbowroom_solver::rank(&brief, &limits, &Unwatched));
    ranked.filter(|answer| !answer.options.is_empty()).collect()
}

/// Corners of a block of ink, turned with its words, mm.
type Block = [Point; 4];

/// The inked block of each text of a sheet with what it says.
fn texts(sheet: &Sheet) -> Vec<(Block, String)> {
    let mut fonts = fontdb::Database::new();
    for weight in [Weight::Book, Weight::Bold] {
        fonts.load_font_data(weight.file().to_vec());
    }
    let family = fonts.faces().next().unwrap().families[0].0.clone();
    fonts.set_sans_serif_family(family);
    let options = Options { fontdb: std::sync::Arc::new(fonts), dpi: 25.4, ..Options::default() };
    // At 25.4 to the inch a unit is a millimetre. The family of ours is not in the database: sans-serif stands in for it.
    let tree = Tree::from_str(&svg(sheet, Font::Beside), &options).unwrap();
    let mut texts = Vec::new();
    collect(tree.root(), &mut texts);
    texts
}

fn collect(group: &resvg::usvg::Group, texts: &mut Vec<(Block, String)>) {
    for node in group.children() {
        match node {
            Node::Group(group) => collect(group, texts),
            Node::Text(text) => {
                let said = text.chunks().iter().map(|chunk| chunk.text()).collect();
                let ink = text.flattened().bounding_box();
                let (left, top, right, bottom) = (ink.left(), ink.top(), ink.right(), ink.bottom());
                let mut block =
                    [(left, top), (right, top), (right, bottom), (left, bottom)].map(|(x, y)| Point::from_xy(x, y));
                text.abs_transform().map_points(&mut block);
                texts.push((block, said));
            }
            _ => {}
        }
    }
}

/// Whether two blocks overlap: neither has an edge that parts them.
fn overlap(one: &Block, other: &Block) -> bool {
    let parts = |block: &Block| {
        (0..4).any(|edge| {
            let along = block[(edge + 1) % 4] - block[edge];
            let off = |corner: &Point| (corner.x - block[edge].x) * -along.y + (corner.y - block[edge].y) * along.x;
            let side = off(&block[(edge + 2) % 4]).signum();
            let theirs = if std::ptr::eq(block, one) { other } else { one };
            theirs.iter().all(|corner| off(corner) * side <= 0.0)
        })
    };
    !parts(one) && !parts(other)
}

#[test]
fn no_words_lie_on_others_or_leave_the_sheet_in_any_option_of_any_demo_room() {
    let mut sheets = 0;
    for answer in &ranked() {
        for option in &answer.options {
            for stock in [Stock::A4, Stock::A3, Stock::Letter] {
                if stock != Stock::A4 && option.rank > 2 {
                    continue;
                }
                let sheet = sheet(Shown::Option { answer, option }, stock);
                let texts = texts(&sheet);
                let (width, height) = (sheet.paper.width as f32, sheet.paper.height as f32);
                for (place, (area, text)) in texts.iter().enumerate() {
                    let on_paper =
                        |at: &Point| (9.5..=width - 9.5).contains(&at.x) && (9.5..=height - 9.5).contains(&at.y);
                    let inside = area.iter().all(on_paper);
                    assert!(inside, "{} {}: {text} at {area:?}", answer.brief.room.name, option.key);
                    for (other, words) in &texts[place + 1..] {
                        assert!(
                            !overlap(area, other),
                            "{} {} {stock:?}: {text} {area:?} on {words} {other:?}",
                            answer.brief.room.name,
                            option.key
                        );
                    }
                }
                sheets += 1;
            }
        }
    }
    assert!(sheets > 100, "{sheets}");
}

#[test]
fn long_names_and_many_pieces_leave_nothing_off_the_sheet_and_keep_the_cautions() {
    let long = "a name that somebody wrote without an end in sight, ".repeat(12);
    let lamp = |lamp: usize| format!("  - {{ kind: floor-lamp, name: '{lamp} {long}', needed: false }}\n");
    let lamps: String = (0..3).map(lamp).collect();
    let wall = |(place, length): (usize, usize)| {
        let window = format!("{{ kind: window, name: 'pane {place} {long}', at: 500, width: 2000, view: liked }}");
        let door = format!(
            "{{ kind: door, name: 'door {place} {long}', at: 3000, width: 800, swings: slides, leads_to: entrance }}"
        );
        format!("  - {{ name: 'wall {place} {long}', length: {length}, holds: [{window}, {door}] }}\n")
    };
    let walls: String = [6000, 5000, 6000, 5000].into_iter().enumerate().map(wall).collect();
    let text = format!(
        "name: '{long}'\nunits: mm\nwalls:\n{walls}pieces:\n  - {{ kind: sofa, name: 'sofa {long}' }}\n{lamps}"
    );
    let brief = elbowroom_model::scenario::read(&text, None).unwrap();
    let answer = elbowroom_solver::rank(&brief, &Limits { shown: 0, ..Limits::default() }, &Unwatched);
    let sheet = sheet(Shown::Option { answer: &answer, option: &answer.options[0] }, Stock::Letter);
    let texts = texts(&sheet);
    let (width, height) = (sheet.paper.width as f32, sheet.paper.height as f32);
    let inside = |at: &Point| (9.5..=width - 9.5).contains(&at.x) && (9.5..=height - 9.5).contains(&at.y);
    for (block, text) in &texts {
        assert!(block.iter().all(inside), "{text} at {block:?}");
    }
    assert!(texts.iter().any(|(_, text)| text.contains("exits and escape")), "{texts:?}");
}

#[test]
fn the_same_option_gives_the_same_bytes() {
    let text = std::fs::read_to_string(concat!(env!("CARGO_MANIFEST_DIR"), "/../scenarios/which-hand.yaml")).unwrap();
    let made = || {
        let brief = elbowroom_model::scenario::read(&text, None).unwrap();
        let answer = elbowroom_solver::rank(&brief, &Limits::default(), &Unwatched);
        let sheet = sheet(Shown::Option { answer: &answer, option: &answer.options[0] }, Stock::A4);
        (
            svg(&sheet, Font::Within),
            crate::drawing::png(&sheet).unwrap(),
            crate::drawing::pdf(std::slice::from_ref(&sheet)).unwrap(),
        )
    };
    assert!(made() == made());
}
