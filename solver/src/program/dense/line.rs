//! One figure for each variable or column: what a step works on and forgets, in no memory of its own while programs are small.

use smallvec::{SmallVec, smallvec};

/// One entry for each variable or column of a program.
pub(super) type Line<T> = SmallVec<[T; 40]>;

/// As many zeros as there are variables.
pub(super) fn zeros(variables: usize) -> Line<f64> {
    smallvec![0.0; variables]
}
