//! Scores without cliffs: straight lines between named points.

/// The value at `x` of the line through `points` (in growing order of their first member), level beyond both ends.
///
/// ```
/// use elbowroom_solver::criteria::curve::through;
/// assert_eq!(through(&[(0.0, 0.0), (10.0, 100.0)], 2.5), 25.0);
/// assert_eq!(through(&[(0.0, 0.0), (10.0, 100.0)], 12.0), 100.0);
/// ```
#[must_use]
pub fn through(points: &[(f64, f64)], x: f64) -> f64 {
    let Some(&(first, low)) = points.first() else { return 0.0 };
    if x <= first {
        return low;
    }
    let span = points.windows(2).find(|pair| x <= pair[1].0);
    match (span, points.last()) {
        (Some(pair), _) => {
            let ((from, start), (to, end)) = (pair[0], pair[1]);
            start + (end - start) * (x - from) / (to - from)
        }
        (None, Some(&(_, high))) => high,
        (None, None) => 0.0,
    }
}

/// The mean of some figures; `None` of none.
#[must_use]
pub fn mean(figures: impl IntoIterator<Item = f64>) -> Option<f64> {
    weighted_mean(figures.into_iter().map(|figure| (figure, 1.0)))
}

/// The mean of figures with their weights; `None` where the weights sum to nothing.
#[must_use]
pub fn weighted_mean(figures: impl IntoIterator<Item = (f64, f64)>) -> Option<f64> {
    let add = |(sum, all): (f64, f64), (figure, weight): (f64, f64)| (sum + figure * weight, all + weight);
    let (sum, all) = figures.into_iter().fold((0.0, 0.0), add);
    (all > 0.0).then(|| sum / all)
}
