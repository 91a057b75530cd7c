//! Sets of a stock that were solved in their rooms, as JSON.

use elbowroom_solver::stock::SetsAsked;
use serde::{Serialize, Serializer};

/// Sets that no option of their room holds, solved in the room itself.
#[derive(Serialize)]
struct SetsResult {
    /// Sets solved.
    solved: usize,
    /// Those of the rooms' whole sets that fit.
    fitting: usize,
    /// Sets that an option has the sizes for, and that do not fit when their very pieces are laid out.
    refused: usize,
    /// Those of which it is not known.
    not_decided: usize,
    /// More might be asked, and the work allowed was spent.
    spent: bool,
}

/// They as JSON.
pub(super) fn sets_asked<S: Serializer>(sets: &SetsAsked, serializer: S) -> Result<S::Ok, S::Error> {
    let SetsAsked { solved, fitting, refused, not_decided, spent } = *sets;
    SetsResult { solved, fitting, refused, not_decided, spent }.serialize(serializer)
}
