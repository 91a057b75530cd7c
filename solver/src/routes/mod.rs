//! Routes: which a layout must have, how wide each is, where it pinches, how long the walk is.
//!
//! What is measured on a finished layout lives here; how a route that is too narrow is mended in the search lives in
//! `rules`.

mod demand;
mod route;

pub use demand::{Demand, demands};
pub use route::{End, Pinch, Route, ShapeId};
