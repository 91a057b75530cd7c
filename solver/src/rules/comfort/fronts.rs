//! The fronts that people sit along, the axis of a seat, and the screen before it.

use crate::arrangement::Role;
use crate::rules::linear_outline::LinearStretch;
use crate::rules::{Linear, LinearOutline, LinearPoint, Pose};

/// What counts of a front leaves so much at each end, mm: an arm (common practice, no source).
pub(super) const ENDS: f64 = 100.0;

/// A place on the axis of a seat: through the middle of its front, of a corner sofa through the middle of its bay, from
/// the return out to the free end.
pub(crate) fn axis(seat: &Pose) -> LinearPoint {
    match seat.hand {
        Some(_) => {
            let half = Linear::default().plus(&seat.width(), 0.5).plus(&seat.depth(), 0.5);
            seat.anchor.clone().moved(seat.along(), &half)
        }
        None => seat.anchor.clone(),
    }
}

/// Both ends of the front of the main run that people sit along, from the anchor.
fn stretch(seat: &Pose) -> (Linear, Linear) {
    match seat.hand {
        Some(_) => (seat.depth(), seat.width()),
        None => seat.stretch(),
    }
}

/// The floor before the front of the main run, `reach` deep, less `trim` at each end.
pub(super) fn before_main(seat: &Pose, trim: f64, reach: f64) -> LinearOutline {
    let (from, to) = stretch(seat);
    let depth = seat.depth();
    seat.block([&from.shifted(trim), &to.shifted(-trim)], [&depth, &depth.clone().shifted(reach)])
}

/// The floor before the front of a return.
pub(super) fn before_return(seat: &Pose, reach: f64) -> Option<LinearOutline> {
    let (_, length) = (seat.hand?, seat.return_length()?);
    let depth = seat.depth();
    let far = depth.clone().shifted(reach);
    let out = LinearStretch { way: seat.stand.facing, ends: [&depth, &length] };
    Some(LinearOutline::block(&seat.anchor, out, LinearStretch { way: seat.along(), ends: [&depth, &far] }))
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
    match seat.hand {
        Some(_) => seat.width().plus(&seat.depth(), -1.0),
        None => seat.width(),
    }
}
