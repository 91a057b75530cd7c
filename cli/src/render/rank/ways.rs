//! The ways through: how wide each is, where it is narrowest; and the gaps that rules ask for.

use elbowroom_model::{Brief, Rounding};
use elbowroom_solver::answer::{Gap, RankedOption, Thing};
use elbowroom_solver::routes::Route;

use super::RankPage;
use crate::text::page::Page;
use crate::text::table::{Stand, Table};
use crate::words::lengths::{shop_unit, shopped, sign, taped_bare};
use crate::words::narrowest::narrowest;
use crate::words::rank as words;

/// Routes, then gaps.
pub(super) fn tell(page: &mut Page, told: &RankPage<'_>, option: &RankedOption) {
    let unit = sign(shop_unit(told.units()));
    routes(page, told.brief(), &words::ways(unit), &option.routes);
    gaps(page, told.brief(), &words::gaps(unit), &option.gaps);
}

/// Routes under a heading, where there are any.
pub(in crate::render) fn routes(page: &mut Page, brief: &Brief, heading: &str, routes: &[Route]) {
    if routes.is_empty() {
        return;
    }
    page.heading(heading);
    let mut table = Table::new(&[
        ("", Stand::Left),
        ("wide", Stand::Right),
        ("needs", Stand::Right),
        ("walk", Stand::Right),
        (words::NARROWEST, Stand::Left),
    ]);
    for route in routes {
        let bare = |length: f64| taped_bare(brief.units, length);
        let walk = route.length.map_or_else(String::new, |walk| shopped(brief.units, walk, Rounding::Nearest));
        let ends = words::route(brief, [route.from, route.to].map(Thing::from));
        table.row([ends, bare(route.width), bare(route.needs), walk, narrowest(brief, route)]);
    }
    page.table(3, &table);
}

/// Gaps under a heading, where there are any.
pub(in crate::render) fn gaps(page: &mut Page, brief: &Brief, heading: &str, gaps: &[Gap]) {
    if gaps.is_empty() {
        return;
    }
    page.heading(heading);
    let mut table =
        Table::new(&[("", Stand::Left), ("clear", Stand::Right), ("needs", Stand::Right), ("rule", Stand::Left)]);
    for gap in gaps {
        let bare = |length: f64| taped_bare(brief.units, length);
        table.row([words::between(brief, gap.between), bare(gap.clear), bare(gap.needs), words::rule(gap.rule.key())]);
    }
    page.table(3, &table);
}
