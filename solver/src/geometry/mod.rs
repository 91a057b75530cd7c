//! Convex shapes and the verbs on them: how far apart, how much in common, inside or not.
//!
//! The only folder that names `geo` and `rstar`. No rule of the trade lives here.

mod apart;
mod bounds;
mod convex;
mod cross_section;
mod equidistant;
mod gap;
mod meets;
mod outline;
mod pockets;
mod pulled_in;
mod tangent;

pub use apart::apart;
pub use bounds::Bounds;
pub use convex::Convex;
pub use cross_section::cross_section;
pub use equidistant::equidistant;
pub use gap::{Gap, gap, gap_to_segment, nearest_on_segment};
pub use meets::{meets, overlap_depth};
pub use outline::Outline;
pub use pockets::{HullAndPockets, convex_parts, hull_and_pockets};
pub use tangent::{Turn, corner_to_corner, corner_to_place, place_to_corner};
