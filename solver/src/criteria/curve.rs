//! Scores without cliffs: straight lines between named points; and means.

/// Straight lines through points in growing order of their first member, level beyond both ends.
///
/// ```
/// use elbowroom_solver::criteria::curve::Curve;
/// let rising = Curve(&[(0.0, 0.0), (10.0, 100.0)]);
/// assert_eq!(rising.at(2.5), 25.0);
/// assert_eq!(rising.at(12.0), 100.0);
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Curve<'p>(pub &'p [(f64, f64)]);

impl Curve<'_> {
    /// The value at `x`; 0 where there is no point.
    #[must_use]
    pub fn at(&self, x: f64) -> f64 {
        let Some(&(first, low)) = self.0.first() else { return 0.0 };
        if x <= first {
            return low;
        }
        let span = self.0.windows(2).find(|pair| x <= pair[1].0);
        match (span, self.0.last()) {
            (Some(pair), _) => {
                let ((from, start), (to, end)) = (pair[0], pair[1]);
                start + (end - start) * (x - from) / (to - from)
            }
            (None, Some(&(_, high))) => high,
            (None, None) => 0.0,
        }
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
