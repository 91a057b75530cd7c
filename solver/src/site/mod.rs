//! The room as the rules see it: walls moved in by what a measurement may be off, and what they hold turned into shapes.

mod doors;
mod wall_place;

use elbowroom_model::{Brief, Clearance, Door, FixedId, Hinge, ItemId, ItemKind, Point, Swings, Wall, WallId};

use crate::geometry::{Convex, mitre};

pub use doors::{Fold, Leaf, Swing};
pub use wall_place::WallPlace;

/// The widest opening that has a landing, mm; before a wider one only the route to it counts.
pub const WIDEST_OPENING_WITH_LANDING: f64 = 1200.0;

/// The room with `measured_within` taken off it once and for all.
#[derive(Debug, Clone, PartialEq)]
pub struct Site {
    /// How far walls and fixed things were moved toward the room, mm.
    pub measured_within: f64,
    /// Walls as moved in, mitred at the corners, in the room's order (clockwise).
    pub walls: Vec<SiteWall>,
    /// What leaves sweep that swing in.
    pub swings: Vec<Swing>,
    /// Leaves that rest where a walker meets them.
    pub leaves: Vec<Leaf>,
    /// What doors take that fold into the room.
    pub folds: Vec<Fold>,
    /// Free floor just inside doors and narrow openings.
    pub landings: Vec<Landing>,
    /// Free floor before doors that one pulls, and beside their latches.
    pub latch_sides: Vec<Landing>,
    /// What heats or burns keeps free before it.
    pub clear_zones: Vec<ClearZone>,
    /// What stands in the room for good: fixed things, radiators, fireplaces.
    pub bodies: Vec<Body>,
    /// Steps in the floor: nothing stands across one.
    pub steps: Vec<Body>,
}

/// A wall as moved in.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SiteWall {
    /// Its place in the room.
    pub id: WallId,
    /// Left-hand end as one faces it from inside.
    pub start: Point,
    /// Right-hand end.
    pub end: Point,
    /// Unit vector from start to end.
    pub along: Point,
    /// Unit vector into the room.
    pub inward: Point,
}

/// Free floor just inside a doorway.
#[derive(Debug, Clone, PartialEq)]
pub struct Landing {
    /// The door or opening.
    pub item: ItemId,
    /// Its width by `door_landing`; with the floor beside a latch, by `pull_side`.
    pub zone: Convex,
}

/// What is kept clear before a radiator or a fire.
#[derive(Debug, Clone, PartialEq)]
pub struct ClearZone {
    /// The radiator or fireplace.
    pub item: ItemId,
    /// From the front's left to its right end as one faces it.
    pub front: (Point, Point),
    /// Unit vector into the room.
    pub inward: Point,
    /// How far before the front, mm.
    pub reach: f64,
    /// A fire: the zone also rounds the two ends of the front. Rugs keep out of it.
    pub fire: bool,
}

impl ClearZone {
    /// The rectangle straight before the front.
    #[must_use]
    pub fn before(&self) -> Convex {
        let out = self.inward * self.reach;
        let (left, right) = self.front;
        Convex::counter_clockwise([left, right, right + out, left + out])
    }
}

/// Where a body comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum BodyId {
    /// A fixed thing.
    Fixed(FixedId),
    /// A radiator or fireplace.
    Item(ItemId),
}

/// A convex thing that nothing may stand in and nobody can walk through.
#[derive(Debug, Clone, PartialEq)]
pub struct Body {
    /// What it is.
    pub id: BodyId,
    /// Its plan: a fixed thing grown by `measured_within` (mitred), an item moved in with its wall.
    pub shape: Convex,
}

impl Site {
    /// The site of a sound brief.
    #[must_use]
    pub fn of(brief: &Brief) -> Self {
        let measured_within = brief.room.measured_within;
        let walls = moved_in(&brief.room.walls, measured_within);
        let mut site = Self {
            measured_within,
            walls,
            swings: Vec::new(),
            leaves: Vec::new(),
            folds: Vec::new(),
            landings: Vec::new(),
            latch_sides: Vec::new(),
            clear_zones: Vec::new(),
            bodies: Vec::new(),
            steps: Vec::new(),
        };
        for (id, item) in brief.room.items() {
            if let Some(place) = site.place_of(brief, id) {
                site.add_item(brief, id, &item.kind, place);
            }
        }
        for (place, fixed) in brief.room.fixed.iter().enumerate() {
            let id = BodyId::Fixed(FixedId(place));
            if let Some(ends) = fixed.step() {
                site.steps.push(Body { id, shape: strip(ends, measured_within) });
                continue;
            }
            let shape = Convex::counter_clockwise(fixed.corners.iter().copied()).grown(measured_within);
            site.bodies.push(Body { id, shape });
        }
        site
    }

    /// What nobody walks through in the empty room: bodies, leaves at rest, and for who comes in a wheelchair steps too.
    pub(crate) fn stopping(&self, in_wheelchair: bool) -> impl Iterator<Item = (BodyId, &Convex)> {
        let leaves = self.leaves.iter().map(|leaf| (BodyId::Item(leaf.item), &leaf.shape));
        let steps = self.steps.iter().filter(move |_| in_wheelchair);
        self.bodies
            .iter()
            .map(|body| (body.id, &body.shape))
            .chain(leaves)
            .chain(steps.map(|step| (step.id, &step.shape)))
    }

