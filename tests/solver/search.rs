//! What must hold of `search`.
