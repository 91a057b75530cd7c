//! How things look: faults under their own line, what `check` understood, what `rank` found, as pages and as sheets.
//!
//! Every text that came from a file goes through `text::safe` on its way out.

pub(crate) mod batch;
pub(crate) mod card;
pub(crate) mod check;
pub(crate) mod compare;
pub(crate) mod crew;
pub(crate) mod failure;
pub(crate) mod faults;
pub(crate) mod judge;
pub(crate) mod leaf;
pub(crate) mod list_faults;
pub(crate) mod plan;
pub(crate) mod rank;
pub(crate) mod report;
pub(crate) mod share;
pub(crate) mod shop;
mod sketch;
pub(crate) mod stock;
pub(crate) mod tape;
pub(crate) mod way;
