//! What does not fit and why, the nearest misses first; and what would help where nothing fits.

use elbowroom_solver::answer::Answer;
use elbowroom_solver::refusal::{Refusal, Why};

use super::RankPage;
use super::answer::order;
use crate::text::page::Page;
use crate::words::answer as said;
use crate::words::refused as words;

/// Reasons told; the JSON has them all.
const TOLD: usize = 8;

/// The head of the page where no option fits, and so many remedies.
pub(super) fn tell_remedies(page: &mut Page, told: &RankPage<'_>, most: usize) {
    page.paragraph(0, &words::summary(told.answer, told.limits.by));
    let undecided = told.answer.undecided();
    order(page, told.brief());
    page.strong(words::nothing_fits(undecided));
    if told.answer.remedies.is_empty() && !told.brief().only.is_empty() {
        let known = [words::NO_OTHER_DECISION, words::NO_OTHER_DECISION_FOUND];
        page.paragraph(3, known[usize::from(undecided > 0)]);
        return;
    }
    if told.answer.remedies.is_empty() {
        page.paragraph(3, words::NO_REMEDY);
        return;
    }
    page.heading(words::remedies(undecided));
    for remedy in said::remedies(told.answer).iter().take(most) {
        page.entry(3, remedy);
    }
}

/// Each reason once, with the arrangements it refuses; apart from them those that were not decided.
pub(super) fn tell(page: &mut Page, told: &RankPage<'_>) {
    for (heading, reasons) in reasons(told.answer) {
        page.heading(heading);
        for Reason { why, keys, .. } in reasons.iter().take(TOLD) {
            page.entry(3, &words::refused(why, keys));
        }
        if reasons.len() > TOLD {
            page.faint(3, &words::more_refused(reasons.len() - TOLD));
        }
    }
}

/// Why some arrangements do not fit.
pub(crate) struct Reason<'a> {
    /// One sentence.
    pub why: String,
    /// The arrangements, by their keys.
    pub keys: Vec<&'a str>,
    /// By how much the first of them misses, mm; `None` where it is no one length.
    short_by: Option<f64>,
}

/// What does not fit and what was not decided, each under its heading where there is any.
pub(crate) fn reasons(answer: &Answer) -> Vec<(&'static str, Vec<Reason<'_>>)> {
    let is_undecided = |one: &&Refusal| one.why == Why::NotDecided;
    let (undecided, not): (Vec<&Refusal>, Vec<&Refusal>) = answer.refused.iter().partition(is_undecided);
    let both = [(words::REFUSED, by_miss(answer, &not)), (words::UNDECIDED, by_miss(answer, &undecided))];
    both.into_iter().filter(|(_, reasons)| !reasons.is_empty()).collect()
}

/// The reasons by how little they miss; those that are no one length come last.
fn by_miss<'a>(answer: &'a Answer, refused: &[&'a Refusal]) -> Vec<Reason<'a>> {
    let mut reasons: Vec<Reason<'a>> = Vec::new();
    for one in refused {
        let why = said::refusal(&answer.brief, one);
        match reasons.iter_mut().find(|reason| reason.why == why) {
            Some(reason) => reason.keys.push(&one.key),
            None => reasons.push(Reason { why, keys: vec![&one.key], short_by: one.short_by() }),
        }
    }
    let miss = |reason: &Reason<'_>| reason.short_by.unwrap_or(f64::INFINITY);
    reasons.sort_by(|one, other| miss(one).total_cmp(&miss(other)));
    reasons
}
