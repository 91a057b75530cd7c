//! What does not fit and why, the nearest misses first; and what would help where nothing fits.

use elbowroom_model::Brief;
use elbowroom_solver::outcome::Refused;

use super::Told;
use crate::text::page::Page;
use crate::words::answer as said;
use crate::words::rank as words;

/// Reasons told; the JSON has them all.
const TOLD: usize = 8;

/// The head of the page where no option fits, and the remedies.
pub(super) fn tell_nothing_fits(page: &mut Page, told: &Told<'_>) {
    page.paragraph(0, &words::summary(told.answer, told.by));
    page.strong(words::NOTHING_FITS);
    if told.answer.remedies.is_empty() && !told.brief().only.is_empty() {
        page.paragraph(3, words::NO_OTHER_DECISION);
        return;
    }
    if told.answer.remedies.is_empty() {
        page.paragraph(3, words::NO_REMEDY);
        return;
    }
    page.heading(words::REMEDIES);
    for remedy in &told.answer.remedies {
        page.entry(3, &said::remedy(told.brief(), remedy));
    }
}

/// Each reason once, with the arrangements it refuses.
pub(super) fn tell(page: &mut Page, told: &Told<'_>) {
    let reasons = reasons(told.brief(), &told.answer.refused);
    if reasons.is_empty() {
        return;
    }
    page.heading(words::REFUSED);
    for Reason { why, keys, .. } in reasons.iter().take(TOLD) {
        page.entry(3, &words::refused(why, keys));
    }
    if reasons.len() > TOLD {
        page.faint(3, &words::more_refused(reasons.len() - TOLD));
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

/// The reasons by how little they miss; those that are no one length come last.
pub(crate) fn reasons<'a>(brief: &Brief, refused: &'a [Refused]) -> Vec<Reason<'a>> {
    let mut reasons: Vec<Reason<'a>> = Vec::new();
    for one in refused {
        let why = said::refused(brief, one);
        match reasons.iter_mut().find(|reason| reason.why == why) {
            Some(reason) => reason.keys.push(&one.key),
            None => reasons.push(Reason { why, keys: vec![&one.key], short_by: one.short_by }),
        }
    }
    let miss = |reason: &Reason<'_>| reason.short_by.unwrap_or(f64::INFINITY);
    reasons.sort_by(|one, other| miss(one).total_cmp(&miss(other)));
    reasons
}
