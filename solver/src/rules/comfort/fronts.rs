//! The fronts that people sit along, the axis of a seat, and the screen before it.

use crate::arrangement::Role;
use crate::rules::linear_outline::LinearStretch;
use crate::rules::{Linear, LinearOutline, LinearPoint, Pose};

/// What counts of a front leaves so much at each end, mm: an arm (common practice, no source).
pub(super) const ENDS: f64 = 100.0;

/// A place on the axis of a seat: through the middle of its front, of a corner sofa through the middle of its bay, from
/// the return out to the free end.
pub(crate) fn axis(seat: &Pose) -> LinearPoint {
    seat.middle_of_bay()
}

/// The floor before the front of the main run, `reach` deep, less `trim` at each end.
pub(super) fn before_main(seat: &Pose, trim: f64, reach: f64) -> LinearOutline {
    let (from, to) = seat.bay();
    let depth = seat.depth();
    seat.block([&from.shifted(trim), &to.shifted(-trim)], [&depth, &depth.clone().shifted(reach)])
}

/// The floor before the front of each return.
pub(super) fn before_returns(seat: &Pose, reach: f64) -> Vec<LinearOutline> {
    let (depth, (low, high)) = (seat.depth(), seat.bay());
    let before = |length: Linear, [from, to]: [&Linear; 2]| {
        let out = LinearStretch { way: seat.stand.facing, ends: [&depth, &length] };
        LinearOutline::block(&seat.anchor, out, LinearStretch { way: seat.along(), ends: [from, to] })
    };
    let first = seat.return_length().filter(|_| seat.hand.is_some());
    let first = first.map(|length| before(length, [&low, &low.clone().shifted(reach)]));
    let second = seat.second_return().map(|length| before(length, [&high.clone().shifted(-reach), &high]));
    first.into_iter().chain(second).collect()
}

/// The main seat and the screen of a pair, in that order.
pub(super) fn seat_and_screen<'p>(first: &'p Pose, second: &'p Pose) -> Option<(&'p Pose, &'p Pose)> {
    match (first.role, second.role) {
        (Role::MainSeat, other) if other.is_screen() => Some((first, second)),
        (other, Role::MainSeat) if other.is_screen() => Some((second, first)),
        _ => None,
    }
}

/// The middle of the front of the screen.
pub(super) fn middle_of_screen(screen: &Pose) -> LinearPoint {
    screen.middle_of_back().moved(screen.stand.facing, &screen.depth())
}

/// How long the front of the main run is: of a corner sofa from the return out.
pub(super) fn length_of_front(seat: &Pose) -> Linear {
    let (from, to) = seat.bay();
    match seat.hand {
        Some(_) => to.plus(&from, -1.0),
        None => seat.width(),
    }
}
