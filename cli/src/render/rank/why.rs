//! Why the first option stands first: what speaks for it, what against, each with its figure.

use elbowroom_model::{Brief, Criterion};
use elbowroom_solver::answer::RankedOption;
use elbowroom_solver::criteria::Judgement;

use super::RankPage;
use crate::text::page::Page;
use crate::text::table::{Stand, Table};
use crate::words::answer::reason;
use crate::words::criteria;
use crate::words::rank as words;

/// Reasons told for the first option.
const FOR: usize = 2;
/// A score under this speaks against an option even where the others are no better.
const POOR: f64 = 50.0;
/// Scores nearer to the others' mean than this speak neither for nor against.
const SAME: f64 = 3.0;

/// What a criterion brings, the mean of the others, and how it was judged.
type Weighed<'a> = (f64, Option<f64>, &'a Judgement);

/// The reasons that put `best` first, and the one that speaks most against it.
pub(super) fn tell(page: &mut Page, told: &RankPage<'_>, best: &RankedOption, others: &[RankedOption]) {
    let brief = told.brief();
    let mut weighed = weighed(brief, best, others);
    let mut table = Table::new(&[("", Stand::Left), ("", Stand::Left), ("", Stand::Right), ("", Stand::Left)]);
    // What it is ranked by alone comes first, whatever the wishes weigh.
    if let Some(by) = ranked_by(best, told.limits.by) {
        weighed.retain(|(.., judgement)| judgement.criterion != by.criterion);
        table.row(row(brief, words::BY, by, weigh(brief, by, others).1));
    }
    for (_, mean, criterion) in weighed.iter().take(FOR).filter(|(gain, _, _)| *gain > 0.0) {
        table.row(row(brief, "+", criterion, *mean));
    }
    if let Some((_, mean, criterion)) = weighed.iter().skip(FOR).rev().find(|(_, mean, it)| speaks_against(it, *mean)) {
        table.row(row(brief, "-", criterion, *mean));
    }
    if !table.is_empty() {
        page.strong(words::why(others.is_empty()));
        page.table(3, &table);
    }
}

/// What an option is ranked by, where that is one criterion alone.
pub(crate) fn ranked_by(best: &RankedOption, by: Option<Criterion>) -> Option<&Judgement> {
    best.judgement(by?)
}

/// What speaks most for `best`, where it is ahead of the others in anything.
pub(crate) fn strongest<'a>(brief: &Brief, best: &'a RankedOption, others: &[RankedOption]) -> Option<&'a Judgement> {
    let ahead: Vec<Weighed<'a>> = weighed(brief, best, others).into_iter().filter(|(gain, ..)| *gain > 0.0).collect();
    // How a plan is composed tells what is off as well: where something else speaks for it, that is said.
    let other = ahead.iter().find(|(.., judgement)| judgement.criterion != Criterion::Balance);
    other.or(ahead.first()).map(|(.., judgement)| *judgement)
}

fn weighed<'a>(brief: &Brief, best: &'a RankedOption, others: &[RankedOption]) -> Vec<Weighed<'a>> {
    let mut weighed: Vec<Weighed<'a>> = best.judgements.iter().map(|it| weigh(brief, it, others)).collect();
    weighed.sort_by(|a, b| b.0.total_cmp(&a.0));
    weighed
}

/// What a criterion brings the best before the mean of the others (of its own, where there are none), and that mean.
fn weigh<'a>(brief: &Brief, judgement: &'a Judgement, others: &[RankedOption]) -> Weighed<'a> {
    let of_others = others.iter().filter_map(|option| option.judgement(judgement.criterion));
    let (sum, count) = of_others.fold((0.0, 0.0), |(sum, count), other| (sum + other.score, count + 1.0));
    let mean = (count > 0.0).then_some(sum / count);
    let weight = brief.wishes.get(judgement.criterion);
    (weight * (judgement.score - mean.unwrap_or(0.0)), mean, judgement)
}

fn speaks_against(criterion: &Judgement, mean: Option<f64>) -> bool {
    criterion.score < POOR || mean.is_some_and(|mean| criterion.score < mean - SAME)
}

fn row(brief: &Brief, sign: &str, judgement: &Judgement, mean: Option<f64>) -> [String; 4] {
    [
        sign.to_owned(),
        criteria::name(judgement.criterion).to_owned(),
        words::against_mean(judgement.score, mean),
        reason(brief, &judgement.finding),
    ]
}
