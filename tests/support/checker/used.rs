//! The floor before what people use, worked out here a second time.

use elbowroom_model::{Brief, Fixed, UsedAt};

use super::plane::{P, add, dot, left, minus, unit, within};
use super::room::xy;

/// How far out of an edge one looks whether floor is there, mm.
const JUST_OUT: f64 = 100.0;

/// Lengths that differ by no more are as long, mm.
const AS_LONG: f64 = 1.0;

/// A fixed thing that is used, by one of its edges that floor lies before: the longest, of stairs the shortest, or where the
/// file says.
pub(crate) struct Used {
    pub(crate) name: String,
    /// Its ends, moved out by what the thing may be larger than measured.
    pub(crate) edge: [P; 2],
    /// Away from the thing.
    pub(crate) out: P,
    /// Of the floor that stays clear, mm.
    pub(crate) depth: f64,
}

/// All that is used, in the file's order.
pub(crate) fn used(brief: &Brief) -> Vec<Used> {
    let things = brief.room.fixed.iter().enumerate();
    things.filter_map(|(place, thing)| one(brief, place, thing)).collect()
}

fn one(brief: &Brief, place: usize, thing: &Fixed) -> Option<Used> {
    let depth = thing.use_depth.filter(|depth| *depth > 0.0)?;
    let corners: Vec<P> = thing.corners.iter().map(|corner| xy(*corner)).collect();
    let edges = corners.iter().zip(corners.iter().cycle().skip(1)).map(|(from, to)| (*from, *to));
    let out = |(from, to): (P, P)| minus([0.0, 0.0], left(unit(minus(to, from))));
    let is_free = |edge: &(P, P)| {
        let at = add(middle(edge), out(*edge), JUST_OUT);
        let others = brief.room.fixed.iter().enumerate().filter(|(other, _)| *other != place);
        let holds = |ring: Vec<P>| within(at, &ring);
        let walls = brief.room.walls.iter().rev().map(|wall| xy(wall.start)).collect();
        holds(walls) && !others.into_iter().any(|(_, other)| holds(other.corners.iter().map(|c| xy(*c)).collect()))
    };
    let length = |edge: &(P, P)| dot(minus(edge.1, edge.0), minus(edge.1, edge.0)).sqrt();
    let good = |edge: &(P, P)| match thing.used_at {
        UsedAt::Longest => length(edge),
        UsedAt::Shortest => -length(edge),
        UsedAt::Place(place) => -from_stretch(xy(place), *edge),
    };
    // Of two ends alike the one with more floor straight before it.
    let open = |edge: &(P, P)| match thing.used_at {
        UsedAt::Shortest => open_before(brief, place, middle(edge), out(*edge)),
        UsedAt::Longest | UsedAt::Place(_) => 0.0,
    };
    let is_better = |next: &(P, P), best: &(P, P)| {
        let by = good(next) - good(best);
        by > AS_LONG || by.abs() <= AS_LONG && open(next) > open(best) + AS_LONG
    };
    let edge = edges.filter(is_free).reduce(|best, next| if is_better(&next, &best) { next } else { best })?;
    let (out, by) = (out(edge), brief.room.measured_within);
    Some(Used { name: thing.name.clone(), edge: [add(edge.0, out, by), add(edge.1, out, by)], out, depth })
}

/// From a place to a stretch, mm.
fn from_stretch(place: P, (from, to): (P, P)) -> f64 {
    let way = minus(to, from);
    let share = (dot(minus(place, from), way) / dot(way, way)).clamp(0.0, 1.0);
    let off = minus(place, add(from, way, share));
    dot(off, off).sqrt()
}

fn middle((from, to): &(P, P)) -> P {
    [(from[0] + to[0]) / 2.0, (from[1] + to[1]) / 2.0]
}

/// How far one can go straight out before a wall or another fixed thing stands there, mm.
fn open_before(brief: &Brief, place: usize, from: P, out: P) -> f64 {
    let walls: Vec<P> = brief.room.walls.iter().map(|wall| xy(wall.start)).collect();
    let others = brief.room.fixed.iter().enumerate().filter(|(other, it)| *other != place && it.corners.len() > 2);
    let rings = others.map(|(_, it)| it.corners.iter().map(|corner| xy(*corner)).collect());
    let ahead = |from: P, to: P, start: P| {
        // Seen along the way out: how far ahead and how far aside both ends lie.
        let seen = |at: P| (dot(minus(at, start), out), dot(minus(at, start), left(out)));
        let ((near, one), (far, other)) = (seen(from), seen(to));
        let share = one / (one - other);
        let at = near + (far - near) * share;
        ((0.0..=1.0).contains(&share) && at > 0.0).then_some(at)
    };
    let edges = |ring: Vec<P>| (0..ring.len()).map(|i| (ring[i], ring[(i + 1) % ring.len()])).collect::<Vec<_>>();
    let all = std::iter::once(walls).chain(rings).flat_map(edges);
    all.filter_map(|(a, b)| ahead(a, b, from)).fold(f64::INFINITY, f64::min)
}
