//! One option at length: what of comfort is kept in part, its plan, its reasons, what it gives up, its sizes, its ways.

use elbowroom_model::{Brief, Dimension};
use elbowroom_solver::answer::{RankedOption, Thing};
use elbowroom_solver::criteria::Judgement;

use super::ReportPage;
use crate::drawing::{Sheet, svg_in_page};
use crate::render::plan::Alone;
use crate::text::markup::Markup;
use crate::words::answer as said;
use crate::words::criteria;
use crate::words::firm::{is_set_aside, share};
use crate::words::lengths::{Ends, shop_unit, sign, taped_bare};
use crate::words::narrowest::narrowest;
use crate::words::rank as rank_words;
use crate::words::report as words;

/// An entry of the list of options.
pub(super) fn put(page: &mut Markup, told: &ReportPage<'_>, option: &RankedOption, plan: &Alone) {
    let id = format!("option-{}", option.rank);
    let heading = format!("h-{id}");
    page.open("li", &[("id", &id)]).open("article", &[("class", "option"), ("aria-labelledby", &heading)]);
    page.open("details", &[]).open("summary", &[]);
    page.open("h3", &[("id", &heading)]).inline("span", &[("data-rank", "")], &option.rank.to_string());
    page.text(". ").text(&said::title(&told.answer.brief, option)).end().end();
    put_list(page, None, &said::all_eased(&told.answer.brief, option));
    page.open("p", &[]).text(words::SCORE_IS);
    page.inline("strong", &[("data-score", "")], &format!("{:.0}", option.score)).text(words::FIRST_IS);
    page.inline("strong", &[("data-share", "")], &share(option.first_place_share)).text(words::OF_SHIFTS).end();
    put_aside(page, &told.answer.brief, option);
    put_plan(page, option, &plan.sheet, &plan.key);
    put_reasons(page, told, option);
    put_list(page, Some(words::GIVES_UP), &said::gives_up(&told.answer.brief, &option.planned.composition));
    put_sizes(page, told, option);
    put_ways(page, told, option);
    let brief = &told.answer.brief;
    for piece in &option.layout.left_out {
        let why = said::left_out(brief, *piece, option.planned.proven);
        page.element("p", &[], &words::left_out(Thing::Piece(*piece).name(brief), &why));
    }
    page.element("p", &[("class", "soft by-command")], &words::draw(told.file, &option.key));
    page.end().end().end();
}

/// Why it is set aside, which other wishes may do as well: then the script tells it.
pub(super) fn put_aside(page: &mut Markup, brief: &Brief, option: &RankedOption) {
    match &option.set_aside {
        Some(aside) => page.element("p", &[("data-aside", "")], &is_set_aside(brief, option, aside)),
        None => page.element("p", &[("data-aside", ""), ("hidden", "")], ""),
    };
}

/// Sentences under their heading; nothing where there are none.
fn put_list(page: &mut Markup, heading: Option<&str>, sentences: &[String]) {
    if sentences.is_empty() {
        return;
    }
    if let Some(heading) = heading {
        page.element("h4", &[], heading);
    }
    page.open("ul", &[]);
    for sentence in sentences {
        page.element("li", &[], sentence);
    }
    page.end();
}

fn put_plan(page: &mut Markup, option: &RankedOption, plan: &Sheet, key: &[String]) {
    page.open("figure", &[]);
    let label = words::plan(option.rank);
    page.open("div", &[("class", "plan"), ("role", "group"), ("aria-label", &label)]);
    page.raw(&svg_in_page(plan)).end();
    page.element("figcaption", &[("class", "soft")], &words::plan_caption(option.turning_circle.is_some(), key)).end();
}

/// Each criterion with its score and its sentence; what weighs most first.
fn put_reasons(page: &mut Markup, told: &ReportPage<'_>, option: &RankedOption) {
    let brief = &told.answer.brief;
    let mut judgements: Vec<_> = option.judgements.iter().collect();
    let weight = |judgement: &Judgement| brief.wishes.get(judgement.criterion);
    judgements.sort_by(|one, other| weight(other).total_cmp(&weight(one)));
    table(
        page,
        words::REASONS,
        option.rank,
        &[(words::CRITERION, false), (words::SCORE, true), (words::REASON, false)],
    );
    for judgement in judgements {
        page.open("tr", &[]).element("th", &[("scope", "row")], criteria::name(judgement.criterion));
        page.element("td", &[("class", "number")], &format!("{:.0}", judgement.score));
        page.element("td", &[], &said::reason(brief, &judgement.finding)).end();
    }
    end_table(page);
}

fn put_sizes(page: &mut Markup, told: &ReportPage<'_>, option: &RankedOption) {
    let units = told.answer.brief.units;
    let caption = words::sizes(sign(shop_unit(units)));
    let heads = [
        (words::PIECE, false),
        (words::SIDE, false),
        (words::LEAST, true),
        (words::PLANNED, true),
        (words::TOGETHER, true),
        (words::ALONE, true),
        (words::HELD, false),
    ];
    table(page, &caption, option.rank, &heads);
    for one in option.pieces(&told.answer.brief) {
        for (dimension, found) in Dimension::ALL.iter().copied().filter_map(|it| Some((it, one.sizes.get(it)?))) {
            page.open("tr", &[]).element("th", &[("scope", "row")], &one.piece.name);
            page.element("td", &[], dimension.words());
            let ends = Ends::of(units, found.least, found.together);
            let alone = found.alone.map_or_else(String::new, |alone| ends.most_alone(alone));
            for told in [ends.least(), ends.planned(found.planned), ends.most(), alone] {
                page.element("td", &[("class", "number")], &ends.bare(&told));
            }
            let held = one.sizes.held_by.iter().find(|held| held.dimension == dimension);
            let holder = held.map(|held| rank_words::holder(&told.answer.brief, one.placed.piece, &held.by));
            page.element("td", &[], &holder.unwrap_or_default());
            page.end();
        }
    }
    end_table(page);
}

fn put_ways(page: &mut Markup, told: &ReportPage<'_>, option: &RankedOption) {
    if option.routes.is_empty() {
        return;
    }
    let brief = &told.answer.brief;
    let tape = |length| taped_bare(brief.units, length);
    let caption = words::ways(sign(shop_unit(told.answer.brief.units)));
    let heads = [(words::WAY, false), (words::WIDE, true), (words::NEEDS, true), (words::NARROWEST, false)];
    table(page, &caption, option.rank, &heads);
    for route in &option.routes {
        page.open("tr", &[]).element(
            "th",
            &[("scope", "row")],
            &rank_words::route(brief, [route.from, route.to].map(Thing::from)),
        );
        page.element("td", &[("class", "number")], &tape(route.width));
        page.element("td", &[("class", "number")], &tape(route.needs));
        page.element("td", &[], &narrowest(brief, route)).end();
    }
    end_table(page);
}

/// Opens a table that scrolls by itself where the page is narrow; a head over figures stands right.
fn table(page: &mut Markup, caption: &str, rank: usize, heads: &[(&str, bool)]) {
    let label = words::table_of(caption, rank);
    page.open("div", &[("class", "scroll"), ("tabindex", "0"), ("role", "region"), ("aria-label", &label)]);
    page.open("table", &[]).element("caption", &[], caption).open("thead", &[]).open("tr", &[]);
    for (head, is_figure) in heads {
        let class = if *is_figure { "number" } else { "words" };
        page.element("th", &[("scope", "col"), ("class", class)], head);
    }
    page.end().end().open("tbody", &[]);
}

fn end_table(page: &mut Markup) {
    page.end().end().end();
}
