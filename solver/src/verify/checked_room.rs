//! The room for checking, from the brief alone: walls as moved in, what stands for good, the zones that stop pieces.

use std::sync::OnceLock;

use elbowroom_model::{Brief, Clearance, Door, FixedId, ItemKind, Point, Rule, Swings, Wall, WallItem};

use super::checked_shape::{ANY, Shape, Zone};
use super::face::Face;
use super::leaf::LeafInRoom;
use super::tolerance::PARALLEL;
use super::way::Way;
use crate::answer::Thing;
use crate::geometry::{Convex, Outline, Segment};

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
    /// Steps in the floor.
    pub(super) steps: Vec<(Thing, Convex)>,
    /// Leaves of doors where the file says that they rest, which nobody walks through.
    pub(super) leaves: Vec<(Thing, Convex)>,
    /// What pieces keep out of, bodies included.
    pub(super) zones: Vec<Zone>,
    /// What stops a disc in the room with nothing in it.
    pub(super) bare: Vec<Convex>,
    /// How wide the ways between doorways and windows are with nothing in the room, where that is less than their rule: looked
    /// for once, and only where somebody asks.
    pub(super) empty_widths: OnceLock<Vec<(Way, f64)>>,
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
            steps: Vec::new(),
            leaves: Vec::new(),
            zones: Vec::new(),
            empty_widths: OnceLock::new(),
        };
        for (id, item) in brief.room.items() {
            if let Some(wall) = brief.room.wall(item.wall) {
                checked.add(brief, Thing::Item(id), item, Face::of(wall, item, by));
            }
        }
        for (id, fixed) in brief.room.fixed.iter().enumerate() {
            let of = Thing::Fixed(FixedId(id));
            match fixed.step() {
                Some(ends) => checked.add_step(of, ends),
                None => checked.add_body(of, grown(&fixed.corners, by), true),
            }
        }
        checked.bare.extend(checked.bodies.iter().chain(&checked.leaves).map(|(_, body)| body.clone()));
        checked
    }

    fn add(&mut self, brief: &Brief, of: Thing, item: &WallItem, face: Face) {
        match &item.kind {
            ItemKind::Door(door) => {
                let leaf = LeafInRoom::of(item, door, face);
                self.zones.extend(leaf.iter().flat_map(LeafInRoom::swept).map(|shape| Zone::of_leaf(of, shape)));
                self.leaves.extend(leaf.and_then(|leaf| Some((of, leaf.at_rest(door.opens_to?)?))));
                if door.swings == Swings::Folds {
                    let shape = Shape::Polygon(face.strip(0.0, item.width / 2.0));
                    self.zones.push(Zone::of_leaf(of, shape));
                }
                self.add_landing(brief, of, face);
                self.add_latch_side(brief, of, door, face);
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

    /// Before a leaf that one pulls, and beside its latch.
    fn add_latch_side(&mut self, brief: &Brief, of: Thing, door: &Door, face: Face) {
        let (beside, deep) = (brief.rules.get(Clearance::LatchSide), brief.rules.get(Clearance::PullSide));
        let Some(hinge) = door.hinge.filter(|_| door.swings == Swings::In && beside > 0.0 && deep > 0.0) else {
            return;
        };
        let shape = Shape::Polygon(face.longer(hinge, beside).strip(0.0, deep));
        self.zones.push(Zone { rule: Clearance::LatchSide.into(), of, shape, stops_rugs: false, above: ANY });
    }

    fn add_keep_clear(&mut self, of: Thing, shape: Shape, stops_rugs: bool) {
        self.zones.push(Zone { rule: Rule::KeepClear, of, shape, stops_rugs, above: ANY });
    }

    /// The line of a step, as wide as it may be off; nobody in a wheelchair crosses it.
    fn add_step(&mut self, of: Thing, [from, to]: [Point; 2]) {
        let by = self.brief.room.measured_within;
        let along = (to - from).unit().unwrap_or_default() * by;
        let (out, back) = (along.left(), along.right());
        let corners = [from - along + out, from - along + back, to + along + back, to + along + out];
        let strip = if by > 0.0 { Convex::counter_clockwise(corners) } else { Convex::counter_clockwise([from, to]) };
        if self.brief.rules.are_for_a_wheelchair() {
            self.bare.push(strip.clone());
        }
        self.steps.push((of, strip.clone()));
        let shape = Shape::Polygon(strip);
        self.zones.push(Zone { rule: Rule::Fixed, of, shape, stops_rugs: true, above: ANY });
    }

    fn add_body(&mut self, of: Thing, shape: Convex, stops_rugs: bool) {
        self.bodies.push((of, shape.clone()));
        let shape = Shape::Polygon(shape);
        self.zones.push(Zone { rule: Rule::Fixed, of, shape, stops_rugs, above: ANY });
    }
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
