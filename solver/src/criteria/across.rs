//! What stands across an opening or a doorway, square to it: the backs that close an open side, the return that bars
//! the way in.

use elbowroom_model::{Point, WallItem};

use super::curve::through;
use super::obstacles::Whose;
use super::setting::Setting;
use crate::geometry::Convex;

/// How far before an open side a back still closes it: wholly up to the first figure, no more from the second on, mm
/// (common practice, no source).
const CLOSES: [(f64, f64); 2] = [(900.0, 1.0), (3000.0, 0.0)];

/// How far before a doorway a return still stands in the way, mm (common practice, no source).
const BARS: [(f64, f64); 2] = [(900.0, 1.0), (2400.0, 0.0)];

/// What stands across an opening.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub(super) struct Across {
    /// Share of the width, what stands far off or turned aside counted less, 0 to 1.
    pub(super) weighed: f64,
    /// What does most of it.
    pub(super) most: Option<Bar>,
}

/// One thing across an opening.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Bar {
    pub(super) whose: Whose,
    /// Share of the opening's width that it stands before, 0 to 1.
    pub(super) share: f64,
    /// How far before it, mm.
    pub(super) off: f64,
    weighed: f64,
}

/// What weighs less is not said.
const WORTH_SAYING: f64 = 0.03;

impl Across {
    fn of(bars: impl Iterator<Item = Bar>) -> Self {
        let mut all = Self::default();
        for bar in bars {
            all.weighed += bar.weighed;
            if bar.weighed > all.most.map_or(WORTH_SAYING, |most| most.weighed) {
                all.most = Some(bar);
            }
        }
        Self { weighed: all.weighed.min(1.0), ..all }
    }
}

impl Bar {
    /// `the return of the corner sofa stands across 95 % of <its>, 100 cm before it`.
    pub(super) fn words(&self, setting: &Setting, its: &str) -> String {
        let (whose, share) = (self.whose.words(setting.brief()), 100.0 * self.share);
        format!("{whose} stands across {share:.0} % of {its}, {} before it", setting.words(self.off))
    }
}

/// Backs of seats turned to an opening, across its width; one far before it counts less.
pub(super) fn backs_across(setting: &Setting, item: &WallItem) -> Across {
    let Some(opening) = Line::of(setting, item) else { return Across::default() };
    Across::of(setting.barriers.obstacles.iter().filter_map(|obstacle| {
        let turned = match obstacle.whose {
            Whose::Back(seat) => setting.scene.layout.of(seat)?.facing,
            Whose::ReturnBack(seat) => setting.scene.layout.of(seat)?.along(),
            _ => return None,
        };
        let bar = opening.bar(obstacle.whose, &obstacle.shape, &CLOSES)?;
        Some(Bar { weighed: bar.weighed * turned.dot(opening.inward).max(0.0), ..bar })
    }))
}

/// Returns of corner sofas across the way in, straight before a doorway; chaises count too, for one cannot walk over them.
pub(super) fn returns_across(setting: &Setting, item: &WallItem) -> Across {
    let Some(doorway) = Line::of(setting, item) else { return Across::default() };
    Across::of(setting.scene.layout.placed.iter().filter_map(|placed| {
        placed.hand?;
        doorway.bar(Whose::ReturnBack(placed.piece), placed.parts().get(1)?, &BARS)
    }))
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

    /// How `shape` stands before it; `None` where it does not.
    fn bar(&self, whose: Whose, shape: &Convex, fades: &[(f64, f64)]) -> Option<Bar> {
        let span = |direction: Point| {
            let from = self.left.dot(direction);
            (-shape.support(-direction) - from, shape.support(direction) - from)
        };
        let ((from, to), (near, far)) = (span(self.along), span(self.inward));
        let off = near.max(0.0);
        let share = (to.min(self.width) - from.max(0.0)).max(0.0) / self.width;
        (share > 0.0 && far > 0.0).then(|| Bar { whose, share, off, weighed: share * through(fades, off) })
    }
}
