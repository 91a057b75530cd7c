//! Segments, convex shapes and the verbs on them, one a file: where they cross, how far apart they are, what they have in
//! common, how they grow.
//!
//! Whoever decides or judges measures with these; `verify` builds on the shapes and on `geo` alone. Verbs on rings of bare
//! corners (area, middle, whether one holds a place) are `elbowroom_model::ring`. The only folder that names `geo`. No rule
//! of the trade lives here.
//!
//! Known methods, all cited from memory: a way is clipped to a convex shape as by Cyrus and Beck 1978 ("Generalized two- and
//! three-dimensional clipping"), a shape to a half-plane as by Sutherland and Hodgman 1974 ("Reentrant polygon clipping"); the
//! hull is that of Andrew 1979 ("Another efficient algorithm for convex hulls in two dimensions"); pockets are cut into ears
//! (Meisters 1975, "Polygons have ears") that are joined again while convex (Hertel and Mehlhorn 1983, "Fast triangulation of
//! simple polygons").

mod angle;
mod apart;
mod bounds;
mod circle;
mod clip;
mod convex;
mod cross_section;
mod crossing;
mod equidistant;
mod gap;
mod half_plane;
mod joined;
mod least_width;
mod meets;
mod mitre;
mod outline;
mod pockets;
mod pulled_in;
mod ray;
mod segment;
mod tangent;
mod tolerance;

pub use angle::angle_at;
pub use apart::apart;
pub use bounds::Bounds;
pub use circle::Circle;
pub use clip::{Clip, clip};
pub use convex::Convex;
pub use cross_section::cross_section;
pub use crossing::Crossing;
pub use equidistant::equidistant;
pub use gap::{Gap, gap, gap_to_segment};
pub use half_plane::{HalfPlane, Pass};
pub use joined::joined;
pub use least_width::{LeastWidth, least_width};
pub use meets::{meets, overlap_depth};
pub use mitre::mitre;
pub use outline::Outline;
pub use pockets::{HullAndPockets, convex_parts, hull_and_pockets};
pub use ray::{Met, Ray};
pub use segment::Segment;
pub use tangent::{Bend, Turn, corner_to_corner, corner_to_place, place_to_corner};
