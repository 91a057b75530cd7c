//! A convex polygon with every edge moved inward.

use super::Convex;

impl Convex {
    /// The polygon with every edge moved inward by `by` mm; `None` where nothing is left.
    ///
    /// ```
    /// use elbowroom_model::Point;
    /// use elbowroom_solver::geometry::Convex;
    /// # let block = |x: f64, y: f64, width: f64, depth: f64| {
    /// #     let corners = [(x, y), (x + width, y), (x + width, y + depth), (x, y + depth)];
    /// #     Convex::counter_clockwise(corners.map(|(x, y)| Point::new(x, y)))
    /// # };
    /// let inner = block(0.0, 0.0, 900.0, 500.0).pulled_in(50.0);
    /// assert!(inner.is_some_and(|inner| inner.area() == 800.0 * 400.0));
    /// assert_eq!(block(0.0, 0.0, 900.0, 500.0).pulled_in(300.0), None);
    /// ```
    #[must_use]
    pub fn pulled_in(&self, by: f64) -> Option<Self> {
        let start = Some(self.clone());
        self.half_planes().into_iter().fold(start, |left, side| left?.clipped(side.normal, side.support - by))
    }
}
