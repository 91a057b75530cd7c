//! What setting something otherwise does, against the file as it is: told before all else.

use elbowroom_solver::answer::Answer;
use elbowroom_solver::comparison::{Apart, Changed, changed};

use crate::text::look::Look;
use crate::text::page::Page;
use crate::words::answer::title;
use crate::words::apart::words as words_of;
use crate::words::changed as words;

/// Whether a difference is told in a row.
type IsOfRow = fn(&Apart) -> bool;

/// Where what a label says begins.
const HANG: usize = 12;
/// Options told by their titles.
const TITLES: usize = 3;

/// The head of the page: what changes, then an empty line.
pub(crate) fn text(set: &[String], before: &Answer, now: &Answer, look: Look) -> String {
    let mut page = Page::new(look);
    let changed = changed(before, now);
    page.strong(&words::heading(set));
    page.labelled(3, words::OPTIONS, HANG, &words::count(before.options.len(), now.options.len()));
    for (label, options, of) in [(words::GAINED, &changed.gained, now), (words::LOST, &changed.lost, before)] {
        if !options.is_empty() {
            let titles: Vec<String> = options.iter().take(TITLES).map(|option| title(&of.brief, *option)).collect();
            page.labelled(3, label, HANG, &words::titles(&titles, options.len() - titles.len()));
        }
    }
    if let Some(otherwise) = words::otherwise(before, now, &changed, TITLES) {
        page.labelled(3, words::OTHERWISE, HANG, &otherwise);
    }
    page.labelled(3, words::FIRST, HANG, &words::first(before, now, &changed));
    if let Some(former) = words::former(before, now, &changed) {
        page.labelled(3, words::FORMER, HANG, &former);
    }
    differences(&mut page, before, now, &changed);
    page.gap();
    page.into_text()
}

/// Scores, sizes and ways of one option, as it is now against what it was.
fn differences(page: &mut Page, before: &Answer, now: &Answer, changed: &Changed<'_>) {
    let Some((option, trade)) = &changed.followed else { return };
    let all = || trade.gains.iter().chain(&trade.costs);
    let rows: [(&str, IsOfRow); 3] = [
        (words::SCORES, |apart| matches!(apart, Apart::Score { .. })),
        (words::SIZES, |apart| matches!(apart, Apart::Size { .. } | Apart::Stands { .. } | Apart::Lacks { .. })),
        (words::WAYS, |apart| matches!(apart, Apart::Width { .. })),
    ];
    for (label, is_of_row) in rows {
        let told = words_of(&now.brief, &before.brief, all().filter(|apart| is_of_row(apart)));
        page.labelled(3, label, HANG, &words::of_option(option.rank, &told));
    }
}
