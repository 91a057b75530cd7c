//! Bad input gets a clear error, exit code 2, nothing on standard output, in good time and little memory.

use std::process::Command;
use std::time::{Duration, Instant};

use tempfile::tempdir;

use crate::program::{Ended, run, run_with};

/// A sound room that the cases below spoil.
const SOUND: &str = "\
name: Back room
units: cm
walls:
  - { name: north, length: 500, holds: [{ kind: window, at: 100, width: 200 }] }
  - { name: east, length: 400 }
  - { name: south, length: 500, holds: [{ kind: door, at: 10, width: 80, hinge: left, swings: in, leads_to: entrance }] }
  - { name: west, length: 400 }
pieces:
  - { kind: sofa, width: 150..220 }
";

/// Longest that a refusal may take.
const PATIENCE: Duration = Duration::from_secs(60);

fn refused(ended: &Ended, case: &str) {
    assert_eq!(ended.code, Some(2), "{case}: {ended:?}");
    assert_eq!(ended.stdout, "", "{case}");
    assert!(!ended.stderr.is_empty() && !ended.stderr.contains("panicked"), "{case}: {}", ended.stderr);
}

/// The sound room with `sound` replaced.
fn spoiled(sound: &str, bad: &str) -> String {
    assert!(SOUND.contains(sound), "{sound}");
    SOUND.replacen(sound, bad, 1)
}

#[test]
fn the_sound_room_is_sound() {
    let ended = run_with(&["check", "-"], SOUND.as_bytes());
    assert_eq!((ended.code, ended.stderr.as_str()), (Some(0), ""), "{ended:?}");
}

/// A return that is told as how far it juts out is asked back wherever it is told.
#[test]
fn a_return_that_is_told_as_how_far_it_juts_out_is_refused() {
    let folder = tempdir().unwrap();
    let path = |name: &str, text: &str| {
        let path = folder.path().join(name);
        std::fs::write(&path, text).unwrap();
        path.to_str().unwrap().to_owned()
    };
    let corner = spoiled("kind: sofa, width: 150..220", "kind: corner-sofa, depth: 90");
    let room = path("room.yaml", &corner);
    let bad_room = path("bad.yaml", &corner.replace("depth: 90", "depth: 90, return: 95"));
    let table = path("table.yaml", "sizes: { corner-sofa: { return: { least: 900, usual: 950, most: 950 } } }\n");
    let list = path("list.csv", "kind,name,width (cm),return (cm),depth (cm)\ncorner-sofa,Tern,240,95,90\n");
    let cases = [
        vec!["rank", &bad_room],
        vec!["check", &room, "--set", "corner sofa.return=95"],
        vec!["rank", &room, "--table", &table],
        vec!["shop", &room, &list],
        vec!["batch", &room, "--stock", &list],
    ];
    for args in cases {
        let ended = run(&args);
        refused(&ended, &args.join(" "));
        let said = ended.stderr.replace(['\n', ' ', '\u{b7}', '\u{2502}'], "");
        assert!(said.contains("return") && said.contains("thecornerincluded"), "{args:?}: {}", ended.stderr);
    }
    let ended = run(&["check", &room, "--set", "corner sofa.return=100..150"]);
    assert_eq!(ended.code, Some(0), "{}", ended.stderr);
    assert!(ended.stdout.contains("The least return of corner sofa is taken as 120 cm"), "{}", ended.stdout);
}

/// A slip in what follows the feet is no length, and neither is it by `--set` or as a roll of tape.
#[test]
fn inches_beside_feet_stay_under_a_foot() {
    let said = "12 inches or more beside its feet";
    let spoilt = spoiled("length: 500", "length: 15 ft 99 in");
    let ended = run_with(&["check", "-"], spoilt.as_bytes());
    refused(&ended, "file");
    assert!(ended.stderr.contains(said) && ended.stderr.contains("under 12"), "{}", ended.stderr);
    for args in [&["check", "-", "--set", "sofa.width=6'13\""][..], &["tape", "-", "--roll", "60 ft 12 in"]] {
        let ended = run_with(args, SOUND.as_bytes());
        refused(&ended, args[2]);
        assert!(ended.stderr.contains(said), "{}", ended.stderr);
    }
}

