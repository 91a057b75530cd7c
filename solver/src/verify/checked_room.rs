//! The room for checking, from the brief alone: walls as moved in, what stands for good, the zones that stop pieces.

use std::sync::OnceLock;

use elbowroom_model::{Brief, Clearance, Door, FixedId, Hinge, ItemKind, Point, Rule, Swings, Wall, WallItem};

use super::tolerance::{PARALLEL, SLACK};
use super::way::Way;
use crate::answer::Thing;
use crate::geometry::{Convex, Outline, Segment, apart};

/// The widest opening that has a landing, mm (scenario format, Zones).
pub(super) const WIDEST_WITH_LANDING: f64 = 1200.0;

/// The room as the rules count it, made once for all layouts in it.
pub struct CheckedRoom<'a> {
    pub(crate) brief: &'a Brief,
    /// Within the walls as moved in.
    pub(super) outline: Outline,
    /// Both ends of each wall as moved in.
    pub(super) walls: Vec<Segment>,
    /// What stands for good and nobody walks through.
    pub(super) bodies: Vec<(Thing, Convex)>,
    /// What pieces keep out of, bodies included.
    pub(super) zones: Vec<Zone>,
    /// What stops a disc in the room with nothing in it.
    pub(super) bare: Vec<Convex>,
    /// How wide the ways between doorways and windows are with nothing in the room, where that is less than their rule: looked
    /// for once, and only where somebody asks.
    pub(super) empty_widths: OnceLock<Vec<(Way, f64)>>,
}

/// A place that pieces keep out of.
pub(super) struct Zone {
    /// Stable name of the rule.
    pub(super) rule: Rule,
    /// What it belongs to.
    pub(super) of: Thing,
    pub(super) shape: Shape,
    /// Rugs keep out of it too.
    pub(super) stops_rugs: bool,
    /// It stops what is taller than this, mm.
    pub(super) above: f64,
}

/// What a zone looks like.
pub(super) enum Shape {
    Polygon(Convex),
    /// The quarter disc of a leaf.
    Quarter {
        hinge: Point,
        along: Point,
        inward: Point,
        radius: f64,
    },
    /// All that lies before the plane of a front and within `reach` of it.
    Round {
        left: Point,
        right: Point,
        inward: Point,
        reach: f64,
    },
}

impl<'a> CheckedRoom<'a> {
    /// The room of a sound brief.
    #[must_use]
    pub fn of(brief: &'a Brief) -> Self {
        let by = brief.room.measured_within;
        let corners = moved_in(&brief.room.walls, by);
        let next = corners.iter().cycle().skip(1);
        let walls: Vec<Segment> = corners.iter().zip(next).map(|(start, end)| Segment::new(*start, *end)).collect();
        let mut checked = Self {
            brief,
            outline: Outline::within(&corners),
            bare: walls.iter().map(|wall| Convex::counter_clockwise([wall.start, wall.end])).collect(),
            walls,
            bodies: Vec::new(),
            zones: Vec::new(),
            empty_widths: OnceLock::new(),
        };
        for (id, item) in brief.room.items() {
            if let Some(wall) = brief.room.wall(item.wall) {
                checked.add(brief, Thing::Item(id), item, Face::of(wall, item, by));
            }
        }
        for (id, fixed) in brief.room.fixed.iter().enumerate() {
            checked.add_body(Thing::Fixed(FixedId(id)), grown(&fixed.corners, by), true);
        }
        checked.bare.extend(checked.bodies.iter().map(|(_, body)| body.clone()));
        checked
    }

