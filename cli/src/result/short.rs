//! Why nothing serves what is asked for, by stable names.

use elbowroom_solver::stock::By;
use serde::{Serialize, Serializer};

/// The name as JSON; null where something serves.
pub(super) fn short<S: Serializer>(by: &By, serializer: S) -> Result<S::Ok, S::Error> {
    short_key(*by).serialize(serializer)
}

/// The stable name of why nothing serves; `None` where something does.
pub(crate) const fn short_key(by: By) -> Option<&'static str> {
    match by {
        By::Stock { .. } => None,
        By::NoOption => Some("no_option"),
        By::NotDecided => Some("not_decided"),
        By::NoneOfKind => Some("none_of_kind"),
        By::NoneFits => Some("none_fits"),
        By::NoneFitsBeside => Some("none_fits_beside"),
        By::NotDecidedBeside => Some("not_decided_beside"),
        By::TooFewAlike => Some("too_few_alike"),
        By::AllTaken => Some("all_taken"),
        By::NotStaged => Some("not_staged"),
    }
}
