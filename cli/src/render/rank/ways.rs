//! The ways through: how wide each is, where it is narrowest; and the gaps that rules ask for.

use elbowroom_model::Rounding;
use elbowroom_solver::answer::{RankedOption, Thing};
use elbowroom_solver::routes::Route;

use super::RankPage;
use crate::text::page::Page;
use crate::text::table::{Stand, Table};
use crate::words::lengths::{shop_unit, shopped, sign, taped_bare};
use crate::words::rank as words;

/// Routes, then gaps.
pub(super) fn tell(page: &mut Page, told: &RankPage<'_>, option: &RankedOption) {
    routes(page, told, option);
    gaps(page, told, option);
}

fn routes(page: &mut Page, told: &RankPage<'_>, option: &RankedOption) {
    if option.routes.is_empty() {
        return;
    }
    page.heading(&words::ways(sign(shop_unit(told.units()))));
    let mut table = Table::new(&[
        ("", Stand::Left),
        ("wide", Stand::Right),
        ("needs", Stand::Right),
        ("walk", Stand::Right),
        (words::NARROWEST, Stand::Left),
    ]);
    for route in &option.routes {
        let bare = |length: f64| taped_bare(told.units(), length);
        let walk = route.length.map_or_else(String::new, |walk| shopped(told.units(), walk, Rounding::Nearest));
        let ends = words::route(told.brief(), [route.from, route.to].map(Thing::from));
        table.row([ends, bare(route.width), bare(route.needs), walk, pinch(told, route)]);
    }
    page.table(3, &table);
}

fn pinch(told: &RankPage<'_>, route: &Route) -> String {
    match route.pinch {
        Some(pinch) => words::between(told.brief(), pinch.between.map(Thing::from)),
        None => words::NO_PINCH.to_owned(),
    }
}

fn gaps(page: &mut Page, told: &RankPage<'_>, option: &RankedOption) {
    if option.gaps.is_empty() {
        return;
    }
    page.heading(&words::gaps(sign(shop_unit(told.units()))));
    let mut table =
        Table::new(&[("", Stand::Left), ("clear", Stand::Right), ("needs", Stand::Right), ("rule", Stand::Left)]);
    for gap in &option.gaps {
        let bare = |length: f64| taped_bare(told.units(), length);
        let between = words::between(told.brief(), gap.between);
        table.row([between, bare(gap.clear), bare(gap.needs), words::rule(gap.rule.key())]);
    }
    page.table(3, &table);
}
