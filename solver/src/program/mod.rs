//! Linear programs: small, dense, every variable bounded, rows added one by one and solved again from where they stood.
//!
//! [`Dense`] is the engine the search runs on; [`MicrolpEngine`] answers the same questions through another solver and is
//! what it is tested against; [`relaxation`] writes down large ones, [`whole`] those of yes and no. Lengths are millimetres; the
//! [`tolerance`] table says how near is near enough and why.
//!
//! Known methods, all cited from memory: the dual simplex (Lemke 1954, "The dual method of solving the linear programming
//! problem") for variables with bounds on both sides, whose bounds are flipped on the way (Koberstein 2005, thesis "The dual
//! simplex method, techniques for a fast and stable implementation"); after a stall the smallest index, which cannot cycle
//! (Bland 1977, "New finite pivoting rules for the simplex method").
//!
//! The only folder that names `microlp` and `good_lp`. Nothing of rooms or pieces is known here.

mod dense;
mod microlp_engine;
pub mod relaxation;
mod row;
pub mod tolerance;
pub mod whole;

pub use dense::Dense;
pub use microlp_engine::MicrolpEngine;
pub use row::{Engine, Row, Status, Terms};

/// The engine that a search uses where nothing else is asked for.
pub type DefaultEngine = Dense;
