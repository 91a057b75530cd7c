//! What a reader must be told of the routes before any furniture stands.

use elbowroom_model::{Brief, Rounding};

use super::End;
use super::floor::Floor;

/// A route that falls short by less than this gets no notice, mm: it is not seen on a tape.
const SEEN: f64 = 1.0;

impl Floor {
    /// One sentence for each route between doorways and windows that is narrower than its rule in the empty room already,
    /// and so is held to what the room gives.
    #[must_use]
    pub fn notices(&self, brief: &Brief) -> Vec<String> {
        let mut notices = Vec::new();
        for (demand, empty) in self.empty_widths() {
            let rule = brief.rules.get(demand.rule);
            if empty > rule - SEEN {
                continue;
            }
            let (from, to) = (End::Item(demand.from).name(brief), demand.to.name(brief));
            let words = |length| brief.units.words(length, Rounding::Down);
            let (gives, asks, key) = (words(empty), brief.units.words(rule, Rounding::Up), demand.rule.key());
            notices.push(format!(
                "Even the empty room gives the way from {from} to {to} no more than {gives}; {key} asks for {asks}. \
                 It is held to what the room gives."
            ));
        }
        notices
    }
}
