//! Every suite, bench and file of tests is declared: one that nobody declares would silently never run.

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

use super::{from_root, manifests, root, rust_files, text};

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

/// The names of files and folders at a place.
fn names_at(place: &str) -> BTreeSet<String> {
    let entries = fs::read_dir(root().join(place)).unwrap();
    entries.map(|entry| entry.unwrap().path().file_stem().unwrap().to_string_lossy().into_owned()).collect()
}

/// A target that is not declared, starts from nothing or is built without telling what it reaches tries nothing.
#[test]
fn every_target_is_declared_has_sound_files_and_tells_what_it_reaches() {
    let (targets, folders) = (names_at("tests/fuzz/targets"), names_at("tests/data/fuzz"));
    assert_eq!(targets, folders, "a folder of files for each target");
    let (manifest, compiler) = (text(&root().join("tests/fuzz/Cargo.toml")), text(&root().join("tests/fuzz/rustc")));
    for target in targets {
        assert!(manifest.contains(&format!("path = \"targets/{target}.rs\"")), "{target} is not declared");
        assert!(compiler.contains(&format!("| {target}")), "the build of {target} does not tell what it reaches");
    }
}

#[test]
fn every_test_file_is_a_module_of_its_suite() {
    let mut files = rust_files(&root().join("tests"));
    files.retain(|file| !file.starts_with(root().join("tests/fuzz/targets")));
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
