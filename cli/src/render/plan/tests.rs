//! Plans of every option of every demo room, read back from the finished SVG by another library.

use std::sync::{Arc, LazyLock};

use elbowroom_solver::answer::Answer;
use elbowroom_solver::{Limits, Unwatched};
use resvg::tiny_skia::Point;
use resvg::usvg::{Node, Options, Tree, fontdb};

use super::{Purpose, Shown, sheet};
use crate::drawing::{Font, Mark, Path, Sheet, Step, Stock, Typeface, Weight, svg};

/// Every demo room in which something fits, with its result: solved once for all that look at the plans.
pub(super) fn ranked() -> &'static [Answer] {
    static RANKED: LazyLock<Vec<Answer>> = LazyLock::new(rank_each);
    &RANKED
}

fn rank_each() -> Vec<Answer> {
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
pub(super) type Block = [Point; 4];

/// The inked block of each text of a sheet with what it says.
pub(super) fn texts(sheet: &Sheet) -> Vec<(Block, String)> {
    static FONTS: LazyLock<Arc<fontdb::Database>> = LazyLock::new(|| Arc::new(fonts()));
    // At 25.4 to the inch a unit is a millimetre.
    let options = Options { fontdb: Arc::clone(&FONTS), dpi: 25.4, ..Options::default() };
    let tree = Tree::from_str(&svg(sheet, Font::Beside, &Typeface::default()), &options).unwrap();
    let mut texts = Vec::new();
    collect(tree.root(), &mut texts);
    texts
}

/// Both weights of ours. Its family is not in the database: sans-serif stands in for it.
fn fonts() -> fontdb::Database {
    let mut fonts = fontdb::Database::new();
    for weight in [Weight::Book, Weight::Bold] {
        fonts.load_font_data(weight.file().to_vec());
    }
    let family = fonts.faces().next().unwrap().families[0].0.clone();
    fonts.set_sans_serif_family(family);
    fonts
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
pub(super) fn overlap(one: &Block, other: &Block) -> bool {
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

/// Sees that no words of a sheet lie on others, on a wall or off the paper.
fn see_words_apart(sheet: &Sheet, of: &str) {
    let texts = texts(sheet);
    let walls = walls(sheet);
    assert!(walls.len() > 3, "{of}");
    let (width, height) = (sheet.paper.width as f32, sheet.paper.height as f32);
    let on_paper = |at: &Point| (9.5..=width - 9.5).contains(&at.x) && (9.5..=height - 9.5).contains(&at.y);
    for (place, (area, text)) in texts.iter().enumerate() {
        assert!(area.iter().all(on_paper), "{of}: {text} at {area:?}");
        for (other, words) in &texts[place + 1..] {
            assert!(!overlap(area, other), "{of}: {text} {area:?} on {words} {other:?}");
        }
        for wall in &walls {
            assert!(!overlap(area, wall), "{of}: {text} {area:?} on a wall {wall:?}");
        }
    }
}

/// The solid stretches of the walls.
fn walls(sheet: &Sheet) -> Vec<Block> {
    let from = sheet.marks.iter().skip_while(|mark| **mark != Mark::Layer("walls")).skip(1);
    let marks = from.take_while(|mark| !matches!(mark, Mark::Layer(_)));
    let corners = |path: &Path| {
        let places = path.steps.iter().filter_map(|step| match step {
            Step::Move(at) | Step::Line(at) => Some(Point::from_xy(at.x as f32, at.y as f32)),
            _ => None,
        });
        places.collect::<Vec<_>>().try_into().ok()
    };
    marks.filter_map(|mark| if let Mark::Path(path) = mark { corners(path) } else { None }).collect()
}

#[test]
fn no_words_lie_on_others_or_on_walls_or_leave_the_sheet_in_any_option_of_any_demo_room() {
    let mut sheets = 0;
    for answer in ranked() {
        for option in &answer.options {
            for (purpose, stock) in of_each(option.rank) {
                let sheet = sheet(Shown::Option { answer, option }, purpose, stock);
                see_words_apart(&sheet, &format!("{} {} {purpose:?} {stock:?}", answer.brief.room.name, option.key));
                sheets += 1;
            }
        }
    }
    assert!(sheets > 200, "{sheets}");
}

/// Every purpose on every stock for the first options, on one stock for the others.
fn of_each(rank: usize) -> impl Iterator<Item = (Purpose, Stock)> {
    let stocks: &[Stock] = if rank > 2 { &[Stock::A4] } else { &[Stock::A4, Stock::A3, Stock::Letter] };
    stocks.iter().flat_map(|stock| [Purpose::Client, Purpose::Working].map(|purpose| (purpose, *stock)))
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
    for purpose in [Purpose::Client, Purpose::Working] {
        let sheet = sheet(Shown::Option { answer: &answer, option: &answer.options[0] }, purpose, Stock::Letter);
        let texts = texts(&sheet);
        let (width, height) = (sheet.paper.width as f32, sheet.paper.height as f32);
        let inside = |at: &Point| (9.5..=width - 9.5).contains(&at.x) && (9.5..=height - 9.5).contains(&at.y);
        for (block, text) in &texts {
            assert!(block.iter().all(inside), "{purpose:?} {text} at {block:?}");
        }
        assert!(texts.iter().any(|(_, text)| text.contains("exits and escape")), "{purpose:?} {texts:?}");
    }
}

#[test]
fn the_same_option_gives_the_same_bytes() {
    let text = std::fs::read_to_string(concat!(env!("CARGO_MANIFEST_DIR"), "/../scenarios/which-hand.yaml")).unwrap();
    let made = || {
        let brief = elbowroom_model::scenario::read(&text, None).unwrap();
        let answer = elbowroom_solver::rank(&brief, &Limits::default(), &Unwatched);
        let sheet = sheet(Shown::Option { answer: &answer, option: &answer.options[0] }, Purpose::Client, Stock::A4);
        (
            svg(&sheet, Font::Within, &Typeface::default()),
            crate::drawing::png(&sheet, &Typeface::default()).unwrap(),
            crate::drawing::pdf(std::slice::from_ref(&sheet), &Typeface::default()).unwrap(),
        )
    };
    assert!(made() == made());
}

/// Three weights and three sizes on a sheet of an option; a fourth size where words have no room in a larger one.
#[test]
fn a_sheet_has_three_weights_of_line_and_three_sizes_of_type() {
    let mut smaller = 0;
    for answer in ranked() {
        for purpose in [Purpose::Client, Purpose::Working] {
            let option = &answer.options[0];
            let sheet = sheet(Shown::Option { answer, option }, purpose, Stock::A4);
            let told = |numbers: Vec<f64>| -> Vec<String> {
                let mut told: Vec<String> = numbers.iter().map(|number| format!("{number:.2}")).collect();
                told.sort();
                told.dedup();
                told
            };
            let pens = told(
                sheet
                    .marks
                    .iter()
                    .filter_map(|mark| match mark {
                        Mark::Path(Path { pen, .. }) => pen.map(|pen| pen.width),
                        _ => None,
                    })
                    .collect(),
            );
            let sizes = told(
                sheet
                    .marks
                    .iter()
                    .filter_map(|mark| match mark {
                        Mark::Text(text) => Some(text.size),
                        _ => None,
                    })
                    .collect(),
            );
            let of = format!("{} {purpose:?}: {pens:?} {sizes:?}", answer.brief.room.name);
            assert!(pens.len() <= 3, "{of}");
            let fourth = sizes.contains(&"1.90".to_owned());
            assert!(sizes.len() <= if fourth { 4 } else { 3 }, "{of}");
            smaller += usize::from(fourth);
        }
    }
    assert!(smaller < 6, "{smaller}");
}
