//! A chair is turned toward the heart of its group, by the angle that has it face that best. Two of one row are turned as
//! mirror images.

use elbowroom_model::{PieceId, Rule};

use super::comfort::axis;
use super::{Cause, LayoutRule, LinearPoint, Pose, Requirement, RuleContext, With};
use crate::arrangement::Role;

/// The heart of a group lies so far before the main seat's front, mm: amid a coffee table, or where one would stand (common
/// practice, no source).
const BEFORE_FRONT: f64 = 700.0;

/// Chairs turned toward the heart of their group.
#[derive(Debug)]
pub(super) struct TurnedToHeart;

impl LayoutRule for TurnedToHeart {
    fn between(&self, context: &RuleContext<'_>, first: &Pose, second: &Pose) -> Vec<Requirement> {
        let [a, b] = [(first, second), (second, first)].map(|(chair, main)| to_heart(chair, main));
        a.into_iter().chain(b).chain(unlike(context, first, second)).collect()
    }
}

/// The heart of the group about a main seat.
pub(crate) fn heart(main: &Pose) -> LinearPoint {
    axis(main).moved(main.stand.facing, &main.depth().shifted(BEFORE_FRONT))
}

/// The heart lies nearer to the way in which a chair is turned than to any other that it may be, its square-on way too.
fn to_heart(chair: &Pose, main: &Pose) -> Option<Requirement> {
    let turn = chair.stand.turn.filter(|_| main.role == Role::MainSeat)?;
    let to_heart = heart(main).from(&chair.middle_of_back());
    let rows = turn.better().map(|side| to_heart.along(side).at_least(0.0)).collect();
    Some(Requirement::always(cause(chair, main.id), rows))
}

/// Two of one row that are turned otherwise than as mirror images have no place; of more all are turned by as much.
fn unlike(context: &RuleContext<'_>, first: &Pose, second: &Pose) -> Option<Requirement> {
    let row = first.piece.alike.filter(|row| second.piece.alike == Some(*row))?;
    let are_seats = [first, second].iter().all(|pose| pose.role.is_second_seat());
    let turns = [first, second].map(|pose| pose.stand.turn.map_or(0.0, |turn| turn.counter_clockwise()));
    let of_row = context.brief.pieces().filter(|(id, piece)| piece.alike == Some(row) && *id != context.main_seat);
    let off = if of_row.count() > 2 { turns[0].abs() - turns[1].abs() } else { turns[0] + turns[1] };
    // Turns are whole degrees, so that any difference is one.
    let is_unlike = are_seats && off.abs() > 0.5;
    is_unlike.then(|| Requirement { cause: cause(second, first.id), alternatives: Vec::new() })
}

const fn cause(chair: &Pose, other: PieceId) -> Cause {
    Cause { rule: Rule::Turned, piece: chair.id, with: With::Piece(other) }
}
