//! Files are written whole or not at all, and never over one that is there unless that is asked for.

use std::fs;
use std::path::Path;

use tempfile::tempdir;

use crate::program::{Ended, run};

/// What stands in a folder.
fn names(folder: &Path) -> Vec<String> {
    let entries = fs::read_dir(folder).unwrap();
    entries.map(|entry| entry.unwrap().file_name().into_string().unwrap()).collect()
}

fn new(args: &[&str]) -> Ended {
    run(&[&["new"], args].concat())
}

#[test]
fn a_file_that_is_there_stays_unless_it_is_to_be_replaced() {
    let folder = tempdir().unwrap();
    let path = folder.path().join("room.yaml");
    let name = path.to_str().unwrap();
    fs::write(&path, "mine").unwrap();
    let kept = new(&[name]);
    assert_eq!((kept.code, kept.stdout.as_str()), (Some(2), ""));
    assert!(kept.stderr.contains("already there") && kept.stderr.contains("--force"), "{}", kept.stderr);
    assert_eq!(fs::read_to_string(&path).unwrap(), "mine");
    let replaced = new(&[name, "--force"]);
    assert_eq!(replaced.code, Some(0), "{}", replaced.stderr);
    assert_eq!(fs::read_to_string(&path).unwrap(), new(&["-"]).stdout);
    assert_eq!(names(folder.path()), ["room.yaml"], "nothing is left beside it");
}

#[test]
fn a_place_that_cannot_hold_a_file_is_told_and_stays_empty() {
    let folder = tempdir().unwrap();
    let missing = folder.path().join("none").join("room.yaml");
    let below_file = folder.path().join("file").join("room.yaml");
    fs::write(folder.path().join("file"), "").unwrap();
    for path in [&missing, &below_file, &folder.path().to_owned()] {
        for force in [&[][..], &["--force"]] {
            let ended = new(&[&[path.to_str().unwrap()], force].concat());
            assert_eq!((ended.code, ended.stdout.as_str()), (Some(2), ""), "{path:?}");
            assert!(ended.stderr.starts_with("elbowroom: cannot write "), "{}", ended.stderr);
        }
    }
    assert_eq!(names(folder.path()), ["file"]);
}

#[test]
fn new_files_can_be_read_as_any_other() {
    let folder = tempdir().unwrap();
    let path = folder.path().join("room.yaml");
    new(&[path.to_str().unwrap()]);
    fs::write(folder.path().join("other"), "").unwrap();
    let permissions = |name: &str| fs::metadata(folder.path().join(name)).unwrap().permissions();
    assert_eq!(permissions("room.yaml"), permissions("other"));
}

#[cfg(unix)]
#[test]
fn a_link_keeps_pointing_to_the_file_that_is_replaced() {
    let folder = tempdir().unwrap();
    let (file, link) = (folder.path().join("file"), folder.path().join("link"));
    fs::write(&file, "mine").unwrap();
    std::os::unix::fs::symlink(&file, &link).unwrap();
    assert_eq!(new(&[link.to_str().unwrap(), "--force"]).code, Some(0));
    assert!(fs::symlink_metadata(&link).unwrap().is_symlink());
    assert_ne!(fs::read_to_string(&file).unwrap(), "mine");
}

/// No sheet goes over the room or the table that it is made from, whatever is said and by whatever name.
#[test]
fn what_is_read_is_not_written_over() {
    let folder = tempdir().unwrap();
    let path = |name: &str| folder.path().join(name).to_str().unwrap().to_owned();
    let room = fs::read_to_string(crate::program::root().join("tests/data/settled.yaml")).unwrap();
    // Named as what is written, so that nothing else is in the way.
    let names = [path("room.svg"), path("room.pdf"), path("room.html")];
    for name in &names {
        fs::write(name, &room).unwrap();
    }
    let [svg, pdf, html] = names.each_ref().map(String::as_str);
    let other = path("./room.svg");
    let commands = [
        vec!["draw", svg, "-o", svg],
        vec!["draw", svg, "-o", &other],
        vec!["draw", pdf, "--table", svg, "-o", svg],
        vec!["compare", svg, "1", "2", "-o", svg],
        vec!["tape", pdf, "-o", pdf],
        vec!["card", html, "-o", html],
        vec!["report", html, "-o", html],
    ];
    for command in commands {
        for force in [&[][..], &["--force"]] {
            let ended = run(&[&command, force].concat());
            assert_eq!((ended.code, ended.stdout.as_str()), (Some(2), ""), "{command:?}");
            assert!(
                ended.stderr.contains("read by this run") && ended.stderr.contains("Name another"),
                "{}",
                ended.stderr
            );
        }
    }
    assert!(names.iter().all(|name| fs::read_to_string(name).unwrap() == room));
}

