//! Options as one page for a client: plans, names, sizes, and a place to mark one and write a line. No scores, no places in
//! an order, no shop, and prices where somebody asks for them alone. Nothing is loaded and nothing is sent: the answer is a text that the client sends.

mod prices;

use elbowroom_model::Rounding;
use elbowroom_solver::answer::{Answer, RankedOption};

use crate::drawing::{Paper, faces_of, style_in_page, svg_in_page};
use crate::render::plan::{self, Alone, Shown};
use crate::render::rank::groups;
use crate::text::digest::digest;
use crate::text::markup::Markup;
use crate::text::safe::safe;
use crate::words::answer::{all_eased, cautions_of_all, own_cautions};
use crate::words::lengths::{shop_unit, shopped, sign};
use crate::words::share as words;
use crate::words::size::size;

pub(crate) use prices::Prices;

const STYLE: &str = include_str!("share.css");
const SCRIPT: &str = include_str!("share.js");
/// What a plan takes at most, in paper millimetres: its letters then read at the width of a phone.
const WIDEST: Paper = Paper { width: 132.0, height: 104.0 };

/// All that the page is made from.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Shared<'a> {
    /// What came out.
    pub answer: &'a Answer,
    /// The options that are shown, as they are to stand.
    pub options: &'a [&'a RankedOption],
    /// What their pieces cost, where that is told.
    pub prices: Option<&'a Prices>,
}

/// The page.
pub(crate) fn page(shared: &Shared<'_>) -> String {
    let brief = &shared.answer.brief;
    let plan = |option: &&RankedOption| plan::for_page(Shown::Option { answer: shared.answer, option }, &WIDEST);
    let plans: Vec<Alone> = shared.options.iter().map(plan).collect();
    let mut page = Markup::default();
    page.raw("<!DOCTYPE html>\n").open("html", &[("lang", "en")]);
    put_head(&mut page, shared, &faces_of(plans.iter().map(|plan| &plan.sheet), ""));
    page.open("body", &[]);
    page.element("a", &[("class", "skip"), ("href", "#main")], words::SKIP);
    page.open("main", &[("id", "main"), ("tabindex", "-1")]);
    page.element("h1", &[], &brief.room.name);
    if let Some(client) = &brief.order.client {
        page.element("p", &[], &words::client(client));
    }
    page.element("p", &[("class", "how")], words::HOW);
    for (place, (option, plan)) in shared.options.iter().zip(&plans).enumerate() {
        put_option(&mut page, shared, place, option, plan);
    }
    if shared.prices.is_some() {
        page.element("p", &[("class", "how")], words::PRICES);
    }
    put_answer(&mut page, shared);
    let cautions = cautions_of_all(shared.answer);
    if !cautions.is_empty() {
        page.element("h2", &[], words::CAUTIONS);
        put_list(&mut page, &cautions);
    }
    page.end().open("script", &[]).raw(SCRIPT).end();
    page.finished()
}

/// The head: everything is forbidden but this page's own style, script and letters, each by what it holds.
fn put_head(page: &mut Markup, shared: &Shared<'_>, faces: &str) {
    let style = format!("{faces}{STYLE}{}", style_in_page());
    let policy = format!(
        "default-src 'none'; style-src {}; script-src {}; font-src data:; base-uri 'none'; form-action 'none'",
        digest(&style),
        digest(SCRIPT)
    );
    page.open("head", &[]);
    page.void("meta", &[("charset", "utf-8")]);
    page.void("meta", &[("http-equiv", "Content-Security-Policy"), ("content", &policy)]);
    page.void("meta", &[("name", "viewport"), ("content", "width=device-width, initial-scale=1")]);
    page.void("meta", &[("name", "referrer"), ("content", "no-referrer")]);
    page.element("title", &[], &shared.answer.brief.room.name);
    page.open("style", &[]).raw(&style).end().end();
}

/// One option: its plan, what the numbers on it stand for, its pieces with their sizes.
fn put_option(page: &mut Markup, shared: &Shared<'_>, place: usize, option: &RankedOption, plan: &Alone) {
    let brief = &shared.answer.brief;
    let id = format!("h-{}", words::letter(place));
    page.open("section", &[("aria-labelledby", &id), ("class", "way")]);
    page.element("h2", &[("id", &id)], &words::option(place, brief, option));
    let mut sheet = plan.sheet.clone();
    sheet.title = words::plan(place);
    page.open("figure", &[]).raw(&svg_in_page(&sheet));
    if !plan.key.is_empty() {
        let key: Vec<String> = plan.key.iter().enumerate().map(|(at, text)| words::numbered(at + 1, text)).collect();
        page.element("figcaption", &[], &key.join("; "));
    }
    page.end().open("div", &[]);
    page.open("table", &[]).open("thead", &[]).open("tr", &[]);
    page.element("th", &[("scope", "col")], words::PIECE);
    page.element("th", &[("scope", "col")], &words::size(sign(shop_unit(brief.units))));
    if let Some(prices) = shared.prices {
        page.element("th", &[("scope", "col"), ("class", "figure")], &words::price(prices.currency.as_deref()));
    }
    page.end().end().open("tbody", &[]);
    for group in groups(brief, option) {
        let measure = |length: f64| shopped(brief.units, length, Rounding::Down);
        let drawn = size(group.piece.sizes.planned(), crate::words::plan::TIMES, measure);
        page.open("tr", &[]);
        page.element("th", &[("scope", "row")], &words::piece(&group.label, group.count));
        page.element("td", &[], &drawn);
        if let Some(prices) = shared.prices {
            let from = prices.from(&option.key, group.piece.sizes.piece);
            page.element(
                "td",
                &[("class", "figure")],
                &from.map_or_else(|| words::NO_PRICE.to_owned(), |it| it.words()),
            );
        }
        page.end();
    }
    page.end().end();
    let mut heeded = all_eased(brief, option);
    heeded.extend(own_cautions(shared.answer, option));
    put_list(page, &heeded);
    page.end().end();
}

