//! A rule that does not hold.

use elbowroom_model::Rule;
use serde::Serialize;

/// A rule that a layout breaks: which, between what, by how much.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Breach {
    /// The rule.
    pub rule: Rule,
    /// Names of what breaks it.
    pub between: Vec<String>,
    /// What is missing, mm; of `facing` degrees.
    pub short_by: f64,
    /// One sentence.
    pub sentence: String,
}

impl Breach {
    /// The breach of `rule` between things by these names; `what` completes "the first ... the second".
    pub(super) fn new(rule: impl Into<Rule>, between: &[&str], short_by: f64, what: &str) -> Self {
        let sentence = match between {
            [] => format!("{what} ({short_by:.1} mm)."),
            [only] => format!("{only} {what} ({short_by:.1} mm)."),
            [first, second, ..] => format!("{first} {what} {second} ({short_by:.1} mm)."),
        };
        Self { rule: rule.into(), between: between.iter().map(|&name| name.to_owned()).collect(), short_by, sentence }
    }
}
