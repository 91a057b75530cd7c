//! Where one stands to use what stands for good.

use serde::Deserialize;

use crate::point::Point;

/// The edge at which a fixed thing is used, of those that floor lies before; of several that are as good the first.
#[derive(Debug, Clone, Copy, PartialEq, Default, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum UsedAt {
    /// Its longest, since one stands along a counter; of a thing nearly as deep as it is wide the one across from the wall
    /// that it stands at.
    #[default]
    Longest,
    /// Its shortest: one steps off stairs at an end, of two alike at that with more floor before it.
    Shortest,
    /// The nearest to a place in plan coordinates.
    #[serde(skip)]
    Place(Point),
}
