//! Hatches: parallel lines within an outline, as lines of their own, so that every reader draws them alike.

use super::At;

/// Lines `apart` from one another at `degrees` within `ring`, which may be any simple outline. Lines lie on one grid for
/// the whole sheet, so that neighbouring areas of one hatch run on.
pub(crate) fn hatch(ring: &[At], degrees: f64, apart: f64) -> Vec<[At; 2]> {
    let (sine, cosine) = degrees.to_radians().sin_cos();
    let (along, across) = (At::new(cosine, sine), At::new(-sine, cosine));
    let heights: Vec<f64> = ring.iter().map(|at| at.dot(across)).collect();
    let low = heights.iter().copied().fold(f64::INFINITY, f64::min);
    let high = heights.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    let mut lines = Vec::new();
    if !(apart > 0.0 && low.is_finite() && high.is_finite()) {
        return lines;
    }
    let mut height = (low / apart).ceil() * apart;
    while height < high {
        let cuts = cuts(ring, &heights, height, along);
        let place = |off: f64| along * off + across * height;
        lines.extend(cuts.chunks_exact(2).map(|pair| [place(pair[0]), place(pair[1])]));
        height += apart;
    }
    lines
}

/// Where a line at `height` crosses the outline, in order along it.
fn cuts(ring: &[At], heights: &[f64], height: f64, along: At) -> Vec<f64> {
    let count = ring.len();
    let mut cuts: Vec<f64> = (0..count)
        .filter_map(|start| {
            let end = (start + 1) % count;
            let (low, high) = (heights[start], heights[end]);
            // An end on the line itself counts for one of its two edges alone.
            if (low < height) == (high < height) {
                return None;
            }
            let share = (height - low) / (high - low);
            Some((ring[start] + (ring[end] - ring[start]) * share).dot(along))
        })
        .collect();
    cuts.sort_by(f64::total_cmp);
    cuts
}

#[cfg(test)]
mod tests {
    use super::hatch;
    use crate::drawing::{Area, At};

    #[test]
    fn lines_stay_within_and_fill_evenly() {
        let lines = hatch(&Area::new(0.5, 0.25, 10.0, 4.0).corners(), 0.0, 1.0);
        assert_eq!(lines.len(), 4);
        assert!(lines.iter().all(|[from, to]| (from.x, to.x) == (0.5, 10.5)));
        // An L: no line crosses the corner that is cut out.
        let ell = [(0.0, 0.0), (4.0, 0.0), (4.0, 2.0), (2.0, 2.0), (2.0, 4.0), (0.0, 4.0)].map(|(x, y)| At::new(x, y));
        let lines = hatch(&ell, 45.0, 0.3);
        let outside = |at: At| at.x > 2.0 + 1e-9 && at.y > 2.0 + 1e-9;
        assert!(lines.len() > 10 && lines.iter().all(|[from, to]| !outside(from.middle(*to))));
    }
}
