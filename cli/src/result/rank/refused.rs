//! What does not fit and why, and what would help.

use elbowroom_model::{Brief, Rule};
use elbowroom_solver::refusal::{Change, Lever, Refusal, Remedy};
use serde::Serialize;

use crate::words::answer::{lever, refusal, remedy};

/// An arrangement that does not fit.
#[derive(Debug, Serialize)]
pub(super) struct RefusedResult<'a> {
    /// Stable name of the arrangement.
    key: &'a str,
    /// One sentence.
    why: String,
    /// The rule that fails.
    rule: Rule,
    /// mm; null where it is no one length.
    short_by: Option<f64>,
}

impl<'a> RefusedResult<'a> {
    /// What is told of a refusal.
    pub(super) fn of(brief: &Brief, refused: &'a Refusal) -> Self {
        let why = refusal(brief, refused);
        Self { key: &refused.key, why, rule: refused.rule(), short_by: refused.short_by() }
    }
}

/// The least change that helps, where nothing fits.
#[derive(Debug, Serialize)]
pub(crate) struct RemedyResult {
    /// One sentence.
    sentence: String,
    /// One change, or the least pair.
    changes: Vec<ChangeResult>,
}

impl RemedyResult {
    /// What is told of a remedy; `nothing_fits`: that is known of what it was sought for.
    pub(crate) fn of(brief: &Brief, found: &Remedy, nothing_fits: bool) -> Self {
        let changes = found.changes.iter().map(|change| ChangeResult::of(brief, change));
        Self { sentence: remedy(brief, found, nothing_fits), changes: changes.collect() }
    }
}

/// One change.
#[derive(Debug, Serialize)]
struct ChangeResult {
    /// `piece.dimension`, a piece (left out), `piece.kind` (its screen hangs on a wall instead), a clearance's key, a wall, or
    /// `only.` and `exclude.` before a decision (left out).
    what: String,
    /// The new figure, mm; null: left out.
    to: Option<f64>,
    /// How much that is, mm; null: left out.
    by: Option<f64>,
}

impl ChangeResult {
    fn of(brief: &Brief, change: &Change) -> Self {
        let is_length =
            !matches!(change.lever, Lever::LeaveOut(_) | Lever::Hang(..) | Lever::Only(_) | Lever::Exclude(_));
        Self {
            what: lever(brief, change.lever),
            to: is_length.then_some(change.to),
            by: is_length.then_some((change.to - change.from).abs()),
        }
    }
}