    fn add(&mut self, brief: &Brief, of: Thing, item: &WallItem, face: Face) {
        match &item.kind {
            ItemKind::Door(door) => {
                self.zones.extend(swing(of, item, door, face));
                if door.swings == Swings::Folds {
                    let shape = Shape::Polygon(face.strip(0.0, item.width / 2.0));
                    self.zones.push(Zone { rule: Rule::DoorSwing, of, shape, stops_rugs: false, above: ANY });
                }
                self.add_landing(brief, of, face);
            }
            ItemKind::Opening(_) if item.width <= WIDEST_WITH_LANDING => self.add_landing(brief, of, face),
            ItemKind::Window(window) => {
                let shape = Shape::Polygon(face.strip(0.0, brief.rules.get(Clearance::WindowFront)));
                let rule = Clearance::WindowFront.into();
                self.zones.push(Zone { rule, of, shape, stops_rugs: false, above: window.sill });
            }
            ItemKind::Radiator(radiator) => {
                self.add_body(of, face.strip(0.0, radiator.depth), false);
                let clear = face.strip(radiator.depth, radiator.depth + radiator.keep_clear);
                self.add_keep_clear(of, Shape::Polygon(clear), false);
            }
            ItemKind::Fireplace(fire) => {
                self.add_body(of, face.strip(0.0, fire.depth), true);
                let mouth = fire.opening.map_or(face, |opening| face.part(opening.at, opening.at + opening.width));
                let Face { left, right, inward } = mouth.moved(fire.depth);
                self.add_keep_clear(of, Shape::Round { left, right, inward, reach: fire.keep_clear }, true);
            }
            ItemKind::Opening(_) | ItemKind::Socket(_) => {}
        }
    }

    fn add_landing(&mut self, brief: &Brief, of: Thing, face: Face) {
        let shape = Shape::Polygon(face.strip(0.0, brief.rules.get(Clearance::DoorLanding)));
        self.zones.push(Zone { rule: Clearance::DoorLanding.into(), of, shape, stops_rugs: false, above: ANY });
    }

    fn add_keep_clear(&mut self, of: Thing, shape: Shape, stops_rugs: bool) {
        self.zones.push(Zone { rule: Rule::KeepClear, of, shape, stops_rugs, above: ANY });
    }

    fn add_body(&mut self, of: Thing, shape: Convex, stops_rugs: bool) {
        self.bodies.push((of, shape.clone()));
        let shape = Shape::Polygon(shape);
        self.zones.push(Zone { rule: Rule::Fixed, of, shape, stops_rugs, above: ANY });
    }
}

/// Below the lowest piece: the zone stops whatever its height.
const ANY: f64 = -1.0;

impl Shape {
    /// How far `part` reaches into it, mm; `None` where it stays out. `part` comes with the slack taken off.
    pub(super) fn entered_by(&self, part: &Convex) -> Option<f64> {
        match self {
            Self::Polygon(zone) => {
                crate::geometry::meets(zone, part).then(|| crate::geometry::overlap_depth(zone, part) + SLACK)
            }
            Self::Quarter { hinge, along, inward, radius } => {
                let over = part.clipped(-*along, -hinge.dot(*along))?.clipped(-*inward, -hinge.dot(*inward))?;
                let distance = apart(&over, &Convex::counter_clockwise([*hinge]));
                let beyond = |axis: &Point| over.support(*axis) - hinge.dot(*axis);
                (distance < *radius).then(|| (radius - distance).min(beyond(along)).min(beyond(inward)) + SLACK)
            }
            Self::Round { left, right, inward, reach } => {
                let over = part.clipped(-*inward, -left.dot(*inward))?;
                let distance = apart(&over, &Convex::counter_clockwise([*left, *right]));
                (distance < *reach).then(|| reach - distance + SLACK)
            }
        }
    }
}

/// The stretch of moved-in wall that an item takes up, and the way into the room.
#[derive(Clone, Copy)]
struct Face {
    left: Point,
    right: Point,
    inward: Point,
}

impl Face {
    fn of(wall: &Wall, item: &WallItem, by: f64) -> Self {
        let inward = wall.inward();
        let at = |along: f64| wall.start + wall.along() * along + inward * by;
        Self { left: at(item.at), right: at(item.at + item.width), inward }
    }

    /// Between two distances from its left end, no further than its right.
    fn part(self, from: f64, to: f64) -> Self {
        let whole = self.right - self.left;
        let at = |off: f64| self.left + whole * (off / whole.norm().max(f64::MIN_POSITIVE)).min(1.0);
        Self { left: at(from), right: at(to), ..self }
    }

    fn moved(self, by: f64) -> Self {
        Self { left: self.left + self.inward * by, right: self.right + self.inward * by, ..self }
    }

