//! What each command does with a sound command line.

use std::collections::BTreeSet;

use serde_json::Value;

use crate::program::{run, run_with};

#[test]
fn help_and_version_are_results() {
    for args in [&["--help"][..], &["rank", "--help"], &["--version"]] {
        let ended = run(args);
        assert_eq!((ended.code, ended.stderr.as_str()), (Some(0), ""), "{args:?}");
        assert!(ended.stdout.contains("elbowroom") || ended.stdout.contains("FILE"), "{args:?}");
    }
}

#[test]
fn help_lists_every_exit_code() {
    let help = run(&["--help"]).stdout;
    for exit in elbowroom::Exit::ALL {
        assert!(help.contains(&format!("\n  {}  ", exit.code())), "{exit:?}");
    }
}

#[test]
fn what_new_writes_can_be_checked_and_ranked() {
    let starter = run(&["new", "-"]).stdout;
    let checked = run_with(&["check", "-"], starter.as_bytes());
    assert_eq!((checked.code, checked.stderr.as_str()), (Some(0), ""), "{checked:?}");
    let ranked = run_with(&["rank", "-"], starter.as_bytes());
    assert_eq!((ranked.code, ranked.stderr.as_str()), (Some(0), ""), "{ranked:?}");
}

#[test]
fn the_schema_is_json_and_knows_every_key_of_the_starter() {
    let schema = run(&["schema"]).stdout;
    let schema: Value = serde_json::from_str(&schema).unwrap();
    let mut properties = BTreeSet::new();
    collect_properties(&schema, &mut properties);
    let starter = run(&["new", "-"]).stdout;
    let keys = starter.lines().filter_map(|line| line.split_once(':')).map(|(key, _)| key);
    for key in keys.filter(|key| !key.is_empty() && key.chars().all(|it| it.is_ascii_lowercase() || it == '_')) {
        assert!(properties.contains(key), "{key}");
    }
}

/// The keys that a schema knows, at any depth.
fn collect_properties(schema: &Value, into: &mut BTreeSet<String>) {
    match schema {
        Value::Object(map) => {
            if let Some(Value::Object(properties)) = map.get("properties") {
                into.extend(properties.keys().cloned());
            }
            map.values().for_each(|value| collect_properties(value, into));
        }
        Value::Array(values) => values.iter().for_each(|value| collect_properties(value, into)),
        _ => {}
    }
}

#[test]
fn every_shell_gets_completions_and_every_command_a_page() {
    for shell in ["bash", "zsh", "fish", "elvish", "powershell"] {
        let script = run(&["completions", shell]);
        assert!(script.code == Some(0) && script.stdout.contains("units"), "{shell}");
    }
    for command in [&["man"][..], &["man", "rank"], &["man", "check"]] {
        let page = run(command);
        assert!(page.code == Some(0) && page.stdout.contains(".SH NAME"), "{command:?}");
    }
}
