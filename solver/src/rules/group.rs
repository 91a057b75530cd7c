//! How the pieces of a group stand to its main seat: second seats left, right and opposite, tables and lamps beside a
//! seat, a rug under it.

use elbowroom_model::Rule;

use super::{Cause, LayoutRule, Linear, Pose, Requirement, RuleContext, With};
use crate::arrangement::{Relation, Role};
use crate::program::Row;

/// A second seat stands no further before the main seat's front than this, mm: within a conversation group of 10 ft
/// (3048 mm, HUD Manual of Acceptable Practices 1973).
const GROUP: f64 = 3048.0;

/// Half of a two-seater, mm (drawing-office metric list: 1500).
const END_OF_TWO_SEATER: f64 = 750.0;

/// A side table or lamp stands within this of its seat, mm: a surface within 450 mm of every seat place (common
/// practice, no source), less half an arm.
const WITHIN_REACH: f64 = 300.0;

/// A console stands within this of the back of its seat, mm (common practice, no source).
const BEHIND: f64 = 100.0;

/// A rug lies under the front legs of its seat by this at least, mm: 6 in (common practice, no source).
const UNDER_FRONT: f64 = 152.4;

/// How the pieces of a group stand to each other.
#[derive(Debug)]
pub(super) struct Group;

impl LayoutRule for Group {
    fn between(&self, _ground: &RuleContext<'_>, first: &Pose, second: &Pose) -> Vec<Requirement> {
        let mut found = one_way(first, second);
        found.extend(one_way(second, first));
        found
    }
}

fn one_way(pose: &Pose, seat: &Pose) -> Vec<Requirement> {
    let rows = match (pose.role, pose.stand.relation) {
        (Role::LeftOf, _) if seat.role == Role::MainSeat => across(pose, seat, true),
        (Role::RightOf, _) if seat.role == Role::MainSeat => across(pose, seat, false),
        (Role::Opposite, _) if seat.role == Role::MainSeat => near(pose, seat),
        (_, Relation::Beside { seat: id, left }) if id == seat.id => beside(pose, seat, left),
        (_, Relation::Behind { seat: id }) if id == seat.id => behind(pose, seat),
        (_, Relation::Under { seat: id }) if id == seat.id => under(pose, seat),
        _ => return Vec::new(),
    };
    let cause = Cause { rule: Rule::Group, piece: pose.id, with: With::Piece(seat.id) };
    vec![Requirement::always(cause, rows)]
}

/// A second seat at one side: its back as far out as the end of a two-seater, or of the main seat where that is never so
/// wide, and within the group; its middle between the main seat's back and a group's length before it.
fn across(pose: &Pose, seat: &Pose, left: bool) -> Vec<Row> {
    let side = if left { seat.left() } else { -seat.left() };
    let outward = pose.middle_of_back().from(&seat.middle_of_back()).along(side);
    let ahead = pose.middle_of_back().from(&seat.anchor).along(seat.stand.facing);
    vec![
        outward.at_least(END_OF_TWO_SEATER.min(seat.piece.width.most / 2.0)),
        outward.at_most(GROUP),
        ahead.at_least(0.0),
        ahead.plus(&seat.depth(), -1.0).at_most(GROUP),
    ]
}

fn near(pose: &Pose, seat: &Pose) -> Vec<Row> {
    let facing = seat.stand.facing;
    let front = pose.middle_of_back().moved(pose.stand.facing, &pose.depth());
    vec![front.from(&seat.anchor).along(facing).plus(&seat.depth(), -1.0).at_most(GROUP)]
}

/// At one end of a seat, within reach of it; at the end of the return where that is on this side.
fn beside(pose: &Pose, seat: &Pose, left: bool) -> Vec<Row> {
    let side = if left { seat.left() } else { -seat.left() };
    let facing = seat.stand.facing;
    let (from, to) = seat.stretch();
    let outer = if seat.along().dot(side) > 0.0 { to } else { Linear::default().plus(&from, -1.0) };
    let middle = pose.middle_of_back().moved(pose.stand.facing, &Linear::default().plus(&pose.depth(), 0.5));
    let offset = middle.from(&seat.anchor);
    if let Some(run) = seat.return_at(side) {
        let past = offset.along(facing).plus(&run.length, -1.0);
        let across = run.off_back(&offset);
        let clear = past.clone().plus(&pose.depth(), -0.5);
        return vec![
            clear.at_least(0.0),
            clear.at_most(WITHIN_REACH),
            across.at_least(0.0),
            across.at_most(run.least_depth),
        ];
    }
    let clear = match seat.stand.turn {
        Some(_) => pose.main().furthest(-side).from(&seat.anchor).along(side).plus(&outer, -1.0),
        None => offset.along(side).plus(&outer, -1.0).plus(&pose.width(), -0.5),
    };
    let ahead = offset.along(facing);
    vec![clear.at_least(0.0), clear.at_most(WITHIN_REACH), ahead.at_least(0.0), ahead.at_most(seat.piece.depth.least)]
}

/// Back to back with a seat, within reach of whoever sits on it, and past neither end of it.
fn behind(pose: &Pose, seat: &Pose) -> Vec<Row> {
    let side = seat.left();
    let off = seat.anchor.from(&pose.anchor).along(seat.stand.facing);
    let aside = pose.middle_of_back().from(&seat.middle_of_back()).along(side);
    let (low, high) = (aside.clone().plus(&pose.width(), -0.5), aside.plus(&pose.width(), 0.5));
    vec![
        off.at_least(0.0),
        off.at_most(BEHIND),
        low.plus(&seat.width(), 0.5).at_least(0.0),
        high.plus(&seat.width(), -0.5).at_most(0.0),
    ]
}

/// Under the front legs, and before the seat for the rest.
fn under(pose: &Pose, seat: &Pose) -> Vec<Row> {
    let facing = seat.stand.facing;
    let near = pose.anchor.from(&seat.anchor).along(facing);
    let middle = pose.anchor.from(&seat.anchor).along(seat.along());
    let (from, to) = seat.least_front();
    vec![
        near.at_least(0.0),
        near.plus(&seat.depth(), -1.0).at_most(-UNDER_FRONT),
        middle.at_least(from),
        middle.at_most(to),
    ]
}
