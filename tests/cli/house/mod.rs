//! The house keeps its own order: every test is run, each library is named where it belongs, files stay short and import
//! each other one way only.

mod files;
mod imports;
mod libraries;
mod literals;
mod modules;
mod parameters;
mod public;
mod suites;
mod supply;

use std::fs;
use std::path::{Path, PathBuf};

use crate::program::root;

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
