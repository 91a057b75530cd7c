//! What must hold of `criteria`.
