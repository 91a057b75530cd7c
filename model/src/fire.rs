//! Where a fire burns, and what a chimney breast carries: the mouth of the fire, sockets on the breast.

use crate::opening::ItemKind;
use crate::point::Point;
use crate::room::{Room, WallItem};

impl WallItem {
    /// From where to where the fire's mouth runs, from the wall's left end, mm; of all else the whole item.
    #[must_use]
    pub fn mouth(&self) -> [f64; 2] {
        let end = self.at + self.width;
        let opening = match &self.kind {
            ItemKind::Fireplace(fire) => fire.opening,
            _ => None,
        };
        // What closing took off the end of a wall it took off the mouth too.
        opening.map_or([self.at, end], |mouth| {
            let from = (self.at + mouth.at).min(end);
            [from, (from + mouth.width).min(end)]
        })
    }
}

impl Room {
    /// The two ends of a fire's mouth on its wall, as measured, left then right; of all else the ends of the item.
    #[must_use]
    pub fn mouth_ends(&self, item: &WallItem) -> Option<(Point, Point)> {
        let wall = self.wall(item.wall)?;
        let [from, to] = item.mouth();
        Some((wall.point_at(from), wall.point_at(to)))
    }

    /// How far before its wall something lies that has no depth of its own, mm: what is on a chimney breast lies on its front.
    #[must_use]
    pub fn stands_out(&self, item: &WallItem) -> f64 {
        let carries =
            |other: &&WallItem| other.wall == item.wall && (other.at..=other.at + other.width).contains(&item.at);
        let depth = |other: &WallItem| match (&item.kind, &other.kind) {
            (ItemKind::Socket(_), ItemKind::Fireplace(fire)) => Some(fire.depth),
            _ => None,
        };
        self.items.iter().filter(carries).filter_map(depth).fold(0.0, f64::max)
    }
}
