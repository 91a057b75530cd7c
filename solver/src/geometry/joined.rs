//! Two outlines that lie against each other, as one.

use elbowroom_model::Point;

use super::Segment;
use super::tolerance::SAME_CORNER;

/// Two counter-clockwise rings as one: the second goes in where an edge of it lies on an edge of the first. A corner that comes
/// twice is told once. `None` where they share no edge.
///
/// ```
/// use elbowroom_model::Point;
/// use elbowroom_solver::geometry::joined;
/// let ring = |corners: [(f64, f64); 4]| corners.map(|(x, y)| Point::new(x, y));
/// let run = ring([(0.0, 0.0), (2000.0, 0.0), (2000.0, 900.0), (0.0, 900.0)]);
/// let beside = ring([(600.0, 900.0), (1500.0, 900.0), (1500.0, 1600.0), (600.0, 1600.0)]);
/// assert_eq!(joined(&run, &beside).map(|whole| whole.len()), Some(8));
/// let apart = ring([(600.0, 950.0), (1500.0, 950.0), (1500.0, 1600.0), (600.0, 1600.0)]);
/// assert_eq!(joined(&run, &apart), None);
/// ```
#[must_use]
pub fn joined(ring: &[Point], part: &[Point]) -> Option<Vec<Point>> {
    edges(ring).enumerate().find_map(|(place, edge)| {
        let shared = edges(part).position(|of_part| lies_on(of_part, edge))?;
        // Both run counter-clockwise, so the shared edge runs against the other.
        let detour = (1..=part.len()).map(|step| part[(shared + step) % part.len()]);
        let whole: Vec<Point> =
            ring[..=place].iter().copied().chain(detour).chain(ring[place + 1..].iter().copied()).collect();
        let before = whole.iter().cycle().skip(whole.len() - 1);
        let new = before.zip(&whole).filter(|(before, here)| (**here - **before).norm() > SAME_CORNER);
        Some(new.map(|(_, here)| *here).collect())
    })
}

fn edges(ring: &[Point]) -> impl Iterator<Item = Segment> {
    ring.iter().zip(ring.iter().cycle().skip(1)).map(|(start, end)| Segment::new(*start, *end))
}

/// Whether an edge lies on another and runs against it.
fn lies_on(one: Segment, other: Segment) -> bool {
    let is_on = |at: Point| other.distance_to(at) < SAME_CORNER;
    one.vector().dot(other.vector()) < 0.0 && is_on(one.start) && is_on(one.end)
}
