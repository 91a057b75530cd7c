//! The ways through: how wide each is, where it is narrowest; and the gaps that rules ask for.

use elbowroom_model::Rounding;
use elbowroom_solver::outcome::{OptionFound, RouteFound};

use super::Told;
use crate::text::page::Page;
use crate::text::table::{Stand, Table};
use crate::words::lengths::{shop_unit, shopped, sign, taped_bare};
use crate::words::rank as words;

/// Routes, then gaps.
pub(super) fn tell(page: &mut Page, told: &Told<'_>, option: &OptionFound) {
    routes(page, told, option);
    gaps(page, told, option);
}

fn routes(page: &mut Page, told: &Told<'_>, option: &OptionFound) {
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
        table.row([words::route(&route.from, &route.to), bare(route.width), bare(route.needs), walk, pinch(route)]);
    }
    page.table(3, &table);
}

fn pinch(route: &RouteFound) -> String {
    match &route.pinch {
        Some(pinch) => words::between(&pinch.between),
        None => words::NO_PINCH.to_owned(),
    }
}

fn gaps(page: &mut Page, told: &Told<'_>, option: &OptionFound) {
    if option.gaps.is_empty() {
        return;
    }
    page.heading(&words::gaps(sign(shop_unit(told.units()))));
    let mut table =
        Table::new(&[("", Stand::Left), ("clear", Stand::Right), ("needs", Stand::Right), ("rule", Stand::Left)]);
    for gap in &option.gaps {
        let bare = |length: f64| taped_bare(told.units(), length);
        table.row([words::between(&gap.between), bare(gap.clear), bare(gap.needs), words::rule(gap.rule.key())]);
    }
    page.table(3, &table);
}
