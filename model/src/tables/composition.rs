//! What the terms of composition cost.

use std::collections::BTreeMap;
use std::sync::LazyLock;

use crate::composition::{Price, Term};
use crate::yaml::typed;

const PRICES: &str = include_str!("../../data/composition.yaml");

static TABLE: LazyLock<BTreeMap<Term, Price>> = LazyLock::new(|| typed::of_own(PRICES).unwrap_or_default());

/// What a term of a plan costs (`model/data/composition.yaml`).
///
/// ```
/// use elbowroom_model::{Term, tables};
/// assert_eq!(tables::price(Term::FrontsApart).free, 2134.0);
/// ```
#[must_use]
pub fn price(term: Term) -> Price {
    TABLE.get(&term).copied().unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::{TABLE, Term};

    #[test]
    fn every_term_has_one() {
        let without: Vec<Term> = Term::ALL.iter().copied().filter(|term| !TABLE.contains_key(term)).collect();
        assert_eq!(without, []);
    }
}
