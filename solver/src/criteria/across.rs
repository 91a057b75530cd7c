//! What stands across an opening or a doorway, square to it: the backs that close an open side, the return that bars
//! the way in.

use elbowroom_model::Point;

use super::criteria_context::CriteriaContext;
use super::curve::Curve;
use super::obstacles::Whose;
use super::on_wall::OnWall;
use crate::geometry::Convex;

/// How far before an open side a back still closes it: wholly up to the first figure, no more from the second on, mm
/// (common practice, no source).
const CLOSES: Curve = Curve(&[(900.0, 1.0), (3000.0, 0.0)]);

/// How far before a doorway a return still stands in the way, mm (common practice, no source).
const BARS: Curve = Curve(&[(900.0, 1.0), (2400.0, 0.0)]);

/// What weighs less is not worth saying, share of the width (ours, no source).
const WORTH_SAYING: f64 = 0.03;

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
pub struct Bar {
    /// What it belongs to.
    pub whose: Whose,
    /// Share of the opening's width that it stands before, 0 to 1.
    pub share: f64,
    /// How far before it, mm.
    pub off: f64,
    /// The share as it counts: what stands far off or turned aside counts less, 0 to 1.
    pub weighed: f64,
}

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

/// Backs of seats turned to an opening, across its width; one far before it counts less.
pub(super) fn backs_across(context: &CriteriaContext, opening: &OnWall) -> Across {
    Across::of(context.barriers.obstacles.iter().filter_map(|obstacle| {
        let turned = match obstacle.whose {
            Whose::Back(seat) => context.in_room.layout.of(seat)?.facing,
            Whose::ReturnBack(seat) => context.in_room.layout.of(seat)?.along(),
            Whose::SecondReturnBack(seat) => -context.in_room.layout.of(seat)?.along(),
            Whose::Screen(_) | Whose::Piece(_) | Whose::Body(_) => return None,
        };
        let bar = bar(opening, obstacle.whose, &obstacle.shape, &CLOSES)?;
        Some(Bar { weighed: bar.weighed * turned.dot(opening.inward).max(0.0), ..bar })
    }))
}

/// Returns of corner sofas across the way in, straight before a doorway; chaises count too, for one cannot walk over them.
pub(super) fn returns_across(context: &CriteriaContext, doorway: &OnWall) -> Across {
    let corners = context.in_room.layout.placed.iter().filter(|placed| placed.hand.is_some());
    Across::of(corners.flat_map(|placed| {
        let whose = [Whose::ReturnBack(placed.piece), Whose::SecondReturnBack(placed.piece)];
        let returns = placed.parts().into_iter().skip(1).zip(whose);
        returns.filter_map(|(part, whose)| bar(doorway, whose, &part, &BARS))
    }))
}

/// How `shape` stands before an opening; `None` where it does not.
fn bar(opening: &OnWall, whose: Whose, shape: &Convex, fades: &Curve) -> Option<Bar> {
    let width = opening.item.width;
    let span = |direction: Point| {
        let from = opening.left.dot(direction);
        (-shape.support(-direction) - from, shape.support(direction) - from)
    };
    let ((from, to), (near, far)) = (span(opening.along), span(opening.inward));
    let off = near.max(0.0);
    let share = (to.min(width) - from.max(0.0)).max(0.0) / width;
    (width > 0.0 && share > 0.0 && far > 0.0).then(|| Bar { whose, share, off, weighed: share * fades.at(off) })
}
