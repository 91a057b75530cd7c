//! The coffee table lies at arm's length before its seat, and nothing stands between the two.

use elbowroom_model::Clearance;

use super::{Cause, LayoutRule, Linear, Pose, Requirement, RuleContext, With, separation};
use crate::arrangement::Relation;

/// A table overlaps the main run of a corner sofa by this at every size of the two, mm.
const LEAST_OVERLAP: f64 = 20.0;

/// The middle of a table stands no further than this beyond the end of a straight seat at its least, mm (common practice,
/// no source).
const FURTHEST_BEYOND: f64 = 150.0;

/// The coffee table before its seat.
#[derive(Debug)]
pub(super) struct SeatToTable;

/// Room to pass between the coffee table and the media unit.
#[derive(Debug)]
pub(super) struct TableToMedia;

impl LayoutRule for SeatToTable {
    fn between(&self, context: &RuleContext<'_>, first: &Pose, second: &Pose) -> Vec<Requirement> {
        let [a, b] = [(first, second), (second, first)].map(|(table, other)| one_way(context, table, other));
        a.into_iter().chain(b).collect()
    }
}

fn one_way(context: &RuleContext<'_>, table: &Pose, other: &Pose) -> Vec<Requirement> {
    let Relation::Before { seat } = table.stand.relation else { return Vec::new() };
    let gap = context.brief.rules.get(Clearance::SeatToTable);
    let cause = Cause { rule: Clearance::SeatToTable.into(), piece: table.id, with: With::Piece(other.id) };
    if other.id == seat {
        return vec![Requirement::always(cause, before_seat(table, other, gap))];
    }
    if other.is_flat() || gap <= 0.0 {
        return Vec::new();
    }
    let (from, to) = table.stretch();
    let between = table.block([&from, &to], [&Linear::constant(-gap), &Linear::default()]);
    let parts = other.parts.iter();
    parts.map(|part| Requirement { cause, alternatives: separation::apart(&between, part, 0.0) }).collect()
}

/// Exactly `gap` before the front, and overlapping that part of it which stays at every size, so that the two still do
/// when either is smaller: its middle before it, or, since a return takes up most of the front, its own least stretch.
fn before_seat(table: &Pose, seat: &Pose, gap: f64) -> Vec<crate::program::Row> {
    let facing = seat.stand.facing;
    let off = table.anchor.from(&seat.anchor).along(facing).plus(&seat.depth(), -1.0);
    let middle = table.anchor.from(&seat.anchor).along(seat.along());
    let (from, to) = seat.least_front();
    let mut rows = vec![off.at_least(gap), off.at_most(gap)];
    let beyond = (table.piece.width.least / 2.0 - LEAST_OVERLAP).max(0.0);
    if seat.hand.is_some() {
        rows.push(middle.at_most(to + beyond));
        rows.push(middle.clone().plus(&table.width(), -0.5).plus(&seat.deep_return(), -1.0).at_least(gap));
        if seat.second_return().is_some() {
            let (_, end) = seat.bay();
            rows.push(end.plus(&middle, -1.0).plus(&table.width(), -0.5).at_least(gap));
        }
    } else {
        rows.push(middle.at_most(to + beyond.min(FURTHEST_BEYOND)));
        rows.push(middle.at_least(from - beyond.min(FURTHEST_BEYOND)));
    }
    rows
}

impl LayoutRule for TableToMedia {
    fn between(&self, context: &RuleContext<'_>, first: &Pose, second: &Pose) -> Vec<Requirement> {
        // A unit under a screen that hangs is one too.
        let is_media = |pose: &Pose| pose.role.is_screen() || pose.piece.kind.carries_screen();
        let is_table = |pose: &Pose| pose.piece.kind.stands_before_seat();
        let (table, media) = match (is_table(first), is_table(second)) {
            (true, _) if is_media(second) => (first, second),
            (_, true) if is_media(first) => (second, first),
            _ => return Vec::new(),
        };
        let gap = context.brief.rules.get(Clearance::Passage);
        let cause = Cause { rule: Clearance::Passage.into(), piece: table.id, with: With::Piece(media.id) };
        vec![Requirement { cause, alternatives: separation::apart(table.main(), media.main(), gap) }]
    }
}
