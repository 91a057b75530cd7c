//! A slider for each wish. Hidden until the script is there that they need.

use super::ReportPage;
use crate::text::markup::Markup;
use crate::words::criteria;
use crate::words::report as words;

/// The sliders, in the order of the criteria's columns.
pub(super) fn put(page: &mut Markup, told: &ReportPage<'_>) {
    let Some(best) = told.answer.options.first() else { return };
    page.open("section", &[("id", "wishes"), ("aria-labelledby", "h-wishes"), ("hidden", "")])
        .open("details", &[])
        .open("summary", &[]);
    page.element("h2", &[("id", "h-wishes")], words::WISHES).end();
    page.element("p", &[("id", "wishes-about")], words::WISHES_ABOUT);
    page.open(
        "fieldset",
        &[("class", "sliders"), ("aria-labelledby", "h-wishes"), ("aria-describedby", "wishes-about")],
    );
    for criterion in best.judgements.iter().map(|judgement| judgement.criterion) {
        let (key, weight) = (criterion.key(), told.answer.brief.wishes.get(criterion).to_string());
        let (id, told_id) = (format!("wish-{key}"), format!("wish-{key}-told"));
        page.open("div", &[]).open("label", &[("for", &id)]).element("span", &[], criteria::name(criterion));
        page.element("output", &[("id", &told_id), ("for", &id)], &weight).end();
        let slider = [
            ("type", "range"),
            ("id", id.as_str()),
            ("min", "0"),
            ("max", "5"),
            ("step", "0.25"),
            ("value", weight.as_str()),
            ("data-asked", weight.as_str()),
        ];
        page.void("input", &slider).end();
    }
    page.end();
    page.element("button", &[("type", "button"), ("id", "reset")], words::RESET);
    page.open("p", &[("id", "told"), ("role", "status"), ("data-pattern", words::NOW_FIRST)]).end();
    page.end().end();
}
