//! Options that are pinned to be held against each other, two or three at a time.

use elbowroom_solver::answer::{Answer, RankedOption};
use maud::{Markup, html};

use super::address::{chosen, encoded};
use super::on::On;
use crate::words::answer::title;
use crate::words::page::pins as words;

/// So many can be seen side by side.
const MOST: usize = 3;
/// One by itself is held against nothing.
pub(super) const LEAST: usize = 2;

/// The pinned options that fit, in the order in which they were pinned.
pub(super) fn pinned<'a>(on: On<'_>, answer: &'a Answer) -> Vec<&'a RankedOption> {
    let mut found: Vec<&RankedOption> = Vec::new();
    for option in on.pinned.iter().filter_map(|key| answer.keyed(key)) {
        if found.iter().all(|known| known.key != option.key) && found.len() < MOST {
            found.push(option);
        }
    }
    found
}

/// The button that pins an option, or takes its pin off.
pub(super) fn button(on: On<'_>, answer: &Answer, option: &RankedOption) -> Markup {
    let pinned = pinned(on, answer);
    let is_pinned = pinned.iter().any(|known| known.key == option.key);
    let label = words::pin(&title(&answer.brief, option));
    html! {
        button.pin type="button" id=(format!("pin-{}", option.key)) data-pin=(option.key) aria-pressed=(is_pinned.to_string())
            aria-label=(label) disabled[!is_pinned && pinned.len() == MOST] { (words::PIN) }
    }
}

/// What is pinned, and where it stands side by side.
pub(super) fn tray(on: On<'_>, answer: &Answer) -> Markup {
    let pinned = pinned(on, answer);
    html! {
        @if !pinned.is_empty() {
            p.pins {
                (words::pinned(&pinned.iter().map(|option| option.rank).collect::<Vec<_>>()))
                " "
                @if pinned.len() < LEAST { (words::ONE_MORE) } @else {
                    a.button href=(format!("/room/{}/compare{}", encoded(on.file), chosen(on))) { (words::SIDE_BY_SIDE) }
                }
            }
        }
    }
}
