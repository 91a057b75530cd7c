//! The screen lies no further aside than a sitter turns the head.

use elbowroom_model::{Point, Rule};

use super::fronts::{axis, length_of_front, middle_of_screen, seat_and_screen};
use crate::arrangement::Role;
use crate::program::Row;
use crate::rules::{Cause, LayoutRule, Linear, LinearPoint, Pose, Requirement, RuleContext, With};

/// A sitter turns the head so far with ease, as the tangent of 45 degrees: NUREG-0700 rev. 3, 11.3.1.2-2 (35 degrees, to 60
/// where the head may turn; published).
const EASY_TURN: f64 = 1.0;

/// The tangent of 60 degrees, the most that a head turns (same source).
const MOST_TURN: f64 = 1.732_050_807_568_877_2;

/// A screen beside a corner sofa lies so far before its front at least, mm (common practice, no source).
const AHEAD: f64 = 500.0;

/// The outer places of a run of seats lie this share of its length to each side of its middle.
const OUTER_PLACE: f64 = 1.0 / 6.0;

/// How far a sitter turns to the screen.
#[derive(Debug)]
pub(super) struct ScreenTurn;

impl LayoutRule for ScreenTurn {
    fn between(&self, _context: &RuleContext<'_>, first: &Pose, second: &Pose) -> Vec<Requirement> {
        let Some((seat, screen)) = seat_and_screen(first, second) else { return Vec::new() };
        let front = Run { middle: &axis(seat).moved(seat.stand.facing, &seat.depth()), faces: seat.stand.facing };
        let rows = match (screen.role, seat.return_length()) {
            (Role::ScreenBeside, Some(length)) => beside(seat, screen, &front, &length),
            _ => turned(screen, &front, EASY_TURN, &length_of_front(seat)),
        };
        vec![Requirement::always(Cause { rule: Rule::ScreenTurn, piece: screen.id, with: With::Piece(seat.id) }, rows)]
    }
}

/// People who sit along a front, seen from above.
struct Run<'l> {
    middle: &'l LinearPoint,
    faces: Point,
}

/// The return faces the screen, and who sits on the main run need not turn round.
fn beside(seat: &Pose, screen: &Pose, front: &Run<'_>, length: &Linear) -> Vec<Row> {
    let out = Linear::default().plus(length, 0.5).plus(&seat.depth(), 0.5);
    let of_return = seat.anchor.clone().moved(seat.stand.facing, &out).moved(seat.along(), &seat.deep_return());
    let of_return = Run { middle: &of_return, faces: seat.along() };
    let mut rows = turned(screen, &of_return, EASY_TURN, &length.clone().plus(&seat.depth(), -1.0));
    rows.extend(turned(screen, front, MOST_TURN, &Linear::default()));
    rows.push(middle_of_screen(screen).from(front.middle).along(front.faces).at_least(AHEAD));
    rows
}

/// The screen lies no further aside from the outer places of a run of `length` than `tangent` times ahead.
fn turned(screen: &Pose, from: &Run<'_>, tangent: f64, length: &Linear) -> Vec<Row> {
    let to = middle_of_screen(screen).from(from.middle);
    let ahead = to.along(from.faces);
    let side = |side: Point| to.along(side).plus(length, OUTER_PLACE).plus(&ahead, -tangent).at_most(0.0);
    vec![side(from.faces.left()), side(from.faces.right())]
}
