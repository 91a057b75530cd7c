//! How much of the free floor one walks to: what a disc as wide as a passage sweeps that sets out from an entrance.
//!
//! On a grid of the room's own, about its middle and along its longest wall, so that a mirror or a turn of the plan changes
//! nothing. The disc is taken half a step smaller than it is, so that every gap that lets it through has a place of the grid
//! in it; a gap that is narrower than a passage by less than a step may let it through too. That is a few parts in a hundred
//! of the floor, and the ways themselves are measured exactly elsewhere (`crate::routes`).

use elbowroom_model::{Brief, Clearance, PieceId, Point};

use super::grid::Grid;
use super::layout_in_room::LayoutInRoom;
use super::on_wall::{OnWall, entrances};
use super::one_or_more::OneOrMore;
use super::places::Places;
use crate::best_by;
use crate::geometry::{Convex, Segment};
use crate::layout::Placed;

/// What the disc is smaller than it is, in steps of the grid: half a step, and a hair so that no place lies on an edge.
const GIVES: f64 = 0.51;

/// How much of the free floor one walks to.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WalkedFloor {
    /// Share of the floor that nothing stands on, 0 to 1.
    pub now: f64,
    /// The same of the empty room.
    pub when_empty: f64,
    /// Floor that one could stand on and walked to in the empty room, and cannot walk to now, mm2.
    pub cut_off: f64,
    /// The piece that stands nearest to the middle of that; `None` of none.
    pub cut_off_by: Option<PieceId>,
}

impl WalkedFloor {
    /// The share over that in the empty room, 0 to 1; 1 where one walks nowhere in that either.
    pub(super) fn against_empty(&self) -> f64 {
        if self.when_empty > 0.0 { (self.now / self.when_empty).min(1.0) } else { 1.0 }
    }
}

/// How much of the free floor one walks to in a layout and in the empty room.
pub(super) fn walked_floor(in_room: &LayoutInRoom) -> WalkedFloor {
    let walker = Walker::of(in_room.brief);
    let on_grid = |shape: &Convex| walker.grid.shape(shape);
    let stopping = in_room.site.stopping(in_room.brief.rules.are_for_a_wheelchair());
    let bodies: Vec<Convex> = stopping.map(|(_, shape)| on_grid(shape)).collect();
    let stands = in_room.placed(|_| true).filter(|(piece, _)| piece.stops_walkers()).map(|(_, placed)| placed);
    let parts = stands.clone().flat_map(Placed::parts);
    let all: Vec<Convex> = parts.map(|part| on_grid(&part)).chain(bodies.iter().cloned()).collect();
    let (now, empty) = (walker.among(&all), walker.among(&bodies));
    let cut_off = empty.reached.and(&now.open).without(&now.reached);
    let middle = cut_off.middle();
    let swept = cut_off.grown(walker.radius).and(&now.free).without(&now.swept);
    let nearest = middle.and_then(|middle| {
        let off = |placed: &&Placed| -(walker.grid.place(placed.main().middle()) - middle).norm();
        best_by(stands, off).map(|placed| placed.piece)
    });
    WalkedFloor {
        now: now.swept.share_of(&now.free),
        when_empty: empty.swept.share_of(&empty.free),
        cut_off: swept.area(),
        cut_off_by: nearest,
    }
}

/// What a disc walks to among things.
struct Walked {
    /// Floor that nothing stands on.
    free: Places,
    /// Where the middle of the disc can be.
    open: Places,
    /// Where it gets to.
    reached: Places,
    /// What it sweeps on its way.
    swept: Places,
}

/// Who walks on the grid.
struct Walker {
    grid: Grid,
    /// Half a passage, mm.
    radius: f64,
    /// The room's floor.
    floor: Places,
    /// Where the middle of the disc can be as far as the walls let it.
    off_walls: Places,
    /// Just inside the ways in.
    start: Places,
}

impl Walker {
    fn of(brief: &Brief) -> Self {
        let outline = brief.room.outline();
        let grid = Grid::of(&outline);
        let radius = brief.rules.get(Clearance::Passage) / 2.0;
        let floor = Places::inside(grid, &outline);
        let mut walker = Self { grid, radius, off_walls: floor.clone(), floor, start: Places::none(grid) };
        let reach = walker.reach();
        let on_grid = |from: Point, to: Point| grid.shape(&Segment::new(from, to).shape());
        for (_, wall) in brief.room.walls() {
            walker.off_walls.set(&on_grid(wall.start, wall.end), reach, false);
        }
        for way_in in entrances(brief).iter().flat_map(OneOrMore::iter) {
            let OnWall { left, right, .. } = way_in.on_wall;
            walker.start.set(&on_grid(left, right), radius + grid.step(), true);
        }
        walker
    }

    /// How near the middle of the disc comes to things, mm.
    fn reach(&self) -> f64 {
        (self.radius - GIVES * self.grid.step()).max(0.0)
    }

    /// What the disc walks to among these things.
    fn among(&self, things: &[Convex]) -> Walked {
        let (mut free, mut open) = (self.floor.clone(), self.off_walls.clone());
        for thing in things {
            free.set(thing, 0.0, false);
            open.set(thing, self.reach(), false);
        }
        let reached = open.reached_from(&self.start);
        let swept = reached.grown(self.radius);
        Walked { free, open, reached, swept }
    }
}
