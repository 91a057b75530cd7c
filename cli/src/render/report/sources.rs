//! Where the figures come from, and what to mind before anything is bought or moved.

use elbowroom_model::{Clearance, tables};

use super::ReportPage;
use crate::text::markup::Markup;
use crate::words::answer as said;
use crate::words::check as check_words;
use crate::words::criteria;
use crate::words::lengths::taped;
use crate::words::report as words;

/// What to mind, in full sight.
pub(super) fn put_cautions(page: &mut Markup, told: &ReportPage<'_>) {
    page.open("section", &[("aria-labelledby", "h-cautions")]);
    page.element("h2", &[("id", "h-cautions")], words::CAUTIONS).open("ul", &[]);
    for notice in &said::notices(told.answer) {
        page.element("li", &[], notice);
    }
    page.element("li", &[], words::SETTING_OUT).end().end();
}

/// Where figures come from, folded.
pub(super) fn put(page: &mut Markup, told: &ReportPage<'_>) {
    page.open("section", &[("aria-labelledby", "h-sources")]).open("details", &[]).open("summary", &[]);
    page.element("h2", &[("id", "h-sources")], words::SOURCES).end();
    put_criteria(page, told);
    put_rules(page, told);
    page.element("p", &[], words::TAGS).end().end();
}

fn put_criteria(page: &mut Markup, told: &ReportPage<'_>) {
    let Some(best) = told.answer.options.first() else { return };
    page.element("h3", &[], words::YARDSTICKS).open("ul", &[]);
    for judgement in &best.judgements {
        page.open("li", &[]).inline("strong", &[], criteria::name(judgement.criterion));
        page.text(": ").text(tables::basis(judgement.criterion)).end();
    }
    page.end();
}

fn put_rules(page: &mut Markup, told: &ReportPage<'_>) {
    let rules = &told.answer.brief.rules;
    page.element("h3", &[], &check_words::rules(&rules.profile)).open("ul", &[]);
    for &rule in Clearance::ALL.iter().filter(|rule| told.answer.brief.asks(**rule)) {
        let figure = rules.figure(rule);
        let Some(length) = figure.figure else { continue };
        page.open("li", &[]).inline("strong", &[], &rule.key().replace('_', " "));
        page.text(&format!(" {}: {}", taped(told.answer.brief.units, length), figure.source)).end();
    }
    page.end();
}
