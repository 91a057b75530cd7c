//! The floor before something on a wall, which a piece keeps out of or pays for.

use elbowroom_model::{ItemId, Term};

use super::asked::Asked;
use crate::geometry::Convex;
use crate::rules::{Pose, With, out_of_polygon};
use crate::site::WallPlace;

/// A piece has its back to what hangs on a wall where the cosine between the ways that the two face is more than this: 45
/// degrees.
const BACK_TO: f64 = 0.7;

/// Not so near before what hangs at a place with its back to it, or at a price; `None` where it does not have its back to it.
pub(super) fn not_before(pose: &Pose, item: ItemId, place: &WallPlace, near: f64, term: Term) -> Option<Asked> {
    let WallPlace { left, right, inward } = *place;
    let out = inward * near;
    let floor = Convex::counter_clockwise([left, right, right + out, left + out]);
    (inward.dot(pose.stand.facing) > BACK_TO).then(|| out_of(pose, &floor, term, item))
}

/// Out of a stretch of floor by something on a wall, or at a price.
pub(super) fn out_of(pose: &Pose, zone: &Convex, term: Term, item: ItemId) -> Asked {
    Asked::or_flat(term, pose, With::Item(item), out_of_polygon(pose.main(), zone))
}
