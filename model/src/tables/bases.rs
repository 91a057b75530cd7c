//! What the criteria rest on.

use std::collections::BTreeMap;
use std::sync::LazyLock;

use crate::wishes::Criterion;
use crate::yaml::typed;

const BASES: &str = include_str!("../../data/bases.yaml");

static TEXTS: LazyLock<BTreeMap<Criterion, String>> = LazyLock::new(|| typed::of_own(BASES).unwrap_or_default());

/// What a criterion rests on, as told: its sources, each with how it is known (`model/data/bases.yaml`).
///
/// ```
/// use elbowroom_model::{Criterion, tables};
/// assert!(tables::basis(Criterion::Talk).starts_with("Hall 1966"));
/// ```
#[must_use]
pub fn basis(criterion: Criterion) -> &'static str {
    TEXTS.get(&criterion).map_or("", String::as_str)
}

#[cfg(test)]
mod tests {
    use super::basis;
    use crate::wishes::Criterion;

    #[test]
    fn every_criterion_has_one() {
        let without: Vec<Criterion> = Criterion::ALL.iter().copied().filter(|one| basis(*one).is_empty()).collect();
        assert_eq!(without, []);
    }
}
