//! Steps in the floor: what takes floor lies on one side of each, rugs too.

use elbowroom_model::Brief;

use super::placing::SLACK;
use super::plane::{P, Polygon, add, apart, counter_clockwise, left, minus, unit};
use super::room::{Ground, moved};
use super::stand::Stand;

/// What is wrong with pieces that stand across a step.
pub(crate) fn complaints(brief: &Brief, ground: &Ground, stands: &[Stand<'_>]) -> Vec<String> {
    let by = brief.room.measured_within;
    let mut all = Vec::new();
    for stand in stands.iter().filter(|stand| stand.hung_at().is_none()) {
        for (name, line) in &ground.steps {
            if stand.parts().iter().any(|part| is_over(part, line, by)) {
                all.push(format!("4 fixed: {} stands across {name}", stand.name()));
            }
        }
    }
    all
}

/// Whether a shape comes nearer to a line than `by`, or lies across it: what rounding explains is forgiven.
pub(crate) fn is_over(shape: &Polygon, line: &[P], by: f64) -> bool {
    // A millimetre smaller, a shape that only touches the line is a millimetre off it.
    apart(&moved(shape, 1.0), line) < by + 1.0 - SLACK
}

/// All that lies so near to a line, square at its ends.
pub(crate) fn strip(line: &[P], by: f64) -> Polygon {
    let (from, to) = (line[0], line[1]);
    if by <= 0.0 {
        return line.to_vec();
    }
    let along = unit(minus(to, from));
    let corner = |p: P, ahead: f64, aside: f64| add(add(p, along, ahead * by), left(along), aside * by);
    counter_clockwise(vec![
        corner(from, -1.0, -1.0),
        corner(to, 1.0, -1.0),
        corner(to, 1.0, 1.0),
        corner(from, -1.0, 1.0),
    ])
}
