//! What must hold of `verify`.
