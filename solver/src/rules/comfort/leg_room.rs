//! Leg room: nothing stands so near before a seat but its own table, rugs and poufs aside.

use elbowroom_model::Clearance;

use super::figure::figure;
use super::fronts::{ENDS, before_main, before_returns};
use crate::arrangement::{Relation, Role};
use crate::rules::{Cause, LayoutRule, Pose, Requirement, RuleContext, With, separation};

/// Leg room before every seat.
#[derive(Debug)]
pub(super) struct LegRoom;

impl LayoutRule for LegRoom {
    fn between(&self, context: &RuleContext<'_>, first: &Pose, second: &Pose) -> Vec<Requirement> {
        let [a, b] = [(first, second), (second, first)].map(|(seat, other)| one_way(context, seat, other));
        a.into_iter().chain(b).collect()
    }
}

fn one_way(context: &RuleContext<'_>, seat: &Pose, other: &Pose) -> Vec<Requirement> {
    let serves = matches!(other.stand.relation, Relation::Before { seat: id } if id == seat.id);
    let Some(reach) = figure(context, Clearance::LegRoom) else { return Vec::new() };
    let stays_out = !other.is_flat() && !other.piece.kind.stands_in_leg_room() && !serves;
    if !seat.piece.kind.is_seat() || !stays_out {
        return Vec::new();
    }
    let trim = if seat.role == Role::MainSeat { ENDS } else { 0.0 };
    let zones = std::iter::once(before_main(seat, trim, reach)).chain(before_returns(seat, reach));
    let cause = Cause { rule: Clearance::LegRoom.into(), piece: seat.id, with: With::Piece(other.id) };
    zones.flat_map(|zone| other.each_part(cause, move |part| separation::apart(&zone, part, 0.0))).collect()
}
