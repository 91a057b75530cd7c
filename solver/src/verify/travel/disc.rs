//! Whether a disc can travel from a mouth to a target.

use elbowroom_model::Point;

use super::free_space::FreeSpace;
use super::gate::Gate;
use super::slabs::Slabs;
use crate::geometry::Convex;

/// Where a disc is bound.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(in crate::verify) enum Target {
    /// Any place of a mouth.
    Gate(Gate),
    /// One place for its centre.
    Place(Point),
}

/// Whether a disc of `diameter` can travel from the mouth to the target and touch no obstacle.
pub(in crate::verify) fn travels(obstacles: &[Convex], from: &Gate, to: &Target, diameter: f64) -> bool {
    if diameter <= 0.0 {
        return true;
    }
    let gates = match to {
        Target::Gate(to) => vec![*from, *to],
        Target::Place(_) => vec![*from],
    };
    let space = FreeSpace::new(obstacles, gates, diameter / 2.0);
    let starts = space.places_on(0);
    let ends = match to {
        Target::Gate(_) => space.places_on(1),
        Target::Place(place) => vec![*place],
    };
    if starts.is_empty() || ends.is_empty() {
        return false;
    }
    Slabs::of(&space).joined(&space, &starts, &ends)
}

#[cfg(test)]
mod tests {
    use super::*;
    use serde_json::Value;

    fn point(value: &Value) -> Point {
        Point::new(value[0].as_f64().unwrap(), value[1].as_f64().unwrap())
    }

    fn points(value: &Value) -> Vec<Point> {
        value.as_array().unwrap().iter().map(point).collect()
    }

    fn gate(mouth: &Value, case: &Value) -> Gate {
        let widened = points(&mouth["widened"]);
        let along = (widened[1] - widened[0]).unit().unwrap();
        let middle = (widened[0] + widened[1]) * 0.5;
        // Before a wall lies the room; before a shape the side that it does not lie on.
        let shape = |owner: u64| Convex::counter_clockwise(points(&case["shapes"][owner as usize]));
        let out = match mouth["owner"].as_u64() {
            Some(owner) if (shape(owner).middle() - middle).cross(along) > 0.0 => along.left(),
            Some(_) => along.right(),
            None => {
                let walls = crate::geometry::Outline::within(&points(&case["walls"]));
                let before = middle + along.left();
                let near = |aside: f64| before + along * aside;
                let speck = Convex::counter_clockwise([near(-0.1), near(0.1), before + along.left() * 0.1]);
                if walls.covers(&speck) { along.left() } else { along.right() }
            }
        };
        Gate { ends: [widened[0], widened[1]], out }
    }

    fn obstacles(case: &Value) -> Vec<Convex> {
        let walls = points(&case["walls"]);
        let wall = |i: usize| Convex::counter_clockwise([walls[i], walls[(i + 1) % walls.len()]]);
        let mut all: Vec<Convex> = (0..walls.len()).map(wall).collect();
        let own: Vec<u64> =
            case["mouths"].as_array().unwrap().iter().filter_map(|mouth| mouth["own_table"].as_u64()).collect();
        for (i, shape) in case["shapes"].as_array().unwrap().iter().enumerate() {
            if !own.contains(&(i as u64)) {
                all.push(Convex::counter_clockwise(points(shape)));
            }
        }
        all
    }

    /// The 120 cases of widest routes that were measured by dilation, 0.1 mm.
    #[test]
    fn a_disc_as_wide_as_measured_travels_and_a_wider_one_does_not() {
        let path = concat!(env!("CARGO_MANIFEST_DIR"), "/../tests/data/routes.json");
        let cases: Value = serde_json::from_str(&std::fs::read_to_string(path).unwrap()).unwrap();
        let mut wrong = Vec::new();
        for case in cases.as_array().unwrap() {
            let [first, second] = [0, 1].map(|i| gate(&case["mouths"][i], case));
            let shapes = obstacles(case);
            let width = case["width"].as_f64().unwrap();
            let travels = |diameter: f64| travels(&shapes, &first, &Target::Gate(second), diameter);
            if (width > 0.5 && !travels(width - 0.5)) || travels(width + 0.5) {
                wrong.push(format!("{} {}: {width}", case["id"], case["note"]));
            }
        }
        assert!(wrong.is_empty(), "{} wrong: {wrong:#?}", wrong.len());
    }
}
