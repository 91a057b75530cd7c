//! What must hold of `routes`.
