//! What `rank` tells, in the order in which somebody with a tape in hand asks: which wall, which hand, why, how large,
//! how firm; then the other options; then where to mark the floor, the ways through, the gaps; then what was refused.

mod answer;
mod changed;
mod facing;
mod group;
mod others;
mod places;
mod refused;
mod sizes;
mod ways;
mod why;
mod work;

use elbowroom_model::{Brief, Criterion, Room, Unit};
use elbowroom_solver::Outcome;
use elbowroom_solver::outcome::OptionFound;

pub(crate) use changed::text as changed;
pub(crate) use group::{Group, groups};
pub(in crate::render) use places::tell as setting_out;
pub(crate) use refused::reasons;
pub(crate) use sizes::{figures, held};
pub(crate) use work::explained;

use crate::text::look::Look;
use crate::text::page::Page;
use crate::words::lengths::taped;
use crate::words::rank as words;

/// The wall that the main seat of an option faces.
pub(crate) fn wall_faced(room: &Room, option: &OptionFound) -> Option<String> {
    let seat = answer::main_seat(option)?;
    facing::faced(room, seat.parts.first()?, seat.facing).map(|faced| faced.wall)
}

/// All that the page is made from.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Told<'a> {
    /// What was asked.
    pub brief: &'a Brief,
    /// What came out.
    pub outcome: &'a Outcome,
    /// Options told at some length.
    pub shown: usize,
    /// Ranked by this alone.
    pub by: Option<Criterion>,
    /// The first option is sketched too.
    pub sketch: bool,
}

impl Told<'_> {
    /// The unit that lengths are told in.
    const fn units(&self) -> Unit {
        self.brief.units
    }

    /// A length as a tape reads it.
    fn tape(&self, length: f64) -> String {
        taped(self.units(), length)
    }
}

/// The page of a result.
pub(crate) fn text(told: &Told<'_>, look: Look) -> String {
    let mut page = Page::new(look);
    match told.outcome.options.as_slice() {
        [] => refused::tell_nothing_fits(&mut page, told),
        [best, others @ ..] => tell(&mut page, told, best, others),
    }
    notices(&mut page, told);
    refused::tell(&mut page, told);
    page.gap();
    page.faint(0, &words::work(&told.outcome.work));
    page.into_text()
}

fn tell(page: &mut Page, told: &Told<'_>, best: &OptionFound, others: &[OptionFound]) {
    answer::tell(page, told, best);
    why::tell(page, best, others);
    sizes::tell(page, told, best);
    sketch(page, told, best);
    others::tell(page, told, best, others);
    places::tell(page, told.brief, best, words::FIRST);
    sizes::tell_alone(page, told, best);
    ways::tell(page, told, best);
    left_out(page, best);
}

fn sketch(page: &mut Page, told: &Told<'_>, best: &OptionFound) {
    if !told.sketch {
        return;
    }
    page.heading(words::SKETCH);
    for line in crate::render::sketch::lines(told.brief, best, page.width().saturating_sub(3)) {
        page.verbatim(3, &line);
    }
}

fn left_out(page: &mut Page, option: &OptionFound) {
    if option.left_out.is_empty() {
        return;
    }
    page.heading(words::LEFT_OUT);
    for piece in &option.left_out {
        page.entry(2, &format!("{}: {}", piece.name, piece.why));
    }
}

fn notices(page: &mut Page, told: &Told<'_>) {
    if told.outcome.notices.is_empty() {
        return;
    }
    page.heading(crate::words::NOTICES);
    for notice in &told.outcome.notices {
        page.entry(2, notice);
    }
}

#[cfg(test)]
mod tests;
