//! The stretches of edge that one steps through or up to.

use elbowroom_model::{Brief, Door, FixedId, Hinge, ItemId, ItemKind, PieceId, Point, WallId, WallItem};

use super::checked_room::CheckedRoom;
use super::tolerance::PARALLEL;
use super::travel::Gate;
use crate::answer::Thing;
use crate::geometry::Segment;
use crate::layout::{Layout, Size};
use crate::routes::End;

/// A stretch of a line, as distances from its origin, mm.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Stretch {
    from: f64,
    to: f64,
}

/// A mouth as measured, and how far it may be widened.
#[derive(Debug, Clone, Copy)]
pub(super) struct Mouth {
    /// A place on its line; `span` and `limits` run from it along `axis`.
    origin: Point,
    axis: Point,
    span: Stretch,
    limits: Stretch,
    /// Unit vector out of its front.
    out: Point,
    /// The wall that it is in.
    wall: Option<WallId>,
}

impl Mouth {
    /// The mouth of an end; `None` where the room or the layout has no such end.
    pub(super) fn of(checked: &CheckedRoom<'_>, layout: &Layout, end: End) -> Option<Self> {
        match end {
            End::Item(id) => Self::of_item(checked, id),
            End::Fixed(id) => Self::of_fixed(checked, id),
            End::Piece(piece) => Self::of_piece(checked, layout, piece),
        }
    }

    /// A doorway between its jambs, a window between its sides; the front of the radiator under it.
    fn of_item(checked: &CheckedRoom<'_>, id: ItemId) -> Option<Self> {
        let brief = checked.brief;
        let item = brief.room.item(id)?;
        let wall = brief.room.wall(item.wall)?;
        let &Segment { start, end } = checked.walls.get(item.wall.0)?;
        let (axis, out) = (wall.along(), wall.inward());
        let origin = wall.start + out * brief.room.measured_within;
        let limits = Stretch { from: (start - origin).dot(axis), to: (end - origin).dot(axis) };
        let span = Stretch { from: item.at.max(limits.from), to: (item.at + item.width).min(limits.to) };
        let limits = if checked.leaves.iter().any(|(of, _)| *of == Thing::Item(id)) {
            beside_leaf(item, span, limits)
        } else {
            limits
        };
        let mouth = Self { origin, axis, span, limits, out, wall: Some(item.wall) };
        let under = matches!(item.kind, ItemKind::Window(_)).then(|| radiator_under(brief, item)).flatten();
        Some(under.map_or(mouth, |(span, depth)| {
            Self { origin: origin + out * depth, span, wall: None, ..mouth }.limited_by(checked)
        }))
    }

    /// The edge of a fixed thing that people stand before.
    fn of_fixed(checked: &CheckedRoom<'_>, id: FixedId) -> Option<Self> {
        let room = &checked.brief.room;
        let floor = room.used_floor(id)?.moved_out(room.measured_within);
        let axis = (floor.to - floor.from).unit()?;
        let span = Stretch { from: 0.0, to: (floor.to - floor.from).norm() };
        Some(Self { origin: floor.from, axis, span, limits: span, out: floor.out, wall: None }.limited_by(checked))
    }

    /// The middle part of a front edge that stays at every size; of a corner sofa from the return outward, of a U
    /// up to the second.
    fn of_piece(checked: &CheckedRoom<'_>, layout: &Layout, piece: PieceId) -> Option<Self> {
        let (placed, asked) = (layout.of(piece)?, checked.brief.piece(piece)?);
        let (out, axis) = (placed.facing, placed.along());
        let origin = placed.anchor + out * placed.size.depth;
        let least = asked.width.least.min(placed.size.width);
        let (from, to, own_from) = match placed.hand {
            Some(_) => {
                let Size { width, depth, return_depth, second_return, .. } = placed.size;
                let inner = return_depth.unwrap_or(depth);
                // A U keeps its width: its front is the whole bay.
                let end = if second_return.is_some() { width - depth } else { least };
                (inner, end.max(inner), inner)
            }
            None => (-least / 2.0, least / 2.0, f64::NEG_INFINITY),
        };
        let span = Stretch { from, to };
        let mut mouth = Self { origin, axis, span, limits: span, out, wall: None }.limited_by(checked);
        mouth.limits.from = mouth.limits.from.max(own_from);
        Some(mouth)
    }

