//! Where one stands to use what stands for good.

use serde::Deserialize;

use crate::point::Point;

/// The edge at which a fixed thing is used, of those that floor lies before; of several that are as good the first.
#[derive(Debug, Clone, Copy, PartialEq, Default, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum UsedAt {
    /// Its longest: one stands along a counter.
    #[default]
    Longest,
    /// Its shortest: one steps off stairs at an end, of two alike at that with more floor before it.
    Shortest,
    /// The nearest to a place in plan coordinates.
    #[serde(skip)]
    Place(Point),
}