    /// The wall as moved in.
    #[must_use]
    pub fn wall(&self, id: WallId) -> Option<&SiteWall> {
        self.walls.get(id.0)
    }

    /// Where along a wall its two ends lie as measured: a wall that is moved in grows no longer for it.
    #[must_use]
    pub fn ends_along(&self, brief: &Brief, id: WallId) -> Option<(f64, f64)> {
        let (wall, along) = (brief.room.wall(id)?, self.wall(id)?.along);
        Some((wall.start.dot(along), wall.end.dot(along)))
    }

    /// Outline as moved in, clockwise.
    #[must_use]
    pub fn outline(&self) -> Vec<Point> {
        self.walls.iter().map(|wall| wall.start).collect()
    }

    /// Where an item stands, moved in with its wall.
    #[must_use]
    pub fn place_of(&self, brief: &Brief, id: ItemId) -> Option<WallPlace> {
        let item = brief.room.item(id)?;
        self.moved_in(item.wall, brief.room.ends(item)?)
    }

    /// Where the mouth of a fire lies, moved in with its wall; of all else the whole item.
    #[must_use]
    pub fn mouth_of(&self, brief: &Brief, id: ItemId) -> Option<WallPlace> {
        let item = brief.room.item(id)?;
        self.moved_in(item.wall, brief.room.mouth_ends(item)?)
    }

    fn moved_in(&self, wall: WallId, (left, right): (Point, Point)) -> Option<WallPlace> {
        let inward = self.wall(wall)?.inward;
        let shift = inward * self.measured_within;
        Some(WallPlace { left: left + shift, right: right + shift, inward })
    }

    fn add_item(&mut self, brief: &Brief, id: ItemId, kind: &ItemKind, place: WallPlace) {
        let WallPlace { left, right, .. } = place;
        match kind {
            ItemKind::Door(door) => {
                self.swings.extend(doors::swings(id, door, place));
                self.leaves.extend(doors::leaf(id, door, place));
                if door.swings == Swings::Folds {
                    let zone = place.before((right - left).norm() / 2.0);
                    self.folds.push(Fold { item: id, zone });
                }
                self.add_landing(brief, id, place);
                self.add_latch_side(brief, id, door, place);
            }
            ItemKind::Opening(_) if (right - left).norm() <= WIDEST_OPENING_WITH_LANDING => {
                self.add_landing(brief, id, place);
            }
            ItemKind::Radiator(radiator) => {
                self.add_heater(id, [place, place], radiator.depth, radiator.keep_clear, false);
            }
            ItemKind::Fireplace(fire) => {
                let mouth = self.mouth_of(brief, id).unwrap_or(place);
                self.add_heater(id, [place, mouth], fire.depth, fire.keep_clear, true);
            }
            ItemKind::Opening(_) | ItemKind::Window(_) | ItemKind::Socket(_) => {}
        }
    }

    fn add_landing(&mut self, brief: &Brief, item: ItemId, place: WallPlace) {
        let zone = place.before(brief.rules.get(Clearance::DoorLanding));
        self.landings.push(Landing { item, zone });
    }

    /// One who pulls a door open stands beside its latch, out of the leaf's way.
    fn add_latch_side(&mut self, brief: &Brief, item: ItemId, door: &Door, place: WallPlace) {
        let (beside, depth) = (brief.rules.get(Clearance::LatchSide), brief.rules.get(Clearance::PullSide));
        if let (Swings::In, Some(hinge), true) = (door.swings, door.hinge, beside > 0.0 && depth > 0.0) {
            let zone = place.longer(hinge == Hinge::Left, beside).before(depth);
            self.latch_sides.push(Landing { item, zone });
        }
    }

    /// A body at the wall, and what is kept clear before that part of its front that is hot.
    fn add_heater(&mut self, item: ItemId, [body, hot]: [WallPlace; 2], depth: f64, reach: f64, fire: bool) {
        let WallPlace { left, right, inward } = body;
        let out = inward * depth;
        let shape = Convex::counter_clockwise([left, right, right + out, left + out]);
        self.bodies.push(Body { id: BodyId::Item(item), shape });
        self.clear_zones.push(ClearZone { item, front: (hot.left + out, hot.right + out), inward, reach, fire });
    }
}

/// A line and all that lies so near to it; the line itself where nothing does.
fn strip([from, to]: [Point; 2], by: f64) -> Convex {
    if by <= 0.0 {
        return Convex::counter_clockwise([from, to]);
    }
    let along = (to - from).unit().unwrap_or_default() * by;
    let (from, to, aside) = (from - along, to + along, along.left());
    Convex::counter_clockwise([from - aside, to - aside, to + aside, from + aside])
}

/// Every wall moved along its normal by `by`, cut where neighbours meet; walls in one line keep their common corner.
fn moved_in(walls: &[Wall], by: f64) -> Vec<SiteWall> {
    let count = walls.len();
    let corner = |i: usize| {
        let (before, after) = (&walls[(i + count - 1) % count], &walls[i]);
        mitre(after.start, [before.inward(), after.inward()], by)
    };
    let moved = |i: usize| SiteWall {
        id: WallId(i),
        start: corner(i),
        end: corner((i + 1) % count),
        along: walls[i].along(),
        inward: walls[i].inward(),
    };
    (0..count).map(moved).collect()
}