/// Whoever names a file by its ending wants what the ending promises.
#[test]
fn an_ending_of_something_else_is_refused() {
    let folder = tempdir().unwrap();
    let room = crate::program::root().join("tests/data/settled.yaml");
    let room = room.to_str().unwrap();
    let cases = [
        (vec!["draw", room], "x.jpg", ".svg or .png or .pdf"),
        (vec!["compare", room, "1", "2"], "x.docx", ".text or .txt or .html or .htm or .pdf or .svg or .png"),
        (vec!["tape", room], "t.docx", ".text or .txt or .html or .htm or .pdf"),
        (vec!["card", room], "c.svg", ".pdf"),
        (vec!["report", room], "r.pdf", ".html or .htm"),
    ];
    for (command, name, known) in cases {
        let path = folder.path().join(name);
        let ended = run(&[&command[..], &["-o", path.to_str().unwrap()]].concat());
        assert_eq!((ended.code, ended.stdout.as_str()), (Some(2), ""), "{command:?}");
        assert!(ended.stderr.contains(name) && ended.stderr.contains(known), "{}", ended.stderr);
    }
    assert!(names(folder.path()).is_empty());
    // A form that is said outright needs no ending, and a name without one gets the usual form.
    for more in [&["-o", "x.jpg", "--format", "png"][..], &["-o", "plan"]] {
        let ended =
            crate::program::program(&[&["draw", room], more].concat()).current_dir(folder.path()).output().unwrap();
        assert_eq!(ended.status.code(), Some(0), "{more:?}");
    }
    assert!(fs::read(folder.path().join("x.jpg")).unwrap().starts_with(b"\x89PNG"));
    assert!(fs::read(folder.path().join("plan")).unwrap().starts_with(b"<svg"));
}

/// `/dev/full` answers every write as a full disk does.
#[cfg(target_os = "linux")]
#[test]
fn a_full_disk_is_told() {
    use crate::program::program;
    let named = new(&["/dev/full"]);
    assert_eq!((named.code, named.stdout.as_str()), (Some(1), ""), "{}", named.stderr);
    assert!(named.stderr.contains("cannot write /dev/full: No space left"), "{}", named.stderr);
    let full = fs::File::options().write(true).open("/dev/full").unwrap();
    let printed = program(&["new", "-"]).stdout(full).output().unwrap();
    assert_eq!(printed.status.code(), Some(1));
    assert!(fs::metadata("/dev/full").unwrap().len() == 0 && !fs::metadata("/dev/full").unwrap().is_file());
}

/// A limit on the size of files stops a write half way, as a disk that fills up does.
#[cfg(target_os = "linux")]
#[test]
fn a_write_that_stops_half_way_leaves_nothing() {
    let folder = tempdir().unwrap();
    let path = folder.path().join("room.yaml");
    fs::write(&path, "mine").unwrap();
    let (program, file) = (env!("CARGO_BIN_EXE_elbowroom"), path.display());
    // One block of 512 or 1024 bytes; the signal that would end the program is left unheard.
    let script = format!("trap '' XFSZ; ulimit -f 1; exec '{program}' new '{file}' --force");
    let ended = std::process::Command::new("sh").args(["-c", &script]).output().unwrap();
    assert_eq!(ended.status.code(), Some(1), "{}", String::from_utf8_lossy(&ended.stderr));
    assert!(String::from_utf8_lossy(&ended.stderr).contains("nothing is left of it"));
    assert_eq!(fs::read_to_string(&path).unwrap(), "mine");
    assert_eq!(names(folder.path()), ["room.yaml"]);
}

/// A result that nobody takes is not told: the exit code says so, and nothing else, for `| head` is a habit.
#[cfg(target_os = "linux")]
#[test]
fn a_reader_who_is_gone_is_no_success() {
    use std::process::Stdio;
    let room = crate::program::root().join("tests/data/settled.yaml");
    let room = room.to_str().unwrap();
    for args in [
        &["rank", room][..],
        &["draw", room],
        &["draw", room, "-o", "/dev/stdout"],
        &["check", room],
        &["schema"],
        &["completions", "bash"],
        &["--help"],
    ] {
        let (reader, writer) = std::io::pipe().unwrap();
        drop(reader);
        let ended = crate::program::program(args).stdout(Stdio::from(writer)).output().unwrap();
        assert_eq!((ended.status.code(), ended.stderr.as_slice()), (Some(1), &b""[..]), "{args:?}");
    }
    // What only tells of a file that is there is no result.
    let folder = tempdir().unwrap();
    let path = folder.path().join("room.yaml");
    let (reader, writer) = std::io::pipe().unwrap();
    drop(reader);
    let ended = crate::program::program(&["new", path.to_str().unwrap()]).stderr(Stdio::from(writer)).output().unwrap();
    assert!(ended.status.success() && path.is_file());
}
