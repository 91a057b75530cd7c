//! What a search did, counted.

use elbowroom_model::Rule;

use std::collections::BTreeMap;

/// What a search did: the same on every machine, unlike the time it takes.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Tally {
    /// Nodes looked at.
    pub nodes: usize,
    /// Nodes and programs given up because nothing under them could be better than what was found.
    pub pruned: usize,
    /// Layouts, of all pieces or of some, in which all but the ways through held.
    pub layouts: usize,
    /// Those of them in which a way through was too narrow.
    pub too_narrow: usize,
    /// How often a rule left no place.
    pub dead_ends: BTreeMap<Rule, usize>,
}

impl Tally {
    /// Both together.
    #[must_use]
    pub fn plus(mut self, other: &Self) -> Self {
        self.nodes += other.nodes;
        self.pruned += other.pruned;
        self.layouts += other.layouts;
        self.too_narrow += other.too_narrow;
        for (rule, count) in &other.dead_ends {
            *self.dead_ends.entry(*rule).or_default() += count;
        }
        self
    }
}
