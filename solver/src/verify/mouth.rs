//! The stretches of edge that one steps through or up to.

use elbowroom_model::{Brief, ItemId, ItemKind, PieceId, Point, WallId};

use super::checked_room::CheckedRoom;
use super::tolerance::PARALLEL;
use super::travel::Gate;
use crate::layout::Layout;
use crate::routes::End;

/// A mouth as measured, and how far it may be widened.
#[derive(Debug, Clone, Copy)]
pub(super) struct Mouth {
    /// A place on its line; `span` and `limits` run from it along `axis`.
    origin: Point,
    axis: Point,
    span: (f64, f64),
    limits: (f64, f64),
    /// Unit vector out of its front.
    out: Point,
    /// The wall that it is in.
    wall: Option<WallId>,
}

impl Mouth {
    /// The mouth of an end; `None` where the room or the layout has no such end.
    pub(super) fn of(ground: &CheckedRoom<'_>, layout: &Layout, end: End) -> Option<Self> {
        match end {
            End::Item(id) => Self::of_item(ground, id),
            End::Piece(piece) => Self::of_piece(ground, layout, piece),
        }
    }

    /// A doorway between its jambs, a window between its sides; the front of the radiator under it.
    fn of_item(ground: &CheckedRoom<'_>, id: ItemId) -> Option<Self> {
        let brief = ground.brief;
        let item = brief.room.item(id)?;
        let wall = brief.room.wall(item.wall)?;
        let &(start, end) = ground.walls.get(item.wall.0)?;
        let (axis, out) = (wall.along(), wall.inward());
        let origin = wall.start + out * brief.room.measured_within;
        let limits = ((start - origin).dot(axis), (end - origin).dot(axis));
        let span = (item.at.max(limits.0), (item.at + item.width).min(limits.1));
        let mouth = Self { origin, axis, span, limits, out, wall: Some(item.wall) };
        let under = matches!(item.kind, ItemKind::Window(_)).then(|| radiator_under(brief, item)).flatten();
        Some(under.map_or(mouth, |(span, depth)| {
            Self { origin: origin + out * depth, span, wall: None, ..mouth }.limited_by(ground)
        }))
    }

    /// The middle part of a front edge that stays at every size; of a corner sofa from the return outward.
    fn of_piece(ground: &CheckedRoom<'_>, layout: &Layout, piece: PieceId) -> Option<Self> {
        let (placed, asked) = (layout.of(piece)?, ground.brief.piece(piece)?);
        let (out, axis) = (placed.facing, placed.along());
        let origin = placed.anchor + out * placed.size.depth;
        let least = asked.width.least.min(placed.size.width);
        let everywhere = (f64::NEG_INFINITY, f64::INFINITY);
        let (span, own) = match placed.hand {
            Some(_) => ((placed.size.depth, least.max(placed.size.depth)), (placed.size.depth, f64::INFINITY)),
            None => ((-least / 2.0, least / 2.0), everywhere),
        };
        let mut mouth = Self { origin, axis, span, limits: everywhere, out, wall: None }.limited_by(ground);
        mouth.limits.0 = mouth.limits.0.max(own.0);
        Some(mouth)
    }

    /// Limited by the walls that its line runs into, seen from its middle.
    fn limited_by(mut self, ground: &CheckedRoom<'_>) -> Self {
        let middle = (self.span.0 + self.span.1) / 2.0;
        let from = self.origin + self.axis * middle;
        let hit =
            |way: Point| ground.walls.iter().filter_map(|&wall| ahead(from, way, wall)).fold(f64::INFINITY, f64::min);
        self.limits = (middle - hit(-self.axis), middle + hit(self.axis));
        self
    }

    /// Widened along its line to `rule`, evenly, as far as its limits and the middle to `other` on the same wall allow.
    pub(super) fn widened(&self, rule: f64, other: Option<&Self>) -> Gate {
        let (mut low, mut high) = self.limits;
        if let Some(other) = other.filter(|other| self.wall.is_some() && other.wall == self.wall) {
            if other.span.0 >= self.span.1 {
                high = high.min((self.span.1 + other.span.0) / 2.0);
            } else if other.span.1 <= self.span.0 {
                low = low.max((self.span.0 + other.span.1) / 2.0);
            }
        }
        let (from, to) = widen(self.span, (low, high), rule);
        Gate { ends: [self.origin + self.axis * from, self.origin + self.axis * to], out: self.out }
    }
}

/// `span` widened to `width`, evenly within `limits`; what one end cannot take the other does.
fn widen((from, to): (f64, f64), (low, high): (f64, f64), width: f64) -> (f64, f64) {
    let missing = width - (to - from);
    if missing <= 0.0 {
        return (from, to);
    }
    let (below, above) = ((from - low).max(0.0), (high - to).max(0.0));
    let down = (missing / 2.0).max(missing - above).min(below);
    let up = (missing - down).min(above);
    (from - down, to + up)
}

/// How far ahead of `from` the wall crosses the way.
fn ahead(from: Point, way: Point, (start, end): (Point, Point)) -> Option<f64> {
    let along = end - start;
    let turn = way.cross(along);
    if turn.abs() < PARALLEL {
        return None;
    }
    let distance = (start - from).cross(along) / turn;
    let share = (start - from).cross(way) / turn;
    (distance >= 0.0 && (0.0..=1.0).contains(&share)).then_some(distance)
}

/// The stretch of a radiator's front that lies under the window, along the wall, and the radiator's depth.
fn radiator_under(brief: &Brief, window: &elbowroom_model::WallItem) -> Option<((f64, f64), f64)> {
    let under = |item: &elbowroom_model::WallItem| match &item.kind {
        ItemKind::Radiator(radiator) if item.wall == window.wall => {
            let (from, to) = (item.at.max(window.at), (item.at + item.width).min(window.at + window.width));
            (from < to).then_some(((from, to), radiator.depth))
        }
        _ => None,
    };
    let all = brief.room.items.iter().filter_map(under);
    all.max_by(|((a, b), _), ((c, d), _)| (b - a).total_cmp(&(d - c)))
}

#[cfg(test)]
mod tests {
    use super::widen;

    #[test]
    fn a_mouth_is_widened_evenly_and_one_end_takes_what_the_other_cannot() {
        assert_eq!(widen((100.0, 900.0), (0.0, 5000.0), 900.0), (50.0, 950.0));
        assert_eq!(widen((20.0, 820.0), (0.0, 5000.0), 900.0), (0.0, 900.0));
        assert_eq!(widen((4180.0, 4980.0), (0.0, 5000.0), 900.0), (4100.0, 5000.0));
        assert_eq!(widen((20.0, 820.0), (0.0, 850.0), 900.0), (0.0, 850.0));
        assert_eq!(widen((100.0, 1100.0), (0.0, 5000.0), 900.0), (100.0, 1100.0));
    }
}