/// A name as long as a file may be is told and drawn in good time.
#[test]
fn a_name_without_end_is_drawn_in_good_time() {
    let name = "p q".repeat(300_000);
    for sound in ["name: Back room", "{ name: north", "{ kind: door", "{ kind: sofa"] {
        let named = match sound.strip_prefix("{ kind: ") {
            Some(kind) => spoiled(sound, &format!("{{ name: '{name}', kind: {kind}")),
            None => spoiled(sound, &format!("{} '{name}'", &sound[..=sound.find(':').unwrap()])),
        };
        for command in [&["draw", "-"][..], &["tape", "-", "--format", "html"], &["report", "-"]] {
            let started = Instant::now();
            let ended = run_with(command, named.as_bytes());
            assert_eq!(ended.code, Some(0), "{sound}: {command:?}");
            assert!(started.elapsed() < PATIENCE, "{sound}: {command:?} took {:?}", started.elapsed());
        }
    }
}

/// What is wrong over a hundred thousand lines is shown at its first one.
#[test]
fn a_fault_that_runs_over_many_lines_is_told_on_a_screen() {
    let long = format!("name: |\n{}{}", "  x\n".repeat(100_000), SOUND.split_once('\n').unwrap().1);
    let ended = run_with(&["check", "-"], long.as_bytes());
    refused(&ended, "a name of many lines");
    assert!(ended.stderr.lines().count() < 20 && ended.stderr.contains(":2:"), "{}", ended.stderr);
}

#[test]
fn what_is_no_readable_file_is_refused_by_every_reader() {
    let folder = tempdir().unwrap();
    let path = |name: &str| folder.path().join(name).to_str().unwrap().to_owned();
    std::fs::write(path("binary"), b"\x7fELF\x02\x00\x01").unwrap();
    std::fs::write(path("latin"), b"name: caf\xe9\n").unwrap();
    std::fs::write(path("empty"), b"").unwrap();
    std::fs::write(path("large"), "# line\n".repeat(200_000)).unwrap();
    let cases = [
        ("missing", "no such file"),
        (".", "directory"),
        ("binary", "not text"),
        ("latin", "not text"),
        ("empty", ""),
        ("large", "1 MiB"),
    ];
    for (name, said) in cases {
        for command in ["rank", "check"] {
            let ended = run(&[command, &path(name)]);
            refused(&ended, name);
            assert!(ended.stderr.contains(said), "{name}: {}", ended.stderr);
        }
    }
}

#[test]
fn a_bad_command_line_is_refused() {
    for args in [
        &[][..],
        &["rank"],
        &["rank", "x.yaml", "--top", "0"],
        &["rank", "x.yaml", "--threads", "0"],
        &["rank", "x.yaml", "--units", "furlong"],
        &["rank", "x.yaml", "--by", "beauty"],
        &["rank", "-", "--table", "-"],
        &["draw", "x.yaml"],
        &["completions", "cobol"],
    ] {
        refused(&run(args), &args.join(" "));
    }
}

#[test]
fn each_fault_is_told_in_words_with_its_line() {
    let cases = [
        ("unknown key", spoiled("units: cm", "unots: cm"), "units"),
        ("unknown unit", spoiled("units: cm", "units: cn"), "cm"),
        ("unknown kind", spoiled("kind: sofa", "kind: sofer"), "sofa"),
        ("not a number", spoiled("length: 400", "length: .nan"), "east"),
        ("infinite", spoiled("length: 400", "length: .inf"), "east"),
        ("negative", spoiled("length: 400", "length: -400"), "east"),
        ("zero", spoiled("length: 400", "length: 0"), "east"),
        ("past its wall's end", spoiled("at: 100", "at: 350"), "window"),
        ("range that runs backward", spoiled("150..220", "220..150"), "sofa"),
        ("key twice", spoiled("units: cm", "units: cm\nunits: cm"), "units"),
        ("does not close", spoiled("length: 400", "length: 300"), "east"),
    ];
    for (case, text, said) in cases {
        let ended = run_with(&["rank", "-"], text.as_bytes());
        refused(&ended, case);
        assert!(ended.stderr.contains(said), "{case}: {}", ended.stderr);
    }
}

