//! What a library shows of itself: each of its types goes by one name.

use std::collections::{BTreeMap, BTreeSet};

use super::MEMBERS;
use super::modules::{Modules, Words};

/// The public names of each type of a member, by the module that has it and its name there.
fn names_of_types(modules: &Modules) -> BTreeMap<(Words, String), BTreeSet<String>> {
    let mut names: BTreeMap<(Words, String), BTreeSet<String>> = BTreeMap::new();
    let all: BTreeMap<&Words, _> = modules.each().collect();
    let mut open = vec![Words::new()];
    while let Some(at) = open.pop() {
        let module = all[&at];
        let public = |name: &str| [&at[..], &[name.to_owned()]].concat();
        for defined in &module.defined {
            names.entry((at.clone(), defined.0.clone())).or_default().insert(public(&defined.0).join("::"));
        }
        for (name, on) in module.handed_on.iter().filter(|(_, on)| on.public) {
            if let Some(home) = modules.home(&on.path) {
                names.entry(home).or_default().insert(public(name).join("::"));
            }
        }
        open.extend(module.children.iter().filter(|(_, public)| **public).map(|(child, _)| public_child(&at, child)));
    }
    names
}

fn public_child(at: &Words, child: &str) -> Words {
    [&at[..], &[child.to_owned()]].concat()
}

#[test]
fn a_public_type_goes_by_one_name() {
    let mut several = Vec::new();
    for member in MEMBERS {
        let names = names_of_types(&Modules::of(member)).into_values().filter(|names| names.len() > 1);
        several.extend(names.map(|names| format!("{member}: {names:?}")));
    }
    assert!(several.is_empty(), "types that go by several names:\n{}", several.join("\n"));
}
