//! The floor before what people use, worked out here a second time.

use elbowroom_model::{Brief, Fixed};

use super::plane::{P, add, dot, left, minus, unit, within};
use super::room::xy;

/// How far out of an edge one looks whether floor is there, mm.
const JUST_OUT: f64 = 100.0;

/// A fixed thing that is used, by the longest of its edges that floor lies before.
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
        let at = add([(edge.0[0] + edge.1[0]) / 2.0, (edge.0[1] + edge.1[1]) / 2.0], out(*edge), JUST_OUT);
        let others = brief.room.fixed.iter().enumerate().filter(|(other, _)| *other != place);
        let holds = |ring: Vec<P>| within(at, &ring);
        let walls = brief.room.walls.iter().rev().map(|wall| xy(wall.start)).collect();
        holds(walls) && !others.into_iter().any(|(_, other)| holds(other.corners.iter().map(|c| xy(*c)).collect()))
    };
    let length = |edge: &(P, P)| dot(minus(edge.1, edge.0), minus(edge.1, edge.0));
    let longest = edges.filter(is_free).reduce(|best, next| if length(&next) > length(&best) { next } else { best });
    let edge = longest?;
    let (out, by) = (out(edge), brief.room.measured_within);
    Some(Used { name: thing.name.clone(), edge: [add(edge.0, out, by), add(edge.1, out, by)], out, depth })
}