    /// Limited by the walls that its line runs into, seen from its middle.
    fn limited_by(mut self, checked: &CheckedRoom<'_>) -> Self {
        let middle = (self.span.from + self.span.to) / 2.0;
        let from = self.origin + self.axis * middle;
        let hit =
            |way: Point| checked.walls.iter().filter_map(|&wall| ahead(from, way, wall)).fold(f64::INFINITY, f64::min);
        self.limits = Stretch { from: middle - hit(-self.axis), to: middle + hit(self.axis) };
        self
    }

    /// Widened along its line to `rule`, evenly, as far as its limits and the middle to `other` on the same wall allow.
    pub(super) fn widened(&self, rule: f64, other: Option<&Self>) -> Gate {
        let mut limits = self.limits;
        if let Some(other) = other.filter(|other| self.wall.is_some() && other.wall == self.wall) {
            if other.span.from >= self.span.to {
                limits.to = limits.to.min((self.span.to + other.span.from) / 2.0);
            } else if other.span.to <= self.span.from {
                limits.from = limits.from.max((self.span.from + other.span.to) / 2.0);
            }
        }
        let Stretch { from, to } = self.span.widened(limits, rule);
        Gate { ends: [self.origin + self.axis * from, self.origin + self.axis * to], out: self.out }
    }
}

impl Stretch {
    /// Widened to `width`, evenly within `limits`; what one end cannot take the other does.
    fn widened(self, limits: Self, width: f64) -> Self {
        let missing = width - (self.to - self.from);
        if missing <= 0.0 {
            return self;
        }
        let (below, above) = ((self.from - limits.from).max(0.0), (limits.to - self.to).max(0.0));
        let down = (missing / 2.0).max(missing - above).min(below);
        let up = (missing - down).min(above);
        Self { from: self.from - down, to: self.to + up }
    }
}

/// A leaf that rests in the room ends its doorway at the hinge.
fn beside_leaf(item: &WallItem, span: Stretch, limits: Stretch) -> Stretch {
    match &item.kind {
        ItemKind::Door(Door { hinge: Some(Hinge::Left), .. }) => Stretch { from: span.from, ..limits },
        ItemKind::Door(Door { hinge: Some(Hinge::Right), .. }) => Stretch { to: span.to, ..limits },
        _ => limits,
    }
}

/// How far ahead of `from` the wall crosses the way.
fn ahead(from: Point, way: Point, wall: Segment) -> Option<f64> {
    let (start, along) = (wall.start, wall.vector());
    let turn = way.cross(along);
    if turn.abs() < PARALLEL {
        return None;
    }
    let distance = (start - from).cross(along) / turn;
    let share = (start - from).cross(way) / turn;
    (distance >= 0.0 && (0.0..=1.0).contains(&share)).then_some(distance)
}

/// The stretch of a radiator's front that lies under the window, along the wall, and the radiator's depth.
fn radiator_under(brief: &Brief, window: &WallItem) -> Option<(Stretch, f64)> {
    let under = |item: &WallItem| match &item.kind {
        ItemKind::Radiator(radiator) if item.wall == window.wall => {
            let (from, to) = (item.at.max(window.at), (item.at + item.width).min(window.at + window.width));
            (from < to).then_some((Stretch { from, to }, radiator.depth))
        }
        _ => None,
    };
    let all = brief.room.items.iter().filter_map(under);
    all.max_by(|(one, _), (other, _)| (one.to - one.from).total_cmp(&(other.to - other.from)))
}

#[cfg(test)]
mod tests {
    use super::Stretch;

    #[test]
    fn a_mouth_is_widened_evenly_and_one_end_takes_what_the_other_cannot() {
        let widened = |span: (f64, f64), limit: f64| {
            let stretch = Stretch { from: span.0, to: span.1 };
            let Stretch { from, to } = stretch.widened(Stretch { from: 0.0, to: limit }, 900.0);
            (from, to)
        };
        assert_eq!(widened((100.0, 900.0), 5000.0), (50.0, 950.0));
        assert_eq!(widened((20.0, 820.0), 5000.0), (0.0, 900.0));
        assert_eq!(widened((4180.0, 4980.0), 5000.0), (4100.0, 5000.0));
        assert_eq!(widened((20.0, 820.0), 850.0), (0.0, 850.0));
        assert_eq!(widened((100.0, 1100.0), 5000.0), (100.0, 1100.0));
    }
}
