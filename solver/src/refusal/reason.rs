//! Why one arrangement does not fit.

use std::collections::BTreeMap;

use elbowroom_model::{Brief, Rule};

use super::retry::{any, fits, nearest};
use super::tolerance::FINE;
use super::why::{Asked, AskedLength, Reason, Why};
use crate::arrangement::Arrangement;
use crate::layout::Size;
use crate::routes::Floor;
use crate::rules::Cause;
use crate::search::{RoomContext, Searched, search};

/// Rules that are tried one by one, the most blamed first.
const TRIED: usize = 5;

/// Why `arrangement` has no layout: the most blamed rule without which there is one, and how much it is short; and the
/// programs that took.
pub(crate) fn why_refused(
    room: &RoomContext<'_>,
    floor: &Floor,
    arrangement: &Arrangement,
    searched: &Searched,
) -> (Why, usize) {
    if !searched.is_complete || room.stop.is_asked() {
        return (Why::NotDecided, 0);
    }
    let ranked = ranked(&searched.blame);
    let mut programs = 0;
    for cause in ranked.iter().take(TRIED) {
        let eased = search(room, floor, arrangement, any(Some(cause.rule)));
        programs += eased.programs;
        if eased.found.is_some() {
            let (short_by, more) = short_by(room, arrangement, cause);
            return (Why::OneRule(Box::new(reason(room.brief, cause, short_by))), programs + more);
        }
    }
    (Why::SeveralRules(ranked.iter().map(|cause| reason(room.brief, cause, None)).collect()), programs)
}

/// The cause with its figures.
fn reason(brief: &Brief, cause: &Cause, short_by: Option<f64>) -> Reason {
    let least = brief.piece(cause.piece).map(|piece| Size::of_piece(piece, |range| range.least));
    let asked = Asked::by(brief, cause).map(|by| AskedLength { by, length: by.figure(brief) });
    Reason { cause: *cause, least, asked, short_by }
}

/// One cause for each rule, the most blamed first.
fn ranked(blame: &BTreeMap<Cause, usize>) -> Vec<Cause> {
    let mut rules: BTreeMap<Rule, (usize, Cause, usize)> = BTreeMap::new();
    for (cause, count) in blame.iter().filter(|(cause, _)| cause.rule != Rule::Centring) {
        let entry = rules.entry(cause.rule).or_insert((0, *cause, 0));
        entry.0 += count;
        if *count > entry.2 {
            (entry.1, entry.2) = (*cause, *count);
        }
    }
    let mut found: Vec<(usize, Cause)> = rules.into_values().map(|(count, cause, _)| (count, cause)).collect();
    found.sort_by(|a, b| b.0.cmp(&a.0).then(a.1.cmp(&b.1)));
    found.into_iter().map(|(_, cause)| cause).collect()
}

/// How much less a rule would have to ask for, mm, found by halving.
fn short_by(room: &RoomContext<'_>, arrangement: &Arrangement, cause: &Cause) -> (Option<f64>, usize) {
    let brief = room.brief;
    let Some(asked) = Asked::by(brief, cause) else { return (None, 0) };
    let programs = std::cell::Cell::new(0);
    let eased = |figure: f64| {
        let (fits, more) = fits(&asked.eased(brief, figure), arrangement, room.stop);
        programs.set(programs.get() + more);
        fits
    };
    let now = asked.figure(brief);
    let short = eased(0.0).then(|| now - nearest(now, 0.0, FINE, eased));
    (short, programs.get())
}
