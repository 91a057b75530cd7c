//! Every option in a line: its place, its score, how often it comes first.

use super::ReportPage;
use crate::text::markup::Markup;
use crate::words::answer::title;
use crate::words::rank::share;
use crate::words::report as words;

/// The table of all options, best first.
pub(super) fn put(page: &mut Markup, told: &ReportPage<'_>) {
    page.open("section", &[("aria-labelledby", "h-order")]);
    page.element("h2", &[("id", "h-order")], words::ORDER);
    page.open("div", &[("class", "scroll"), ("tabindex", "0"), ("role", "region"), ("aria-label", words::ALL_OPTIONS)]);
    page.open("table", &[]).open("thead", &[]).open("tr", &[]);
    page.element("th", &[("scope", "col"), ("class", "number")], words::PLACE);
    page.element("th", &[("scope", "col")], words::OPTION);
    page.element("th", &[("scope", "col"), ("class", "number")], words::SCORE);
    page.element("th", &[("scope", "col"), ("class", "number")], words::FIRST_IN);
    page.end().end().open("tbody", &[("id", "order")]);
    for option in &told.answer.options {
        let rank = option.rank.to_string();
        page.open("tr", &[("id", &format!("row-{rank}"))]);
        page.element("td", &[("class", "number"), ("data-told", "rank")], &rank);
        page.open("th", &[("scope", "row"), ("data-title", "")]);
        let title = title(&told.answer.brief, &option.choices);
        if option.rank <= told.shown {
            page.element("a", &[("href", &format!("#option-{rank}"))], &title);
        } else {
            page.text(&title);
        }
        page.end();
        page.element("td", &[("class", "number"), ("data-told", "score")], &format!("{:.0}", option.score));
        page.element("td", &[("class", "number"), ("data-told", "share")], &share(option.first_place_share));
        page.end();
    }
    page.end().end().end().end();
}
