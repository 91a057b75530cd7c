//! The narrowest place of a way between what stands along it, where a tape would be laid: from one thing to another, across
//! the line that is walked. The ends of a way are no such place: a front is walked up to, a doorway has its own width.

use elbowroom_model::{Brief, Point};

use super::cut::stops_of;
use super::floor::Floor;
use super::mouth::{Mouth, Owner};
use super::stop::Stop;
use super::{Demand, End, ShapeId};
use crate::geometry::{Convex, Segment, gap, gap_to_segment};
use crate::layout::Layout;

/// Ends of a tape that touch something by less are free of it, mm.
const TOUCHES: f64 = 2.0;

/// What is further apart narrows no way, mm. Common practice, no source.
const WIDE: f64 = 4000.0;

/// A tape so near to the line of a doorway lies in it, and the doorway has its own width, mm.
const IN_DOORWAY: f64 = 150.0;

/// Corners so far behind a face lie in it, mm.
const IN_FACE: f64 = 1.0;

/// Where a way is narrowest between two things.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct NarrowPlace {
    /// What stands on either side; never an end of the way.
    pub between: [ShapeId; 2],
    /// Where a tape is laid: from the first to the second, mm.
    pub at: [Point; 2],
    /// How far they are apart, mm.
    pub clear: f64,
}

impl Floor {
    /// The narrowest place of a way that is walked along `line`; `None` where nothing stands near it on both sides.
    #[must_use]
    pub fn narrow_place(&self, brief: &Brief, layout: &Layout, demand: &Demand, line: &[Point]) -> Option<NarrowPlace> {
        let ends = [End::Item(demand.from), demand.to];
        let mouths = ends.into_iter().filter_map(|end| self.mouth(brief, layout, end));
        let doorways: Vec<Mouth> = mouths.filter(|mouth| mouth.owner == Owner::Wall).collect();
        let things = self.things(brief, layout, Self::tables(brief, layout, demand));
        let mut stops = stops_of(&self.walls, &doorways, &things);
        stops.retain(|stop| !matches!(stop.id, ShapeId::Mouth(_)));
        let legs: Vec<Segment> = line.windows(2).map(|leg| Segment::new(leg[0], leg[1])).collect();
        let mut best: Option<NarrowPlace> = None;
        for (order, first) in stops.iter().enumerate() {
            for second in &stops[order + 1..] {
                let most = best.map_or(WIDE, |best| best.clear);
                if is_one_thing(first.id, second.id) || first.bounds.apart_by(&second.bounds, most) {
                    continue;
                }
                let found = between(first, second, most);
                let laid = found.and_then(|places| {
                    places.into_iter().find(|tape| {
                        is_across(*tape, &legs) && !lies_in_any(*tape, &doorways) && is_free(*tape, &stops)
                    })
                });
                best = laid
                    .map(|tape| NarrowPlace {
                        between: [first.id, second.id],
                        at: [tape.start, tape.end],
                        clear: tape.vector().norm(),
                    })
                    .or(best);
            }
        }
        best
    }
}

/// Whether the two are parts of one thing, which nobody walks between.
fn is_one_thing(first: ShapeId, second: ShapeId) -> bool {
    match (first, second) {
        (ShapeId::Part { piece, .. }, ShapeId::Part { piece: other, .. }) => piece == other,
        _ => first == second,
    }
}

/// Where a tape may be laid from one to the other, if they are less than so far apart: in the middle of what two faces have in
/// common before either end of it.
fn between(first: &Stop, second: &Stop, most: f64) -> Option<Vec<Segment>> {
    let gap = gap(&first.shape, &second.shape);
    let [from, to] = gap.at;
    let way = (to - from).unit().filter(|_| gap.clear < most)?;
    let across = way.left();
    let (low, high) = [face(&first.shape, way, across), face(&second.shape, -way, across)]
        .into_iter()
        .fold((f64::NEG_INFINITY, f64::INFINITY), |(low, high), (from, to)| (low.max(from), high.min(to)));
    let at = |along: f64| {
        let start = from + across * (along - from.dot(across));
        Segment::new(start, start + way * gap.clear)
    };
    let faces = [f64::midpoint(low, high), low, high].into_iter().filter(|_| low < high).map(at);
    Some(faces.chain([Segment::new(from, to)]).collect())
}

/// From where to where the face of a shape reaches that looks this way.
fn face(shape: &Convex, way: Point, across: Point) -> (f64, f64) {
    let furthest = shape.support(way);
    let in_face = shape.corners().iter().filter(|corner| corner.dot(way) > furthest - IN_FACE);
    in_face.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), corner| {
        let along = corner.dot(across);
        (low.min(along), high.max(along))
    })
}

/// Whether who walks along the line steps over the tape.
fn is_across(tape: Segment, legs: &[Segment]) -> bool {
    legs.iter().any(|leg| tape.crossing(*leg).is_some_and(|crossing| crossing.is_on_both()))
}

/// Whether the tape lies in a doorway.
fn lies_in_any(tape: Segment, doorways: &[Mouth]) -> bool {
    let before = |mouth: &Mouth, end: Point| mouth.before.dot(end - mouth.at[0]).abs();
    doorways.iter().any(|mouth| [tape.start, tape.end].into_iter().all(|end| before(mouth, end) < IN_DOORWAY))
}

/// Whether nothing lies on the tape between its ends.
fn is_free(tape: Segment, stops: &[Stop]) -> bool {
    let Some(way) = tape.vector().unit() else { return false };
    let within = Segment::new(tape.start + way * (2.0 * TOUCHES), tape.end - way * (2.0 * TOUCHES));
    stops.iter().all(|stop| gap_to_segment(&stop.shape, within).clear > TOUCHES)
}
