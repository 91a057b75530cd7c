//! Two or three options on one sheet: their plans at one scale, and under each what it decides, allows and scores.

use elbowroom_model::Dimension;
use elbowroom_solver::answer::{RankedOption, Thing};

use super::{Compared, sentences};
use crate::drawing::{Area, At, Fill, Mark, Path, Pen, Sheet, Stock, Text, Weight, wrapped};
use crate::render::plan::{Purpose, Shown, within};
use crate::render::rank::groups;
use crate::words::answer::{SIDES, notices_of, tells_sides};
use crate::words::compare as words;
use crate::words::lengths::{planned_range, shop_unit, sign, taped_bare};

/// Kept free at every edge of the paper, mm.
const MARGIN: f64 = 8.0;
/// Between columns, mm.
const BETWEEN: f64 = 3.0;
/// Share of the sheet that the plans take.
const PLANS: f64 = 0.5;
/// For the sheet's own title, mm.
const TITLE: f64 = 8.0;
/// Sizes of the type, mm: the first that fits is taken.
const TYPES: [f64; 9] = [3.5, 3.1, 2.8, 2.5, 2.3, 2.1, 1.9, 1.7, 1.5];
/// From foot to foot of two lines, in sizes of the type.
const LINE: f64 = 1.3;

/// The sheet, on its side.
pub(crate) fn sheet(compared: &Compared<'_>, stock: Stock) -> Sheet {
    let paper = stock.landscape();
    let all = paper.within(MARGIN);
    let count = compared.options.len().max(1) as f64;
    let width = (all.width - BETWEEN * (count - 1.0)) / count;
    let mut marks: Vec<Mark> = vec![Path::area(&paper.within(MARGIN - 3.0), Some(Pen::ink(0.2)), Fill::None).into()];
    let head = words::summary(&compared.brief().room);
    let mut columns = Vec::new();
    let mut scale = String::new();
    for (place, option) in compared.options.iter().copied().enumerate() {
        let x = all.at.x + place as f64 * (width + BETWEEN);
        let plan = Area::new(x, all.at.y + TITLE, width, all.height * PLANS - TITLE);
        let drawn = within(Shown::Option { answer: compared.answer, option }, Purpose::Client, &plan);
        marks.extend(drawn.marks);
        scale = drawn.scale.to_string();
        let below = Area::new(x, plan.bottom() + 3.0, width, all.height * (1.0 - PLANS) - 3.0);
        columns.push((below, told(compared, option, &drawn.key)));
    }
    let title = words::sheet(&head, &scale, stock.name());
    marks.push(Text::new(all.at + At::new(0.0, 4.2), 4.2, title).bold().into());
    let foot = foot(compared);
    let fits = TYPES.into_iter().find_map(|size| lettered(&all, &columns, &foot, size, false));
    let last = TYPES[TYPES.len() - 1];
    marks.extend(fits.or_else(|| lettered(&all, &columns, &foot, last, true)).unwrap_or_default());
    Sheet { paper, title: head, description: foot.join(" "), marks }
}

/// What stands under all plans: what one pays for what one gains, then cautions.
fn foot(compared: &Compared<'_>) -> Vec<String> {
    let order = crate::words::order::lines(compared.brief()).into_iter();
    let sides = compared.options.iter().any(|option| tells_sides(&option.choices)).then(|| SIDES.to_owned());
    let notices = notices_of(compared.answer, compared.options);
    order.chain(sentences(compared)).chain(notices).chain(sides).collect()
}

/// What stands under a plan; bold lines are marked.
fn told(compared: &Compared<'_>, option: &RankedOption, key: &[String]) -> Vec<(String, Weight)> {
    let units = compared.units();
    let mut lines = vec![(words::option(compared.brief(), option), Weight::Bold)];
    let mut put = |text: String| lines.push((text, Weight::Book));
    put(words::standing(option));
    let scores: Vec<String> =
        option.judgements.iter().map(|it| format!("{} {}", it.criterion.key(), words::score(it.score))).collect();
    put(scores.join(", "));
    for group in groups(compared.brief(), option) {
        let all = [Dimension::Width, Dimension::Return, Dimension::Depth];
        let sizes = all.into_iter().filter_map(|it| group.piece.sizes.get(it));
        let sizes: Vec<String> = sizes.map(|it| planned_range(units, &it)).collect();
        put(words::sized(&group.label, &sizes.join(" x "), sign(shop_unit(units))));
        for own in [Dimension::SecondReturn, Dimension::ReturnDepth] {
            if let Some(range) = group.piece.sizes.get(own) {
                put(words::sized(own.words(), &planned_range(units, &range), sign(shop_unit(units))));
            }
        }
    }
    for route in &option.routes {
        let (width, needs) = (taped_bare(units, route.width), taped_bare(units, route.needs));
        let ends = crate::words::rank::route(compared.brief(), [route.from, route.to].map(Thing::from));
        put(words::way(&ends, &width, &needs, sign(shop_unit(units))));
    }
    for (place, text) in key.iter().enumerate() {
        put(words::numbered(place + 1, text));
    }
    lines
}

/// All lettering in one type, where it fits, or come what may.
fn lettered(
    all: &Area,
    columns: &[(Area, Vec<(String, Weight)>)],
    foot: &[String],
    size: f64,
    anyway: bool,
) -> Option<Vec<Mark>> {
    let mut marks = Vec::new();
    let mut lowest = 0.0_f64;
    for (area, lines) in columns {
        let mut down = area.at.y;
        for (text, weight) in lines {
            for line in wrapped(text, size, *weight, area.width) {
                down += size * LINE;
                marks.push(Text { weight: *weight, ..Text::new(At::new(area.at.x, down), size, line) }.into());
            }
        }
        lowest = lowest.max(down);
    }
    let mut down = lowest + size;
    marks.push(Path::line([At::new(all.at.x, down), At::new(all.right(), down)], Pen::ink(0.15)).into());
    for text in foot {
        for line in wrapped(text, size, Weight::Book, all.width) {
            down += size * LINE;
            marks.push(Text::new(At::new(all.at.x, down), size, line).into());
        }
    }
    (anyway || down <= all.bottom()).then_some(marks)
}
