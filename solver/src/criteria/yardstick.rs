//! What a criterion is: a yardstick for layouts.

use elbowroom_model::Brief;

use super::criteria_context::CriteriaContext;
use super::judged::{Judged, Missing};

/// One criterion: a file of this folder.
pub(super) trait Yardstick {
    /// What of a brief it judges.
    type Subject<'a>;

    /// What it finds in a layout, as data.
    type Finding;

    /// What it judges in this brief, or what the brief has not got for it.
    fn subject(brief: &Brief) -> Result<Self::Subject<'_>, Missing>;

    /// What it says of a layout, whatever stands in it.
    fn judge<'a>(context: &CriteriaContext<'a>, subject: &Self::Subject<'a>) -> Judged<Self::Finding>;
}
