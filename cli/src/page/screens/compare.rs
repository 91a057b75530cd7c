//! The pinned options side by side, as the command line sets them.

use elbowroom_solver::answer::RankedOption;
use maud::{Markup, PreEscaped, html};

use super::address::{chosen, encoded};
use super::on::On;
use super::pins;
use crate::drawing::Stock;
use crate::page::room::Solved;
use crate::render::{compare, leaf};
use crate::words::answer::title;
use crate::words::page::{pins as words, sheets};

/// Its forms as files: the file and how it is told.
const FORMS: [(&str, &str); 3] =
    [("compare.pdf", sheets::PDF), ("compare.html", sheets::PAGE), ("compare.txt", sheets::TEXT)];

/// The screen's own part.
pub(super) fn part(on: On<'_>) -> Markup {
    html! { div data-live="compare" { (compared(on)) } }
}

fn compared(on: On<'_>) -> Markup {
    let solved = on.seen.solved.as_ref().filter(|solved| solved.step == on.seen.step);
    let Some(solved) = solved else {
        return html! { p { (if on.pinned.is_empty() { words::TOO_FEW } else { words::NOT_YET }) } };
    };
    let options = pins::pinned(on, &solved.answer);
    let gone = on.pinned.iter().filter(|key| solved.answer.keyed(key).is_none()).count();
    html! {
        section aria-labelledby="h-compare" {
            h2 id="h-compare" { (words::HEADING) }
            @if gone > 0 { p { (words::gone(gone)) } }
            @if options.len() < pins::LEAST { p { (words::TOO_FEW) } }
            p.links {
                a href=(format!("/room/{}/options{}", encoded(on.file), chosen(on))) { (words::TO_OPTIONS) }
            }
            (pinned(solved, &options))
            @if options.len() >= pins::LEAST { (side_by_side(on, solved, &options)) }
        }
    }
}

fn pinned(solved: &Solved, options: &[&RankedOption]) -> Markup {
    let titled = |option: &RankedOption| title(&solved.answer.brief, option);
    html! {
        @if !options.is_empty() {
            ul.pinned {
                @for option in options {
                    li {
                        (sheets::option(option, &titled(option))) " "
                        button type="button" data-unpin=(option.key) aria-label=(words::unpin(&titled(option))) { (words::UNPIN) }
                    }
                }
            }
        }
    }
}

fn side_by_side(on: On<'_>, solved: &Solved, options: &[&RankedOption]) -> Markup {
    let width = Stock::A4.landscape().width - 2.0 * leaf::MARGIN;
    let sheet = compare::leaf(&compare::Compared { answer: &solved.answer, options }, width);
    let keys: Vec<String> = options.iter().map(|option| format!("option={}", encoded(&option.key))).collect();
    html! {
        h3 { (words::TAKE_ALONG) }
        p.links {
            @for (file, form) in FORMS {
                a.button download="" href=(format!("/room/{}/sheet/{file}?{}", encoded(on.file), keys.join("&")))
                    aria-label=(sheets::download(words::HEADING, form)) { (form) }
            }
        }
        div.leaf { (PreEscaped(leaf::within(&sheet))) }
    }
}
