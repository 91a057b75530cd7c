//! The coffee table stands on the axis of the seat that it serves.

use elbowroom_model::Clearance;

use super::figure::figure;
use super::fronts::{axis, length_of_front};
use crate::arrangement::Relation;
use crate::rules::{Alternative, Cause, LayoutRule, Linear, Pose, Requirement, RuleContext, With};

/// What a table before a corner sofa may lie further off than its return makes it, mm (common practice, no source).
const BESIDE_RETURN: f64 = 50.0;

/// The table on its axis.
#[derive(Debug)]
pub(super) struct TableAxis;

impl LayoutRule for TableAxis {
    fn between(&self, context: &RuleContext<'_>, first: &Pose, second: &Pose) -> Vec<Requirement> {
        let [a, b] = [(first, second), (second, first)].map(|(table, seat)| one_way(context, table, seat));
        a.into_iter().chain(b).collect()
    }
}

fn one_way(context: &RuleContext<'_>, table: &Pose, seat: &Pose) -> Vec<Requirement> {
    let serves = matches!(table.stand.relation, Relation::Before { seat: id } if id == seat.id);
    let Some(most) = figure(context, Clearance::TableAxis).filter(|_| serves) else { return Vec::new() };
    let off = table.middle_of_back().from(&axis(seat)).along(seat.along());
    let within = |most: &Linear| {
        let rows = [1.0, -1.0].map(|sign| Linear::default().plus(&off, sign).plus(most, -1.0).at_most(0.0));
        Alternative::of_rows(rows.into())
    };
    let mut alternatives = vec![within(&Linear::constant(most))];
    if seat.hand.is_some() {
        // A return leaves a small bay: the table keeps its gap from it and lies so much further out.
        let gap = context.brief.rules.get(Clearance::SeatToTable);
        let bay = length_of_front(seat);
        let forced = Linear::constant(table.piece.width.least / 2.0 + gap + BESIDE_RETURN).plus(&bay, -0.5);
        alternatives.push(within(&forced));
    }
    let cause = Cause { rule: Clearance::TableAxis.into(), piece: table.id, with: With::Piece(seat.id) };
    vec![Requirement { cause, alternatives }]
}
