//! Plain geometry on `[x, y]`: clipping, distances, sampling. Convex polygons run counter-clockwise.

pub(crate) type P = [f64; 2];
pub(crate) type Polygon = Vec<P>;

pub(crate) fn add(a: P, b: P, times: f64) -> P {
    [a[0] + b[0] * times, a[1] + b[1] * times]
}

pub(crate) fn dot(a: P, b: P) -> f64 {
    a[0] * b[0] + a[1] * b[1]
}

pub(crate) fn cross(a: P, b: P) -> f64 {
    a[0] * b[1] - a[1] * b[0]
}

pub(crate) fn minus(a: P, b: P) -> P {
    [a[0] - b[0], a[1] - b[1]]
}

pub(crate) fn length(a: P) -> f64 {
    a[0].hypot(a[1])
}

pub(crate) fn unit(a: P) -> P {
    let by = length(a);
    [a[0] / by, a[1] / by]
}

pub(crate) fn left(a: P) -> P {
    [-a[1], a[0]]
}

pub(crate) fn edges(polygon: &[P]) -> impl Iterator<Item = (P, P)> + '_ {
    (0..polygon.len()).map(|i| (polygon[i], polygon[(i + 1) % polygon.len()]))
}

/// Twice the area, positive where the corners run counter-clockwise.
pub(crate) fn turning(polygon: &[P]) -> f64 {
    edges(polygon).map(|(a, b)| cross(a, b)).sum()
}

pub(crate) fn counter_clockwise(mut polygon: Polygon) -> Polygon {
    if turning(&polygon) < 0.0 {
        polygon.reverse();
    }
    polygon
}

/// The part of a convex polygon to the left of the line through `at` in direction `along`.
pub(crate) fn left_of(polygon: &[P], at: P, along: P) -> Polygon {
    let side = |p: P| cross(along, minus(p, at));
    let mut part = Vec::new();
    for (a, b) in edges(polygon) {
        let (from, to) = (side(a), side(b));
        if from >= 0.0 {
            part.push(a);
        }
        if from * to < 0.0 {
            part.push(add(a, minus(b, a), from / (from - to)));
        }
    }
    part
}

/// What two convex polygons have in common.
pub(crate) fn common(first: &[P], second: &[P]) -> Polygon {
    edges(second).fold(first.to_vec(), |part, (a, b)| left_of(&part, a, minus(b, a)))
}

/// The least width of a convex polygon: how far apart the closest two parallel lines are that hold it.
pub(crate) fn thickness(polygon: &[P]) -> f64 {
    if polygon.len() < 3 {
        return 0.0;
    }
    let across = |(a, b): (P, P)| {
        let along = minus(b, a);
        let by = length(along);
        if by < 1e-9 {
            return f64::INFINITY;
        }
        polygon.iter().map(|&p| cross(along, minus(p, a)) / by).fold(0.0, f64::max)
    };
    let least = edges(polygon).map(across).fold(f64::INFINITY, f64::min);
    if least.is_finite() { least } else { 0.0 }
}

/// How deep two convex polygons reach into each other, by the width of what they share.
pub(crate) fn shared(first: &[P], second: &[P]) -> f64 {
    thickness(&common(first, second))
}

pub(crate) fn to_segment(p: P, a: P, b: P) -> f64 {
    squared_to_segment(p, a, b).sqrt()
}

fn squared_to_segment(p: P, a: P, b: P) -> f64 {
    let along = minus(b, a);
    let squared = dot(along, along);
    let share = if squared > 0.0 { (dot(minus(p, a), along) / squared).clamp(0.0, 1.0) } else { 0.0 };
    let off = minus(p, add(a, along, share));
    dot(off, off)
}

/// Distance of a place from a convex shape (a point or a segment too); 0 inside.
pub(crate) fn to_shape(p: P, shape: &[P]) -> f64 {
    let inside = shape.len() > 2 && edges(shape).all(|(a, b)| cross(minus(b, a), minus(p, a)) >= 0.0);
    if inside {
        return 0.0;
    }
    edges(shape).map(|(a, b)| squared_to_segment(p, a, b)).fold(f64::INFINITY, f64::min).sqrt()
}

/// Distance of two convex shapes that do not overlap, from corners to edges; 0 where they share an area.
pub(crate) fn apart(first: &[P], second: &[P]) -> f64 {
    if first.len() > 2 && second.len() > 2 && shared(first, second) > 1e-6 {
        return 0.0;
    }
    let from = |shape: &[P], other: &[P]| shape.iter().map(|&p| to_shape(p, other)).fold(f64::INFINITY, f64::min);
    from(first, second).min(from(second, first))
}

/// Whether a place lies in a polygon that need not be convex, by counting crossings.
pub(crate) fn within(p: P, polygon: &[P]) -> bool {
    let crosses =
        |(a, b): (P, P)| (a[1] > p[1]) != (b[1] > p[1]) && p[0] < a[0] + (b[0] - a[0]) * (p[1] - a[1]) / (b[1] - a[1]);
    edges(polygon).filter(|&edge| crosses(edge)).count() % 2 == 1
}

/// Places along the edges of a polygon, at most `step` apart.
pub(crate) fn along_edges(polygon: &[P], step: f64) -> Vec<P> {
    let on = |(a, b): (P, P)| {
        let count = (length(minus(b, a)) / step).ceil().max(1.0) as usize;
        (0..count).map(move |i| add(a, minus(b, a), i as f64 / count as f64))
    };
    edges(polygon).flat_map(on).collect()
}

/// From where to where shapes reach along an axis.
pub(crate) fn extent(shape: &[P], axis: P) -> (f64, f64) {
    let reach = shape.iter().map(|&p| dot(p, axis));
    reach.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), r| (low.min(r), high.max(r)))
}

/// How much two intervals have in common.
pub(crate) fn overlap(first: (f64, f64), second: (f64, f64)) -> f64 {
    first.1.min(second.1) - first.0.max(second.0)
}