    /// What lies before it, from `near` to `far`.
    fn strip(self, near: f64, far: f64) -> Convex {
        let (near, far) = (self.moved(near), self.moved(far));
        Convex::counter_clockwise([near.left, near.right, far.right, far.left])
    }
}

fn swing(of: Thing, item: &WallItem, door: &Door, face: Face) -> Option<Zone> {
    let (hinge, free) = match (door.swings, door.hinge?) {
        (Swings::In, Hinge::Left) => (face.left, face.right),
        (Swings::In, Hinge::Right) => (face.right, face.left),
        (Swings::Out | Swings::Slides | Swings::Folds | Swings::Pocket, _) => return None,
    };
    let along = (free - hinge).unit()?;
    let shape = Shape::Quarter { hinge, along, inward: face.inward, radius: item.width };
    Some(Zone { rule: Rule::DoorSwing, of, shape, stops_rugs: false, above: ANY })
}

/// Where each wall starts once all are moved in by `by`: where its line meets the line of the wall before.
fn moved_in(walls: &[Wall], by: f64) -> Vec<Point> {
    let before = walls.iter().cycle().skip(walls.len().saturating_sub(1));
    let lines = before.zip(walls);
    lines
        .map(|(before, wall)| meeting(wall.start, (before.along(), before.inward()), (wall.along(), wall.inward()), by))
        .collect()
}

/// A convex polygon with every edge moved outward by `by`, its corners mitred.
fn grown(corners: &[Point], by: f64) -> Convex {
    let shape = Convex::counter_clockwise(corners.iter().copied());
    let edges: Vec<Segment> = shape.edges().collect();
    let line = |edge: Segment| {
        let along = edge.vector().unit().unwrap_or_default();
        (along, along.right())
    };
    let before = edges.iter().cycle().skip(edges.len().saturating_sub(1));
    let moved = before.zip(&edges).map(|(&before, &edge)| meeting(edge.start, line(before), line(edge), by));
    Convex::counter_clockwise(moved)
}

/// Where two lines through `corner` (direction, way out) meet once both are moved out by `by`.
fn meeting(corner: Point, first: (Point, Point), second: (Point, Point), by: f64) -> Point {
    let turn = first.0.cross(second.0);
    let start = corner + first.1 * by;
    if turn.abs() < PARALLEL {
        return start;
    }
    let to_second = corner + second.1 * by - start;
    start + first.0 * (to_second.cross(second.0) / turn)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_leaf_sweeps_a_quarter_disc_and_no_square() {
        let quarter = Shape::Quarter {
            hinge: Point::new(0.0, 0.0),
            along: Point::new(1.0, 0.0),
            inward: Point::new(0.0, -1.0),
            radius: 800.0,
        };
        let square = |near: f64| {
            let far = near + 100.0;
            let at = Point::new;
            Convex::counter_clockwise([at(near, -near), at(far, -near), at(far, -far), at(near, -far)])
        };
        // The near corner lies on the diagonal: it touches the arc at 800 / sqrt 2.
        let edge = 800.0 / 2_f64.sqrt();
        assert!(quarter.entered_by(&square(edge + 0.1)).is_none());
        assert!(quarter.entered_by(&square(edge - 0.1)).is_some());
    }

    #[test]
    fn a_fire_keeps_a_round_end_and_nothing_behind_its_front() {
        let front = Shape::Round {
            left: Point::new(0.0, 0.0),
            right: Point::new(1000.0, 0.0),
            inward: Point::new(0.0, -1.0),
            reach: 900.0,
        };
        let block = |x: f64, y: f64| {
            let at = Point::new;
            Convex::counter_clockwise([at(x, y), at(x + 100.0, y), at(x + 100.0, y - 100.0), at(x, y - 100.0)])
        };
        assert!(front.entered_by(&block(1001.0, 100.0)).is_none(), "beside the breast");
        assert!(front.entered_by(&block(1636.0, -637.0)).is_none(), "past the round end");
        assert!(front.entered_by(&block(1636.0, -636.0)).is_some(), "in the round end");
    }
}
