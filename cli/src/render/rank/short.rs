//! The answer on one screen: which wall, which hand, how large, why, what it gives up; the best of a few other families, a
//! line each; one line of caution. What else is known stands on the full page.

use elbowroom_model::Rounding;
use elbowroom_solver::answer::RankedOption;

use super::RankPage;
use super::group::{Group, groups};
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
/// Other families that are told.
const OTHERS: usize = 3;

/// The screen.
pub(super) fn tell(page: &mut Page, told: &RankPage<'_>, best: &RankedOption, others: &[RankedOption]) {
    let brief = told.brief();
    page.paragraph(0, &refused::summary(told.answer, told.limits.by));
    answer::order(page, brief);
    page.strong(&words::in_a_line(brief, best));
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
    tell_others(page, told, best, others);
    page.gap();
    page.entry(0, words::BEFORE_BUYING);
    page.faint(0, words::FULL);
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
fn tell_others(page: &mut Page, told: &RankPage<'_>, best: &RankedOption, others: &[RankedOption]) {
    if others.is_empty() {
        page.heading(refused::no_other(told.answer.undecided()));
        return;
    }
    let listed = told.answer.listed(&told.limits);
    let next: Vec<_> = listed.iter().filter(|listed| listed.best.rank != best.rank).collect();
    if next.is_empty() {
        return;
    }
    page.heading(&words::other_ways(next.len().min(OTHERS), next.len()));
    for listed in next.iter().take(OTHERS) {
        page.entry(1, &words::in_a_line(told.brief(), listed.best));
    }
}
