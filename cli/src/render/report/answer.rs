//! The answer, picture first: the plan, and beside it the wall, the hand, the sizes and one reason; then the best of the
//! other ways with their plans. Each is one block, so that a script may put another in the place of the answer.

use elbowroom_model::{Brief, Rounding};
use elbowroom_solver::answer::RankedOption;

use super::ReportPage;
use crate::drawing::svg_in_page;
use crate::render::plan::Alone;
use crate::render::rank::{groups, strongest, which_hand, which_wall};
use crate::text::markup::Markup;
use crate::words::answer as said;
use crate::words::firm::share;
use crate::words::lengths::{shop_unit, shopped, sign};
use crate::words::report as words;
use crate::words::short as short_words;
use crate::words::size::size;

/// Pieces whose sizes stand beside the plan, the weightiest first.
const SIZES: usize = 4;

/// An option with its plan as the page carries it.
pub(super) type Carried<'a> = (&'a RankedOption, Alone);

/// The answer and the other ways; those that no list shows wait until a wish puts them first.
pub(super) fn put(page: &mut Markup, told: &ReportPage<'_>, carried: &[Carried<'_>]) {
    let drawn = told.drawn();
    let Some((best, others)) = carried.split_first() else { return };
    page.open("section", &[("id", "answer"), ("aria-labelledby", "h-answer")]);
    page.element("h2", &[("id", "h-answer"), ("class", "unseen")], words::ANSWER);
    page.open("p", &[("id", "was"), ("class", "was"), ("hidden", ""), ("data-pattern", words::WAS_FIRST)]).end();
    page.element("p", &[("id", "no-plan"), ("hidden", "")], &words::no_plan(told.file));
    page.open("div", &[("id", "answer-now"), ("data-close", words::CLOSE)]);
    put_block(page, told, best);
    page.end().end();
    let (shown, kept): (Vec<_>, Vec<_>) =
        others.iter().partition(|(option, _)| drawn.iter().any(|drawn| drawn.rank == option.rank));
    if !shown.is_empty() {
        page.open("section", &[("aria-labelledby", "h-ways")]);
        page.element("h2", &[("id", "h-ways")], words::OTHER_WAYS);
        page.open("div", &[("id", "ways"), ("class", "ways")]);
        for one in shown {
            put_block(page, told, one);
        }
        page.end().end();
    }
    page.open("div", &[("id", "kept"), ("hidden", "")]);
    for one in kept {
        put_block(page, told, one);
    }
    page.end();
}

/// Plan, title and facts of one option.
fn put_block(page: &mut Markup, told: &ReportPage<'_>, one: &Carried<'_>) {
    let (option, plan) = (one.0, &one.1);
    let (brief, rank) = (&told.answer.brief, option.rank.to_string());
    page.open("article", &[("class", "way"), ("id", &format!("way-{rank}"))]);
    page.open("figure", &[("class", "plan")]).raw(&svg_in_page(&plan.sheet));
    let label = words::open_plan(option.rank);
    page.element(
        "button",
        &[("type", "button"), ("class", "open"), ("hidden", ""), ("aria-label", &label)],
        words::OPEN,
    );
    if !plan.key.is_empty() {
        page.element("figcaption", &[("class", "soft")], &words::key(&plan.key));
    }
    page.end().open("div", &[("class", "facts")]);
    page.open("h3", &[]).inline("span", &[("class", "rank"), ("data-rank", "")], &rank);
    page.text(" ").inline("span", &[("data-title", "")], &said::title(brief, option)).end();
    for eased in said::all_eased(brief, option) {
        page.element("p", &[("class", "eased")], &eased);
    }
    put_score(page, brief, option);
    page.open("dl", &[("class", "full")]);
    put_fact(page, "wall", short_words::WHICH_WALL, &which_wall(brief, option));
    if let Some(hand) = which_hand(brief, option) {
        put_fact(page, "hand", short_words::WHICH_HAND, &hand);
    }
    put_fact(page, "sizes", &words::how_large(sign(shop_unit(brief.units))), "");
    put_sizes(page, told, option);
    if let Some(it) = strongest(brief, option, &told.answer.options) {
        put_fact(page, "why", short_words::WHY, &said::speaks_for(brief, it.judgement, None));
    }
    page.end().end().end();
}

fn put_score(page: &mut Markup, brief: &Brief, option: &RankedOption) {
    page.open("p", &[("class", "soft")]).text(words::SCORE_IS);
    page.inline("span", &[("data-score", "")], &format!("{:.0}", option.score)).text(words::FIRST_IS);
    page.inline("span", &[("data-share", "")], &share(option.first_place_share)).text(words::OF_SHIFTS).end();
    super::option::put_aside(page, brief, option);
}

fn put_fact(page: &mut Markup, name: &str, label: &str, fact: &str) {
    page.element("dt", &[], label);
    if !fact.is_empty() {
        page.element("dd", &[("data-fact", name)], fact);
    }
}

/// A piece a line: as drawn, and the most there is room for.
fn put_sizes(page: &mut Markup, told: &ReportPage<'_>, option: &RankedOption) {
    let brief = &told.answer.brief;
    let measure = |length: f64| shopped(brief.units, length, Rounding::Down);
    page.open("dd", &[("data-fact", "sizes")]).open("ul", &[("class", "plain")]);
    for group in groups(brief, option).iter().take(SIZES) {
        let [most, drawn] = [group.piece.sizes.together(), group.piece.sizes.planned()]
            .map(|of| size(of, crate::words::plan::TIMES, measure));
        page.element("li", &[], &short_words::up_to(&group.label, group.count, &most, &drawn));
    }
    page.end().end();
}
