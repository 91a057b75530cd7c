//! The answer on one screen: which wall, which hand, how large, why, what it gives up; the best of a few other families, a
//! line each; one line of caution. Where nothing fits: what would help, and what comes nearest. What else is known stands on
//! the full page.

use elbowroom_model::Rounding;
use elbowroom_solver::answer::RankedOption;

use super::RankPage;
use super::group::{Group, groups};
use super::refused::{reasons, tell_remedies};
use super::{answer, why};
use crate::text::page::Page;
use crate::words::answer::{all_eased, gives_up, reason, screens_beyond, speaks_for};
use crate::words::lengths::{shop_unit, shopped, sign};
use crate::words::size::size;
use crate::words::turned::{and_turned, turned};
use crate::words::{refused, short as words};

/// Where what a label says begins.
const HANG: usize = 14;
/// Pieces whose sizes are told, the weightiest first.
const SIZES: usize = 3;
/// Other families that are told where there is room,
const OTHERS: usize = 3;
/// on a screen of so many lines, one of 24 less where one types on.
const LINES: usize = 23;
/// Remedies, and misses, that are told where nothing fits.
const REMEDIES: usize = 4;
const MISSES: usize = 2;

/// The screen.
pub(super) fn tell(page: &mut Page, told: &RankPage<'_>, best: &RankedOption, others: &[RankedOption]) {
    let brief = told.brief();
    page.paragraph(0, &refused::summary(told.answer, told.limits.by));
    answer::order(page, brief);
    page.strong(&words::in_a_line(brief, best, told.limits.by));
    to_check(page, told);
    for eased in all_eased(brief, best) {
        page.entry(3, &eased);
    }
    page.labelled(3, words::WHICH_WALL, HANG, &answer::which_wall(brief, best));
    if let Some(hand) = answer::which_hand(brief, best) {
        page.labelled(3, words::WHICH_HAND, HANG, &hand);
    }
    page.labelled(3, words::HOW_LARGE, HANG, &how_large(told, best));
    for beyond in screens_beyond(brief, &best.layout) {
        page.paragraph(HANG, &beyond);
    }
    let by = why::ranked_by(best, told.limits.by);
    let by = by.map(|judgement| reason(brief, &judgement.finding));
    let strongest = || why::strongest(brief, best, others).map(|it| speaks_for(brief, it.judgement, it.next));
    if let Some(why) = by.or_else(strongest) {
        page.labelled(3, words::WHY, HANG, &why);
    }
    if let Some(given_up) = gives_up(brief, &best.planned.composition).first() {
        page.labelled(3, words::GIVES_UP_LABEL, HANG, given_up);
    }
    *page = with_others(page, told, best, others);
}

/// What of the file is likely a slip: the answer is that of another room then.
fn to_check(page: &mut Page, told: &RankPage<'_>) {
    let mut slips = told.answer.asked.notices.iter().filter(|notice| notice.is_of_a_slip);
    if let Some(first) = slips.next() {
        page.labelled(3, words::CHECK_FIRST, HANG, &words::to_check(&first.text, slips.count()));
    }
}

/// Where nothing fits.
pub(super) fn tell_nothing_fits(page: &mut Page, told: &RankPage<'_>) {
    to_check(page, told);
    tell_remedies(page, told, REMEDIES);
    if let Some((heading, reasons)) = reasons(told.answer).first() {
        page.heading(heading);
        for reason in reasons.iter().take(MISSES) {
            page.entry(3, &reason.why);
        }
    }
    end(page, words::FULL_OF_NOTHING);
}

fn end(page: &mut Page, rest: &str) {
    page.gap();
    page.entry(0, words::BEFORE_BUYING);
    page.faint(0, rest);
}

/// The page to its end, with as many of the other families as a screen holds, one at the least.
fn with_others(page: &Page, told: &RankPage<'_>, best: &RankedOption, others: &[RankedOption]) -> Page {
    let with = |count: usize| {
        let mut page = page.clone();
        tell_others(&mut page, told, best, others, count);
        end(&mut page, words::FULL);
        page
    };
    (2..=OTHERS).rev().map(with).find(|page| page.height() <= LINES).unwrap_or_else(|| with(1))
}

/// `corner sofa up to 280 x 230 x 105 (230 x 230 x 90 in this plan)`.
fn how_large(told: &RankPage<'_>, best: &RankedOption) -> String {
    let groups = groups(told.brief(), best);
    let told_of = |group: &Group<'_>| {
        let (together, planned) = (group.piece.sizes.together(), group.piece.sizes.planned());
        let [most, drawn] =
            [together, planned].map(|of| size(of, " x ", |length| shopped(told.units(), length, Rounding::Down)));
        let size = words::up_to(&group.label, group.count, &most, &drawn);
        and_turned(size, turned(told.brief(), best, group.piece.placed.piece))
    };
    let sizes: Vec<String> = groups.iter().take(SIZES).map(told_of).collect();
    words::all_up_to(&sizes, sign(shop_unit(told.units())))
}

/// The best of the families that come next, a line each.
fn tell_others(page: &mut Page, told: &RankPage<'_>, best: &RankedOption, others: &[RankedOption], count: usize) {
    if others.is_empty() {
        page.heading(refused::no_other(told.answer.undecided()));
        return;
    }
    let listed = told.answer.listed(&told.limits);
    let next: Vec<_> = listed.iter().filter(|listed| listed.best.rank != best.rank).collect();
    if next.is_empty() {
        return;
    }
    page.heading(&words::other_ways(next.len().min(count), next.len(), told.limits.by));
    for listed in next.iter().take(count) {
        page.entry(1, &words::in_a_line(told.brief(), listed.best, told.limits.by));
    }
}
