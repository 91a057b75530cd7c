//! Each library is named where it belongs, and each that a manifest asks for is named somewhere.

use std::collections::{BTreeMap, BTreeSet};
use std::path::PathBuf;

use super::{MEMBERS, code, from_root, names, root, rust_files, sources, text};

/// Each library that has a home, and the only place in the members' sources that may name it.
const HOMES: [(&str, &str); 15] = [
    ("good_lp", "solver/src/program/"),
    ("microlp", "solver/src/program/"),
    ("highs", "solver/src/program/"),
    ("geo", "solver/src/geometry/"),
    ("clap", "cli/src/"),
    ("calamine", "model/src/listing/workbook/"),
    ("rust_xlsxwriter", "cli/src/text/workbook.rs"),
    ("icalendar", "cli/src/render/crew/"),
    ("krilla", "cli/src/drawing/"),
    ("subsetter", "cli/src/drawing/"),
    ("ttf_parser", "cli/src/drawing/"),
    ("axum", "cli/src/page/"),
    ("maud", "cli/src/page/"),
    ("tokio", "cli/src/page/"),
    ("qrcode", "cli/src/page/"),
];
#[test]
fn each_library_is_named_in_its_own_place_alone() {
    for file in sources() {
        let (path, code) = (from_root(&file), code(&file));
        for (library, home) in HOMES {
            assert!(!names(&code, library) || path.starts_with(home), "{path} names {library}, whose place is {home}");
        }
    }
}

/// What a kind of piece is stands in one table: nobody else tells kinds apart by name. Unit tests may.
#[test]
fn kinds_of_piece_are_told_apart_in_their_table_alone() {
    let is_test = |path: &str| ["/tests", "agreement.rs"].iter().any(|part| path.contains(part));
    for file in sources() {
        let (path, code) = (from_root(&file), code(&file));
        if path.starts_with("model/src/kind/") || is_test(&path) {
            continue;
        }
        for kind in elbowroom_model::PieceKind::ALL {
            assert!(!code.contains(&format!("PieceKind::{kind:?}")), "{path} names {kind:?}: ask its traits");
        }
    }
}

#[test]
fn one_module_alone_names_the_yaml_reader_that_is_no_longer_maintained() {
    let naming: BTreeSet<String> =
        sources().iter().filter(|file| names(&code(file), "serde_yaml")).map(|file| from_root(file)).collect();
    assert!(naming.len() <= 1, "{naming:?}");
    assert!(naming.iter().all(|path| path.starts_with("model/")), "{naming:?}");
}

#[test]
fn members_know_only_what_lies_below_them() {
    for (member, below) in [("model", &[][..]), ("solver", &["elbowroom_model"][..])] {
        for file in rust_files(&root().join(member).join("src")) {
            for other in ["elbowroom", "elbowroom_model", "elbowroom_solver"] {
                let own = other.strip_prefix("elbowroom_") == Some(member);
                assert!(
                    own || below.contains(&other) || !names(&code(&file), other),
                    "{} names {other}",
                    from_root(&file)
                );
            }
        }
    }
}

/// The packages that a manifest asks for, section by section.
fn asked_for(manifest: &str) -> BTreeMap<&str, Vec<&str>> {
    let mut sections: BTreeMap<&str, Vec<&str>> = BTreeMap::new();
    let mut section = "";
    for line in manifest.lines() {
        if let Some(name) = line.strip_prefix('[') {
            section = name.trim_end_matches(']');
        } else if let Some((name, how)) = line.split_once(['.', '=', ' ']).filter(|_| !line.starts_with('#')) {
            // What is optional here stands behind a feature for tests.
            let section = if how.contains("optional = true") { "dev-dependencies" } else { section };
            sections.entry(section).or_default().push(name);
        }
    }
    sections
}

/// The files that use what a member's tests and benches ask for: its own, its suites and what they take in by path.
fn suites_of(member: &str, manifest: &str) -> Vec<PathBuf> {
    let mut files = rust_files(&root().join(member));
    for line in manifest.lines().filter_map(|line| line.strip_prefix("path = \"../")) {
        let path = root().join(line.trim_end_matches('"'));
        if path.file_name().is_some_and(|name| name == "main.rs") {
            files.extend(rust_files(path.parent().unwrap()));
        } else {
            files.push(path);
        }
    }
    files.extend(rust_files(&root().join("tests/support")));
    files.extend(rust_files(&root().join("benches")));
    files
}

#[test]
fn each_dependency_is_named() {
    let is_named = |package: &str, files: &[PathBuf]| {
        let library = package.replace('-', "_");
        files.iter().any(|file| names(&code(file), &library))
    };
    for member in MEMBERS {
        let manifest = text(&root().join(member).join("Cargo.toml"));
        let sections = asked_for(&manifest);
        let in_sections = |section: &str| sections.get(section).into_iter().flatten();
        let sources = rust_files(&root().join(member).join("src"));
        for package in in_sections("dependencies") {
            assert!(is_named(package, &sources), "{member} depends on {package} and never names it");
        }
        let suites = suites_of(member, &manifest);
        for package in in_sections("dev-dependencies") {
            assert!(is_named(package, &suites), "the tests of {member} ask for {package} and never name it");
        }
    }
}

#[test]
fn each_package_of_the_workspace_is_asked_for_by_a_member() {
    let workspace = text(&root().join("Cargo.toml"));
    let members: Vec<String> = MEMBERS.iter().map(|member| text(&root().join(member).join("Cargo.toml"))).collect();
    for package in &asked_for(&workspace)["workspace.dependencies"] {
        let asked = members.iter().any(|manifest| asked_for(manifest).values().flatten().any(|name| name == package));
        assert!(asked, "no member asks for {package}");
    }
}

/// A manifest's table has one row for each, and so has the developers' list.
#[test]
fn each_package_of_the_workspace_is_told_with_what_it_is_for() {
    let (workspace, told) = (text(&root().join("Cargo.toml")), text(&root().join("DEVELOPERS.md")));
    let list = told.split("## Libraries").nth(1).and_then(|rest| rest.split("\n## ").next()).unwrap();
    for package in &asked_for(&workspace)["workspace.dependencies"] {
        let is_own = MEMBERS.iter().any(|member| package.ends_with(member));
        assert!(is_own || list.contains(&format!("`{package}`")), "DEVELOPERS.md does not say what {package} is for");
    }
}
