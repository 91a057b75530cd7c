//! Files are short, say what they hold, and stand where they belong.

use std::collections::BTreeSet;
use std::fs;
use std::path::PathBuf;

use super::{from_root, root, rust_files, sources, text};

/// What may stand at the root beside dotfiles; `target` is made by cargo.
const AT_THE_ROOT: [&str; 12] = [
    "Cargo.toml",
    "Cargo.lock",
    "README.md",
    "DEVELOPERS.md",
    "LICENSE",
    "model",
    "solver",
    "cli",
    "benches",
    "tests",
    "scenarios",
    "target",
];
/// Longest file, lines, where nothing is said of it below.
const LONGEST: usize = 300;
/// The files that are longer, and why.
const LONGER: [(&str, &str); 0] = [];

fn files() -> impl Iterator<Item = PathBuf> {
    sources().into_iter().chain(rust_files(&root().join("tests"))).chain(rust_files(&root().join("benches")))
}

#[test]
fn no_file_is_long_without_a_reason() {
    let mut met: BTreeSet<&str> = BTreeSet::new();
    for file in files() {
        let (path, lines) = (from_root(&file), text(&file).lines().count());
        if lines > LONGEST {
            let longer = LONGER.iter().find(|(longer, _)| path == *longer);
            met.extend(longer.map(|(longer, _)| *longer));
            assert!(longer.is_some(), "{path} has {lines} lines, and nothing says why");
        }
    }
    for (longer, _) in LONGER {
        assert!(met.contains(longer), "{longer} is no longer long: take it off the list");
    }
}

#[test]
fn every_file_opens_with_what_it_holds() {
    for file in files() {
        assert!(text(&file).starts_with("//!"), "{} does not open with what it holds", from_root(&file));
    }
}

#[test]
fn no_file_is_called_after_nothing() {
    let nothing = ["utils", "util", "helpers", "common", "manager", "misc"];
    for file in sources().into_iter().chain(rust_files(&root().join("tests"))) {
        let path = from_root(&file);
        assert!(!path.trim_end_matches(".rs").split('/').any(|part| nothing.contains(&part)), "{path}");
    }
}

#[test]
fn nothing_strays_at_the_root() {
    for entry in fs::read_dir(root()).unwrap() {
        let name = entry.unwrap().file_name().into_string().unwrap();
        assert!(name.starts_with('.') || AT_THE_ROOT.contains(&name.as_str()), "{name} strays at the root");
    }
}
