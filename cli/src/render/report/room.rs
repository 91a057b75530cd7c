//! The room, the answer in a sentence, what would help where nothing fits, and why the others do not fit.

use elbowroom_model::{ItemKind, WallItem};

use super::ReportPage;
use crate::render::rank::{Reason, reasons};
use crate::text::markup::Markup;
use crate::words::answer as said;
use crate::words::lengths::taped;
use crate::words::refused;
use crate::words::report as words;

/// The room's name, whom it is for, and how many ways there are.
pub(super) fn put_head(page: &mut Markup, told: &ReportPage<'_>) {
    let answer = told.answer;
    page.open("header", &[]).element("h1", &[], &answer.brief.room.name);
    for line in crate::words::order::lines(&answer.brief) {
        page.element("p", &[("class", "soft")], &line);
    }
    page.element("p", &[("class", "soft")], &refused::summary(answer, None));
    if answer.options.is_empty() {
        page.element("p", &[("class", "none")], refused::nothing_fits(answer.undecided()));
    }
    page.end();
}

/// The room as it was measured, folded.
pub(super) fn put(page: &mut Markup, told: &ReportPage<'_>) {
    page.open("section", &[("aria-labelledby", "h-room")]).open("details", &[]).open("summary", &[]);
    page.element("h2", &[("id", "h-room")], words::ROOM).end();
    page.open("div", &[("class", "scroll"), ("tabindex", "0"), ("role", "region"), ("aria-label", words::WALLS)]);
    page.open("table", &[]);
    page.element("caption", &[], words::WALLS);
    page.open("thead", &[]).open("tr", &[]);
    page.element("th", &[("scope", "col")], words::WALL);
    page.element("th", &[("scope", "col"), ("class", "number")], words::LENGTH);
    page.element("th", &[("scope", "col")], words::HOLDS);
    page.end().end().open("tbody", &[]);
    for (id, wall) in told.answer.brief.room.walls() {
        page.open("tr", &[]).element("th", &[("scope", "row")], &wall.name);
        page.element("td", &[("class", "number")], &taped(told.answer.brief.units, wall.length()));
        let held = told.answer.brief.room.items.iter().filter(|item| item.wall == id);
        page.element("td", &[], &held.map(|item| holds(told, item)).collect::<Vec<_>>().join("; ")).end();
    }
    page.end().end().end().end().end();
}

fn holds(told: &ReportPage<'_>, item: &WallItem) -> String {
    match item.kind {
        ItemKind::Socket(_) => item.name.clone(),
        _ => format!("{} {}", item.name, taped(told.answer.brief.units, item.width)),
    }
}

/// What would help where nothing fits.
pub(super) fn put_remedies(page: &mut Markup, told: &ReportPage<'_>) {
    page.open("section", &[("aria-labelledby", "h-help")]);
    page.element("h2", &[("id", "h-help")], refused::remedies(told.answer.undecided()));
    if told.answer.remedies.is_empty() {
        page.element("p", &[], refused::NO_REMEDY);
    } else {
        page.open("ul", &[]);
        for remedy in said::remedies(told.answer) {
            page.element("li", &[], &remedy);
        }
        page.end();
    }
    page.end();
}

/// Why the others do not fit.
pub(super) fn put_refused(page: &mut Markup, told: &ReportPage<'_>) {
    let ids = ["h-refused", "h-undecided"];
    for (id, (heading, reasons)) in ids.into_iter().zip(reasons(told.answer)) {
        page.open("section", &[("aria-labelledby", id)]).open("details", &[]).open("summary", &[]);
        page.element("h2", &[("id", id)], heading).end();
        page.open("ul", &[]);
        for Reason { why, keys, .. } in &reasons {
            page.element("li", &[], &refused::refused(why, keys));
        }
        page.end().end().end();
    }
}
