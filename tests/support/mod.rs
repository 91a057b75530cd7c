//! What several suites share: rooms made by hand or as text, what came of them, and a second checker of results.

pub(crate) mod checker;
pub(crate) mod dwellings;
pub(crate) mod from_bytes;
pub(crate) mod judge;
pub(crate) mod plan;
pub(crate) mod ranked;
pub(crate) mod remedied;
pub(crate) mod rooms;
pub(crate) mod varied;
