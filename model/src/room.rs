//! The measured room: its outline, what its walls hold and what stands in it for good.

use crate::kind::PieceKind;
use crate::opening::ItemKind;
use crate::point::Point;
use crate::ring;
use crate::used_at::UsedAt;

/// Which wall of a room, by its place in [`Room::walls`].
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct WallId(pub usize);

/// Which item on a wall, by its place in [`Room::items`].
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct ItemId(pub usize);

/// Which fixed thing, by its place in [`Room::fixed`].
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct FixedId(pub usize);

/// A closed room as measured.
#[derive(Debug, Clone, PartialEq)]
pub struct Room {
    /// Its name, or `"room"` where the file gives none.
    pub name: String,
    /// Walls in clockwise order seen from above: each ends where the next starts, and the last where the first starts.
    pub walls: Vec<Wall>,
    /// What the walls hold, in the file's order.
    pub items: Vec<WallItem>,
    /// What stands off the walls, in the file's order.
    pub fixed: Vec<Fixed>,
    /// Height of the ceiling, mm, where it was measured.
    pub ceiling: Option<f64>,
    /// Latitude in degrees north, where it was given.
    pub latitude: Option<f64>,
    /// A wall and the compass bearing (degrees clockwise from north) one looks along when facing it.
    pub bearing: Option<(WallId, f64)>,
    /// How far off a measured length may be, mm, as in force (at least the largest closing correction).
    pub measured_within: f64,
    /// What closing the survey did.
    pub survey: Survey,
    /// Kinds that must not stand at a wall.
    pub kept_free: Vec<KeptFree>,
    /// Ceilings that fall toward a wall.
    pub slopes: Vec<Slope>,
}

/// A wall that pieces of a kind must not stand at.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct KeptFree {
    /// The wall.
    pub wall: WallId,
    /// The kind.
    pub kind: PieceKind,
}

/// A ceiling that falls toward a wall.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Slope {
    /// The wall.
    pub wall: WallId,
    /// Height of the ceiling where it begins to fall, mm.
    pub from: f64,
    /// Its height at the wall, mm; less than `from`.
    pub to: f64,
    /// How far out from the wall it begins to fall, mm.
    pub over: f64,
}

/// A straight stretch of wall.
#[derive(Debug, Clone, PartialEq)]
pub struct Wall {
    /// Its name in the room's own words.
    pub name: String,
    /// Its left-hand end, as one faces it from inside.
    pub start: Point,
    /// Its right-hand end.
    pub end: Point,
}

/// Something that a wall holds.
#[derive(Debug, Clone, PartialEq)]
pub struct WallItem {
    /// Its name in the room's own words.
    pub name: String,
    /// The wall that holds it.
    pub wall: WallId,
    /// From the wall's left end (as one faces it) to the item's left end, mm.
    pub at: f64,
    /// Width along the wall, mm; 0 for a socket.
    pub width: f64,
    /// What it is.
    pub kind: ItemKind,
}

/// Something that stands off the walls for good: a pillar, a counter, a stair.
#[derive(Debug, Clone, PartialEq)]
pub struct Fixed {
    /// Its name in the room's own words.
    pub name: String,
    /// What the file calls it: `pillar`, `counter`, ...
    pub kind: String,
    /// Convex, counter-clockwise, plan coordinates; of a step in the floor the two ends of its line.
    pub corners: Vec<Point>,
    /// Height, mm, where it was given; it stops what stands on the floor in any case.
    pub height: Option<f64>,
    /// Depth of the floor before the edge at which it is used that stays clear and can be reached, mm; `None`: nobody uses it.
    pub use_depth: Option<f64>,
    /// That edge, of those that floor lies before.
    pub used_at: UsedAt,
}

/// What closing the survey found and did.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Survey {
    /// End minus start of the outline as measured, mm; `None` where walls give coordinates or diagonals were fitted.
    pub misclosure: Option<Point>,
    /// The misclosure was spread over the walls.
    pub spread: bool,
    /// How far the corners missed (n - 2) x 180 degrees before the misfit was spread.
    pub corner_misfit: f64,
    /// Wall by wall, the length of the vector that closing added to it, mm.
    pub corrections: Vec<f64>,
    /// Each measured quantity of a least-squares fit against the fitted outline.
    pub residuals: Vec<Residual>,
}

