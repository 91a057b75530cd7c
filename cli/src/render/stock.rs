//! How an assignment of stock looks: the pick list by day and room, what is short, what one more piece would bring; and
//! the pick list as rows for a spreadsheet.

use elbowroom_model::listing::Money;
use elbowroom_model::{Dimension, Rounding, Unit};
use elbowroom_solver::Size;
use elbowroom_solver::stock::By;

use crate::result::short::short_key;
use crate::result::stock::{AskedResult, BookingResult, OneMoreResult, StockResult};
use crate::text::cells::Cell;
use crate::text::look::Look;
use crate::text::page::Page;
use crate::text::table::{Stand, Table};
use crate::words::lengths::{shop_unit, shopped, sign, taped_bare};
use crate::words::number::number;
use crate::words::stock as words;

/// The page.
pub(crate) fn text(told: &StockResult, unit: Unit, look: Look) -> String {
    let mut page = Page::new(look);
    page.strong(&summary(told));
    page.paragraph(0, &words::must(&told.must, has_alike(told)));
    page.paragraph(0, &words::proof(told.proven, &told.must, told.points));
    for said in words::sets(told.sets) {
        page.paragraph(0, &said);
    }
    page.heading(&words::to_pick(unit));
    for room in told.by_day() {
        pick(&mut page, room, unit);
    }
    short(&mut page, told, unit);
    page.heading(words::ONE_MORE);
    page.paragraph(2, &one_more(told, unit));
    if !told.notices.is_empty() {
        page.heading(crate::words::NOTICES);
        for notice in &told.notices {
            page.entry(2, notice);
        }
    }
    page.gap();
    page.paragraph(0, words::CAUTION);
    page.into_text()
}

/// A paragraph behind the page.
pub(crate) fn paragraph(text: &str, look: Look) -> String {
    let mut page = Page::new(look);
    page.gap();
    page.paragraph(0, text);
    page.into_text()
}

fn summary(told: &StockResult) -> String {
    let asked = || told.rooms.iter().flat_map(|room| &room.asked);
    let served = asked().filter(|one| one.piece.is_some()).map(|one| one.names.len()).sum();
    let faulty = told.rooms.iter().filter(|room| !room.faults.is_empty()).count();
    words::summary(told.rooms.len(), served, asked().map(|one| one.names.len()).sum(), faulty)
}

/// Whether some of what must be served is several alike.
fn has_alike(told: &StockResult) -> bool {
    told.rooms.iter().flat_map(|room| &room.asked).any(|asked| asked.must && asked.names.len() > 1)
}

/// What to pick for a room.
fn pick(page: &mut Page, room: &BookingResult, unit: Unit) {
    page.entry(0, &words::booking(room.from.as_deref(), room.to.as_deref(), room.name.as_deref(), &room.source));
    if let Some(fault) = room.faults.first() {
        let line = fault.place.map(|place| place.line).filter(|line| *line > 0);
        page.paragraph(2, &crate::words::batch::at_fault(&fault.message, line, room.faults.len()));
        return;
    }
    if let Some(not_stageable) = &room.not_stageable {
        page.paragraph(2, &not_stageable.sentence);
        return;
    }
    let Some(arrangement) = &room.arrangement else {
        let is_decided = room.asked.iter().all(|asked| asked.by != By::NotDecided);
        page.paragraph(2, if is_decided { words::NO_OPTION } else { words::NO_OPTION_FOUND });
        return;
    };
    page.faint(2, &words::arrangement(&arrangement.title, arrangement.of, arrangement.score));
    let mut table =
        Table::new(&[("", Stand::Left), ("", Stand::Right), ("", Stand::Left), ("", Stand::Left), ("", Stand::Left)]);
    for asked in &room.asked {
        let Some(piece) = &asked.piece else { continue };
        let size: Vec<String> = piece.size.iter().map(|figure| taped_bare(unit, *figure)).collect();
        table.row([
            asked.names.join(", "),
            piece.count.to_string(),
            piece.name.clone(),
            size.join(" x "),
            piece.place.clone(),
        ]);
    }
    if table.is_empty() {
        page.paragraph(4, words::NOTHING_TO_PICK)
    } else {
        page.table(4, &table)
    }
    for stands_in in room.asked.iter().filter_map(|asked| asked.in_place_of.as_deref()) {
        page.paragraph(4, &format!("({stands_in})"));
    }
}

