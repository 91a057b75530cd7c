//! What one takes along: each sheet in each form, of the option and on the paper that is chosen.

use elbowroom_solver::answer::RankedOption;
use maud::{Markup, html};

use super::address::encoded;
use super::on::On;
use super::pins;
use super::state::no_answer;
use crate::drawing::Stock;
use crate::page::room::Solved;
use crate::words::answer::title;
use crate::words::page::sheets as words;

/// A sheet: its name and what it is for, and its forms: the file and how it is told.
type Made = ([&'static str; 2], &'static [(&'static str, &'static str)]);

/// The sheets.
const SHEETS: [Made; 4] = [
    (words::PLAN, &[("plan.pdf", words::PDF), ("plan.svg", words::SVG), ("plan.png", words::PNG)]),
    (words::TAPE, &[("tape.pdf", words::PDF), ("tape.html", words::PAGE), ("tape.txt", words::TEXT)]),
    (words::CARD, &[("card.pdf", words::PDF), ("card.html", words::PAGE), ("card.txt", words::TEXT)]),
    (words::REPORT, &[("report.html", words::PAGE)]),
];

/// The screen's own part.
pub(super) fn part(on: On<'_>) -> Markup {
    html! { div data-live="sheets" { (sheets(on)) } }
}

fn sheets(on: On<'_>) -> Markup {
    let solved = on.seen.solved.as_ref().filter(|solved| solved.step == on.seen.step);
    let Some(solved) = solved.filter(|solved| !solved.answer.options.is_empty()) else {
        return html! { p { (no_answer(on.seen, words::NONE)) } };
    };
    let (answer, options) = (&solved.answer, &solved.answer.options);
    let meant = on.option.and_then(|key| answer.keyed(key)).or(options.first());
    let key = meant.map(|option| option.key.as_str()).unwrap_or_default();
    html! {
        section.sheets aria-labelledby="h-sheets" {
            h2 id="h-sheets" { (crate::words::page::SHEETS) }
            p.soft { (words::ABOUT) }
            div id="sheet-of" {
                div.field {
                    label for="sheet-option" { (words::WHICH) }
                    select id="sheet-option" name="option" {
                        @for option in options { (of_option(option, key, &title(&answer.brief, option))) }
                    }
                }
                div.field {
                    label for="sheet-paper" { (words::PAPER) }
                    select id="sheet-paper" name="paper" {
                        @for stock in Stock::ALL { option value=(stock.key()) { (stock.name()) } }
                    }
                }
            }
            @for ([name, about], forms) in SHEETS {
                div.sheet-row {
                    h3 { (name) }
                    p.soft { (about) }
                    p.links {
                        @for (file, form) in forms {
                            a.button download="" data-sheet=(format!("/room/{}/sheet/{file}", encoded(on.file)))
                                href=(format!("/room/{}/sheet/{file}?option={}&paper=a4", encoded(on.file), encoded(key)))
                                aria-label=(words::download(name, form)) { (form) }
                        }
                    }
                }
            }
            (for_a_client(on, solved, key))
            (of_lists(on))
        }
    }
}

/// The page that a client gets: of the pinned options, or else of the one that is chosen.
fn for_a_client(on: On<'_>, solved: &Solved, key: &str) -> Markup {
    let pinned = pins::pinned(on, &solved.answer);
    let keys: Vec<&str> =
        if pinned.is_empty() { vec![key] } else { pinned.iter().map(|one| one.key.as_str()).collect() };
    let query: Vec<String> = keys.iter().map(|key| format!("option={}", encoded(key))).collect();
    let at = format!("/room/{}/sheet/share.html", encoded(on.file));
    let [name, about] = words::FOR_A_CLIENT;
    html! {
        div.sheet-row {
            h3 { (name) }
            p.soft { (about) " " (if pinned.is_empty() { words::SHARES_ONE.to_owned() } else { words::shares(pinned.len()) }) }
            p.links {
                a.button id="for-client" download="" data-sheet=[pinned.is_empty().then_some(&at)] href=(format!("{at}?{}", query.join("&")))
                    aria-label=(words::download(name, words::PAGE)) { (words::PAGE) }
            }
            @if !on.lists.is_empty() {
                div.field {
                    label for="sheet-prices" { (words::PRICES) }
                    select id="sheet-prices" {
                        option value="" { (words::NO_PRICES) }
                        @for list in on.lists { option value=(list) { (words::prices_of(list)) } }
                    }
                }
            }
        }
    }
}

/// What of the lists beside the room fits.
fn of_lists(on: On<'_>) -> Markup {
    let [name, about] = words::SHOP;
    html! {
        @if !on.lists.is_empty() {
            div.sheet-row {
                h3 { (name) }
                p.soft { (about) }
                @for list in on.lists {
                    p.links {
                        span { (list) }
                        @for (file, form) in [("shop.txt", words::TEXT), ("shop.csv", words::CSV)] {
                            a.button download="" href=(format!("/room/{}/sheet/{file}?list={}", encoded(on.file), encoded(list)))
                                aria-label=(words::download(list, form)) { (form) }
                        }
                    }
                }
            }
        }
    }
}

fn of_option(option: &RankedOption, chosen: &str, title: &str) -> Markup {
    html! { option value=(option.key) selected[option.key == chosen] { (words::option(option, title)) } }
}
