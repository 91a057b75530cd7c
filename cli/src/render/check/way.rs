//! The way in, where the scenario gives one: what is passed, where it is narrowest, and which pieces get by.

use elbowroom_model::way_in::Way;
use elbowroom_model::{Brief, Rounding, Unit};
use elbowroom_solver::way_in::{PieceIn, of_a_brief};

use crate::render::way::{measures, misses};
use crate::text::page::Page;
use crate::text::table::{Stand, Table};
use crate::words::check as words;
use crate::words::lengths::{shop_unit, shopped, sign, taped_bare};

/// The points, the narrowest of them, and each piece at its most.
pub(super) fn tell(page: &mut Page, brief: &Brief) {
    let Some(way) = &brief.way else { return };
    let units = brief.units;
    page.heading(&words::way(sign(shop_unit(units))));
    let mut points = Table::new(&[("", Stand::Left), ("", Stand::Left)]);
    for point in &way.points {
        points.row([point.name.clone(), measures(point, units)]);
    }
    page.table(2, &points);
    if let Some((point, width)) = way.narrowest() {
        let lowest = way.lowest().map(|(point, height)| (point.name.as_str(), taped_bare(units, height)));
        let lowest = lowest.as_ref().map(|(name, height)| (*name, height.as_str()));
        let within = (way.measured_within > 0.0).then(|| taped_bare(units, way.measured_within));
        page.paragraph(2, &words::narrowest(&point.name, &taped_bare(units, width), lowest, within.as_deref()));
    }
    let mut pieces = Table::new(&[("", Stand::Left), ("", Stand::Left)]);
    let heads = brief.pieces().filter(|(id, piece)| piece.alike.is_none_or(|first| first == *id));
    let heads = heads.filter(|(_, piece)| !piece.kind.stays_open());
    for (_, piece) in heads {
        pieces.row([piece.name.clone(), said(way, &of_a_brief(way, piece), units)]);
    }
    page.table(2, &pieces);
}

/// Whether a piece gets in at its most, or what does not pass, and up to which size it would.
fn said(way: &Way, piece: &PieceIn, units: Unit) -> String {
    let Some(part) = piece.carried.parts.iter().find(|part| part.fails.is_some()) else {
        return words::gets_in(piece.fixed, piece.carried.parts.is_empty());
    };
    let fails = part.fails.as_ref().map(|fails| misses(way, fails, units)).unwrap_or_default();
    let most = piece.most.map(|[width, other, depth]| {
        let other = (other > 0.0).then_some(other);
        let sides = [Some(width), other, Some(depth)].into_iter().flatten();
        sides.map(|side| shopped(units, side, Rounding::Down)).collect::<Vec<_>>().join(" x ")
    });
    words::does_not_get_in(&fails, piece.fixed, most.as_deref())
}
