//! Routes: which a layout must have, how wide each is, where it pinches, how long the walk is.
//!
//! What is measured on a finished layout lives here; how a route that is too narrow is mended in the search lives in
//! `rules`.

mod chain;
mod circle;
mod corner;
mod cut;
mod demand;
mod doorstep;
mod floor;
mod free;
mod joint;
mod mouth;
mod notice;
mod obstacles;
mod route;
mod stop;
mod tolerance;
mod walk;
mod widest;

pub use demand::{Demand, demands};
pub(crate) use demand::{entrances, shapes_of_room, work_of_routes};
pub use floor::{Floor, all};
pub use mouth::{Mouth, Owner};
pub use notice::HeldToEmptyRoom;
pub use route::{End, Pinch, Route, ShapeId};
pub use stop::Stop;
pub(crate) use tolerance::ENOUGH;
pub use walk::{Walk, walk_between};
pub use widest::{Link, Widest, widest_between};
