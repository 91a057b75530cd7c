//! What a printed report holds, in the order of its pages: each option has a page of its own.

use super::ReportPage;
use crate::text::markup::Markup;
use crate::words::answer::title;
use crate::words::report as words;

/// The contents, on paper alone: with numbers of pages where a renderer of paged media counts them; by their options elsewhere.
pub(super) fn put(page: &mut Markup, told: &ReportPage<'_>) {
    page.open("nav", &[("class", "contents"), ("aria-label", words::CONTENTS)]);
    page.element("h2", &[], words::CONTENTS).open("ul", &[("class", "plain")]);
    for option in told.drawn() {
        let line = words::option_titled(option.rank, &title(&told.answer.brief, option));
        page.open("li", &[]).inline("a", &[("href", &format!("#option-{}", option.rank))], &line).end();
    }
    for (id, line) in [("#h-cautions", words::CAUTIONS), ("#h-room", words::ROOM), ("#h-sources", words::SOURCES)] {
        page.open("li", &[]).inline("a", &[("href", id)], line).end();
    }
    page.end();
    page.element("p", &[("class", "soft unpaged")], words::ONE_A_PAGE).end();
}
