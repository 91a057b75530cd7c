//! Lines, outlines, arcs and round corners.

use super::mark::{Fill, Path, Pen, Step};
use super::{Area, At};

impl Path {
    /// A line from place to place.
    pub(crate) fn line(places: impl IntoIterator<Item = At>, pen: Pen) -> Self {
        let steps = places.into_iter().enumerate();
        let steps = steps.map(|(place, at)| if place == 0 { Step::Move(at) } else { Step::Line(at) }).collect();
        Self { steps, pen: Some(pen), fill: Fill::None }
    }

    /// A closed outline.
    pub(crate) fn ring(places: impl IntoIterator<Item = At>, pen: Option<Pen>, fill: Fill) -> Self {
        let mut path = Self::line(places, Pen::ink(0.0));
        path.steps.push(Step::Close);
        Self { pen, fill, ..path }
    }

    /// A closed outline with round corners: of this radius, or as much of it as an edge has room for.
    pub(crate) fn rounded(places: &[At], radius: f64, pen: Option<Pen>, fill: Fill) -> Self {
        let count = places.len();
        let mut steps = Vec::with_capacity(2 * count + 1);
        for (place, corner) in places.iter().enumerate() {
            let [before, after] = [places[(place + count - 1) % count], places[(place + 1) % count]];
            let (start, arc) = round_corner([before, *corner, after], radius);
            steps.push(if place == 0 { Step::Move(start) } else { Step::Line(start) });
            steps.extend(arc);
        }
        steps.push(Step::Close);
        Self { steps, pen, fill }
    }

    /// A quarter circle (or any arc under half a turn).
    pub(crate) fn arc(from: At, to: At, radius: f64, clockwise: bool, pen: Pen) -> Self {
        let steps = vec![Step::Move(from), Step::Arc { radius, clockwise, to }];
        Self { steps, pen: Some(pen), fill: Fill::None }
    }

    /// A circle.
    pub(crate) fn circle(middle: At, radius: f64, pen: Option<Pen>, fill: Fill) -> Self {
        let (left, right) = (middle - At::new(radius, 0.0), middle + At::new(radius, 0.0));
        let half = |to| Step::Arc { radius, clockwise: true, to };
        Self { steps: vec![Step::Move(left), half(right), half(left), Step::Close], pen, fill }
    }

    /// Every upright rectangle's outline.
    pub(crate) fn area(area: &Area, pen: Option<Pen>, fill: Fill) -> Self {
        Self::ring(area.corners(), pen, fill)
    }
}

/// Where the arc round a corner starts, and the arc; none where there is no corner, or no room.
fn round_corner([before, corner, after]: [At; 3], radius: f64) -> (At, Option<Step>) {
    let (back, on) = (before - corner, after - corner);
    let half_angle = back.unit().dot(on.unit()).clamp(-1.0, 1.0).acos() / 2.0;
    let room = back.length().min(on.length()) / 2.0;
    let reach = (radius / half_angle.tan()).min(room);
    let radius = reach * half_angle.tan();
    // Nearly straight on, or back where one came from.
    if !radius.is_finite() || radius < 0.01 || reach < 0.01 {
        return (corner, None);
    }
    let clockwise = (corner - before).right().dot(on) > 0.0;
    (corner + back.unit() * reach, Some(Step::Arc { radius, clockwise, to: corner + on.unit() * reach }))
}
