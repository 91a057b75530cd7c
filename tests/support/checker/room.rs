//! The room as a result must respect it: walls moved in, fixed things grown, zones; from the brief alone.

use elbowroom_model::{Brief, Clearance, Hinge, ItemKind, Point, Swings};

use super::plane::{P, Polygon, add, counter_clockwise, cross, dot, edges, left, length, minus, turning, unit};
use super::used::{Used, used};

/// The widest opening that has a landing (scenario format, Zones).
const WIDEST_WITH_LANDING: f64 = 1200.0;
/// Sides that stand for a quarter circle: 0.02 mm off at a radius of a metre.
const SIDES: usize = 128;

/// A place that pieces keep out of.
pub(crate) struct Zone {
    pub(crate) rule: &'static str,
    pub(crate) item: String,
    /// Convex, together the zone.
    pub(crate) shapes: Vec<Polygon>,
    pub(crate) stops_rugs: bool,
    /// It stops what is taller, mm.
    pub(crate) above: f64,
}

/// A wall as moved in.
pub(crate) struct Wall {
    pub(crate) name: String,
    pub(crate) ends: [P; 2],
    /// From its left to its right end.
    pub(crate) along: P,
    pub(crate) inward: P,
    /// Where along itself it begins and ends as measured.
    pub(crate) measured: (f64, f64),
}

/// The room.
pub(crate) struct Ground {
    pub(crate) outline: Polygon,
    pub(crate) walls: Vec<Wall>,
    pub(crate) bodies: Vec<(String, Polygon)>,
    pub(crate) zones: Vec<Zone>,
    pub(crate) used: Vec<Used>,
    /// Leaves of doors where the file says that they rest, and the door of each.
    pub(crate) leaves: Vec<(String, Polygon)>,
    /// Steps in the floor: nothing stands across one.
    pub(crate) steps: Vec<(String, Polygon)>,
}

pub(crate) fn xy(point: Point) -> P {
    [point.x, point.y]
}

impl Ground {
    pub(crate) fn of(brief: &Brief) -> Self {
        let by = brief.room.measured_within;
        let measured: Polygon = brief.room.walls.iter().map(|wall| xy(wall.start)).collect();
        // Clockwise: the room lies to the right of each wall.
        let outline = moved(&measured, -by);
        let wall = |(i, (start, end)): (usize, (P, P))| {
            let (from, to) = (xy(brief.room.walls[i].start), xy(brief.room.walls[i].end));
            let along = unit(minus(to, from));
            Wall {
                name: brief.room.walls[i].name.clone(),
                ends: [start, end],
                along,
                inward: minus([0.0, 0.0], left(along)),
                measured: (dot(from, along), dot(to, along)),
            }
        };
        let walls = edges(&outline).enumerate().map(wall).collect();
        let (bodies, zones, used) = (Vec::new(), Vec::new(), used(brief));
        let mut ground =
            Self { outline: outline.clone(), walls, bodies, zones, used, leaves: Vec::new(), steps: Vec::new() };
        for item in &brief.room.items {
            ground.add(brief, item);
        }
        for fixed in &brief.room.fixed {
            if let &[from, to] = fixed.corners.as_slice() {
                ground.steps.push((fixed.name.clone(), vec![xy(from), xy(to)]));
                continue;
            }
            let corners = counter_clockwise(fixed.corners.iter().map(|&p| xy(p)).collect());
            ground.body(&fixed.name, moved(&corners, -by), true);
        }
        ground
    }

