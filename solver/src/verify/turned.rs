//! Chairs that may be turned: by the angles that a file can ask for, toward the heart of the group, two of one row as mirror
//! images.

use elbowroom_model::{Point, Rule, SecondPlace, TURNS};

use super::breach::{Breach, Wrong};
use super::checked_layout::{CheckedLayout, InPlace};
use super::tolerance::{SLACK, TURN};
use crate::answer::Thing;
use crate::arrangement::{Arrangement, SecondSeat};

/// The heart of a group lies so far before the front of its main seat, mm (common practice).
const HEART: f64 = 700.0;

pub(super) fn breaches(scene: &CheckedLayout<'_>) -> Vec<Breach> {
    let Some(main) = scene.seats().find(|seat| seat.placed.piece == scene.arrangement.main_seat) else {
        return Vec::new();
    };
    let is_asked = |seat: &&InPlace<'_>| seat.placed.piece != main.placed.piece && seat.piece.turned.may_turn();
    let chairs: Vec<Chair<'_>> =
        scene.seats().filter(is_asked).map(|seat| Chair::of(scene.arrangement, main, seat)).collect();
    let alone = chairs.iter().filter_map(|chair| chair.breach(main));
    let pairs =
        chairs.iter().enumerate().flat_map(|(i, chair)| chairs[i + 1..].iter().map(move |other| (chair, other)));
    alone.chain(pairs.filter_map(|(one, other)| unlike(scene, one, other))).collect()
}

/// A chair that may be turned.
struct Chair<'s> {
    seat: &'s InPlace<'s>,
    /// The way that it would face square-on, a unit vector.
    square: Point,
    /// How much it is turned from there, counter-clockwise, degrees.
    turn: f64,
}

impl<'s> Chair<'s> {
    fn of(arrangement: &Arrangement, main: &InPlace<'_>, seat: &'s InPlace<'s>) -> Self {
        let facing = seat.placed.facing;
        let square = match arrangement.choices.seats().iter().find(|second| second.piece == seat.placed.piece) {
            Some(second) => square_way(second, main.placed.facing),
            None => nearest_way(main.placed.facing, facing),
        };
        Self { seat, square, turn: square.turn_to(facing).to_degrees() }
    }

    /// At a wall it is square to that.
    fn is_square(&self) -> bool {
        self.seat.placed.at_wall.is_some() || self.turn.abs() < TURN
    }

    fn breach(&self, main: &InPlace<'_>) -> Option<Breach> {
        let tell = |wrong: Wrong, between: &[Thing], by: f64| Some(Breach::new(Rule::Turned, wrong, between, by));
        if self.is_square() {
            let may = self.seat.piece.turned.may_be_square();
            return if may { None } else { tell(Wrong::TurnedOtherwise, &[self.seat.thing()], 0.0) };
        }
        if !TURNS.iter().any(|degrees| (degrees - self.turn.abs()).abs() < TURN) {
            return tell(Wrong::TurnedOtherwise, &[self.seat.thing()], 0.0);
        }
        let away = self.faced_better_otherwise(heart(main));
        if away > SLACK { tell(Wrong::TurnedFrom, &[self.seat.thing(), main.thing()], away) } else { None }
    }

    /// How far a place lies beyond the lines half way to the ways next to the one that it faces, mm; below 0 between them.
    fn faced_better_otherwise(&self, place: Point) -> f64 {
        let to = place - self.seat.placed.back_middle();
        let turn = self.turn.abs();
        let past = |other: f64| {
            let half_way = self.square.turned(((turn + other) / 2.0).to_radians() * self.turn.signum());
            let aside = half_way.cross(to) * self.turn.signum();
            if other < turn { -aside } else { aside }
        };
        // Of all ways those that it might have are half way nearest.
        let others = std::iter::once(0.0).chain(TURNS).filter(|other| (other - turn).abs() > TURN);
        others.map(past).fold(f64::NEG_INFINITY, f64::max)
    }
}

/// The way in which a second seat looks square-on.
fn square_way(second: &SecondSeat, facing: Point) -> Point {
    match second.place {
        SecondPlace::Opposite => -facing,
        SecondPlace::Left => facing.right(),
        SecondPlace::Right => facing.left(),
    }
}

/// Of the ways square to `main` the one nearest to `facing`.
fn nearest_way(main: Point, facing: Point) -> Point {
    let ways = [main, main.left(), -main, main.right()];
    ways.into_iter().max_by(|one, other| one.dot(facing).total_cmp(&other.dot(facing))).unwrap_or(main)
}

fn heart(main: &InPlace<'_>) -> Point {
    let (left, right) = main.placed.front();
    (left + right) * 0.5 + main.placed.facing * HEART
}

/// Two of one row: mirror images, or, of three or more, turned by as much.
fn unlike(scene: &CheckedLayout<'_>, first: &Chair<'_>, second: &Chair<'_>) -> Option<Breach> {
    let row = first.seat.piece.alike.filter(|row| second.seat.piece.alike == Some(*row))?;
    let turn = |chair: &Chair<'_>| if chair.is_square() { 0.0 } else { chair.turn };
    let of_row =
        scene.brief.pieces().filter(|(id, piece)| piece.alike == Some(row) && *id != scene.arrangement.main_seat);
    let [one, other] = [turn(first), turn(second)];
    let off = if of_row.count() > 2 { one.abs() - other.abs() } else { one + other };
    let breach = || Breach::new(Rule::Turned, Wrong::TurnedUnlike, &[first.seat.thing(), second.seat.thing()], 0.0);
    (off.abs() > TURN).then(breach)
}
