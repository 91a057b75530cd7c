//! The leaf of a door that swings in: what it sweeps, and where it rests.

use elbowroom_model::{Door, Hinge, Point, Swings, WallItem};

use super::checked_shape::Shape;
use super::face::Face;
use crate::geometry::Convex;

/// How thick a leaf is, mm; it lies on the far side of the line from which its doorway is clear.
const THICK: f64 = 40.0;
/// A leaf that opens so far lies at its wall, in nobody's way, degrees.
const FLAT: f64 = 175.0;

/// The leaf of a door that swings in.
pub(super) struct LeafInRoom {
    hinge: Point,
    /// Unit vector from the hinge along the closed leaf.
    closed: Point,
    inward: Point,
    width: f64,
    /// How far it opens, degrees.
    opens_to: f64,
}

impl LeafInRoom {
    /// `None` for a door with no leaf that swings in.
    pub(super) fn of(item: &WallItem, door: &Door, face: Face) -> Option<Self> {
        let (hinge, free) = match (door.swings, door.hinge?) {
            (Swings::In, Hinge::Left) => (face.left, face.right),
            (Swings::In, Hinge::Right) => (face.right, face.left),
            (Swings::Out | Swings::Slides | Swings::Folds | Swings::Pocket, _) => return None,
        };
        let closed = (free - hinge).unit()?;
        Some(Self { hinge, closed, inward: face.inward, width: item.width, opens_to: door.opens_to() })
    }

    /// The first quarter turn, and the rest where it opens further.
    pub(super) fn swept(&self) -> Vec<Shape> {
        let sector = |sides| Shape::Sector { hinge: self.hinge, sides, radius: self.width };
        let (_, far_side) = self.at_end();
        let first = sector([self.closed, self.inward]);
        std::iter::once(first).chain((self.opens_to > 90.0).then(|| sector([-self.closed, -far_side]))).collect()
    }

    /// Its plan where it rests; `None` where it lies at its wall.
    pub(super) fn at_rest(&self, rests_at: f64) -> Option<Convex> {
        let (leaf, far_side) = self.at_end();
        let (tip, aside) = (self.hinge + leaf * self.width, far_side * THICK);
        let corners = [self.hinge, tip, tip + aside, self.hinge + aside];
        (rests_at < FLAT).then(|| Convex::counter_clockwise(corners))
    }

    /// Unit vector along the leaf as far as it opens, and the one square to it away from the doorway.
    fn at_end(&self) -> (Point, Point) {
        let (sine, cosine) = self.opens_to.to_radians().sin_cos();
        (self.closed * cosine + self.inward * sine, self.inward * cosine - self.closed * sine)
    }
}
