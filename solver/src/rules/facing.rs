//! Seats that face each other, and seats that face the screen, keep their distance.

use elbowroom_model::{Clearance, Point, Rule};

use super::{
    Alternative, Cause, LayoutRule, LinearOutline, LinearPoint, Pose, Requirement, RuleContext, With, faces_one,
    separation,
};
use crate::arrangement::{Role, face};
use crate::program::Row;

/// Fronts that are meant to face overlap sideways by this at least, mm: half a seat place of 27 in (common practice, no
/// source).
const LEAST_OVERLAP: f64 = 343.0;

/// Distance between fronts that face each other.
#[derive(Debug)]
pub(super) struct Facing;

impl LayoutRule for Facing {
    fn between(&self, context: &RuleContext<'_>, first: &Pose, second: &Pose) -> Vec<Requirement> {
        let (seat, other) = match (first.piece.kind.is_seat(), second.piece.kind.is_seat()) {
            // Who faces whom is seen from the one that is not turned.
            (true, true) if first.stand.turn.is_some() => (second, first),
            (true, _) => (first, second),
            (false, true) => (second, first),
            (false, false) => return Vec::new(),
        };
        let rule = match (other.piece.kind.is_seat(), context.brief.is_watched(&other.piece)) {
            (true, _) => Clearance::FacingSeats,
            (false, true) => Clearance::ScreenToSeat,
            (false, false) => return Vec::new(),
        };
        let gap = context.brief.rules.get(rule);
        let is_turned_opposite = other.stand.turn.is_some() && is_meant(seat, other);
        if !face(seat.stand.facing, other.stand.facing) && !is_turned_opposite {
            return Vec::new();
        }
        if is_meant(seat, other) { meant(context, seat, other, rule, gap) } else { by_chance(seat, other, rule, gap) }
    }
}

/// Whether the arrangement says that the two face each other.
fn is_meant(first: &Pose, second: &Pose) -> bool {
    let faces = |a: &Pose, b: &Pose| a.role == Role::MainSeat && matches!(b.role, Role::Screen | Role::Opposite);
    faces(first, second) || faces(second, first)
}

fn meant(context: &RuleContext<'_>, seat: &Pose, other: &Pose, rule: Clearance, gap: f64) -> Vec<Requirement> {
    let cause = |rule: Rule| Cause { rule, piece: seat.id, with: With::Piece(other.id) };
    let apart = separation::beyond(seat.main(), other.main(), seat.stand.facing, gap);
    let mut found = vec![Requirement { cause: cause(rule.into()), alternatives: vec![apart] }];
    // A screen beside a fire that the seat faces may lie past its end.
    let may_lie_beside = rule == Clearance::ScreenToSeat && faces_one(context, seat.stand.facing).is_some();
    if !may_lie_beside {
        found.push(Requirement::always(cause(Rule::Group), overlap_sideways(seat, other, LEAST_OVERLAP).into()));
    }
    let passage = context.brief.rules.get(Clearance::Passage);
    if rule == Clearance::ScreenToSeat && passage > gap {
        let apart = separation::beyond(seat.main(), other.main(), seat.stand.facing, passage);
        found.push(Requirement { cause: cause(Clearance::Passage.into()), alternatives: vec![apart] });
    }
    found
}

/// Both overlap by `least` sideways, as the seat sits.
fn overlap_sideways(seat: &Pose, other: &Pose, least: f64) -> [Row; 2] {
    let along = seat.along();
    let (mine, theirs) = (seat.main(), other.main());
    let past = |towards: Point| mine.furthest(towards).from(other_end(theirs, towards)).along(towards);
    [past(along).at_least(least), past(-along).at_least(least)]
}

/// The end of `shape` that comes first in `towards`.
fn other_end(shape: &LinearOutline, towards: Point) -> &LinearPoint {
    shape.furthest(-towards)
}

/// Where nothing says that they face each other they may also stand past each other or back to back.
fn by_chance(seat: &Pose, other: &Pose, rule: Clearance, gap: f64) -> Vec<Requirement> {
    let facing = seat.stand.facing;
    let fronts: Vec<Alternative> = [(facing, gap), (seat.left(), 0.0), (-seat.left(), 0.0), (-facing, 0.0)]
        .map(|(towards, gap)| separation::beyond(seat.main(), other.main(), towards, gap))
        .into();
    let cause = Cause { rule: rule.into(), piece: seat.id, with: With::Piece(other.id) };
    vec![Requirement { cause, alternatives: fronts }]
}
