//! A piece tried elsewhere: the pieces by name with where they stand, the plan to move them on, what that breaks.

use maud::{Markup, html};

use super::on::On;
use crate::words::answer::title;
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
    let Some((solved, option)) = found else { return html! { p { (words::NONE) } } };
    html! {
        section id="trial" aria-labelledby="h-trial" data-key=(option.key) {
            h2 id="h-trial" { (title(&solved.answer.brief, option)) }
            p.soft { (words::ABOUT) }
            div.beside {
                figure.plan id="trial-plan" {}
                div.trial-side {
                    p id="trial-score" role="status" {}
                    div id="trial-told" aria-live="polite" data-sound=(words::SOUND) data-broken=(words::BROKEN) {}
                    h3 { (words::PIECES) }
                    div id="trial-pieces" data-across=(words::ACROSS) data-down=(words::DOWN) data-faces=(words::FACES)
                        data-hold=(words::HOLD) {}
                    div.turn {
                        button type="button" id="trial-back" { (words::BACK) }
                        button.main type="button" id="trial-settle" { (words::SETTLE) }
                    }
                    p.soft { (words::SETTLE_ABOUT) }
                }
            }
        }
    }
}
