//! Whether nobody wants an answer any more, asked wherever work is counted: at each node, before each retry.

use crate::{Unwatched, Watch};

/// Asks whether the work is to end; all else that a [`Watch`] is told is kept from it.
#[derive(Clone, Copy)]
pub struct Stop<'a>(&'a dyn Watch);

impl<'a> Stop<'a> {
    /// Where this watch says so.
    #[must_use]
    pub const fn at(watch: &'a dyn Watch) -> Self {
        Self(watch)
    }

    /// Whether the work is to end; once it is, it stays so.
    #[must_use]
    pub fn is_asked(self) -> bool {
        self.0.is_stopped()
    }
}

impl Default for Stop<'_> {
    /// Never.
    fn default() -> Self {
        Self(&Unwatched)
    }
}

impl std::fmt::Debug for Stop<'_> {
    fn fmt(&self, to: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        to.debug_tuple("Stop").field(&self.is_asked()).finish()
    }
}
