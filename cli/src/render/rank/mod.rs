//! What `rank` tells: the answer on one screen (`short`), or all of it, in the order in which somebody with a tape in hand asks: what is tight, which wall, which hand, how firm,
//! why, how large, what the plan gives up; then the other options; then where to mark the floor, the ways through, the gaps; then what was refused.

mod answer;
mod changed;
mod facing;
mod group;
mod others;
mod places;
mod rank_page;
mod refused;
mod short;
mod sizes;
mod ways;
mod why;
mod work;

use elbowroom_model::{Brief, WallId};
use elbowroom_solver::answer::{RankedOption, Thing};

pub(crate) use answer::{which_hand, which_wall};
pub(crate) use changed::text as changed;
pub(crate) use group::{Group, groups};
pub(in crate::render) use places::tell as setting_out;
pub(crate) use rank_page::RankPage;
pub(crate) use refused::{Reason, reasons};
pub(crate) use sizes::held;
pub(in crate::render) use ways::{gaps, routes};
pub(crate) use why::strongest;
pub(crate) use work::explained;

use crate::text::look::Look;
use crate::text::page::Page;
use crate::words::answer as said;
use crate::words::rank as words;

/// The wall that the main seat of an option faces.
pub(crate) fn wall_faced(brief: &Brief, option: &RankedOption) -> Option<WallId> {
    let seat = answer::main_seat(brief, option)?;
    facing::faced(&brief.room, &seat.main(), seat.facing()).map(|faced| faced.wall)
}

/// The page of a result.
pub(crate) fn text(told: &RankPage<'_>, look: Look) -> String {
    let mut page = Page::new(look);
    match told.answer.options.as_slice() {
        [] if !told.full => {
            short::tell_nothing_fits(&mut page, told);
            return page.into_text();
        }
        [] => refused::tell_remedies(&mut page, told, usize::MAX),
        [best, others @ ..] if !told.full => {
            short::tell(&mut page, told, best, others);
            return page.into_text();
        }
        [best, others @ ..] => tell(&mut page, told, best, others),
    }
    notices(&mut page, told);
    refused::tell(&mut page, told);
    page.gap();
    page.faint(0, &words::work(&told.answer.work));
    page.into_text()
}

fn tell(page: &mut Page, told: &RankPage<'_>, best: &RankedOption, others: &[RankedOption]) {
    answer::tell(page, told, best);
    why::tell(page, told, best, others);
    sizes::tell(page, told, best);
    gives_up(page, told, best);
    sketch(page, told, best);
    others::tell(page, told, best, others);
    places::tell(page, told.brief(), best, words::FIRST);
    sizes::tell_alone(page, told, best);
    ways::tell(page, told, best);
    left_out(page, told, best);
}

/// What the plan of an option gives up; nothing where that is little.
fn gives_up(page: &mut Page, told: &RankPage<'_>, best: &RankedOption) {
    let given_up = said::gives_up(told.brief(), &best.planned.composition);
    if given_up.is_empty() {
        return;
    }
    page.strong(words::GIVES_UP);
    for sentence in &given_up {
        page.entry(3, sentence);
    }
}

fn sketch(page: &mut Page, told: &RankPage<'_>, best: &RankedOption) {
    if !told.sketch {
        return;
    }
    page.heading(words::SKETCH);
    for line in crate::render::sketch::lines(told.brief(), best, page.width().saturating_sub(3)) {
        page.verbatim(3, &line);
    }
}

fn left_out(page: &mut Page, told: &RankPage<'_>, option: &RankedOption) {
    if option.layout.left_out.is_empty() {
        return;
    }
    page.heading(words::left_out(option.planned.proven));
    for piece in &option.layout.left_out {
        let why = said::left_out(told.brief(), *piece, option.planned.proven);
        page.entry(2, &format!("{}: {why}", Thing::Piece(*piece).name(told.brief())));
    }
}

fn notices(page: &mut Page, told: &RankPage<'_>) {
    let notices = said::notices(told.answer);
    if notices.is_empty() {
        return;
    }
    page.heading(crate::words::NOTICES);
    for notice in &notices {
        page.entry(2, notice);
    }
}

#[cfg(test)]
mod tests;
