//! Workbooks (`.xlsx`): the sheet that holds a list, as the same grid that text gives, so that what a list may say stands in one
//! place. The one folder of this member that names `calamine` and `zip`.
//!
//! A file may be made to mislead its reader: it is looked at by [`container`] before `calamine` opens it, its cells are read
//! one by one and never as the rectangle that the file says they fill, and what a cell or all of them hold is bounded.

mod cells;
mod container;
mod sheets;

use std::panic::{AssertUnwindSafe, catch_unwind};

use super::faults::FaultList;
use super::grid::Grid;
use container::NotRead;
pub(super) use container::is_one;

/// The cells of the sheet in which most headers are known, `most_rows` rows at most. `None` after faults that keep it from
/// being read.
pub(super) fn grid(
    bytes: &[u8],
    most_rows: usize,
    is_known: &dyn Fn(&str) -> bool,
    told: &mut FaultList,
) -> Option<Grid> {
    if let Err(why) = container::look(bytes) {
        why.tell(told);
        return None;
    }
    // `calamine` adds up places in a sheet without a check: a file made to mislead it stops a build that checks its sums.
    let read = || sheets::grid(bytes, most_rows, is_known, told);
    match catch_unwind(AssertUnwindSafe(read)) {
        Ok(grid) => grid,
        Err(_) => {
            NotRead::Damaged.tell(told);
            None
        }
    }
}
