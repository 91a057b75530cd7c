//! Every option in a line: its place, its score, how often it comes first. The best of each family before all others.

use elbowroom_solver::answer::RankedOption;

use super::ReportPage;
use crate::text::markup::Markup;
use crate::words::answer::title;
use crate::words::family::LIKE_IT;
use crate::words::firm::share;
use crate::words::report as words;

/// Families whose best is listed unfolded.
const UNFOLDED: usize = 6;

/// The best of each family, best first; those after the sixth folded, with those like the best.
pub(super) fn put(page: &mut Markup, told: &ReportPage<'_>) {
    page.open("section", &[("aria-labelledby", "h-order")]);
    page.element("h2", &[("id", "h-order")], words::ORDER);
    let (drawn, listed) = (told.drawn(), told.listed());
    let (first, later) = listed.split_at(listed.len().min(UNFOLDED));
    open_table(page, words::ALL_OPTIONS, &[("id", "order"), ("data-pattern", LIKE_IT)]);
    for family in first {
        put_row(page, told, family.best, &drawn, family.others.len());
    }
    close_table(page);
    let mut others: Vec<&RankedOption> = listed.iter().flat_map(|family| family.others.iter().copied()).collect();
    others.sort_by_key(|option| option.rank);
    if !(later.is_empty() && others.is_empty()) {
        page.open("details", &[]).element("summary", &[], &words::more_rows(later.len() + others.len()));
        open_table(page, words::MORE_OPTIONS, &[("id", "order-more")]);
        for family in later {
            put_row(page, told, family.best, &drawn, family.others.len());
        }
        if !others.is_empty() {
            page.end().open("tbody", &[("id", "others")]).open("tr", &[]);
            page.element("th", &[("scope", "rowgroup"), ("colspan", "4")], words::LIKE_THESE).end();
            for option in others {
                put_row(page, told, option, &drawn, 0);
            }
        }
        close_table(page);
        page.end();
    }
    page.end();
}

fn open_table(page: &mut Markup, label: &str, body: &[(&str, &str)]) {
    page.open("div", &[("class", "scroll"), ("tabindex", "0"), ("role", "region"), ("aria-label", label)]);
    page.open("table", &[]).open("thead", &[]).open("tr", &[]);
    page.element("th", &[("scope", "col"), ("class", "number")], words::PLACE);
    page.element("th", &[("scope", "col")], words::OPTION);
    page.element("th", &[("scope", "col"), ("class", "number")], words::SCORE);
    page.element("th", &[("scope", "col"), ("class", "number")], words::FIRST_IN);
    page.end().end().open("tbody", body);
}

fn close_table(page: &mut Markup) {
    page.end().end().end();
}

/// An option, and how many of its family are like it.
fn put_row(page: &mut Markup, told: &ReportPage<'_>, option: &RankedOption, drawn: &[&RankedOption], like_it: usize) {
    let rank = option.rank.to_string();
    let tier = if option.set_aside.is_some() { "aside".to_owned() } else { option.eased_rules().to_string() };
    page.open("tr", &[("id", &format!("row-{rank}")), ("data-tier", &tier)]);
    page.element("td", &[("class", "number"), ("data-told", "rank")], &rank);
    page.open("th", &[("scope", "row")]).open("span", &[("data-title", "")]);
    let title = title(&told.answer.brief, option);
    if drawn.iter().any(|drawn| drawn.rank == option.rank) {
        page.inline("a", &[("href", &format!("#option-{rank}"))], &title);
    } else {
        page.text(&title);
    }
    page.close();
    let like_it = if like_it > 0 { words::like_it(like_it) } else { String::new() };
    page.inline("span", &[("class", "soft"), ("data-like", "")], &like_it).end();
    page.element("td", &[("class", "number"), ("data-told", "score")], &format!("{:.0}", option.score));
    page.element("td", &[("class", "number"), ("data-told", "share")], &share(option.first_place_share));
    page.end();
}
