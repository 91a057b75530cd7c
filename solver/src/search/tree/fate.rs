//! What comes of a node that rows are added to.

/// What became of a node.
pub(super) enum Fate {
    Alive,
    Dead,
}
