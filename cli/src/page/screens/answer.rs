//! One option as a block: its plan, which wall, which hand, how large, the one sentence that matters, how firm.

use elbowroom_model::{PieceId, Rounding};
use elbowroom_solver::answer::RankedOption;
use maud::{Markup, PreEscaped, html};

use super::address::{encoded, with_option};
use super::on::On;
use super::{pins, touched};
use crate::page::guard::Right;
use crate::page::room::Solved;
use crate::page::touched::Touched;
use crate::render::rank::{groups, strongest, which_hand, which_wall};
use crate::words::answer as said;
use crate::words::lengths::{shop_unit, shopped, sign};
use crate::words::page as words;
use crate::words::page::touched as touched_words;
use crate::words::report as report_words;
use crate::words::short as short_words;
use crate::words::size::size;

/// Pieces whose sizes stand beside the plan, the weightiest first.
const SIZES: usize = 5;

/// Where an option stands at length.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Among {
    /// Before the others, where one looks closely.
    Others,
    /// Beside what it hangs on.
    Fields,
}

/// The option at length.
pub(super) fn whole(on: On<'_>, solved: &Solved, option: &RankedOption, among: Among) -> Markup {
    let file = on.file;
    let answer = &solved.answer;
    let brief = &answer.brief;
    let given_up = said::gives_up(brief, &option.planned.composition);
    let units = sign(shop_unit(brief.units));
    let at = with_option(on, Some(&option.key));
    html! {
        article.way id="first" data-key=(option.key) data-rank=(option.rank) {
            div.plan-part {
                figure.plan {
                    div.at-desk { (PreEscaped(solved.plan(&option.key).unwrap_or_default())) }
                    div.in-hand data-plan=(option.key) data-of=(solved.drawn_of) data-hand="1" {}
                }
                @if among == Among::Others { (nearer()) }
            }
            div.facts {
                h3 data-title { (said::title(brief, option)) }
                @for eased in said::all_eased(brief, option) { p.eased { (eased) } }
                dl {
                    dt { (short_words::WHICH_WALL) }
                    dd { (which_wall(brief, option)) }
                    @if let Some(hand) = which_hand(brief, option) {
                        dt { (short_words::WHICH_HAND) }
                        dd { (hand) }
                    }
                    dt { (report_words::how_large(units)) }
                    dd { ul.plain { @for (piece, line) in sizes(solved, option) { li { (of_size(among, piece, &line)) } } } }
                    @if let Some(reason) = reason(solved, option) {
                        dt { (short_words::WHY) }
                        dd { (reason) }
                    }
                    @if let Some(given_up) = given_up.first() {
                        dt { (short_words::GIVES_UP_LABEL) }
                        dd { (given_up) }
                    }
                }
                p.soft { (words::firm(brief, option)) }
                @if among == Among::Others {
                    details id="closer" {
                        summary { (touched_words::CLOSER) }
                        p.soft { (touched_words::TOUCH) }
                        div data-done=(touched_words::DONE) {}
                    }
                }
                p.links {
                    (pins::button(on, answer, option))
                    @if on.right == Right::Change {
                        a href=(format!("/room/{}/try{at}", encoded(file))) { (words::TRY_THIS) }
                    }
                    a href=(format!("/room/{}/sheets{at}", encoded(file))) {
                        (words::SHEETS_OF_THIS)
                    }
                }
            }
        }
    }
}

/// What the plan shows, and how near it is seen.
fn nearer() -> Markup {
    html! {
        div id="touched" role="status" {}
        fieldset.choices.shows {
            legend { (words::PLAN_SHOWS) }
            @for (value, label) in words::PLAN_SHOWN {
                label {
                    input type="checkbox" id=(format!("show-{value}")) value=(value) checked[value == words::SHOWN_FIRST];
                    span { (label) }
                }
            }
        }
        div.zoom role="group" aria-label=(words::PLAN_NEARER) {
            @for (by, label) in [("1.5", words::NEARER), ("0.6667", words::FARTHER), ("0", words::WHOLE_PLAN)] {
                button type="button" id=(format!("zoom-{by}")) data-zoom=(by) aria-describedby="zoom-keys" { (label) }
            }
            span.unseen id="zoom-keys" { (words::ZOOM_KEYS) }
        }
    }
}

/// The option as one of others; its plan is fetched once it comes into sight.
pub(super) fn small(on: On<'_>, solved: &Solved, option: &RankedOption, like_it: usize) -> Markup {
    let brief = &solved.answer.brief;
    let title = said::title(brief, option);
    let at = with_option(on, Some(&option.key));
    html! {
        article.way data-key=(option.key) data-rank=(option.rank) {
            figure.plan data-plan=(option.key) data-of=(solved.drawn_of) {}
            h3 {
                span.rank { (option.rank) }
                " "
                a href=(format!("/room/{}/options{at}", encoded(on.file))) data-title { (title) }
            }
            @if let Some(reason) = reason(solved, option) { p { (reason) } }
            p.soft {
                (words::comes(brief, option))
                @if like_it > 0 { ", " (words::like_it(like_it)) }
            }
            (pins::button(on, &solved.answer, option))
        }
    }
}

/// A size; where one looks closely, to be touched.
fn of_size(among: Among, piece: PieceId, line: &str) -> Markup {
    match among {
        Among::Others => touched::button(Touched::Size(piece), line),
        Among::Fields => html! { (line) },
    }
}

fn sizes(solved: &Solved, option: &RankedOption) -> Vec<(PieceId, String)> {
    let brief = &solved.answer.brief;
    let measure = |length: f64| shopped(brief.units, length, Rounding::Down);
    let line = |group: &crate::render::rank::Group<'_>| {
        let [most, drawn] = [group.piece.sizes.together(), group.piece.sizes.planned()]
            .map(|of| size(of, crate::words::plan::TIMES, measure));
        (group.piece.placed.piece, short_words::up_to(&group.label, group.count, &most, &drawn))
    };
    groups(brief, option).iter().take(SIZES).map(line).collect()
}

/// What speaks most for the option.
fn reason(solved: &Solved, option: &RankedOption) -> Option<String> {
    strongest(&solved.answer.brief, option, &solved.answer.options)
        .map(|it| said::speaks_for(&solved.answer.brief, it.judgement, None))
}