    fn add(&mut self, brief: &Brief, item: &elbowroom_model::WallItem) {
        let wall = &brief.room.walls[item.wall.0];
        let along = unit(minus(xy(wall.end), xy(wall.start)));
        let inward = minus([0.0, 0.0], left(along));
        let origin = add(xy(wall.start), inward, brief.room.measured_within);
        let at = |x: f64, y: f64| add(add(origin, along, item.at + x), inward, y);
        let strip = |near: f64, far: f64| {
            counter_clockwise(vec![at(0.0, near), at(item.width, near), at(item.width, far), at(0.0, far)])
        };
        // What a leaf sweeps: a slice of a disc, half of it at most.
        let slice = |hinge: P, across: P, turn: f64| {
            let arc = (0..=2 * SIDES).map(|i| {
                let angle = turn * i as f64 / (2 * SIDES) as f64;
                add(add(hinge, across, item.width * angle.cos()), inward, item.width * angle.sin())
            });
            counter_clockwise(std::iter::once(hinge).chain(arc).collect())
        };
        let quarter = |corner: P, across: P, radius: f64| {
            let arc = (0..=SIDES).map(|i| {
                let angle = std::f64::consts::FRAC_PI_2 * i as f64 / SIDES as f64;
                add(add(corner, across, radius * angle.cos()), inward, radius * angle.sin())
            });
            counter_clockwise(std::iter::once(corner).chain(arc).collect())
        };
        let back = minus([0.0, 0.0], along);
        let landing = || vec![strip(0.0, brief.rules.get(Clearance::DoorLanding))];
        match &item.kind {
            ItemKind::Door(door) => {
                let turn = door.opens_to.unwrap_or(90.0).to_radians();
                let hung = match (door.swings, door.hinge) {
                    (Swings::In, Some(Hinge::Left)) => Some((at(0.0, 0.0), along)),
                    (Swings::In, Some(Hinge::Right)) => Some((at(item.width, 0.0), back)),
                    _ => None,
                };
                let leaf = match hung {
                    Some((hinge, across)) => Some(slice(hinge, across, turn)),
                    _ if door.swings == Swings::Folds => Some(strip(0.0, item.width / 2.0)),
                    _ => None,
                };
                self.zone("door_swing", &item.name, leaf.into_iter().collect(), false, -1.0);
                self.zone("door_landing", &item.name, landing(), false, -1.0);
                let Some((hinge, across)) = hung else { return };
                let (beside, deep) = (brief.rules.get(Clearance::LatchSide), brief.rules.get(Clearance::PullSide));
                if beside > 0.0 && deep > 0.0 {
                    let (far, into) = (add(hinge, across, item.width + beside), |p: P| add(p, inward, deep));
                    let floor = counter_clockwise(vec![hinge, far, into(far), into(hinge)]);
                    self.zone("latch_side", &item.name, vec![floor], false, -1.0);
                }
                // 40 thick, beyond the line from which the doorway is clear; at 175 degrees and more flat at its wall.
                if door.opens_to.is_some_and(|degrees| degrees < 175.0) {
                    let tip = |p: P| add(add(p, across, item.width * turn.cos()), inward, item.width * turn.sin());
                    let aside = add(add(hinge, across, -40.0 * turn.sin()), inward, 40.0 * turn.cos());
                    let leaf = counter_clockwise(vec![hinge, tip(hinge), tip(aside), aside]);
                    self.leaves.push((item.name.clone(), leaf));
                }
            }
            ItemKind::Opening(_) if item.width <= WIDEST_WITH_LANDING => {
                self.zone("door_landing", &item.name, landing(), false, -1.0);
            }
            ItemKind::Window(window) => {
                let front = vec![strip(0.0, brief.rules.get(Clearance::WindowFront))];
                self.zone("window_front", &item.name, front, false, window.sill);
            }
            ItemKind::Radiator(it) => {
                self.body(&item.name, strip(0.0, it.depth), false);
                self.zone("keep_clear", &item.name, vec![strip(it.depth, it.depth + it.keep_clear)], false, -1.0);
            }
            ItemKind::Fireplace(it) => {
                self.body(&item.name, strip(0.0, it.depth), true);
                let (from, to) = it.opening.map_or((0.0, item.width), |mouth| (mouth.at, mouth.at + mouth.width));
                let to = to.min(item.width);
                let ends = [(at(from, it.depth), back), (at(to, it.depth), along)];
                let mut shapes: Vec<Polygon> = ends.iter().map(|&(p, way)| quarter(p, way, it.keep_clear)).collect();
                let (near, far) = (it.depth, it.depth + it.keep_clear);
                shapes.push(counter_clockwise(vec![at(from, near), at(to, near), at(to, far), at(from, far)]));
                self.zone("keep_clear", &item.name, shapes, true, -1.0);
            }
            ItemKind::Opening(_) | ItemKind::Socket(_) => {}
        }
    }

    fn zone(&mut self, rule: &'static str, item: &str, mut shapes: Vec<Polygon>, stops_rugs: bool, above: f64) {
        // What has no extent, as where nothing is to be kept clear, keeps nothing out.
        shapes.retain(|shape| turning(shape).abs() > 0.0);
        self.zones.push(Zone { rule, item: item.to_owned(), shapes, stops_rugs, above });
    }

    fn body(&mut self, name: &str, shape: Polygon, stops_rugs: bool) {
        self.bodies.push((name.to_owned(), shape.clone()));
        self.zone("fixed", name, vec![shape], stops_rugs, -1.0);
    }
}

/// A polygon with every edge moved to its left by `by`, cut where neighbours meet.
pub(crate) fn moved(polygon: &[P], by: f64) -> Polygon {
    let count = polygon.len();
    let corner = |i: usize| {
        let first = minus(polygon[i], polygon[(i + count - 1) % count]);
        let second = minus(polygon[(i + 1) % count], polygon[i]);
        let (a, b) = (left(unit(first)), left(unit(second)));
        // The corner moves along the bisector so far that both edges are `by` away.
        let sum = add(a, b, 1.0);
        let scale = 2.0 * by / (sum[0] * sum[0] + sum[1] * sum[1]);
        debug_assert!(cross(first, second).abs() > 0.0 || length(sum) > 0.0);
        add(polygon[i], sum, scale)
    };
    (0..count).map(corner).collect()
}
