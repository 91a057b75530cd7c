//! Convex outlines whose corners are linear in the variables: pieces, zones that move with them, and fixed shapes.

use elbowroom_model::Point;

use super::linear::{Linear, LinearPoint};
use super::tolerance::WITHIN_CONE;
use crate::geometry::Convex;

/// A convex outline: corner `i` lies between edge `i - 1` and edge `i`, counter-clockwise; `normals[i]` is the outward
/// normal of edge `i`. A segment has two corners and two normals, a point one corner and none.
#[derive(Debug, Clone, PartialEq)]
pub struct LinearOutline {
    /// Corners, counter-clockwise.
    pub corners: Vec<LinearPoint>,
    /// Outward unit normals of the edges; empty for a point.
    pub normals: Vec<Point>,
}

/// A stretch of a line through a place: between two distances from it in a direction.
#[derive(Debug, Clone, Copy)]
pub struct LinearStretch<'a> {
    /// The direction.
    pub way: Point,
    /// Where it starts and where it ends.
    pub ends: [&'a Linear; 2],
}

impl LinearOutline {
    /// A shape that does not move.
    #[must_use]
    pub fn fixed(shape: &Convex) -> Self {
        let points = shape.corners();
        let corners = points.iter().map(|corner| LinearPoint::fixed(*corner)).collect();
        let normals = match points {
            [] | [_] => Vec::new(),
            [start, end] => {
                let normal = (*end - *start).right().unit().unwrap_or_default();
                vec![normal, -normal]
            }
            _ => shape.edges().map(|edge| edge.vector().right().unit().unwrap_or_default()).collect(),
        };
        Self { corners, normals }
    }

    /// A rectangle: the places that lie from `origin` in both of two stretches square to each other.
    #[must_use]
    pub fn block(origin: &LinearPoint, across: LinearStretch<'_>, deep: LinearStretch<'_>) -> Self {
        let (along, [from, to]) = (across.way, across.ends);
        let (out, [near, far]) = (deep.way, deep.ends);
        let at = |a: &Linear, o: &Linear| origin.clone().moved(along, a).moved(out, o);
        let mut corners = vec![at(from, near), at(to, near), at(to, far), at(from, far)];
        let mut normals = vec![-out, along, out, -along];
        if along.cross(out) < 0.0 {
            corners = vec![at(from, near), at(from, far), at(to, far), at(to, near)];
            normals = vec![-along, out, along, -out];
        }
        Self { corners, normals }
    }

    /// The rectangle about it with two sides square to `way`.
    #[must_use]
    pub fn framed(&self, way: Point) -> Self {
        let stretch = |way: Point| [Linear::default().plus(&self.reach(-way), -1.0), self.reach(way)];
        let (across, deep) = (stretch(way), stretch(way.left()));
        let origin = LinearPoint::fixed(Point::default());
        let across = LinearStretch { way, ends: [&across[0], &across[1]] };
        Self::block(&origin, across, LinearStretch { way: way.left(), ends: [&deep[0], &deep[1]] })
    }

    /// The corner that reaches furthest in `direction`.
    #[must_use]
    pub fn furthest(&self, direction: Point) -> &LinearPoint {
        let count = self.normals.len();
        let within = |i: usize| {
            let (before, after) = (self.normals[(i + count - 1) % count], self.normals[i]);
            before.cross(direction) >= -WITHIN_CONE
                && direction.cross(after) >= -WITHIN_CONE
                && direction.dot(before + after) > -WITHIN_CONE
        };
        let corner = (0..count.min(self.corners.len())).find(|i| within(*i)).unwrap_or(0);
        &self.corners[corner]
    }

    /// The furthest that it reaches in `direction`.
    #[must_use]
    pub fn reach(&self, direction: Point) -> Linear {
        self.furthest(direction).along(direction)
    }
}
