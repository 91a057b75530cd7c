//! From plan coordinates to the sheet.

use elbowroom_model::{Brief, Point, Swings, Wall, WallId};

use super::outline::THICKNESS;
use crate::drawing::{Area, At, Paper, Scale};

/// From a wall's outer face to the line that tells its length, mm of paper.
const TO_MEASURE: f64 = 6.5;
/// From that line to the edge of what the plan takes, mm of paper.
const BEYOND: f64 = 5.0;

/// The smallest that a plan is drawn.
const MOST_REDUCED: Scale = Scale(500);

/// Where the plan lies on the sheet, and how large.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Frame {
    /// The scale.
    pub scale: Scale,
    /// Where the plan's own (0, 0) lies.
    origin: At,
}

impl Frame {
    /// The plan at the largest listed scale that `area` holds, in its middle.
    pub(super) fn within(brief: &Brief, area: &Area) -> Self {
        let scale = Scale::largest(|scale| {
            let taken = extent(brief, scale);
            taken.width <= area.width && taken.height <= area.height
        });
        let taken = extent(brief, scale);
        Self { scale, origin: area.middle() - taken.middle() }
    }

    /// The plan as large as a sheet so wide and so high holds it, at whatever whole scale that is, and the sheet that it
    /// then takes: no higher than it must be.
    pub(super) fn filling(brief: &Brief, widest: &Paper) -> (Self, Paper) {
        let scale = Self::largest_scale(brief, widest);
        let taken = extent(brief, scale);
        let paper = Paper { height: taken.height, ..*widest };
        (Self { scale, origin: paper.within(0.0).middle() - taken.middle() }, paper)
    }

    /// The largest whole scale at which a sheet so wide and so high holds the plan.
    pub(super) fn largest_scale(brief: &Brief, widest: &Paper) -> Scale {
        let fits = |scale: &Scale| {
            let taken = extent(brief, *scale);
            taken.width <= widest.width && taken.height <= widest.height
        };
        (10..MOST_REDUCED.0).map(Scale).find(fits).unwrap_or(MOST_REDUCED)
    }

    /// The plan at this scale in the left top corner, and what it takes.
    pub(super) fn at_scale(brief: &Brief, scale: Scale) -> (Self, Area) {
        let taken = extent(brief, scale);
        let origin = At::new(-taken.at.x, -taken.at.y);
        (Self { scale, origin }, Area { at: At::default(), ..taken })
    }

    /// The plan with its own (0, 0) there.
    pub(super) const fn about(scale: Scale, origin: At) -> Self {
        Self { scale, origin }
    }

    /// The room with so much round its walls, mm of paper, as large as a sheet so wide and so high holds it.
    pub(super) fn of_room(brief: &Brief, widest: &Paper, round: f64) -> (Self, Area) {
        let taken = |scale: Scale| {
            let outline = brief.room.outline();
            // A leaf that swings out stands beyond its wall.
            let swung = brief.room.walls().flat_map(|(id, wall)| {
                let out = way(wall.inward()) * -(swung_out(brief, id, scale) - scale.on_paper(THICKNESS)).max(0.0);
                [wall.start, wall.end].map(|end| flat(end, scale) + out)
            });
            let room = Area::of(outline.into_iter().map(|place| flat(place, scale)).chain(swung));
            room.grown(scale.on_paper(THICKNESS) + round)
        };
        let fits = |scale: &Scale| {
            let taken = taken(*scale);
            taken.width <= widest.width && taken.height <= widest.height
        };
        let scale = (10..MOST_REDUCED.0).map(Scale).find(fits).unwrap_or(MOST_REDUCED);
        let taken = taken(scale);
        (Self { scale, origin: taken.at * -1.0 }, Area { at: At::default(), ..taken })
    }

    /// A place of the plan on the sheet.
    pub(super) fn at(&self, place: Point) -> At {
        self.origin + flat(place, self.scale)
    }

    /// Places of the plan on the sheet.
    pub(super) fn all(&self, places: &[Point]) -> Vec<At> {
        places.iter().map(|place| self.at(*place)).collect()
    }

    /// A length of the plan on the sheet, mm.
    pub(super) fn length(&self, length: f64) -> f64 {
        self.scale.on_paper(length)
    }
}

/// A way of the plan as one on the sheet, as long as it was.
pub(super) const fn way(way: Point) -> At {
    At::new(way.x, -way.y)
}

fn flat(place: Point, scale: Scale) -> At {
    At::new(scale.on_paper(place.x), -scale.on_paper(place.y))
}

/// From a wall's inner face to the line that tells its length, mm of paper: beyond what swings out over it.
pub(super) fn to_measure(brief: &Brief, wall: WallId, scale: Scale) -> f64 {
    let swung = swung_out(brief, wall, scale);
    scale.on_paper(THICKNESS) + if swung > 0.0 { (swung + 2.0).max(TO_MEASURE) } else { TO_MEASURE }
}

/// How far a leaf swings out over a wall, mm of paper.
fn swung_out(brief: &Brief, wall: WallId, scale: Scale) -> f64 {
    let leaves = brief.room.items.iter().filter(|item| item.wall == wall).filter_map(|item| match &item.kind {
        elbowroom_model::ItemKind::Door(door) if door.swings == Swings::Out => Some(scale.on_paper(item.width)),
        _ => None,
    });
    leaves.fold(0.0, f64::max)
}

/// What the plan takes round its own (0, 0), its measures along the walls and their lettering included.
fn extent(brief: &Brief, scale: Scale) -> Area {
    let beyond = |(id, wall): (WallId, &Wall)| {
        let out = way(wall.inward()) * -(to_measure(brief, id, scale) + BEYOND);
        [flat(wall.start, scale) + out, flat(wall.end, scale) + out, flat(wall.start, scale)]
    };
    Area::of(brief.room.walls().flat_map(beyond))
}
