//! What criteria are called to a reader; files and the command line call them by their keys.

use elbowroom_model::Criterion;

/// Its name.
pub(crate) fn name(criterion: Criterion) -> &'static str {
    match criterion {
        Criterion::Ways => "walking room",
        other => other.key(),
    }
}
