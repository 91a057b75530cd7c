//! Every suite, bench and file of tests is declared: one that nobody declares would silently never run.

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