/// What is short, and why.
fn short(page: &mut Page, told: &StockResult, unit: Unit) {
    let mut table = Table::new(&[("", Stand::Left), ("", Stand::Left), ("", Stand::Left)]);
    for room in told.by_day() {
        for asked in &room.asked {
            let Some(why) = why_short(asked, unit) else { continue };
            let what = words::short_piece(&asked.names.join(", "), asked.must);
            table.row([words::short_room(room.from.as_deref(), &room.source), what, why]);
        }
    }
    if !table.is_empty() {
        page.heading(words::SHORT);
        page.table(2, &table);
    }
}

/// Why something is short, with what comes nearest; `None` where something serves.
fn why_short(asked: &AskedResult, unit: Unit) -> Option<String> {
    let nearest = asked.nearest.as_ref().map(|nearest| words::miss(&nearest.name, nearest.miss, unit));
    words::why_short(asked.by, nearest.as_deref())
}

fn one_more(told: &StockResult, unit: Unit) -> String {
    let OneMoreResult { tried, like } = &told.one_more;
    let Some(best) = &tried.best else { return words::no_one_more(tried, told.proven) };
    let least = |of: fn(&Size) -> Option<f64>| best.least.as_ref().and_then(of);
    let sides = [
        (least(|size| Some(size.width)), Some(best.width)),
        (least(|size| size.return_length), best.return_length),
        (least(|size| Some(size.depth)), Some(best.depth)),
    ];
    let told_size = |(least, most): (Option<f64>, Option<f64>)| {
        let (least, most) = (least.filter(|least| most.is_some_and(|most| *least < most)), most?);
        let least = least.map(|least| shopped(unit, least, Rounding::Up));
        Some(words::from_to(least.as_deref(), &shopped(unit, most, Rounding::Down)))
    };
    let size: Vec<String> = sides.into_iter().filter_map(told_size).collect();
    let priorities: Vec<u32> = told.must.iter().map(|served| served.priority).collect();
    let which = words::which(best, like.as_deref(), &size.join(" x "), sign(shop_unit(unit)));
    words::one_more(&which, best, &priorities, tried, told.proven)
}

/// How the pick list starts, whatever columns come to stand behind these: what the file is known again by.
pub(crate) const PICKS_START: &str = "\"from\",\"to\",\"room\",\"source\",\"for\",";

/// The pick list as rows, lengths in `unit`: a column for each figure.
pub(crate) fn rows(told: &StockResult, unit: Unit) -> Vec<Vec<Cell>> {
    let sizes = Dimension::ALL.iter().map(|one| format!("{}_{}", one.key(), shop_unit(unit).key()));
    let before = ["from", "to", "room", "source", "for", "must", "piece", "count"].map(str::to_owned).into_iter();
    let after = ["where", "value", "short", "stands_in", "short_key"].map(str::to_owned);
    let mut rows = vec![before.chain(sizes).chain(after).map(Cell::Text).collect()];
    for room in told.by_day() {
        rows.extend(room.asked.iter().map(|asked| row(room, asked, unit)));
    }
    rows
}

fn row(room: &BookingResult, asked: &AskedResult, unit: Unit) -> Vec<Cell> {
    let piece = asked.piece.as_ref();
    let mut cells = vec![
        Cell::day(room.from.as_deref()),
        Cell::day(room.to.as_deref()),
        Cell::text(room.name.as_deref().unwrap_or_default()),
        Cell::text(&room.source),
        Cell::text(asked.names.join(", ")),
        Cell::text(crate::words::batch::yes_no(asked.must)),
        Cell::text(piece.map_or("", |piece| &piece.name)),
        Cell::maybe(piece.map(|piece| piece.count)),
    ];
    cells.extend(Dimension::ALL.iter().map(|dimension| {
        let size = piece.and_then(|piece| piece.sizes.get(*dimension));
        Cell::maybe(size.map(|size| number(unit, size, Rounding::Nearest)))
    }));
    cells.extend([
        Cell::text(piece.map_or("", |piece| &piece.place)),
        Cell::maybe(piece.and_then(|piece| piece.value).map(Money::words)),
        Cell::text(why_short(asked, unit).unwrap_or_default()),
        Cell::text(asked.in_place_of.as_deref().unwrap_or_default()),
        Cell::text(short_key(asked.by).unwrap_or_default()),
    ]);
    cells
}
