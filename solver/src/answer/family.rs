//! Options as a page lists them: the best of each family, and how many more are like it.

use super::Answer;
use super::option::RankedOption;
use crate::Limits;

/// The options that put the main seat alike.
#[derive(Debug, Clone, PartialEq)]
pub struct Family<'a> {
    /// The best of them.
    pub best: &'a RankedOption,
    /// The others, best first.
    pub others: Vec<&'a RankedOption>,
}

impl Answer {
    /// The families, by their best.
    #[must_use]
    pub fn families(&self) -> Vec<Family<'_>> {
        let mut families: Vec<Family<'_>> = Vec::new();
        for option in &self.options {
            match families.iter_mut().find(|family| family.best.family == option.family) {
                Some(family) => family.others.push(option),
                None => families.push(Family { best: option, others: Vec::new() }),
            }
        }
        families
    }

    /// What a page lists: each family, or each option by itself where that is what is counted. All of them, whether they
    /// are shown or not.
    #[must_use]
    pub fn listed(&self, limits: &Limits) -> Vec<Family<'_>> {
        if limits.one_by_one {
            self.options.iter().map(|best| Family { best, others: Vec::new() }).collect()
        } else {
            self.families()
        }
    }
}