/// Where one is marked and a line is written, and the text that comes of it.
fn put_answer(page: &mut Markup, shared: &Shared<'_>) {
    let brief = &shared.answer.brief;
    page.open("section", &[("id", "answer"), ("aria-labelledby", "h-answer")]);
    page.element("h2", &[("id", "h-answer")], words::ANSWER);
    page.open("noscript", &[]).element("p", &[("class", "by-hand")], words::BY_HAND).end();
    let room = format!("{}{}", words::ROOM, safe(&brief.room.name));
    let parts = [("data-room", room.as_str()), ("data-note", words::NOTE), ("data-file", words::FILE)];
    page.open("form", &[&[("id", "form"), ("hidden", "")][..], &parts].concat());
    page.open("fieldset", &[]).element("legend", &[], words::WHICH);
    for (place, option) in shared.options.iter().enumerate() {
        let told = words::option(place, brief, option);
        put_choice(page, &told, &format!("{}{}", words::KEY, option.key));
    }
    put_choice(page, words::NONE, "");
    page.end();
    page.element("label", &[("for", "line")], words::LINE);
    page.element("textarea", &[("id", "line"), ("rows", "3"), ("maxlength", "2000")], "");
    page.element("label", &[("for", "text")], words::TEXT);
    page.element("textarea", &[("id", "text"), ("rows", "6"), ("readonly", "")], "");
    page.open("p", &[("class", "buttons")]);
    let told = [("data-done", words::COPIED), ("data-by-hand", words::NOT_COPIED)];
    page.element("button", &[&[("type", "button"), ("id", "copy")][..], &told].concat(), words::COPY);
    page.element("button", &[("type", "button"), ("id", "save"), ("data-done", words::SAVED)], words::SAVE);
    page.end().element("p", &[("id", "told"), ("role", "status")], "");
    page.end().end();
}

/// A choice; `key`: the line of the answer that names its option.
fn put_choice(page: &mut Markup, told: &str, key: &str) {
    page.open("label", &[("class", "choice")]);
    let chosen = format!("{}{}", words::CHOSEN, safe(told));
    page.void("input", &[("type", "radio"), ("name", "which"), ("data-chosen", &chosen), ("data-key", key)]);
    page.inline("span", &[], told).end();
}

fn put_list(page: &mut Markup, sentences: &[String]) {
    if sentences.is_empty() {
        return;
    }
    page.open("ul", &[]);
    for sentence in sentences {
        page.element("li", &[], sentence);
    }
    page.end();
}

#[cfg(test)]
mod tests {
    use elbowroom_model::scenario;
    use elbowroom_solver::{Limits, Unwatched, rank};

    use super::{Shared, page};

    const ROOM: &str = "name: \"<img src=x onerror=alert(1)>\"\nunits: cm\nroom: { client: \"</script><script>alert(2)\", note: \"not for her\" }\nwalls:\n  - { length: 420 }\n  - { length: 360, holds: [{ kind: door, at: 20, width: 80, hinge: left, swings: in, leads_to: entrance }] }\n  - { length: 420 }\n  - { length: 360 }\npieces:\n  - { kind: sofa, name: \"</textarea><b>sofa\", width: 180..240 }\n";

    #[test]
    fn a_client_is_told_no_score_and_no_note_and_names_never_run() {
        let brief = scenario::read(ROOM, None).unwrap();
        let answer = rank(&brief, &Limits { shown: 0, ..Limits::default() }, &Unwatched);
        let options: Vec<_> = answer.options.iter().take(2).collect();
        let page = page(&Shared { answer: &answer, options: &options, prices: None });
        for raw in ["<img", "<script>alert", "<b>", "not for her", "core", "rice"] {
            assert!(!page.contains(raw), "{raw} in {page}");
        }
        assert_eq!(page.matches("<script").count(), 1);
        assert_eq!(page.matches("<svg").count(), 2);
        assert!(page.contains(&options[1].key));
    }
}
