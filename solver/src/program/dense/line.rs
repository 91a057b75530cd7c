//! One figure for each variable or column: what a step works on and forgets, in no memory of its own while programs are small.

use smallvec::{SmallVec, smallvec};

/// One entry for each variable or column of a program.
pub(super) type Line<T> = SmallVec<[T; 40]>;

/// As many zeros as there are variables.
pub(super) fn zeros(variables: usize) -> Line<f64> {
    smallvec![0.0; variables]
}

/// `from -= factor x of`, entry by entry.
pub(super) fn subtract(from: &mut [f64], factor: f64, of: &[f64]) {
    for (entry, other) in from.iter_mut().zip(of) {
        *entry -= factor * other;
    }
}

/// Rewrites a gradient over the columns after what stood in `column` was exchanged for the one that leaves.
pub(super) fn eliminate(cells: &mut [f64], column: usize, pivot: f64, sign: f64, gradient: &[f64]) {
    let factor = cells[column] / pivot;
    if factor != 0.0 {
        subtract(cells, factor, gradient);
        cells[column] = sign * factor;
    }
}
