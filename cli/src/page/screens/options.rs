//! What fits, ranked: the answer's plan first, filters with counts, the other ways as small plans; beside them the wishes.

use elbowroom_solver::answer::RankedOption;
use maud::{Markup, html};

use super::address::{chosen, encoded};
use super::answer::Among;
use super::filter::Choice;
use super::on::On;
use super::{answer, pins, wishes};
use crate::page::guard::Right;
use crate::page::room::{Seen, Solved, Stage};
use crate::words::answer as said;
use crate::words::page as words;
use crate::words::refused;

/// The screen's own part.
pub(super) fn part(on: On<'_>) -> Markup {
    html! {
        div.beside[on.right == Right::Change] {
            div id="answers" data-live="answers" { (answers(on)) }
            @if on.right == Right::Change { (wishes::put(on.seen)) }
        }
    }
}

/// What changes with each answer.
pub(in crate::page) fn answers(on: On<'_>) -> Markup {
    let Some(solved) = &on.seen.solved else { return waiting(on.seen) };
    let is_old = solved.step != on.seen.step;
    html! {
        div.answers data-of=(solved.step) data-drawn=(solved.drawn_of) data-told=(told(on, solved)) aria-busy=(is_old) {
            @if solved.answer.options.is_empty() { (nothing_fits(solved)) } @else { (ranked(on, solved)) }
        }
    }
}

/// The answer alone, beside what it hangs on, and the way to the others.
pub(in crate::page) fn first_answer(on: On<'_>) -> Markup {
    let Some(solved) = &on.seen.solved else { return waiting(on.seen) };
    let is_old = solved.step != on.seen.step;
    let options = &solved.answer.options;
    let meant = on.option.and_then(|key| solved.answer.keyed(key)).or(options.first());
    html! {
        div.answers data-of=(solved.step) data-drawn=(solved.drawn_of) aria-busy=(is_old) {
            @if let Some(first) = meant {
                section aria-labelledby="h-answer" {
                    h2.unseen id="h-answer" { (words::ANSWER) }
                    (answer::whole(on, solved, first, Among::Fields))
                }
                p { a href=(format!("/room/{}/options{}", encoded(on.file), chosen(on))) { (words::all_options(options.len())) } }
            } @else { (nothing_fits(solved)) }
        }
    }
}

/// What is shown, in a sentence: how many, and which first.
fn told(on: On<'_>, solved: &Solved) -> String {
    let brief = &solved.answer.brief;
    let shown: Vec<&RankedOption> =
        solved.answer.options.iter().filter(|option| on.filter.shows(brief, option)).collect();
    match shown.first() {
        Some(&first) => words::shown(shown.len(), &said::title(brief, first)),
        None => words::NONE_SO.to_owned(),
    }
}

/// Before there is an answer.
fn waiting(seen: &Seen) -> Markup {
    html! {
        div.answers.none data-of="0" aria-busy=(matches!(seen.stage, Stage::Busy { .. })) {
            @if matches!(seen.stage, Stage::Busy { .. }) { p.soft { (words::FIRST_LOOK) } }
        }
    }
}

fn ranked(on: On<'_>, solved: &Solved) -> Markup {
    let answer = &solved.answer;
    let shown: Vec<&RankedOption> =
        answer.options.iter().filter(|option| on.filter.shows(&answer.brief, option)).collect();
    let meant = on.option.and_then(|key| shown.iter().find(|option| option.key == key)).or(shown.first());
    html! {
        (filters(on, solved))
        (pins::tray(on, answer))
        @if let Some(first) = meant {
            section aria-labelledby="h-answer" {
                h2.unseen id="h-answer" { (words::ANSWER) }
                (answer::whole(on, solved, first, Among::Others))
            }
            (others(on, solved, first, &shown))
        } @else {
            p { (words::NONE_SO) }
        }
    }
}

/// The best of each other family that is shown.
fn others(on: On<'_>, solved: &Solved, first: &RankedOption, shown: &[&RankedOption]) -> Markup {
    let mut best: Vec<(&RankedOption, usize)> = Vec::new();
    for option in shown.iter().filter(|option| option.key != first.key) {
        match best.iter_mut().find(|(known, _)| known.family == option.family) {
            Some((_, like_it)) => *like_it += 1,
            None => best.push((option, 0)),
        }
    }
    if best.is_empty() {
        return html! { p.soft { (refused::no_other(solved.answer.undecided())) } };
    }
    html! {
        section aria-labelledby="h-others" {
            h2 id="h-others" { (words::OTHERS) }
            div.ways { @for (option, like_it) in best { (answer::small(on, solved, option, like_it)) } }
        }
    }
}

fn filters(on: On<'_>, solved: &Solved) -> Markup {
    let all = [("wall", words::WHICH_WALL), ("way", words::WHICH_WAY), ("hand", words::WHICH_HAND)];
    let each = all.map(|(name, label)| (name, label, on.filter.choices(&solved.answer, name)));
    html! {
        @if each.iter().any(|(_, _, choices)| !choices.is_empty()) {
            div id="filters" role="group" aria-label=(words::SHOW) {
                @for (name, label, all) in &each { (choices(name, label, all, on.filter.chosen(name))) }
            }
        }
    }
}

fn choices(name: &str, label: &str, choices: &[Choice], chosen: Option<&str>) -> Markup {
    html! {
        @if !choices.is_empty() {
            fieldset.choices {
                legend { (label) }
                @for (place, choice) in choices.iter().enumerate() {
                    label {
                        input type="radio" name=(name) value=(choice.value)
                            id=(format!("{name}-{place}"))
                            checked[choice.value == chosen.unwrap_or_default()];
                        span { (words::with_count(&choice.label, choice.count)) }
                    }
                }
            }
        }
    }
}

/// What would help.
fn nothing_fits(solved: &Solved) -> Markup {
    let answer = &solved.answer;
    let remedies = said::remedies(answer);
    html! {
        section.none aria-labelledby="h-none" {
            h2 id="h-none" { (refused::nothing_fits(answer.undecided())) }
            @if remedies.is_empty() {
                p { (refused::NO_REMEDY) }
            } @else {
                h3 { (refused::remedies(answer.undecided())) }
                ul { @for remedy in &remedies { li { (remedy) } } }
            }
        }
    }
}
