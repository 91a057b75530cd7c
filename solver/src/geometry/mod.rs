//! Convex shapes and the verbs on them: how far apart, how much in common, inside or not.
//!
//! The only folder that names `geo` and `rstar`. No rule of the trade lives here.

mod bounds;
mod convex;
mod cross_section;
mod gap;

pub use bounds::Bounds;
pub use convex::Convex;
pub use cross_section::cross_section;
pub use gap::{Gap, gap, gap_to_segment, nearest_on_segment};
