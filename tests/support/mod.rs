//! What several suites share: rooms made by hand, and a second checker of results.

pub(crate) mod rooms;
