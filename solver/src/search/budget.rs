//! How many nodes the searches of one arrangement may take.

/// Nodes of one arrangement, which is searched several times: for what must stand, for each piece besides, and for a proof.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Budget {
    /// Nodes of one search at most.
    pub of_one: usize,
    /// Nodes of all searches for a plan together at most; each still sees its root, which bounds what it leaves unseen.
    pub in_all: usize,
}

impl Budget {
    /// So many nodes for each search, however many there are.
    #[must_use]
    pub const fn of_each(nodes: usize) -> Self {
        Self { of_one: nodes, in_all: usize::MAX }
    }

    /// What is left of it for one search when so many nodes were taken.
    pub(super) fn left(self, asked: usize, taken: usize) -> usize {
        asked.min(self.in_all.saturating_sub(taken)).max(1)
    }
}
