//! What functions take: contexts are structs with names and not tuples.

use super::MEMBERS;
use super::modules::Modules;

/// Parameters that are tuples, in all functions of the members together, at most: a pair that is one thing everywhere may
/// stay one.
const MOST_TUPLES: usize = 10;

#[test]
fn few_parameters_are_tuples() {
    let members = MEMBERS.map(Modules::of);
    let each: Vec<(usize, &str)> = members
        .iter()
        .flat_map(Modules::each)
        .map(|(_, module)| (module.tuples, module.file.as_str()))
        .filter(|(count, _)| *count > 0)
        .collect();
    let all: usize = each.iter().map(|(count, _)| count).sum();
    assert!(all <= MOST_TUPLES, "{all} parameters are tuples: {each:?}");
}
