//! What settles ties: centred on the wall or on the piece it faces, drawn up to the wall or the group. Each millimetre
//! of misplacement costs a thousandth; none of it is a rule of the room.

use elbowroom_model::{Clearance, Point, Rule};

use super::{Cause, LayoutRule, Linear, Pose, Requirement, RuleContext, With};
use crate::arrangement::{Relation, Role};
use crate::program::Row;

/// Settles ties by where things stand.
#[derive(Debug)]
pub(super) struct Centring;

impl LayoutRule for Centring {
    fn alone(&self, context: &RuleContext<'_>, pose: &Pose) -> Vec<Requirement> {
        let mut rows = Vec::new();
        let middle = pose.middle_of_back();
        if let Some(wall) = pose.wall().and_then(|id| context.site.wall(id)) {
            rows.push(at_least(pose, 1, pose.anchor.along(wall.inward).shifted(-wall.start.dot(wall.inward))));
            if is_centred_on_wall(pose) {
                let amid = (wall.start + wall.end) * 0.5;
                rows.extend(distance(pose, 0, &middle.along(wall.along).shifted(-amid.dot(wall.along))));
            }
        } else if is_centred_in_room(pose) {
            let amid = middle_of_room(context);
            rows.extend(distance(pose, 0, &middle.along(pose.left()).shifted(-amid.dot(pose.left()))));
            let facing = pose.stand.facing;
            let own = middle.along(facing).plus(&pose.depth(), 0.5).shifted(-amid.dot(facing));
            rows.extend(distance(pose, 1, &own));
        }
        requirement(pose, None, rows)
    }

    fn between(&self, context: &RuleContext<'_>, first: &Pose, second: &Pose) -> Vec<Requirement> {
        let mut found = one_way(first, second);
        found.extend(room_for_feet(context, first, second));
        found.extend(room_for_feet(context, second, first));
        found.extend(one_way(second, first));
        found
    }
}

fn is_centred_on_wall(pose: &Pose) -> bool {
    matches!(pose.role, Role::MainSeat | Role::Other | Role::Apart) && pose.stand.relation == Relation::Alone
}

fn is_centred_in_room(pose: &Pose) -> bool {
    is_centred_on_wall(pose) && !pose.piece.kind.is_flat()
}

fn middle_of_room(context: &RuleContext<'_>) -> Point {
    let corners = context.site.outline();
    let sum = corners.iter().fold(Point::default(), |sum, corner| sum + *corner);
    sum * (1.0 / corners.len().max(1) as f64)
}

fn one_way(pose: &Pose, seat: &Pose) -> Vec<Requirement> {
    let facing = seat.stand.facing;
    let middle = pose.middle_of_back();
    let aside = middle.from(&middle_of_front(seat)).along(seat.left());
    let rows = match (pose.role, pose.stand.relation) {
        (_, Relation::Before { seat: id }) if id == seat.id => distance(pose, 0, &aside).into(),
        (Role::Screen, _) if seat.role == Role::MainSeat => distance(pose, 0, &aside).into(),
        (Role::Opposite, _) if seat.role == Role::MainSeat => {
            let off = middle.from(&seat.anchor).along(facing).plus(&seat.depth(), -1.0);
            let mut rows = Vec::from(distance(pose, 0, &aside));
            if pose.wall().is_none() {
                rows.push(at_least(pose, 1, off));
            }
            rows
        }
        (Role::ScreenBeside, _) if seat.role == Role::MainSeat => {
            // Less than a seat drawn up to its wall, which it would otherwise pull off it.
            let ahead = middle.from(&seat.anchor).along(facing).plus(&seat.depth(), -1.0);
            distance(pose, 0, &Linear::default().plus(&ahead, 0.5)).into()
        }
        (Role::LeftOf | Role::RightOf, _) if seat.role == Role::MainSeat => {
            let side = if pose.role == Role::LeftOf { seat.left() } else { -seat.left() };
            let ahead = middle.from(&seat.anchor).along(facing).plus(&seat.depth(), -1.0).shifted(-BEFORE_FRONT);
            let mut rows = Vec::from(distance(pose, 0, &ahead));
            if pose.wall().is_none() {
                rows.push(at_least(pose, 1, middle.from(&seat.middle_of_back()).along(side)));
            }
            rows
        }
        (_, Relation::Beside { seat: id, left }) if id == seat.id => {
            let side = if left { seat.left() } else { -seat.left() };
            let ahead = middle.from(&seat.anchor).along(facing);
            vec![at_least(pose, 1, ahead), at_least(pose, 0, middle.from(&seat.middle_of_back()).along(side))]
        }
        (_, Relation::Under { seat: id }) if id == seat.id => {
            let near = seat.anchor.from(&pose.anchor).along(facing).plus(&seat.depth(), 1.0);
            let mut rows = Vec::from(distance(pose, 0, &aside));
            rows.push(at_least(pose, 1, near));
            rows
        }
        _ => return Vec::new(),
    };
    requirement(pose, Some(seat), rows)
}

/// A second seat keeps its feet's room from the table where that costs no size.
fn room_for_feet(context: &RuleContext<'_>, pose: &Pose, table: &Pose) -> Vec<Requirement> {
    let is_second = matches!(pose.role, Role::LeftOf | Role::RightOf | Role::Opposite);
    if !is_second || table.role != Role::Table {
        return Vec::new();
    }
    let facing = pose.stand.facing;
    let clear = table.main().furthest(-facing).from(pose.main().furthest(facing)).along(facing);
    let lacking = Linear::constant(context.brief.rules.get(Clearance::SeatToTable)).plus(&clear, -1.0);
    requirement(pose, Some(table), vec![at_least(pose, 1, lacking)])
}

/// A second seat at one side stands about this far before the main seat's front: beside the table, mm.
const BEFORE_FRONT: f64 = 700.0;

/// Middle of the front that people sit along: of a corner sofa from the return out.
fn middle_of_front(seat: &Pose) -> super::LinearPoint {
    seat.middle_of_bay()
}

/// Misplaced by `off` at least, either way.
fn distance(pose: &Pose, which: usize, off: &Linear) -> [Row; 2] {
    [at_least(pose, which, off.clone()), at_least(pose, which, Linear::default().plus(off, -1.0))]
}

fn at_least(pose: &Pose, which: usize, off: Linear) -> Row {
    Linear::variable(pose.variables.misplaced[which]).plus(&off, -1.0).at_least(0.0)
}

fn requirement(pose: &Pose, seat: Option<&Pose>, rows: Vec<Row>) -> Vec<Requirement> {
    if rows.is_empty() {
        return Vec::new();
    }
    let with = seat.map_or(With::Itself, |seat| With::Piece(seat.id));
    vec![Requirement::always(Cause { rule: Rule::Centring, piece: pose.id, with }, rows)]
}
