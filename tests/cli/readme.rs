//! What the README shows is what the program does today.

use std::fs;
use std::path::Path;

use crate::program::{Ended, program, root};

/// The README, and those of the commands and of the scenarios.
fn readme() -> String {
    ["README.md", "cli/README.md", "scenarios/README.md"]
        .map(|name| fs::read_to_string(root().join(name)).unwrap())
        .concat()
}

/// Blocks between fences, without the fences.
fn blocks(readme: &str) -> Vec<&str> {
    readme.split("\n```").enumerate().filter(|(place, _)| place % 2 == 1).map(|(_, block)| block).collect()
}

/// Runs what a reader would type, in a folder of its own that has the demo rooms in it.
fn typed(folder: &Path, command: &str) -> String {
    let args: Vec<&str> = command.split_whitespace().collect();
    let ended = Ended::from(program(&args).current_dir(folder).output().unwrap());
    assert_eq!(ended.stderr, "", "{command}");
    ended.stdout
}

fn with_demo_rooms() -> tempfile::TempDir {
    let folder = tempfile::tempdir().unwrap();
    let rooms = folder.path().join("scenarios");
    fs::create_dir(&rooms).unwrap();
    fs::create_dir(rooms.join("shop")).unwrap();
    for from in ["scenarios", "scenarios/shop"] {
        for file in fs::read_dir(root().join(from)).unwrap().map(|file| file.unwrap()) {
            if file.file_type().unwrap().is_file() {
                fs::copy(file.path(), folder.path().join(from).join(file.file_name())).unwrap();
            }
        }
    }
    folder
}

/// Each picture is drawn again; the bytes are the same on every machine, for the letters lie in the file.
#[test]
fn every_picture_is_current_and_shown() {
    let readme = readme();
    let mut pictures = 0;
    for picture in fs::read_dir(root().join("cli/pictures")).unwrap().map(|file| file.unwrap().path()) {
        let name = picture.file_stem().unwrap().to_str().unwrap();
        let drawn = typed(&root(), &format!("draw scenarios/{name}.yaml"));
        let is_current = fs::read_to_string(&picture).unwrap() == drawn;
        assert!(is_current, "elbowroom draw scenarios/{name}.yaml -o cli/pictures/{name}.svg --force");
        assert!(readme.contains(&format!("](cli/pictures/{name}.svg)")), "{name}");
        pictures += 1;
    }
    assert_eq!(readme.matches("](cli/pictures/").count(), pictures);
}

/// What stands after `$ elbowroom ...` is what that prints, or its first lines.
#[test]
fn every_command_with_its_answer_is_current() {
    let (readme, folder) = (readme(), with_demo_rooms());
    let mut commands = 0;
    for block in blocks(&readme) {
        let Some((command, shown)) = block.trim_start().strip_prefix("$ elbowroom ").and_then(|it| it.split_once('\n'))
        else {
            continue;
        };
        let told = typed(folder.path(), command);
        let is_current = told.lines().zip(shown.trim_end().lines()).all(|(told, shown)| told == shown);
        assert!(is_current && told.len() >= shown.trim_end().len(), "{command}\n{told}");
        commands += 1;
    }
    assert!(commands >= 3, "{commands}");
}

/// What a reader may type for a room of their own, and for the demo rooms, does something.
#[cfg(unix)]
#[test]
fn every_command_runs() {
    let (readme, folder) = (readme(), with_demo_rooms());
    fs::write(folder.path().join("room.yaml"), typed(folder.path(), "new -")).unwrap();
    fs::write(folder.path().join("rooms.ndjson"), "").unwrap();
    let found = Path::new(env!("CARGO_BIN_EXE_elbowroom")).parent().unwrap();
    let path = format!("{}:{}", found.display(), std::env::var("PATH").unwrap());
    let blocks = blocks(&readme);
    let lines: Vec<&str> = blocks.iter().flat_map(|block| block.lines()).collect();
    let commands: Vec<&&str> = lines.iter().filter(|line| line.starts_with("elbowroom ")).collect();
    for command in &commands {
        let mut shell = std::process::Command::new("sh");
        let ended =
            Ended::from(shell.args(["-c", command]).current_dir(folder.path()).env("PATH", &path).output().unwrap());
        assert_eq!((ended.code, ended.stderr.as_str()), (Some(0), ""), "{command}");
    }
    assert!(commands.len() >= 8, "{commands:?}");
}
