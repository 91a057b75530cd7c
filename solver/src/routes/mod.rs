//! Routes: which a layout must have, how wide each is, where it pinches, how long the walk is.
//!
//! What is measured on a finished layout lives here; how a route that is too narrow is mended in the search lives in
//! `rules`.
//!
//! What it rests on, all cited from memory. A disc moves as its centre does among things grown by its radius (Lozano-Perez 1983,
//! "Spatial planning: a configuration space approach"; for discs O'Dunlaing and Yap 1985, "A retraction method for planning the
//! motion of a disc"). Whether it gets through is not asked of the free floor but of what bounds it: the narrowest gap of the
//! first closed chain that parts the two mouths, by growing gaps in a union-find (Kruskal 1956 and Tarjan 1975) whose members
//! carry a parity; the same duality bounds how a belt of sensors is passed (Kumar, Lai and Arora 2005, "Barrier coverage with
//! wireless sensors"). The shortest walk is a taut cord round corners (Lozano-Perez and Wesley 1979, "An algorithm for planning
//! collision-free paths among polyhedral obstacles"), found best first (Hart, Nilsson and Raphael 1968, "A formal basis for the
//! heuristic determination of minimum cost paths"); where a doorstep begins to be free, by the Illinois rule (Dowell and
//! Jarratt 1971).

mod chain;
mod circle;
mod corner;
mod cut;
mod demand;
mod demands;
mod doorstep;
mod floor;
mod free;
mod joint;
mod lead;
mod line_walked;
mod mouth;
mod narrow_place;
mod notice;
mod obstacles;
mod route;
mod stop;
mod tolerance;
mod walk;
mod widest;

pub use demand::Demand;
pub(crate) use demand::{entrances, shapes_of_room, work_of_routes};
pub use demands::demands;
pub use floor::{Floor, all};
pub use line_walked::LineWalked;
pub use mouth::{Mouth, Owner};
pub use narrow_place::NarrowPlace;
pub use notice::HeldToEmptyRoom;
pub use route::{End, Pinch, Route, ShapeId};
pub use stop::Stop;
pub(crate) use tolerance::ENOUGH;
pub use walk::{Walk, walk_between};
pub use widest::{Link, Widest, widest_between};
