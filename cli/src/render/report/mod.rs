//! The report: a result as one page that opens with no network, prints well, and puts the options in another order where
//! the reader moves a wish.
//!
//! The markup is written whole, so the page stands without its script; the script only reorders. Nothing is loaded from
//! anywhere, and the page itself forbids it.

mod head;
mod option;
mod order;
mod report_page;
mod room;
mod sources;
mod wishes;

pub(crate) use report_page::ReportPage;

use crate::drawing::Scale;
use crate::render::plan::{self, Alone};
use crate::text::markup::Markup;
use crate::words::answer::{SIDES, tells_sides};
use crate::words::report as words;

/// The scale that plans are drawn at; a page shows them as wide as there is room.
const SCALE: Scale = Scale(50);

/// The page.
pub(crate) fn page(told: &ReportPage<'_>) -> String {
    let plans = plans(told);
    let mut page = Markup::default();
    page.raw("<!DOCTYPE html>\n").open("html", &[("lang", "en")]);
    head::put(&mut page, told, &plans);
    page.open("body", &[]);
    page.element("a", &[("class", "skip"), ("href", "#main")], words::SKIP);
    page.open("main", &[("id", "main"), ("tabindex", "-1")]);
    room::put(&mut page, told);
    if told.answer.options.is_empty() {
        room::put_remedies(&mut page, told);
    } else {
        wishes::put(&mut page, told);
        order::put(&mut page, told);
        put_options(&mut page, told, &plans);
    }
    room::put_refused(&mut page, told);
    sources::put(&mut page, told);
    page.end();
    if !told.answer.options.is_empty() {
        head::put_scripts(&mut page, told);
    }
    page.finished()
}

fn put_options(page: &mut Markup, told: &ReportPage<'_>, plans: &[Alone]) {
    page.open("section", &[("aria-labelledby", "h-options")]);
    page.element("h2", &[("id", "h-options")], words::OPTIONS);
    let about = words::drawn(plans.len(), told.listed().len(), told.limits.one_by_one, told.file);
    page.element("p", &[("class", "soft")], &about);
    if told.drawn().iter().any(|option| tells_sides(&option.choices)) {
        page.element("p", &[("class", "soft")], SIDES);
    }
    page.open("ol", &[("id", "options"), ("class", "options")]);
    for (option, plan) in told.drawn().into_iter().zip(plans) {
        option::put(page, told, option, plan);
    }
    page.end().end();
}

/// The plans of the options that are shown, each with what its numbers stand for.
fn plans(told: &ReportPage<'_>) -> Vec<Alone> {
    let answer = told.answer;
    told.drawn().into_iter().map(|option| plan::alone(plan::Shown::Option { answer, option }, SCALE)).collect()
}
