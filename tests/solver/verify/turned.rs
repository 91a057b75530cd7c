//! Chairs at an angle: by 15, 30 or 45 degrees, toward the heart of the group, two of one row as mirror images.

use elbowroom_model::{Brief, PieceId, PieceKind, Point, Turned};
use elbowroom_solver::Placed;

use super::{HAIR, SOUTH, broken, edge, placed, second_check};
use crate::support::checker::Part;
use crate::support::rooms::{Furnish, piece, rectangle};

/// A sofa, and chairs of one row that may be turned.
fn brief(turned: Turned, chairs: usize) -> Brief {
    let mut brief = rectangle(8000.0, 7000.0).piece(piece(PieceKind::Sofa));
    for place in 1..=chairs {
        let mut chair = piece(PieceKind::Armchair);
        (chair.name, chair.turned) = (format!("armchair {place}"), turned);
        chair.alike = (chairs > 1).then_some(PieceId(1));
        brief = brief.piece(chair);
    }
    brief
}

/// Free in the room; the heart of the group lies at (4000, -3600).
fn sofa() -> Placed {
    placed(0, (4000.0, -2000.0), SOUTH, (1000.0, 900.0))
}

/// A chair that looks so many degrees counter-clockwise from east.
fn chair(place: usize, back: (f64, f64), degrees: f64) -> Placed {
    placed(place, back, Point::toward(degrees), (800.0, 800.0))
}

/// Both checks agree; `true` where they find nothing.
fn is_sound(brief: &Brief, chairs: &[Placed]) -> bool {
    let all = [&[sofa()], chairs].concat();
    let (first, second) = (broken(brief, all.clone()), second_check(brief, &all, &[], Part::Places));
    assert!(first.iter().all(|rule| *rule == "turned"), "{first:?}");
    assert!(second.iter().all(|what| what.starts_with("turned")), "{second:?}");
    assert_eq!(first.is_empty(), second.is_empty(), "{first:?} {second:?}");
    first.is_empty()
}

#[test]
fn a_chair_is_turned_by_an_angle_of_the_format() {
    let brief = brief(Turned::Either, 1);
    // From the right-hand side of the sofa's front, as one faces it, ever further behind the heart.
    let toward = |degrees: f64| {
        let out = Point::toward(degrees) * -2200.0;
        chair(1, (4000.0 + out.x, -3600.0 + out.y), degrees)
    };
    for degrees in [0.0, 15.0, 30.0, 45.0, -15.0, -30.0, -45.0] {
        assert!(is_sound(&brief, &[toward(degrees)]), "{degrees}");
    }
    for degrees in [5.0, 20.0, 37.0, -40.0] {
        assert!(!is_sound(&brief, &[toward(degrees)]), "{degrees}");
    }
}

/// The heart lies on the line half way between two angles at the edge: 7.5 degrees from square.
#[test]
fn a_chair_is_turned_to_the_heart_by_the_angle_that_faces_it_best() {
    let brief = brief(Turned::Either, 1);
    let half = 1500.0 * 7.5_f64.to_radians().tan();
    edge("turned", &brief, -3600.0 - half, -3600.0 - half + 20.0, |y| vec![sofa(), chair(1, (2500.0, y), 15.0)]);
    let beyond = 1500.0 * 22.5_f64.to_radians().tan();
    edge("turned", &brief, -3600.0 - beyond, -3600.0 - beyond - 20.0, |y| vec![sofa(), chair(1, (2500.0, y), 15.0)]);
    // Turned the other way it looks away.
    assert!(!is_sound(&brief, &[chair(1, (2500.0, -3600.0 - half - HAIR), -15.0)]));
}

#[test]
fn a_chair_that_is_to_be_turned_does_not_stand_square() {
    let square = || [chair(1, (2500.0, -3600.0), 0.0)];
    assert!(is_sound(&brief(Turned::Either, 1), &square()));
    assert!(!is_sound(&brief(Turned::Yes, 1), &square()));
    // Of what is not to be turned nothing is asked here.
    assert!(is_sound(&brief(Turned::No, 1), &[chair(1, (2500.0, -3600.0), 20.0)]));
}

#[test]
fn two_of_a_row_are_turned_as_mirror_images() {
    let brief = brief(Turned::Either, 2);
    let out = 1500.0 * 15.0_f64.to_radians().tan();
    let pair = |right: f64, left: f64, aside: f64| {
        [chair(1, (2500.0, -3600.0 - aside), right), chair(2, (5500.0, -3600.0 - aside), 180.0 + left)]
    };
    assert!(is_sound(&brief, &pair(15.0, -15.0, out)));
    assert!(is_sound(&brief, &pair(0.0, 0.0, 0.0)));
    // Both may stand where either is turned or not: half way.
    let half = 1500.0 * 7.5_f64.to_radians().tan();
    assert!(!is_sound(&brief, &pair(15.0, 0.0, half)));
    let opposite = |one: f64, other: f64| [chair(1, (3400.0, -5400.0), one), chair(2, (4600.0, -5400.0), other)];
    assert!(is_sound(&brief, &opposite(75.0, 105.0)));
    assert!(!is_sound(&brief, &opposite(75.0, 90.0)));
}
