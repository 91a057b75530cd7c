//! The house keeps its own order: every test is run, each library is named where it belongs, files stay short.

use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

use crate::program::root;

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
/// Longest file, lines.
const LONGEST: usize = 500;
/// Each library that has a home, and the only place in the members' sources that may name it.
const HOMES: [(&str, &str); 9] = [
    ("good_lp", "solver/src/program/"),
    ("microlp", "solver/src/program/"),
    ("highs", "solver/src/program/"),
    ("geo", "solver/src/geometry/"),
    ("rstar", "solver/src/geometry/"),
    ("clap", "cli/src/"),
    ("krilla", "cli/src/drawing/"),
    ("subsetter", "cli/src/drawing/"),
    ("ttf_parser", "cli/src/drawing/"),
];
/// The workspace's members.
const MEMBERS: [&str; 3] = ["model", "solver", "cli"];

/// Every Rust file under `folder`, sorted.
fn rust_files(folder: &Path) -> Vec<PathBuf> {
    let mut files = Vec::new();
    let Ok(entries) = fs::read_dir(folder) else { return files };
    for path in entries.map(|entry| entry.unwrap().path()) {
        if path.is_dir() {
            files.extend(rust_files(&path));
        } else if path.extension().is_some_and(|extension| extension == "rs") {
            files.push(path);
        }
    }
    files.sort();
    files
}

fn text(path: &Path) -> String {
    fs::read_to_string(path).unwrap()
}

/// A path as seen from the root.
fn from_root(path: &Path) -> String {
    path.strip_prefix(root()).unwrap().display().to_string()
}

fn sources() -> Vec<PathBuf> {
    MEMBERS.iter().flat_map(|member| rust_files(&root().join(member).join("src"))).collect()
}

fn manifests() -> String {
    MEMBERS.iter().map(|member| text(&root().join(member).join("Cargo.toml"))).collect()
}

/// The code of a file, comments left out.
fn code(path: &Path) -> String {
    text(path).lines().filter(|line| !line.trim_start().starts_with("//")).collect::<Vec<_>>().join("\n")
}

/// Whether `code` names the package `name` in a path.
fn names(code: &str, name: &str) -> bool {
    let word = |character: char| character.is_alphanumeric() || character == '_' || character == ':';
    code.match_indices(&format!("{name}::")).any(|(place, _)| !code[..place].ends_with(word))
        || code.contains(&format!("use {name};"))
}

#[test]
fn every_suite_and_bench_is_declared() {
    let manifests = manifests();
    let suites = fs::read_dir(root().join("tests")).unwrap().map(|entry| entry.unwrap().path().join("main.rs"));
    for suite in suites.filter(|main| main.exists()) {
        assert!(manifests.contains(&declaration(&suite)), "no member declares {}", from_root(&suite));
    }
    for bench in rust_files(&root().join("benches")) {
        assert!(
            manifests.contains(&declaration(&bench)) || is_module_of_a_bench(&bench),
            "no member declares {}",
            from_root(&bench)
        );
    }
}

/// How a manifest declares a suite or a bench.
fn declaration(path: &Path) -> String {
    format!("path = \"../{}\"", from_root(path))
}

/// Whether a file beside the benches is a module of one of them.
fn is_module_of_a_bench(path: &Path) -> bool {
    let stem = path.file_stem().unwrap().to_string_lossy();
    let name = if stem == "mod" { path.parent().unwrap().file_name().unwrap().to_string_lossy() } else { stem };
    rust_files(&root().join("benches")).iter().any(|bench| text(bench).contains(&format!("mod {name};")))
}

#[test]
fn every_test_file_is_a_module_of_its_suite() {
    let files = rust_files(&root().join("tests"));
    let all: String = files.iter().map(|file| text(file)).collect();
    for file in files.iter().filter(|file| file.file_name().unwrap() != "main.rs") {
        let (folder, stem) = (file.parent().unwrap(), file.file_stem().unwrap().to_string_lossy());
        let (holder, name) = if stem == "mod" {
            (folder.parent().unwrap(), folder.file_name().unwrap().to_string_lossy())
        } else {
            (folder, stem)
        };
        let holders = [holder.join("main.rs"), holder.join("mod.rs"), holder.with_extension("rs")];
        let declaring = holders.into_iter().filter(|path| path.exists());
        let declared = declaring.map(|path| text(&path)).any(|text| text.contains(&format!("mod {name};")));
        let by_path = all.contains(&format!("/{}\"]", from_root(file).trim_start_matches("tests/")));
        assert!(declared || by_path, "no suite has {} as a module", from_root(file));
    }
}

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

#[test]
fn no_file_is_long_and_every_folder_says_what_it_holds() {
    for file in
        sources().into_iter().chain(rust_files(&root().join("tests"))).chain(rust_files(&root().join("benches")))
    {
        let (path, text) = (from_root(&file), text(&file));
        let lines = text.lines().count();
        assert!(lines <= LONGEST, "{path} has {lines} lines");
        assert!(text.starts_with("//!"), "{path} does not open with what it holds");
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
