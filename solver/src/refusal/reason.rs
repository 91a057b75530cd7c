//! Why one arrangement does not fit.

use std::collections::BTreeMap;

use elbowroom_model::{Brief, Rule};

use super::asked::Asked;
use super::reason_words::sentence;
use super::retry::{any, fits, nearest};
use super::tolerance::FINE;
use crate::arrangement::Arrangement;
use crate::outcome::Refused;
use crate::routes::Floor;
use crate::rules::Cause;
use crate::search::{RoomGround, Searched, search};
use crate::verify::Breach;

/// Rules that are tried one by one, the most blamed first.
const TRIED: usize = 5;

/// Where the search ended before it was done.
const NOT_FOUND: &str = "No layout was found within the work allowed.";

/// Why `arrangement` has no layout: the most blamed rule without which there is one, and how much it is short; and the
/// programs that took.
pub(crate) fn refused(
    room: &RoomGround<'_>,
    floor: &Floor,
    arrangement: &Arrangement,
    searched: &Searched,
) -> (Refused, usize) {
    let ranked = ranked(&searched.blame);
    let mut programs = 0;
    if !searched.is_complete {
        return (told(arrangement, NOT_FOUND.to_owned(), ranked.first().map_or(Rule::Room, |c| c.rule), None), 0);
    }
    for cause in ranked.iter().take(TRIED) {
        let eased = search(room, floor, arrangement, any(Some(cause.rule)));
        programs += eased.programs;
        if eased.found.is_some() {
            let (short_by, more) = short_by(room.brief, arrangement, cause);
            let why = sentence(room.brief, cause, short_by);
            return (told(arrangement, why, cause.rule, short_by), programs + more);
        }
    }
    let rule = ranked.first().map_or(Rule::Room, |cause| cause.rule);
    (told(arrangement, several(room.brief, &ranked), rule, None), programs)
}

/// A layout that the re-check does not pass is not shown.
pub(crate) fn not_verified(arrangement: &Arrangement, breach: &Breach) -> Refused {
    let why = format!("The layout found did not pass the second check: {}", breach.sentence);
    Refused { key: arrangement.key.clone(), why, rule: breach.rule, short_by: Some(breach.short_by) }
}

fn told(arrangement: &Arrangement, why: String, rule: Rule, short_by: Option<f64>) -> Refused {
    Refused { key: arrangement.key.clone(), why, rule, short_by }
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
fn short_by(brief: &Brief, arrangement: &Arrangement, cause: &Cause) -> (Option<f64>, usize) {
    let Some(asked) = Asked::by(brief, cause) else { return (None, 0) };
    let programs = std::cell::Cell::new(0);
    let eased = |figure: f64| {
        let (fits, more) = fits(&asked.eased(brief, figure), arrangement);
        programs.set(programs.get() + more);
        fits
    };
    let now = asked.figure(brief);
    let short = eased(0.0).then(|| now - nearest(now, 0.0, FINE, eased));
    (short, programs.get())
}

/// Where no single rule is to blame.
fn several(brief: &Brief, ranked: &[Cause]) -> String {
    let mut reasons: Vec<String> = ranked.iter().map(|cause| sentence(brief, cause, None)).collect();
    reasons.dedup();
    match reasons.as_slice() {
        [] => NOT_FOUND.to_owned(),
        [only] => only.clone(),
        [first, second, ..] => format!("Several rules leave no place at once. {first} {second}"),
    }
}
