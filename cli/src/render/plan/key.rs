//! The signs of the key beside a plan.

use elbowroom_model::Point;
use elbowroom_solver::plan::ZoneKind;

use super::frame::way;
use super::{signs, zones};
use crate::drawing::{Area, At, Fill, Mark, Path, Pen, Tone, hand};

/// What the key shows.
#[derive(Clone, Copy)]
pub(super) enum Sign {
    Zone(ZoneKind),
    Way,
    Pinch,
    Sight,
    Turn,
    Gap,
    FromWalls,
    Seat,
    Socket,
    Broken,
}

impl Sign {
    /// A sign of the key in its small area.
    pub(super) fn drawn(self, area: &Area) -> Vec<Mark> {
        let middle = area.middle();
        let (left, right) = (At::new(area.at.x, middle.y), At::new(area.right(), middle.y));
        match self {
            Sign::Zone(kind) => zones::marks(&area.corners(), kind),
            Sign::Way => vec![Path::line([left, right], signs::WAY).into()],
            Sign::Pinch => signs::pinch([left, right]),
            Sign::Sight => vec![Path::line([left, right], signs::SIGHT).into()],
            Sign::Turn => signs::turning(middle, area.height / 2.0),
            Sign::Gap | Sign::FromWalls => {
                let tone = if matches!(self, Sign::Gap) { Tone::Ink } else { Tone::Grey };
                let slant = At::new(0.64, 0.64);
                let (left, right) = (left + At::new(1.0, 0.0), right - At::new(1.0, 0.0));
                let stroke = |at: At| Path::line([at - slant, at + slant], Pen::of(hand::OUTLINES, tone)).into();
                vec![Path::line([left, right], Pen::of(hand::FITTINGS, tone)).into(), stroke(left), stroke(right)]
            }
            Sign::Broken => signs::broken([left + At::new(1.0, 0.0), right - At::new(1.0, 0.0)]),
            Sign::Seat => signs::seat(middle, way(Point::new(1.0, 0.0))).into(),
            Sign::Socket => {
                let foot = At::new(middle.x, area.bottom());
                let wall = Path::line(
                    [At::new(area.at.x, foot.y), At::new(area.right(), foot.y)],
                    Pen::of(hand::WALLS, Tone::Wall),
                );
                let disc = signs::half_disc(foot, At::new(0.0, -1.0), 1.1);
                vec![Path { fill: Fill::Tone(Tone::Ink), ..disc }.into(), wall.into()]
            }
        }
    }
}
