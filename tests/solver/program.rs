//! What must hold of `program`.
