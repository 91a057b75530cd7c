//! Where the boundaries of two grown shapes meet.

use elbowroom_model::Point;

use super::rounded::{Arc, Rounded};
use crate::geometry::Segment;
use crate::verify::tolerance::PARALLEL;

/// Every place where the boundaries meet, pushed on `places`. Boundaries that run along each other have none there.
pub(super) fn crossings(first: &Rounded, second: &Rounded, places: &mut Vec<Point>) {
    if !first.near(second) {
        return;
    }
    for arc in &first.arcs {
        for other in &second.arcs {
            arcs(arc, other, places);
        }
        for &line in &second.lines {
            arc_and_line(arc, line, places);
        }
    }
    for &line in &first.lines {
        for arc in &second.arcs {
            arc_and_line(arc, line, places);
        }
        for &other in &second.lines {
            places.extend(lines(line, other));
        }
    }
}

fn arcs(first: &Arc, second: &Arc, places: &mut Vec<Point>) {
    let between = second.centre - first.centre;
    let squared = between.dot(between);
    let (sum, difference) = (first.radius + second.radius, first.radius - second.radius);
    if squared > sum * sum || squared <= difference * difference || squared == 0.0 {
        return;
    }
    let share = 0.5 + 0.5 * sum * difference / squared;
    let half = (first.radius * first.radius / squared - share * share).max(0.0).sqrt();
    let (foot, aside) = (first.centre + between * share, between.left() * half);
    places.extend([foot + aside, foot - aside].into_iter().filter(|&place| first.holds(place) && second.holds(place)));
}

fn arc_and_line(arc: &Arc, line: Segment, places: &mut Vec<Point>) {
    let along = line.vector();
    let from = line.start - arc.centre;
    let (a, b, c) = (along.dot(along), from.dot(along), from.dot(from) - arc.radius * arc.radius);
    let squared = b * b - a * c;
    if squared < 0.0 || a == 0.0 {
        return;
    }
    let root = squared.sqrt();
    let shares = [(-b - root) / a, (-b + root) / a].into_iter().filter(|share| (0.0..=1.0).contains(share));
    places.extend(shares.map(|share| line.at(share)).filter(|&place| arc.holds(place)));
}

fn lines(first: Segment, second: Segment) -> Option<Point> {
    let (along, other) = (first.vector(), second.vector());
    let turn = along.cross(other);
    if turn.abs() < PARALLEL {
        return None;
    }
    let apart = second.start - first.start;
    let share = apart.cross(other) / turn;
    let of_other = apart.cross(along) / turn;
    ((0.0..=1.0).contains(&share) && (0.0..=1.0).contains(&of_other)).then(|| first.at(share))
}
