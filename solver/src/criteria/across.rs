//! What stands across an opening or a doorway, square to it: the backs that close an open side, the return that bars
//! the way in.

use elbowroom_model::{Hand, Point, WallItem};

use super::curve::through;
use super::obstacles::Whose;
use super::setting::Setting;
use crate::geometry::Convex;

/// How far before an open side a back still closes it: wholly up to the first figure, no more from the second on, mm
/// (common practice, no source).
const CLOSES: [(f64, f64); 2] = [(900.0, 1.0), (3000.0, 0.0)];

/// How far before a doorway a return still stands in the way, mm (common practice, no source).
const BARS: [(f64, f64); 2] = [(900.0, 1.0), (2400.0, 0.0)];

/// How much of an opening's width something stands across, 0 to 1, and what does most.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub(super) struct Across {
    pub(super) share: f64,
    pub(super) most: Option<Whose>,
}

/// Backs of seats turned to an opening, across its width; one far before it counts less.
pub(super) fn backs_across(setting: &Setting, item: &WallItem) -> Across {
    let Some(opening) = Line::of(setting, item) else { return Across::default() };
    let backs = setting.barriers.obstacles.iter().filter_map(|obstacle| {
        let turned = match obstacle.whose {
            Whose::Back(seat) => setting.scene.layout.of(seat)?.facing,
            Whose::ReturnBack(seat) => setting.scene.layout.of(seat)?.along(),
            _ => return None,
        };
        let share = opening.covered_by(&obstacle.shape, &CLOSES) * turned.dot(opening.inward).max(0.0);
        Some((share, obstacle.whose))
    });
    sum(backs)
}

/// Returns of corner sofas across the way in, straight before a doorway; chaises count too, for one cannot walk over them.
pub(super) fn returns_across(setting: &Setting, item: &WallItem) -> Across {
    let Some(doorway) = Line::of(setting, item) else { return Across::default() };
    let returns = setting.scene.layout.placed.iter().filter_map(|placed| {
        matches!(placed.hand, Some(Hand::Left | Hand::Right)).then_some(())?;
        let parts = placed.parts();
        let arm = parts.get(1)?;
        Some((doorway.covered_by(arm, &BARS), Whose::ReturnBack(placed.piece)))
    });
    sum(returns)
}

fn sum(parts: impl Iterator<Item = (f64, Whose)>) -> Across {
    let mut all = Across::default();
    let mut largest = 0.0;
    for (share, whose) in parts {
        all.share += share;
        if share > largest {
            (largest, all.most) = (share, Some(whose));
        }
    }
    Across { share: all.share.min(1.0), ..all }
}

/// The line of an opening in its wall.
struct Line {
    left: Point,
    along: Point,
    inward: Point,
    width: f64,
}

impl Line {
    fn of(setting: &Setting, item: &WallItem) -> Option<Self> {
        let room = &setting.brief().room;
        let wall = room.wall(item.wall)?;
        let (left, _) = room.ends(item)?;
        (item.width > 0.0).then(|| Self { left, along: wall.along(), inward: wall.inward(), width: item.width })
    }

    /// Share of the width that `shape` stands before, less where it stands far off.
    fn covered_by(&self, shape: &Convex, fades: &[(f64, f64)]) -> f64 {
        let span = |direction: Point| {
            let from = self.left.dot(direction);
            (-shape.support(-direction) - from, shape.support(direction) - from)
        };
        let ((from, to), (near, _)) = (span(self.along), span(self.inward));
        let covered = (to.min(self.width) - from.max(0.0)).max(0.0) / self.width;
        if near < 0.0 { 0.0 } else { covered * through(fades, near) }
    }
}
