//! The line that one walks between two doorways: the shortest round the pieces and what stands for good, keeping half
//! the route's width from their sides. It says what a route cuts through; its width and length are measured in `routes`.
//!
//! Over a visibility graph (Lozano-Perez and Wesley 1979), by always going on from the nearest place (Dijkstra 1959).

use elbowroom_model::{Brief, Piece, Point, ring};

use super::tolerance::{JUST_FITS, NO_SHORTER, TURNS};
use crate::geometry::{Convex, Crossing, Segment, mitre};
use crate::layout::Layout;
use crate::site::Site;

/// Places that the line turns at, from the middle of one doorway to that of another; straight where none is found.
pub(super) fn walk_line(brief: &Brief, site: &Site, layout: &Layout, ends: [Point; 2], width: f64) -> Vec<Point> {
    let aside = (width / 2.0 - JUST_FITS).max(0.0);
    VisibilityGraph::of(brief, site, layout, aside).shortest(ends).unwrap_or_else(|| ends.to_vec())
}

/// What the line keeps out of, and where it may turn.
struct VisibilityGraph {
    kept_out: Vec<Convex>,
    walls: Vec<Segment>,
    turns: Vec<Point>,
}

impl VisibilityGraph {
    fn of(brief: &Brief, site: &Site, layout: &Layout, aside: f64) -> Self {
        let stands = layout.placed.iter().filter(|placed| brief.piece(placed.piece).is_some_and(Piece::stops_walkers));
        let parts =
            stands.flat_map(crate::layout::Placed::parts).chain(site.bodies.iter().map(|body| body.shape.clone()));
        let parts: Vec<Convex> = parts.collect();
        let kept_out: Vec<Convex> = parts.iter().map(|part| part.grown(aside)).collect();
        let outline = brief.room.outline();
        let count = outline.len();
        let walls = (0..count).map(|i| Segment::new(outline[i], outline[(i + 1) % count])).collect();
        // Turned at a hair farther off, so that a leg along a side is clear of it.
        let corners = parts.iter().flat_map(|part| part.grown(aside + JUST_FITS / 2.0).corners().to_vec());
        let turns = corners.chain(outside_corners(&outline, aside));
        let is_kept_out = |turn: &Point| kept_out.iter().any(|shape| shape.depth_of(*turn) > JUST_FITS);
        let turns = turns.filter(|turn| ring::holds(&outline, *turn) && !is_kept_out(turn)).collect();
        Self { kept_out, walls, turns }
    }

    /// Shortest way over the turns, by always going on from the nearest place that is not yet settled.
    fn shortest(&self, [from, to]: [Point; 2]) -> Option<Vec<Point>> {
        let mut places = vec![to];
        places.extend(&self.turns);
        let mut best: Vec<(f64, Option<usize>)> = places
            .iter()
            .map(|place| (if self.is_open(from, *place) { (*place - from).norm() } else { f64::INFINITY }, None))
            .collect();
        let mut settled = vec![false; places.len()];
        loop {
            let open = (0..places.len()).filter(|i| !settled[*i] && best[*i].0.is_finite());
            let next = open.min_by(|a, b| best[*a].0.total_cmp(&best[*b].0))?;
            if next == 0 {
                return Some(self.retraced(from, &places, &best));
            }
            settled[next] = true;
            for other in (0..places.len()).filter(|other| !settled[*other]) {
                let length = best[next].0 + (places[other] - places[next]).norm();
                if length < best[other].0 - NO_SHORTER && self.is_open(places[next], places[other]) {
                    best[other] = (length, Some(next));
                }
            }
        }
    }

    fn retraced(&self, from: Point, places: &[Point], best: &[(f64, Option<usize>)]) -> Vec<Point> {
        let back = std::iter::successors(Some(0), |place: &usize| best[*place].1);
        let mut line: Vec<Point> = back.map(|place| places[place]).collect();
        line.push(from);
        line.reverse();
        line
    }

    /// Nothing lies across the straight way.
    fn is_open(&self, from: Point, to: Point) -> bool {
        let way = Segment::new(from, to);
        !self.walls.iter().any(|wall| way.crossing(*wall).is_some_and(Crossing::is_inside_first))
            && self.kept_out.iter().all(|shape| way.length_inside(shape) <= JUST_FITS)
    }
}

/// The outside corners of a clockwise outline, moved into the room.
fn outside_corners(outline: &[Point], by: f64) -> Vec<Point> {
    let count = outline.len();
    let inward = |i: usize| (outline[(i + 1) % count] - outline[i % count]).right().unit().unwrap_or_default();
    let outside = |i: &usize| inward(i + count - 1).cross(inward(*i)) > TURNS;
    (0..count).filter(outside).map(|i| mitre(outline[i], [inward(i + count - 1), inward(i)], by)).collect()
}
