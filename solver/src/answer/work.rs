//! What an answer took.

use std::collections::BTreeMap;

use elbowroom_model::Rule;

/// What it took, counted.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Work {
    /// Arrangements looked at, those that cheap bounds dropped included.
    pub arrangements: usize,
    /// Those that cheap bounds dropped.
    pub dropped: usize,
    /// Those in which a piece that they name found no room, so that what stands is another arrangement's option, told there.
    pub twins: usize,
    /// Linear programs solved.
    pub programs: usize,
    /// Nodes of the searches for the largest pieces.
    pub nodes: usize,
    /// Nodes and programs given up because nothing under them could be better.
    pub given_up: usize,
    /// Layouts, of all pieces or of some, in which all but the ways through held.
    pub layouts: usize,
    /// Those of them in which a way through was too narrow.
    pub too_narrow: usize,
    /// How often a rule left no place.
    pub dead_ends: BTreeMap<Rule, usize>,
    /// Filled in by who holds the clock: the solver has none.
    pub seconds: f64,
}
