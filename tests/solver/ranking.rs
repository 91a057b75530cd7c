//! What must hold of `ranking`.
