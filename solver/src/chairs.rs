//! Chairs at the dining tables that are to seat so many: one at each place, along the long sides first, then at the ends;
//! and one at each desk or piano.

use elbowroom_model::{Brief, Clearance, Front, Piece, PieceId, Point};

use crate::geometry::Convex;
use crate::layout::{Layout, Placed};

/// Width and depth of a dining chair, mm (common practice, no source).
const CHAIR: f64 = 450.0;

/// How much narrower a chair is than the edge before it, at least, mm (common practice, no source).
const SPARE: f64 = 40.0;

/// So much of a chair is under the table where nobody sits on it, mm (common practice, no source).
const UNDER: f64 = 150.0;

/// An edge that is shorter than its places by less than this holds them, mm: rounding.
const ROUNDING: f64 = 0.5;

/// A chair at a dining table or a desk.
#[derive(Debug, Clone, PartialEq)]
pub struct Chair {
    /// The table, by its place in the brief.
    pub table: PieceId,
    /// Its four corners, drawn up to the table, plan coordinates, mm.
    pub ring: [Point; 4],
}

impl Chair {
    /// The floor from the table's edge on that it takes where it is drawn so far back.
    #[must_use]
    pub fn drawn_back(&self, reach: f64) -> Convex {
        let [near, other, _, far] = self.ring;
        let out = (far - near).unit().unwrap_or_default();
        let edge = [near + out * UNDER, other + out * UNDER];
        Convex::counter_clockwise([edge[0], edge[1], edge[1] + out * reach, edge[0] + out * reach])
    }
}

/// The chairs of a layout.
#[must_use]
pub fn chairs(brief: &Brief, layout: &Layout) -> Vec<Chair> {
    let tables = layout.placed.iter().filter_map(|placed| Some((brief.piece(placed.piece)?, placed)));
    tables.flat_map(|(piece, placed)| chairs_at(brief, piece, placed)).collect()
}

/// The chairs at one table; none at a table of which the file does not say how many it seats. At a desk one sits alone.
#[must_use]
pub fn chairs_at(brief: &Brief, piece: &Piece, placed: &Placed) -> Vec<Chair> {
    if piece.kind.traits().front == Front::SatAt {
        let (out, size) = (placed.facing, placed.size);
        let front = Side { middle: placed.anchor + out * size.depth, out, length: size.width };
        return front.chairs(1).into_iter().map(|ring| Chair { table: placed.piece, ring }).collect();
    }
    let place = brief.rules.get(Clearance::DiningPlaces);
    let Some(seats) = piece.seats.filter(|_| place > 0.0) else { return Vec::new() };
    let (long, short) = sides(placed);
    let mut left = seats as usize;
    let mut found = Vec::new();
    for sides in [long, short] {
        let each: Vec<usize> = sides.iter().map(|side| ((side.length + ROUNDING) / place) as usize).collect();
        let taken = shared(left, &each);
        left -= taken.iter().sum::<usize>();
        let rings = sides.iter().zip(taken).flat_map(|(side, count)| side.chairs(count));
        found.extend(rings.map(|ring| Chair { table: placed.piece, ring }));
    }
    found
}

/// So many, one by one to whichever side has the fewest of what it holds.
fn shared(count: usize, most: &[usize]) -> Vec<usize> {
    let mut taken = vec![0; most.len()];
    for _ in 0..count {
        let free = (0..most.len()).filter(|side| taken[*side] < most[*side]).min_by_key(|side| taken[*side]);
        let Some(side) = free else { break };
        taken[side] += 1;
    }
    taken
}

/// A side of a table that stands at no wall.
struct Side {
    middle: Point,
    /// Unit vector away from the table.
    out: Point,
    length: f64,
}

/// The long sides, and the short ones.
fn sides(placed: &Placed) -> (Vec<Side>, Vec<Side>) {
    let (along, out, size) = (placed.along(), placed.facing, placed.size);
    let side = |middle, out, length| Side { middle, out, length };
    let heart = placed.anchor + out * (size.depth / 2.0);
    let mut across = vec![side(placed.anchor + out * size.depth, out, size.width)];
    if placed.at_wall.is_none() {
        across.push(side(placed.anchor, -out, size.width));
    }
    let end = |way: Point| side(heart + way * (size.width / 2.0), way, size.depth);
    let ends = vec![end(along), end(-along)];
    if size.depth > size.width { (ends, across) } else { (across, ends) }
}

impl Side {
    fn chairs(&self, count: usize) -> Vec<[Point; 4]> {
        let each = self.length / count.max(1) as f64;
        let half = self.out.left() * (CHAIR.min(each - SPARE) / 2.0);
        let ring = |place: usize| {
            let off = (place as f64 + 0.5) * each - self.length / 2.0;
            let at = self.middle + self.out.left() * off;
            let (near, far) = (at - self.out * UNDER, at + self.out * (CHAIR - UNDER));
            [near - half, near + half, far + half, far - half]
        };
        (0..count).map(ring).collect()
    }
}

#[cfg(test)]
mod tests {
    use super::shared;

    #[test]
    fn places_are_shared_evenly_as_far_as_a_side_holds_them() {
        assert_eq!(shared(4, &[2, 2]), [2, 2]);
        assert_eq!(shared(3, &[2, 2]), [2, 1]);
        assert_eq!(shared(6, &[2, 2]), [2, 2]);
        assert_eq!(shared(2, &[1, 0]), [1, 0]);
    }
}
