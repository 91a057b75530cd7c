//! A text with the tree that was read from it.

use crate::yaml::Node;

/// The text of a file, and its values with their places.
#[derive(Debug, Clone)]
pub(super) struct ReadText {
    pub(super) text: String,
    pub(super) tree: Node,
}
