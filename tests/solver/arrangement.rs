//! What must hold of `arrangement`.
