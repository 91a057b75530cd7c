//! A node of the search for sets.

/// A node of the search: the choices of its first rows.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct Node {
    /// Rows that it leaves out so far.
    pub(super) left_out: usize,
    /// Bound, the lower the better; then the choices, so that equal bounds keep the list's order.
    pub(super) bound: u64,
    pub(super) chosen: Vec<usize>,
}

/// Why a node holds no set.
#[derive(Debug, Clone, Copy)]
pub(crate) enum NoSet {
    /// Nothing fits.
    DoesNotFit,
    /// It is not known whether anything fits.
    NotDecided,
}