#[test]
fn walls_that_cross_or_run_the_wrong_way_are_refused() {
    let room = |corners: &str| format!("units: cm\nwalls:\n{corners}pieces:\n  - {{ kind: sofa }}\n");
    let wall = |x: i32, y: i32| format!("  - {{ start: [{x}, {y}] }}\n");
    let crossing = wall(0, 0) + &wall(500, -400) + &wall(500, 0) + &wall(0, -400);
    let counter_clockwise = wall(0, 0) + &wall(0, -400) + &wall(500, -400) + &wall(500, 0);
    for (case, corners, said) in [("crossing", crossing, "cross"), ("wrong way", counter_clockwise, "clockwise")] {
        let ended = run_with(&["rank", "-"], room(&corners).as_bytes());
        refused(&ended, case);
        assert!(ended.stderr.contains(said), "{case}: {}", ended.stderr);
    }
}

#[test]
fn all_faults_of_a_file_are_told_at_once() {
    let text = spoiled("length: 400", "length: -400").replace("at: 10,", "at: 490,").replace("150..220", "220..150");
    let ended = run_with(&["check", "-"], text.as_bytes());
    refused(&ended, "three faults");
    for said in ["east", "door", "sofa"] {
        assert!(ended.stderr.contains(said), "{said}: {}", ended.stderr);
    }
}

#[test]
fn text_that_explodes_is_refused_in_good_time() {
    let aliases = (1..30).fold("a0: &a0 [x, x, x, x]\n".to_owned(), |text, level| {
        let before = level - 1;
        text + &format!("a{level}: &a{level} [*a{before}, *a{before}, *a{before}, *a{before}]\n")
    });
    let cases = [
        ("aliases", aliases),
        ("nested lists", "[".repeat(100_000)),
        ("nested maps", (0..2_000).map(|depth| " ".repeat(depth.min(400)) + "a:\n").collect()),
        ("nested in braces", "{a: ".repeat(50_000)),
        ("malformed", "walls: [ {".to_owned()),
        ("control characters", "name: \"\u{1}\u{1b}[2J\"\nwalls: \u{7}\n".to_owned()),
        ("one long line", format!("name: {}", "x".repeat(1_000_000))),
        ("many faults", SOUND.to_owned() + &"  - { kind: sofer }\n".repeat(40_000)),
        ("a table of none", "---\n---\n".to_owned()),
    ];
    for (case, text) in cases {
        let started = Instant::now();
        let ended = run_with(&["rank", "-"], text.as_bytes());
        assert!(started.elapsed() < PATIENCE, "{case}: {:?}", started.elapsed());
        refused(&ended, case);
        let shown = |character: char| !character.is_control() || character == '\n';
        assert!(ended.stderr.chars().all(shown), "{case}: a control character reaches the terminal");
    }
}

#[cfg(unix)]
#[test]
fn text_that_explodes_is_refused_in_little_memory() {
    let folder = tempdir().unwrap();
    let path = folder.path().join("aliases.yaml");
    let aliases = (1..30).fold("a0: &a0 [x, x, x, x]\n".to_owned(), |text, level| {
        let before = level - 1;
        text + &format!("a{level}: &a{level} [*a{before}, *a{before}, *a{before}, *a{before}]\n")
    });
    std::fs::write(&path, aliases).unwrap();
    let within = "ulimit -v 500000; exec \"$0\" rank \"$1\"";
    let output = Command::new("sh").args(["-c", within, env!("CARGO_BIN_EXE_elbowroom")]).arg(&path).output().unwrap();
    refused(&Ended::from(output), "aliases in 500 MB");
}
