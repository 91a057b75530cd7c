//! Walls and things cut at the mouths of a route.

use elbowroom_model::Point;

use super::ShapeId;
use super::mouth::{Mouth, Owner, Side};
use super::stop::Stop;
use super::tolerance::{AT_END, ON_LINE};
use crate::geometry::{Convex, cross_section};

/// Everything that stops a disc between these mouths: both ends and the back of each mouth, then walls and things.
pub(super) fn stops_of(walls: &[Stop], mouths: &[Mouth], things: &[Stop]) -> Vec<Stop> {
    let mut stops = mouth_stops(mouths);
    for stop in walls.iter().chain(things) {
        match left_of(stop, mouths) {
            Some(mut left) => stops.append(&mut left),
            None => stops.push(stop.clone()),
        }
    }
    stops
}

/// Both ends and the back of each mouth: three for each, in that order.
pub(super) fn mouth_stops(mouths: &[Mouth]) -> Vec<Stop> {
    let mut stops = Vec::with_capacity(3 * mouths.len() + 4);
    for mouth in mouths {
        let id = ShapeId::Mouth(mouth.end);
        stops.extend(mouth.stretch.map(|end| Stop::point(id, end)));
        stops.push(mouth.back());
    }
    stops
}

/// What the walkers of a route meet of a stop that its mouths cut; `None` where none does. Of a wall the stretches beside
/// its doorways and windows are left. A thing is cut in two at the line of a mouth that it crosses; what lies behind a
/// doorway or window then falls away.
pub(super) fn left_of(stop: &Stop, mouths: &[Mouth]) -> Option<Vec<Stop>> {
    if !mouths.iter().any(|mouth| opens(stop, mouth) || crosses(stop, mouth)) {
        return None;
    }
    let mut parts = vec![stop.clone()];
    for mouth in mouths {
        let cut = |part: Stop| if opens(&part, mouth) { beside(part, mouth) } else { cut(part, mouth) };
        parts = parts.into_iter().flat_map(cut).collect();
    }
    Some(parts)
}

/// Whether the mouth is a doorway or window in this stretch of wall.
fn opens(wall: &Stop, mouth: &Mouth) -> bool {
    let &[start, end] = wall.shape.corners() else { return false };
    let off_line = |at: Point| mouth.before.dot(at - mouth.stretch[0]).abs() > ON_LINE;
    let faces = mouth.before.dot((end - start).right()) > 0.0;
    mouth.owner == Owner::Wall && faces && !off_line(start) && !off_line(end)
}

/// The stretches of a wall beside a mouth in it.
fn beside(wall: Stop, mouth: &Mouth) -> Vec<Stop> {
    let &[start, end] = wall.shape.corners() else { return vec![wall] };
    let Some(along) = (end - start).unit() else { return vec![wall] };
    let length = (end - start).norm();
    let places = mouth.stretch.map(|at| (along.dot(at - start), at));
    let [from, to] = if places[0].0 <= places[1].0 { places } else { [places[1], places[0]] };
    if from.0 >= length || to.0 <= 0.0 {
        return vec![wall];
    }
    let before = (from.0 > AT_END).then(|| Stop::stretch(wall.id, start, from.1));
    let after = (to.0 < length - AT_END).then(|| Stop::stretch(wall.id, to.1, end));
    before.into_iter().chain(after).collect()
}

/// Whether the thing lies on both sides of a doorway's stretch, or of the whole line of a front: what lies behind a front
/// stops nobody straight before it, wherever the rest of the thing comes over the line.
fn crosses(thing: &Stop, mouth: &Mouth) -> bool {
    if thing.shape.corners().len() < 3 || mouth.owner == Owner::Shape(thing.id) {
        return false;
    }
    if mouth.side(&thing.shape) != Side::Astride {
        return false;
    }
    if mouth.owner != Owner::Wall {
        return true;
    }
    let section = cross_section(&thing.shape, mouth.stretch[0], mouth.along(), 0.0);
    section.is_some_and(|(from, to)| from.max(0.0) < to.min(mouth.width()) - AT_END)
}

fn cut(thing: Stop, mouth: &Mouth) -> Vec<Stop> {
    if !crosses(&thing, mouth) {
        return vec![thing];
    }
    let on_line = mouth.before.dot(mouth.stretch[0]);
    let half = |normal: Point, support: f64| -> Option<Convex> { thing.shape.clipped(normal, support) };
    let before = half(-mouth.before, -on_line);
    let behind = if mouth.owner == Owner::Wall { None } else { half(mouth.before, on_line) };
    before.into_iter().chain(behind).map(|shape| Stop::new(thing.id, shape)).collect()
}
