//! Prose on the work that a ranking took.

use elbowroom_solver::Part;
use elbowroom_solver::answer::Work;

use super::figures::counted;

/// Over the page.
pub(crate) const HEAD: &str = "Work";
/// Over the rules that left no place.
pub(crate) const DEAD_ENDS: &str = "Dead ends, by the rule that left no place";
/// Over the times.
pub(crate) const TOOK: &str = "What each part took, on one thread";
/// Over milliseconds.
pub(crate) const MILLISECONDS: &str = "ms";
/// Over shares of the whole.
pub(crate) const SHARE: &str = "share";

/// What was searched, a line for each figure.
pub(crate) fn searched(work: &Work) -> Vec<String> {
    let looked_at = work.arrangements - work.dropped.min(work.arrangements);
    vec![
        format!(
            "{} searched, {} dropped before for want of room",
            counted(looked_at, "arrangement", "arrangements"),
            work.dropped
        ),
        format!(
            "{} found to be another, since a piece that they name found no room",
            counted(work.twins, "arrangement", "arrangements")
        ),
        format!("{} solved", counted(work.programs, "linear program", "linear programs")),
        format!(
            "{} looked at; {} given up, since nothing under them could be better",
            counted(work.nodes, "node", "nodes"),
            work.given_up
        ),
        format!(
            "{}, of all pieces or of some, in which all but the walking routes held; in {} of them a way was too narrow",
            counted(work.layouts, "layout", "layouts"),
            work.too_narrow
        ),
    ]
}

/// A rule by its stable name, as prose.
pub(crate) fn rule(key: &str) -> String {
    key.replace('_', " ")
}

/// A part of the work.
pub(crate) const fn part(part: Part) -> &'static str {
    match part {
        Part::Ground => "room and arrangements",
        Part::Search => "plans and largest pieces",
        Part::Refusal => "why arrangements fail",
        Part::Routes => "walking routes",
        Part::Check => "every rule checked again",
        Part::Criteria => "scores",
        Part::Order => "order, and how firm it is",
        Part::Sizes => "each size alone, and what holds it",
        Part::Remedies => "what would help",
    }
}
