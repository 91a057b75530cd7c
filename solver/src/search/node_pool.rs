//! Nodes that are done with: their memory is used again, since asking for it costs more than copying a node.

use super::node::Node;

/// Nodes that are done with.
pub(super) struct NodePool<'p, E>(Vec<Box<Node<'p, E>>>);

impl<'p, E: Clone> NodePool<'p, E> {
    pub(super) const fn new() -> Self {
        Self(Vec::new())
    }

    /// Takes a node, or none, that is done with.
    pub(super) fn take(&mut self, node: impl Into<Option<Box<Node<'p, E>>>>) {
        self.0.extend(node.into());
    }

    /// A copy, in the memory of a node that is done with where there is one.
    pub(super) fn copy_of(&mut self, node: &Node<'p, E>) -> Box<Node<'p, E>> {
        match self.0.pop() {
            Some(mut pool) => {
                pool.as_mut().clone_from(node);
                pool
            }
            None => Box::new(node.clone()),
        }
    }
}
