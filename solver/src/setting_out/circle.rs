//! The circle that a wheelchair turns in, on the floor: its middle by two measures, and strips round it.

use elbowroom_model::{Brief, Rounding};

use super::corner::{CornerOut, measured};
use super::points::Points;
use super::sight::Sight;
use super::strips::Strip;
use crate::answer::TurningCircle;

/// Tape lays no curve: so many short strips stand for the circle (ours, no source).
const STRIPS: usize = 8;
/// Length of each of them, mm, before it is rounded up to a shopper's step (ours, no source).
const STRIP: f64 = 150.0;

/// A circle on the floor.
#[derive(Debug, Clone, PartialEq)]
pub struct CircleOut {
    /// Its middle, and how it is found.
    pub centre: CornerOut,
    /// mm.
    pub diameter: f64,
    /// Strips that lie along it, all alike, evenly round it.
    pub strips: Vec<Strip>,
}

/// The circle; `None` where its middle can be found from nothing.
pub(super) fn circle_out(
    brief: &Brief,
    sight: &Sight<'_>,
    points: &mut Points,
    circle: TurningCircle,
) -> Option<CircleOut> {
    let centre = measured(&brief.room, sight, points, None, &[circle.centre]).into_iter().next()?;
    let cut = brief.units.rounded(STRIP, Rounding::Up);
    Some(CircleOut { centre, diameter: circle.diameter, strips: vec![Strip { stroke: cut, cut }; STRIPS] })
}
