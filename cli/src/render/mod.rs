//! How things look: faults under their own line, what `check` understood, what `rank` found, as text and as JSON.
//!
//! Every text that came from a file goes through [`safe`] on its way out; escape sequences come from here alone.

mod apart;
pub(crate) mod batch;
pub(crate) mod card;
pub(crate) mod check;
pub(crate) mod compare;
pub(crate) mod faults;
pub(crate) mod json;
pub(crate) mod leaf;
mod lengths;
pub(crate) mod list_faults;
mod markup;
mod page;
pub(crate) mod plan;
pub(crate) mod rank;
pub(crate) mod report;
mod safe;
pub(crate) mod shop;
mod sketch;
pub(crate) mod stock;
mod table;
pub(crate) mod tape;
pub(crate) mod way;

pub(crate) use markup::escaped;
pub(crate) use safe::safe;
