//! A piece tried elsewhere: the plan to move it on, what that breaks, what can be done with it, the figures of each piece.

use elbowroom_model::Brief;
use maud::{Markup, html};

use super::on::On;
use super::state::no_answer;
use crate::words::answer::title;
use crate::words::page::furnish as sizes;
use crate::words::page::trial as words;

/// The screen's own part: the script asks for what stands where, and what that breaks.
pub(super) fn part(on: On<'_>) -> Markup {
    html! { div data-live="try" { (trial(on)) } }
}

fn trial(on: On<'_>) -> Markup {
    let solved = on.seen.solved.as_ref().filter(|solved| solved.step == on.seen.step);
    let found = solved.and_then(|solved| {
        let option = on.option.and_then(|key| solved.answer.keyed(key)).or(solved.answer.options.first())?;
        Some((solved, option))
    });
    let Some((solved, option)) = found else { return html! { p { (no_answer(on.seen, words::NONE)) } } };
    html! {
        section id="trial" aria-labelledby="h-trial" data-key=(option.key) {
            h2 id="h-trial" { (title(&solved.answer.brief, option)) }
            p.soft { (words::about(solved.answer.brief.units)) }
            div.beside {
                figure.plan id="trial-plan" {}
                div.trial-side {
                    p id="trial-score" role="status" {}
                    p id="trial-note" role="status" data-kept=(words::KEPT) {}
                    (buttons(&solved.answer.brief))
                    div id="trial-told" aria-live="polite" data-sound=(words::SOUND) data-broken=(words::BROKEN) {}
                    h3 { (words::PIECES) }
                    div id="trial-pieces" data-across=(words::ACROSS) data-down=(words::DOWN) data-faces=(words::FACES)
                        data-width=(sizes::WIDTH) data-depth=(sizes::DEPTH) data-return=(sizes::RETURN)
                        data-second_return=(words::SECOND_RETURN) data-return_depth=(words::RETURN_DEPTH)
                        data-turn-left=(words::TURN_LEFT) data-turn-right=(words::TURN_RIGHT) data-no-angle=(words::NO_ANGLE) {}
                }
            }
        }
    }
}

/// What can be done to the room that is tried.
fn buttons(brief: &Brief) -> Markup {
    let has_place = brief.pieces().any(|(_, piece)| piece.stands.is_some());
    html! {
        div.turn {
            button type="button" id="trial-undo" disabled { (words::UNDO) }
            button type="button" id="trial-redo" disabled { (words::REDO) }
            button type="button" id="trial-back" { (words::BACK) }
            @if has_place { button type="button" id="trial-stands" { (words::STANDS) } }
            button.main type="button" id="trial-settle" { (words::SETTLE) }
            button type="button" id="trial-keep" { (words::KEEP) }
        }
        p.soft { (words::BUTTONS_ABOUT) }
    }
}
