//! Linear programs: small, dense, every variable bounded, rows added one by one and solved again from where they stood.
//!
//! The only folder that names `microlp` and `good_lp`. Nothing of rooms or pieces is known here.

mod row;

pub use row::{Engine, Row, Status};
