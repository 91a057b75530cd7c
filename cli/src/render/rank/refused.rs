//! What does not fit and why, the nearest misses first; and what would help where nothing fits.

use elbowroom_solver::outcome::Refused;

use super::Told;
use crate::text::page::Page;
use crate::words::rank as words;

/// Reasons told; the JSON has them all.
const TOLD: usize = 8;

/// The head of the page where no option fits, and the remedies.
pub(super) fn tell_nothing_fits(page: &mut Page, told: &Told<'_>) {
    page.paragraph(0, &words::summary(told.outcome, told.by));
    page.strong(words::NOTHING_FITS);
    if told.outcome.remedies.is_empty() && !told.brief.only.is_empty() {
        page.paragraph(3, words::NO_OTHER_DECISION);
        return;
    }
    if told.outcome.remedies.is_empty() {
        page.paragraph(3, words::NO_REMEDY);
        return;
    }
    page.heading(words::REMEDIES);
    for remedy in &told.outcome.remedies {
        page.entry(3, &remedy.sentence);
    }
}

/// Each reason once, with the arrangements it refuses.
pub(super) fn tell(page: &mut Page, told: &Told<'_>) {
    let reasons = reasons(&told.outcome.refused);
    if reasons.is_empty() {
        return;
    }
    page.heading(words::REFUSED);
    for (first, keys) in reasons.iter().take(TOLD) {
        page.entry(3, &words::refused(&first.why, keys));
    }
    if reasons.len() > TOLD {
        page.faint(3, &words::more_refused(reasons.len() - TOLD));
    }
}

/// The reasons by how little they miss; those that are no one length come last.
pub(crate) fn reasons(refused: &[Refused]) -> Vec<(&Refused, Vec<&str>)> {
    let mut reasons: Vec<(&Refused, Vec<&str>)> = Vec::new();
    for one in refused {
        match reasons.iter_mut().find(|(first, _)| first.why == one.why) {
            Some((_, keys)) => keys.push(&one.key),
            None => reasons.push((one, vec![&one.key])),
        }
    }
    let miss = |refused: &Refused| refused.short_by.unwrap_or(f64::INFINITY);
    reasons.sort_by(|a, b| miss(a.0).total_cmp(&miss(b.0)));
    reasons
}
