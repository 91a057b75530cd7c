//! What the packages under us may be: licences and sources as `.deny.toml` allows them, and one version of each that we name.
//!
//! The same file serves `cargo deny check bans licenses sources`, which knows more; it takes minutes to build, so the gate
//! runs it only where it is at hand. Known vulnerabilities are its alone to tell: they need a list from elsewhere.

use std::collections::BTreeSet;
use std::process::Command;

use serde_json::Value;

use super::{root, text};

/// What the members name and is there in several versions, and why.
const SEVERAL: [(&str, &str); 3] = [
    ("base64", "the reader of YAML has another than the rasteriser, and neither shows a type of it"),
    ("getrandom", "the generator under the tests has an older one, which gives bytes and no types"),
    ("syn", "macros are built with the one before; ours reads sources in tests alone"),
];
/// Where packages may come from: the registry, or this workspace.
const REGISTRY: &str = "registry+https://github.com/rust-lang/crates.io-index";

/// Every package that the lock file holds, for any system.
fn packages() -> Vec<Value> {
    let mut cargo = Command::new(env!("CARGO"));
    let told = cargo.args(["metadata", "--format-version", "1", "--locked"]).current_dir(root()).output().unwrap();
    assert!(told.status.success(), "{}", String::from_utf8_lossy(&told.stderr));
    let told: Value = serde_json::from_slice(&told.stdout).unwrap();
    told["packages"].as_array().unwrap().clone()
}

/// The licences that may be, of the list in `.deny.toml`.
fn allowed() -> BTreeSet<String> {
    let told = text(&root().join(".deny.toml"));
    let list = told.split("allow = [").nth(1).and_then(|rest| rest.split("\n]").next()).unwrap();
    let lines = list.lines().map(str::trim).filter(|line| line.starts_with('"'));
    lines.map(|line| line.trim_matches(['"', ',']).to_owned()).collect()
}

/// Whether a licence expression can be met (P: SPDX specification 2.3, annex D: AND binds before OR; older manifests write
/// a slash for OR).
fn can_be_met(expression: &str, allowed: &BTreeSet<String>) -> bool {
    let spaced = expression.replace('/', " OR ").replace('(', " ( ").replace(')', " ) ");
    let words: Vec<&str> = spaced.split_whitespace().collect();
    let (met, rest) = either(&words, allowed);
    assert!(rest.is_empty(), "not understood: {expression}");
    met
}

fn either<'a, 'b>(words: &'b [&'a str], allowed: &BTreeSet<String>) -> (bool, &'b [&'a str]) {
    let (mut met, mut rest) = both(words, allowed);
    while let [first, more @ ..] = rest
        && *first == "OR"
    {
        let (other, left) = both(more, allowed);
        (met, rest) = (met || other, left);
    }
    (met, rest)
}

fn both<'a, 'b>(words: &'b [&'a str], allowed: &BTreeSet<String>) -> (bool, &'b [&'a str]) {
    let (mut met, mut rest) = one(words, allowed);
    while let [first, more @ ..] = rest
        && *first == "AND"
    {
        let (other, left) = one(more, allowed);
        (met, rest) = (met && other, left);
    }
    (met, rest)
}

fn one<'a, 'b>(words: &'b [&'a str], allowed: &BTreeSet<String>) -> (bool, &'b [&'a str]) {
    match words {
        ["(", more @ ..] => {
            let (met, rest) = either(more, allowed);
            (met, rest.strip_prefix(&[")"]).unwrap_or(rest))
        }
        [licence, "WITH", exception, rest @ ..] => (allowed.contains(&format!("{licence} WITH {exception}")), rest),
        [licence, rest @ ..] => (allowed.contains(*licence), rest),
        [] => (false, words),
    }
}

#[test]
fn licence_expressions_are_read_as_they_are_meant() {
    let allowed = BTreeSet::from(["MIT".to_owned(), "Zlib".to_owned()]);
    for (expression, met) in [
        ("MIT", true),
        ("GPL-3.0", false),
        ("GPL-3.0 OR MIT", true),
        ("MIT/Apache-2.0", true),
        ("MIT AND GPL-3.0", false),
        ("GPL-3.0 AND MIT OR Zlib", true),
        ("(MIT OR Apache-2.0) AND NCSA", false),
        ("(GPL-3.0 OR Zlib) AND MIT", true),
        ("Apache-2.0 WITH LLVM-exception OR Apache-2.0", false),
    ] {
        assert_eq!(can_be_met(expression, &allowed), met, "{expression}");
    }
}

#[test]
fn every_package_has_a_licence_that_may_be_and_comes_from_the_registry() {
    let allowed = allowed();
    assert!(allowed.contains("MIT") && allowed.len() < 12, "{allowed:?}");
    let (packages, mut amiss) = (packages(), Vec::new());
    assert!(packages.len() > 100, "{} packages", packages.len());
    for package in &packages {
        let (name, version) = (&package["name"], &package["version"]);
        let expression = package["license"].as_str().unwrap_or_default();
        if !can_be_met(expression, &allowed) {
            amiss.push(format!("{name} {version}: licence {expression:?}"));
        }
        let own = package["source"].is_null();
        if !own && package["source"] != REGISTRY {
            amiss.push(format!("{name} {version}: from {}", package["source"]));
        }
    }
    assert!(amiss.is_empty(), "{}", amiss.join("\n"));
}

/// Two versions of one library are two kinds of each of its types: what the members name stands in the lock file once.
#[test]
fn what_the_members_name_is_there_in_one_version() {
    let packages = packages();
    let is_own = |package: &&Value| package["source"].is_null();
    let named: BTreeSet<&str> = packages
        .iter()
        .filter(is_own)
        .flat_map(|package| package["dependencies"].as_array().unwrap())
        .map(|dependency| dependency["name"].as_str().unwrap())
        .collect();
    let is_several = |name: &str| packages.iter().filter(|package| package["name"] == name).count() > 1;
    let several: BTreeSet<&str> = named.into_iter().filter(|name| is_several(name)).collect();
    assert_eq!(several, SEVERAL.iter().map(|(name, _)| *name).collect(), "what is several is told, with its why");
}