/// One measured quantity against the fitted outline.
#[derive(Debug, Clone, PartialEq)]
pub struct Residual {
    /// What was measured, in the room's own words: `"length of canal wall"`, `"diagonal canal wall to party wall"`.
    pub of: String,
    /// As measured (mm, or degrees for a corner).
    pub measured: f64,
    /// In the fitted outline.
    pub fitted: f64,
    /// Over three times `measured_within`: named as a likely slip.
    pub likely_slip: bool,
}

impl Fixed {
    /// The two ends of a step in the floor; `None` of all else. Nothing stands across it, and walkers may cross it.
    #[must_use]
    pub fn step(&self) -> Option<[Point; 2]> {
        <[Point; 2]>::try_from(self.corners.as_slice()).ok()
    }
}

impl Slope {
    /// How far out from the wall the ceiling is lower than `height`, mm: what is as high stands no nearer.
    #[must_use]
    pub fn lower_than(&self, height: f64) -> f64 {
        let share = (height - self.to) / (self.from - self.to);
        self.over * share.clamp(0.0, 1.0)
    }
}

impl Wall {
    /// Length of the wall, mm.
    #[must_use]
    pub fn length(&self) -> f64 {
        (self.end - self.start).norm()
    }

    /// Unit vector from its left-hand to its right-hand end, as one faces it from inside.
    #[must_use]
    pub fn along(&self) -> Point {
        (self.end - self.start).unit().unwrap_or(Point::new(1.0, 0.0))
    }

    /// Unit vector square to the wall, into the room.
    #[must_use]
    pub fn inward(&self) -> Point {
        self.along().right()
    }

    /// The place on the wall `at` mm from its left-hand end.
    #[must_use]
    pub fn point_at(&self, at: f64) -> Point {
        self.start + self.along() * at
    }
}

impl Room {
    /// The outline as measured, clockwise: the left-hand end of each wall in turn.
    #[must_use]
    pub fn outline(&self) -> Vec<Point> {
        self.walls.iter().map(|wall| wall.start).collect()
    }

    /// Area of the outline, mm2.
    #[must_use]
    pub fn area(&self) -> f64 {
        -ring::signed_area(&self.outline())
    }

    /// The wall named by `id`, `None` where the room has no such wall.
    #[must_use]
    pub fn wall(&self, id: WallId) -> Option<&Wall> {
        self.walls.get(id.0)
    }

    /// The item named by `id`, `None` where the room has no such item.
    #[must_use]
    pub fn item(&self, id: ItemId) -> Option<&WallItem> {
        self.items.get(id.0)
    }

    /// The name of an item; empty where the room has no such item.
    #[must_use]
    pub fn item_name(&self, id: ItemId) -> &str {
        self.item(id).map_or("", |item| item.name.as_str())
    }

    /// The fixed thing named by `id`, `None` where the room has no such thing.
    #[must_use]
    pub fn fixed_thing(&self, id: FixedId) -> Option<&Fixed> {
        self.fixed.get(id.0)
    }

    /// The name of a fixed thing; empty where the room has no such thing.
    #[must_use]
    pub fn fixed_name(&self, id: FixedId) -> &str {
        self.fixed_thing(id).map_or("", |fixed| fixed.name.as_str())
    }

    /// The name of a wall; empty where the room has no such wall.
    #[must_use]
    pub fn wall_name(&self, id: WallId) -> &str {
        self.wall(id).map_or("", |wall| wall.name.as_str())
    }

    /// Whether pieces of this kind must not stand at the wall.
    #[must_use]
    pub fn keeps_free(&self, wall: WallId, kind: PieceKind) -> bool {
        self.kept_free.contains(&KeptFree { wall, kind })
    }

    /// The two ends of an item on its wall, as measured: left, then right as one faces it from inside.
    #[must_use]
    pub fn ends(&self, item: &WallItem) -> Option<(Point, Point)> {
        let wall = self.wall(item.wall)?;
        Some((wall.point_at(item.at), wall.point_at(item.at + item.width)))
    }

    /// Items with their ids, in the file's order.
    pub fn items(&self) -> impl Iterator<Item = (ItemId, &WallItem)> {
        self.items.iter().enumerate().map(|(place, item)| (ItemId(place), item))
    }

    /// Walls with their ids, clockwise.
    pub fn walls(&self) -> impl Iterator<Item = (WallId, &Wall)> {
        self.walls.iter().enumerate().map(|(place, wall)| (WallId(place), wall))
    }
}
