//! Outlines that are square to each other but for what no tape shows. No two walls of a measured room are quite square: taken at
//! their word each pair of pieces would have twice the ways to stand apart, half of them next to the others.

use elbowroom_model::Point;

use super::linear_outline::LinearOutline;
use super::tolerance::{NEARLY_SQUARE, SAME_DIRECTION};

/// Rectangles about both, with sides along one way, where their edges run along it or square to it but for what no tape shows:
/// what keeps those apart keeps the outlines apart. `None` where they are quite square to each other, or are not at all.
pub(super) fn nearly_square(first: &LinearOutline, second: &LinearOutline) -> Option<[LinearOutline; 2]> {
    let way = *first.normals.first()?;
    second.normals.first()?;
    let off = |normal: &Point| normal.dot(way).abs().min(normal.cross(way).abs());
    let furthest = first.normals.iter().chain(&second.normals).map(off).fold(0.0, f64::max);
    (SAME_DIRECTION..NEARLY_SQUARE).contains(&furthest).then(|| [first.framed(way), second.framed(way)])
}

#[cfg(test)]
mod tests {
    use elbowroom_model::Point;

    use super::super::separation::apart;
    use super::{LinearOutline, nearly_square};
    use crate::geometry;
    use crate::geometry::Convex;

    /// A sofa's plan, 240 x 95 cm, turned by so much, with its middle there.
    fn sofa(turned: f64, middle: Point) -> Convex {
        let along = Point::new(turned.cos(), turned.sin());
        let corner = |x: f64, y: f64| middle + along * x + along.left() * y;
        let half = (1200.0, 475.0);
        let corners = [(-1.0, -1.0), (1.0, -1.0), (1.0, 1.0), (-1.0, 1.0)];
        Convex::counter_clockwise(corners.map(|(x, y)| corner(x * half.0, y * half.1)))
    }

    /// Two sofas turned to each other by `turned`, all round: asked to be 45 cm apart they are, by general geometry; and what is
    /// asked is refused to none that is 3 mm further apart.
    fn keeps_its_gap(turned: f64) {
        let gap = 450.0;
        let first = sofa(0.3, Point::default());
        for step in 0..720 {
            let way = Point::new((f64::from(step) * 0.00873).cos(), (f64::from(step) * 0.00873).sin());
            let second = sofa(0.3 + turned, way * (f64::from(step % 90) * 20.0 + 900.0));
            let ways = apart(&LinearOutline::fixed(&first), &LinearOutline::fixed(&second), gap);
            let (holds, apart) = (ways.iter().any(|way| way.holds(&[])), geometry::apart(&first, &second));
            assert!(!holds || apart >= gap - 1e-3, "{turned} {step}: {apart}");
            assert!(holds || apart < gap + 3.0, "{turned} {step}: {apart}");
        }
    }

    #[test]
    fn what_is_asked_of_nearly_square_outlines_keeps_the_gap_and_costs_no_more_than_a_tape_shows() {
        for turned in [0.0, 1e-6, 1e-4, 9e-4, 1.1e-3, 0.4] {
            keeps_its_gap(turned);
            keeps_its_gap(-turned);
        }
    }

    #[test]
    fn rectangles_stand_in_where_outlines_are_nearly_square_to_each_other_alone() {
        let stands_in = |turned: f64| {
            let [first, second] = [0.0, turned].map(|turned| LinearOutline::fixed(&sofa(turned, Point::default())));
            nearly_square(&first, &second).is_some()
        };
        assert!(stands_in(1e-4) && stands_in(-1e-4) && stands_in(std::f64::consts::FRAC_PI_2 + 1e-4));
        assert!(!stands_in(0.0) && !stands_in(2e-3) && !stands_in(0.4));
    }
}
