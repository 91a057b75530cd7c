//! What a room gives to all of its arrangements, prepared once.

use elbowroom_model::{Brief, Point};

use super::cells::Cells;
use crate::rules::{Variables, Walls};
use crate::site::Site;
use crate::stop::Stop;

/// What a room gives to all of its arrangements, prepared once.
#[derive(Debug)]
pub struct RoomContext<'a> {
    /// What was measured and asked.
    pub brief: &'a Brief,
    /// The room as the rules see it.
    pub site: &'a Site,
    /// The walls as half-planes and pockets.
    pub walls: Walls,
    /// The variables of every arrangement's program.
    pub variables: Variables,
    /// Where searches of it end before their work is done.
    pub stop: Stop<'a>,
    /// Its pieces under their stands, and what the rules asked of them, so far.
    pub(super) cells: Cells,
}

impl<'a> RoomContext<'a> {
    /// The context of a brief and its site.
    #[must_use]
    pub fn of(brief: &'a Brief, site: &'a Site) -> Self {
        let corners = site.outline();
        let sum = corners.iter().fold(Point::default(), |sum, corner| sum + *corner);
        let origin = sum * (1.0 / corners.len().max(1) as f64);
        let span = corners.iter().map(|corner| (*corner - origin).norm()).fold(0.0, f64::max);
        let variables = Variables::of(brief, origin, span);
        let (stop, cells) = (Stop::default(), Cells::default());
        Self { brief, site, walls: Walls::of(site), variables, stop, cells }
    }

    /// The same whose searches end where they are stopped, with what they have by then.
    #[must_use]
    pub fn until(self, stop: Stop<'a>) -> Self {
        Self { stop, ..self }
    }
}
