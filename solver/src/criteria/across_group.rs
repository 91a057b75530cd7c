//! Main ways that cut across the group: between a seat and its table, the main seat and the screen, or two seats that face.

use elbowroom_model::{PieceId, PieceKind, Point};

use super::criteria_context::CriteriaContext;
use super::sight::angle_between;
use crate::best_by;
use crate::geometry::{Convex, Segment};
use crate::layout::Placed;

/// What lies further aside of the way that a seat faces does not belong before it, degrees (ours, no source).
const BEFORE: f64 = 60.0;

/// Cosine of the angle, 135 degrees, from which on two seats face each other (ours, no source).
const FACING: f64 = -0.7;

/// What a route cuts through, and over what length, mm.
#[derive(Debug, Clone, Copy)]
pub(super) struct Through {
    pub(super) between: [PieceId; 2],
    pub(super) length: f64,
}

/// Two pieces that belong together, and the floor between them.
struct Together {
    pieces: [PieceId; 2],
    floor: Convex,
}

/// What a line of a walk cuts through over the greatest length; `None` where it leaves the group in peace.
pub(super) fn through_group(context: &CriteriaContext, main: &Placed, line: &[Point]) -> Option<Through> {
    let cuts = all_together(context, main).into_iter().filter_map(|Together { pieces, floor }| {
        let length: f64 = line.windows(2).map(|leg| Segment::new(leg[0], leg[1]).length_inside(&floor)).sum();
        (length > 0.0).then_some(Through { between: pieces, length })
    });
    best_by(cuts, |through| through.length)
}

fn all_together(context: &CriteriaContext, main: &Placed) -> Vec<Together> {
    let seats: Vec<&Placed> = context.placed(PieceKind::is_seat).map(|(_, seat)| seat).collect();
    let mut all = Vec::new();
    let of_one = |seat: &Placed, other: &Placed| context.brief().are_of_one_group(seat.piece, other.piece);
    for (place, seat) in seats.iter().copied().enumerate() {
        let tables = context.placed(PieceKind::stands_before_seat);
        let screens = context.watched().filter(|_| seat.piece == main.piece);
        let before = tables.chain(screens).map(|(_, other)| other);
        let before = before.filter(|other| of_one(seat, other) && is_before(seat, other));
        all.extend(before.map(|other| Together::of(seat, other, side_towards(seat, other))));
        let faced = seats[place + 1..].iter().copied().filter(|other| of_one(seat, other) && do_face(seat, other));
        all.extend(faced.map(|other| Together::of(seat, other, front(other))));
    }
    all
}

impl Together {
    /// A seat, and what turns `side` to it, from its left to its right end as seen from there.
    fn of(seat: &Placed, other: &Placed, side: Segment) -> Self {
        let own = front(seat);
        let floor = Convex::counter_clockwise([own.start, own.end, side.start, side.end]);
        Self { pieces: [seat.piece, other.piece], floor }
    }
}

/// The front of a seat, from the sitter's left to the right.
fn front(seat: &Placed) -> Segment {
    let (left, right) = seat.front();
    Segment::new(left, right)
}

/// Whether the middle of a piece lies before a seat.
fn is_before(seat: &Placed, other: &Placed) -> bool {
    angle_between(seat.facing, other.main().middle() - front(seat).at(0.5)) <= BEFORE
}

fn do_face(one: &Placed, other: &Placed) -> bool {
    one.facing.dot(other.facing) < FACING && is_before(one, other) && is_before(other, one)
}

/// The side of a piece that is turned to a seat, from its left to its right end as seen from the piece.
fn side_towards(seat: &Placed, other: &Placed) -> Segment {
    let turned = |edge: &Segment| edge.vector().right().unit().map_or(0.0, |outward| -outward.dot(seat.facing));
    // Edges run counter-clockwise: from the left to the right of one who stands before them.
    best_by(other.main().edges(), turned).map_or_else(|| front(other), |edge| Segment::new(edge.end, edge.start))
}
