//! What stands before and behind the page's content: what it may do, how it looks, its scripts and their data.

use elbowroom_model::Brief;
use elbowroom_solver::answer::RankedOption;
use elbowroom_solver::ranking::{Lapse, SetAside, composed, ill_composed};
use serde_json::{Value, json};

use super::ReportPage;
use crate::drawing::style_in_page;
use crate::text::digest::digest;
use crate::text::markup::Markup;
use crate::words::firm::is_set_aside;
use crate::words::report as words;

const STYLE: &str = include_str!("report.css");
const RANKING: &str = include_str!("ranking.js");
const PAGE: &str = include_str!("page.js");

/// The head: everything is forbidden but this page's own style, scripts and letters, each by what it holds.
pub(super) fn put(page: &mut Markup, told: &ReportPage<'_>, faces: &str) {
    let style = format!("{faces}{STYLE}{}", style_in_page());
    let policy = format!(
        "default-src 'none'; style-src {}; script-src {} {}; font-src data:; base-uri 'none'; form-action 'none'",
        digest(&style),
        digest(RANKING),
        digest(PAGE)
    );
    page.open("head", &[]);
    page.void("meta", &[("charset", "utf-8")]);
    page.void("meta", &[("http-equiv", "Content-Security-Policy"), ("content", &policy)]);
    page.void("meta", &[("name", "viewport"), ("content", "width=device-width, initial-scale=1")]);
    page.void("meta", &[("name", "referrer"), ("content", "no-referrer")]);
    page.element("title", &[], &words::title(&told.answer.brief.room.name));
    page.open("style", &[]).raw(&style).end().end();
}

/// The scores, and the scripts that weigh them anew.
pub(super) fn put_scripts(page: &mut Markup, told: &ReportPage<'_>) {
    page.open("script", &[("type", "application/json"), ("id", "scores")]).raw(&data(told)).end();
    page.open("script", &[("id", "ranking")]).raw(RANKING).end();
    page.open("script", &[]).raw(PAGE).end();
}

/// All that the order hangs on, options in the order that settles ties: their scores, rules that they ease, what sets them
/// aside from which wish, how they are composed, their families; and the rank that each has on the page.
fn data(told: &ReportPage<'_>) -> String {
    let brief = &told.answer.brief;
    let mut options: Vec<_> = told.answer.options.iter().collect();
    options.sort_by_key(|option| option.by_size);
    let scores: Vec<Vec<f64>> =
        options.iter().map(|option| option.judgements.iter().map(|judgement| judgement.score).collect()).collect();
    let ranks: Vec<usize> = options.iter().map(|option| option.rank).collect();
    let eased: Vec<usize> = options.iter().map(|option| option.eased_rules()).collect();
    let aside: Vec<Vec<Value>> = options.iter().map(|option| aside(brief, option)).collect();
    let composed: Vec<f64> = options.iter().map(|option| composed(&option.judgements)).collect();
    let ill: Vec<Value> = options.iter().map(|option| ill(brief, option)).collect();
    let families: Vec<usize> = options.iter().map(|option| family(told, option)).collect();
    let data = json!({
        "scores": scores, "options": ranks, "eased": eased, "aside": aside, "composed": composed, "ill": ill, "families": families
    });
    // Names from a file are among it: nothing in it may end the script.
    data.to_string().replace('<', "\\u003c")
}

/// What could set an option aside by itself.
fn aside(brief: &Brief, option: &RankedOption) -> Vec<Value> {
    let by_itself = option.lapses.iter().filter(|lapse| lapse.lapse != Lapse::IllComposed);
    by_itself.map(|lapse| lapse_of(brief, option, lapse)).collect()
}

/// What sets it aside where others are composed far better, which hangs on what other wishes leave before it.
fn ill(brief: &Brief, option: &RankedOption) -> Value {
    lapse_of(
        brief,
        option,
        &ill_composed(option.judgements.iter().map(|judgement| (judgement.criterion, judgement.score))),
    )
}

/// The column of the wish, from where on it sets the option aside, and what is then said.
fn lapse_of(brief: &Brief, option: &RankedOption, lapse: &SetAside) -> Value {
    let column = option.judgements.iter().position(|it| it.criterion == lapse.criterion);
    json!({ "wish": column, "from": lapse.lapse.from_wish(), "told": is_set_aside(brief, option, lapse) })
}

/// The family of an option by its best, or an own one where options are listed one by one.
fn family(told: &ReportPage<'_>, option: &RankedOption) -> usize {
    let best = told.answer.keyed(&option.family).filter(|_| !told.limits.one_by_one);
    best.map_or(option.rank, |best| best.rank)
}
