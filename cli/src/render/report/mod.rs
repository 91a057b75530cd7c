//! The report: a result as one page that opens with no network, prints well, and puts another option first where the
//! reader moves a wish. Picture first: the answer's plan, then the other ways, then what they rest on, folded.
//!
//! The markup is written whole, so the page stands without its script; the script only moves and reorders. Nothing is
//! loaded from anywhere, and the page itself forbids it.

mod answer;
mod contents;
mod head;
mod option;
mod order;
mod report_page;
mod room;
mod sources;
mod wishes;

pub(crate) use report_page::ReportPage;

use crate::drawing::{Paper, Scale};
use crate::render::plan::{self, Alone};
use crate::text::markup::Markup;
use crate::words::answer::{SIDES, tells_sides};
use crate::words::report as words;

/// Letters that a page is set in whatever its room is called; those of names beside them are taken from the plans.
const LETTERS: &str = " !\"'()*+,-./0123456789:;<=>?ABCDEFGHIJKLMNOPQRSTUVWXYZ[]_abcdefghijklmnopqrstuvwxyz\u{b0}\u{b2}\u{d7}\u{2013}\u{2019}\u{2026}";
/// The scale that plans are drawn at; a page shows them as wide as there is room.
const SCALE: Scale = Scale(50);

/// What a plan of the answer takes at most, in paper millimetres: its letters then read at the width of a phone.
const WIDEST: Paper = Paper { width: 132.0, height: 104.0 };
/// Options that wait, with their plans, for a wish to put them first.
const MOST_KEPT: usize = 24;

/// The page.
pub(crate) fn page(told: &ReportPage<'_>) -> String {
    let (plans, carried) = (plans(told), carried(told));
    let sheets = plans.iter().chain(carried.iter().map(|(_, plan)| plan)).map(|plan| &plan.sheet);
    let mut page = Markup::default();
    page.raw("<!DOCTYPE html>\n").open("html", &[("lang", "en")]);
    head::put(&mut page, told, &crate::drawing::faces_of(sheets, LETTERS));
    page.open("body", &[]);
    page.element("a", &[("class", "skip"), ("href", "#main")], words::SKIP);
    page.open("main", &[("id", "main"), ("tabindex", "-1")]);
    room::put_head(&mut page, told);
    if told.answer.options.is_empty() {
        room::put_remedies(&mut page, told);
    } else {
        answer::put(&mut page, told, &carried);
        contents::put(&mut page, told);
        wishes::put(&mut page, told);
        order::put(&mut page, told);
        put_options(&mut page, told, &plans);
    }
    sources::put_cautions(&mut page, told);
    room::put(&mut page, told);
    room::put_refused(&mut page, told);
    sources::put(&mut page, told);
    page.end();
    if !told.answer.options.is_empty() {
        head::put_scripts(&mut page, told);
    }
    page.finished()
}

/// The options that the page has a block for, the answer first: those that are drawn, and those that some wishes put first.
fn carried<'a>(told: &ReportPage<'a>) -> Vec<answer::Carried<'a>> {
    let answer = told.answer;
    let drawn = told.drawn();
    // What a wish sets aside may come first under another one.
    let may_be = answer.options.iter().filter(|option| !option.never_first || option.set_aside.is_some());
    let kept = may_be.filter(|option| drawn.iter().all(|drawn| drawn.rank != option.rank)).take(MOST_KEPT);
    let plan = |option| (option, plan::for_page(plan::Shown::Option { answer, option }, &WIDEST));
    drawn.iter().copied().chain(kept).map(plan).collect()
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
