//! YAML text in: as a tree that knows its places, and from there as typed rows.
//!
//! [`tree`] guards against hostile text and finds places; `edit` changes a tree; `shape` holds a tree to a schema; [`typed`] turns it into what `serde` derives.
//! Nothing else in this crate names a YAML library.

mod edit;
pub(crate) mod shape;
pub(crate) mod tree;
pub(crate) mod typed;

pub(crate) use tree::{Entry, Node, NodeValue, Trail, TrailStep};
