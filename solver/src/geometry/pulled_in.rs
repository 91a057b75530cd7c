//! A convex polygon with every edge moved inward.

use super::Convex;

impl Convex {
    /// The polygon with every edge moved inward by `by` mm; `None` where nothing is left.
    #[must_use]
    pub fn pulled_in(&self, by: f64) -> Option<Self> {
        let start = Some(self.clone());
        self.half_planes().into_iter().fold(start, |left, side| left?.clipped(side.normal, side.support - by))
    }
}
