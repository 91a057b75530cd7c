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
/// Other ways that the one reason of the short page is weighed against.
const NEXT: usize = 3;
/// A score under this speaks against an option even where the others are no better.
const POOR: f64 = 50.0;
/// Scores nearer to the others' mean than this speak neither for nor against.
const SAME: f64 = 3.0;

/// What a criterion brings, the mean of the others, and how it was judged.
type Weighed<'a> = (f64, Option<f64>, &'a Judgement);

/// The reasons that put `best` first, and the one that speaks most against it.
pub(super) fn tell(page: &mut Page, told: &RankPage<'_>, best: &RankedOption, others: &[RankedOption]) {
    let brief = told.brief();
    let others: Vec<&RankedOption> = others.iter().collect();
    let mut weighed = weighed(brief, best, &others);
    let mut table = Table::new(&[("", Stand::Left), ("", Stand::Left), ("", Stand::Right), ("", Stand::Left)]);
    // What it is ranked by alone comes first, whatever the wishes weigh.
    if let Some(by) = ranked_by(best, told.limits.by) {
        weighed.retain(|(.., judgement)| judgement.criterion != by.criterion);
        table.row(row(brief, words::BY, by, weigh(brief, by, &others).1));
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

/// What speaks most for `best`, where it is ahead of the ways that come next in anything.
pub(crate) fn strongest<'a>(brief: &Brief, best: &'a RankedOption, others: &[RankedOption]) -> Option<Strongest<'a>> {
    let next = next_ways(best, others);
    let weighed = weighed(brief, best, &next);
    let ahead: Vec<&Weighed<'a>> = weighed.iter().filter(|(gain, ..)| *gain > 0.0).collect();
    // How a plan is composed tells what is off as well: where something else speaks for it, that is said.
    let other = ahead.iter().find(|(.., judgement)| judgement.criterion != Criterion::Balance);
    let (_, mean, judgement) = other.or(ahead.first())?;
    Some(Strongest { judgement, next: mean.map(|mean| (mean, next.len())) })
}

/// What speaks most for an option.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Strongest<'a> {
    /// How it was judged there.
    pub judgement: &'a Judgement,
    /// The mean score of the ways that come next, and how many they are; `None` where there are none.
    pub next: Option<(f64, usize)>,
}

/// The best of the next other ways to put the main seat; where all put it alike, all others.
fn next_ways<'a>(best: &RankedOption, others: &'a [RankedOption]) -> Vec<&'a RankedOption> {
    let is_other = |option: &&RankedOption| option.key != best.key;
    let heads = others.iter().filter(|option| option.family == option.key && option.family != best.family);
    let heads: Vec<&RankedOption> = heads.filter(|option| option.set_aside.is_none()).take(NEXT).collect();
    if heads.is_empty() { others.iter().filter(is_other).collect() } else { heads }
}

fn weighed<'a>(brief: &Brief, best: &'a RankedOption, others: &[&RankedOption]) -> Vec<Weighed<'a>> {
    let mut weighed: Vec<Weighed<'a>> = best.judgements.iter().map(|it| weigh(brief, it, others)).collect();
    weighed.sort_by(|a, b| b.0.total_cmp(&a.0));
    weighed
}

/// What a criterion brings the best before the mean of the others (of its own, where there are none), and that mean.
fn weigh<'a>(brief: &Brief, judgement: &'a Judgement, others: &[&RankedOption]) -> Weighed<'a> {
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
