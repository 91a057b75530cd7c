//! What an answer proves.

use crate::answer::Answer;
use crate::notice::Notice;

/// Whether an answer without an option proves that nothing fits.
pub(super) fn is_decided(answer: &Answer) -> bool {
    answer.undecided() == 0 && !answer.notices.iter().any(|notice| matches!(notice, Notice::Beyond { .. }))
}
