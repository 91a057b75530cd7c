//! What several suites share: rooms made by hand or as text, and what came of them.

pub(crate) mod plan;
pub(crate) mod ranked;
pub(crate) mod remedied;
pub(crate) mod rooms;
