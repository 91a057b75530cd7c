//! Every screen, as it looked when somebody last looked at it.

use std::path::{Path, PathBuf};

use crate::program::{root, run, run_with};

/// Demo rooms whose pages are held: between them they have all that a page can show.
const SHOWN: [&str; 3] = ["canal-flat", "feet-and-inches", "measured-badly"];

/// The demo rooms, by name.
pub(crate) fn scenarios() -> Vec<PathBuf> {
    let entries = std::fs::read_dir(root().join("scenarios")).unwrap().map(|entry| entry.unwrap().path());
    let mut scenarios: Vec<PathBuf> = entries.filter(|path| path.extension().is_some_and(|it| it == "yaml")).collect();
    scenarios.sort();
    assert!(scenarios.len() >= 8, "{scenarios:?}");
    scenarios
}

/// The name a snapshot goes by.
fn name(command: &str, scenario: &Path) -> String {
    format!("{command}_{}", scenario.file_stem().unwrap().to_string_lossy())
}

#[test]
fn check_on_every_demo_room() {
    for scenario in scenarios() {
        let text = std::fs::read(&scenario).unwrap();
        let ended = run_with(&["check", "-"], &text);
        assert_eq!((ended.code, ended.stderr.as_str()), (Some(0), ""), "{scenario:?}");
        if SHOWN.contains(&&*scenario.file_stem().unwrap().to_string_lossy()) {
            insta::assert_snapshot!(name("check", &scenario), ended.stdout);
        }
    }
}

#[test]
fn sketches() {
    for name in ["canal-flat", "oblique", "measured-badly"] {
        let file = root().join("scenarios").join(format!("{name}.yaml")).display().to_string();
        let page = run(&["rank", &file, "--sketch", "--top", "1"]).stdout;
        let sketch: Vec<&str> =
            page.lines().skip_while(|line| !line.starts_with("Sketch")).take_while(|line| !line.is_empty()).collect();
        insta::assert_snapshot!(format!("sketch_{name}"), sketch.join("\n"));
    }
}

#[test]
fn faults_under_their_lines() {
    let text = "\
name: Back room
units: cm
walls:
  - { name: north, length: 500, holds: [{ kind: window, at: 350, width: 200 }] }
  - { name: east, length: -400 }
  - { name: south, length: 500, holds: [{ kind: dor, at: 10, width: 80 }] }
  - { name: west, lenght: 400 }
pieces:
  - { kind: sofa, width: 220..150 }
wishes: { vew: 3, talk: 9 }
";
    insta::assert_snapshot!(run_with(&["rank", "-"], text.as_bytes()).stderr);
}

#[test]
fn failures_of_files_and_of_the_command_line() {
    insta::assert_snapshot!("missing_file", run(&["rank", "no-such-room.yaml"]).stderr);
    insta::assert_snapshot!("directory", run(&["check", "/"]).stderr);
    insta::assert_snapshot!("both_standard_input", run(&["rank", "-", "--table", "-"]).stderr);
    insta::assert_snapshot!("unknown_unit", run(&["rank", "x.yaml", "--units", "furlong"]).stderr);
    insta::assert_snapshot!("unknown_command_of_man", run(&["man", "rnak"]).stderr);
}

/// A room of the tests in which every size is settled.
fn settled(name: &str) -> String {
    root().join("tests/data").join(name).display().to_string()
}

#[test]
fn options_side_by_side() {
    insta::assert_snapshot!("compare_two", run(&["compare", &settled("settled.yaml"), "1", "2"]).stdout);
    let three = run(&["compare", &settled("crooked.yaml"), "3", "1", "2", "--units", "cm"]).stdout;
    insta::assert_snapshot!("compare_three", three);
}

#[test]
fn tape_sheets_and_cards() {
    for name in ["settled", "crooked"] {
        let file = settled(&format!("{name}.yaml"));
        insta::assert_snapshot!(format!("tape_{name}"), run(&["tape", &file]).stdout);
        insta::assert_snapshot!(format!("card_{name}"), run(&["card", &file]).stdout);
    }
    insta::assert_snapshot!("card_of_two", run(&["card", &settled("crooked.yaml"), "--top", "2"]).stdout);
}

#[test]
fn what_a_setting_changes() {
    let head = |file: &str, settings: &[&str]| {
        let mut args = vec!["rank", "--top", "1", file];
        args.extend(settings.iter().flat_map(|it| ["--set", it]));
        let page = run(&args).stdout;
        page.split("\n\n").next().unwrap().to_owned()
    };
    let file = settled("settled.yaml");
    insta::assert_snapshot!("set_smaller", head(&file, &["corner sofa.width=210", "view=0"]));
    insta::assert_snapshot!("set_wider_way", head(&file, &["walkway=110", "passage=70cm", "books=none"]));
    insta::assert_snapshot!("set_too_large", head(&file, &["corner sofa.width=4.6 m"]));
    let nothing = root().join("scenarios/nothing-fits.yaml").display().to_string();
    insta::assert_snapshot!("set_what_helps", head(&nothing, &["sofa.depth=80..104", "coffee table=none"]));
}

#[test]
fn help() {
    insta::assert_snapshot!("help", run(&["--help"]).stdout);
    for command in [
        "rank",
        "compare",
        "tape",
        "card",
        "share",
        "judge",
        "way",
        "shop",
        "batch",
        "check",
        "schema",
        "new",
        "completions",
        "man",
    ] {
        insta::assert_snapshot!(format!("help_{command}"), run(&[command, "--help"]).stdout);
    }
}
