//! The other options, a few lines each: what they are, how large, and how they differ from the first.

use elbowroom_model::Rounding;
use elbowroom_solver::Limits;
use elbowroom_solver::answer::RankedOption;

use super::RankPage;
use super::group::groups;
use crate::text::page::Page;
use crate::words::criteria;
use crate::words::lengths::{shop_unit, shopped, sign};
use crate::words::size::size;
use crate::words::{family, rank as words, refused};

/// Criteria that an option is told apart by.
const TOLD_APART_BY: usize = 4;
/// Scores nearer than this are told as the same.
const SAME: f64 = 3.0;

/// Options after the first, as many as are shown: the best of each family, and those like it by their places.
pub(super) fn tell(page: &mut Page, told: &RankPage<'_>, best: &RankedOption, others: &[RankedOption]) {
    if others.is_empty() {
        page.heading(refused::no_other(told.answer.undecided()));
        return;
    }
    let Limits { one_by_one, shown, .. } = told.limits;
    page.heading(&words::others(sign(shop_unit(told.units())), one_by_one));
    let listed = told.answer.listed(&told.limits);
    for listed in listed.iter().take(shown) {
        let like_it = family::like_it(listed);
        if listed.best.rank == best.rank {
            like_it.iter().for_each(|like_it| page.entry(0, &words::first_again(like_it)));
            continue;
        }
        page.entry(0, &words::other(told.brief(), listed.best));
        page.entry(3, &words::standing(told.brief(), listed.best, &apart(told, listed.best, best)));
        page.entry(3, &sizes(told, listed.best));
        like_it.iter().for_each(|like_it| page.entry(3, like_it));
    }
    if listed.len() > shown {
        page.faint(0, &family::more(shown, listed.len(), one_by_one));
    }
}

/// `corner sofa 210 x 180 x 95, coffee table 110 x 60`.
fn sizes(told: &RankPage<'_>, option: &RankedOption) -> String {
    let of_group = |group: super::group::Group<'_>| {
        let planned = |length: f64| shopped(told.units(), length, Rounding::Down);
        words::sized(&group.label, group.count, &size(group.piece.sizes.planned(), " x ", planned))
    };
    let pieces: Vec<String> = groups(told.brief(), option).into_iter().map(of_group).collect();
    pieces.join(", ")
}

/// How its scores differ from the first option's, the weightiest first.
fn apart(told: &RankPage<'_>, option: &RankedOption, best: &RankedOption) -> String {
    let mut differences: Vec<(f64, f64, &str)> = Vec::new();
    for judgement in &option.judgements {
        let first = best.judgement(judgement.criterion);
        let by = first.map_or(0.0, |first| judgement.score - first.score);
        if by.abs() >= SAME {
            let weight = told.brief().wishes.get(judgement.criterion);
            differences.push((weight * by, by, criteria::name(judgement.criterion)));
        }
    }
    differences.sort_by(|a, b| b.0.abs().total_cmp(&a.0.abs()));
    differences.truncate(TOLD_APART_BY);
    let dominating = option.dominated_by.as_ref().and_then(|key| told.answer.keyed(key)).map(|other| other.rank);
    // What is set aside or eases rules is told to be behind by that, whatever the weights.
    let by_weights = option.set_aside.is_none() && option.eased.is_empty();
    // What scores as another does shares first places with it.
    let never_first = option.never_first && option.first_place_share <= 0.0;
    words::apart(&differences, dominating, never_first && by_weights)
}
