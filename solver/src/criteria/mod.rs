//! What makes one layout better than another: one file per criterion, each a figure that a tape can check, a score
//! made from it, a sentence and a basis. Weights and the order of options live in `ranking`.

use elbowroom_model::{Brief, Criterion};

use crate::layout::Layout;
use crate::routes::Route;
use crate::site::Site;

/// All that a criterion looks at.
#[derive(Debug, Clone, Copy)]
pub struct Scene<'a> {
    /// What was measured and asked.
    pub brief: &'a Brief,
    /// The room as the rules see it.
    pub site: &'a Site,
    /// The layout to judge.
    pub layout: &'a Layout,
    /// Its routes.
    pub routes: &'a [Route],
    /// The main seat, by its place in the brief.
    pub main_seat: usize,
}

/// What one criterion says of one layout.
#[derive(Debug, Clone, PartialEq)]
pub struct Judgement {
    /// Which criterion.
    pub criterion: Criterion,
    /// 0 to 100.
    pub score: f64,
    /// A figure that a tape can check.
    pub figure: f64,
    /// Unit of the figure: `deg`, `mm`, `m2`, `percent`, `count`.
    pub unit: &'static str,
    /// A sentence made from the figure.
    pub reason: String,
    /// Where the yardstick comes from.
    pub basis: String,
}
