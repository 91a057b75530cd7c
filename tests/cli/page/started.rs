//! Started by a hand on a desktop, with no terminal and nothing asked for: the page opens.

use std::fs;
use std::path::Path;
use std::process::{Child, Stdio};
use std::time::{Duration, Instant};

use tempfile::tempdir;

use super::served::{Served, demo};
use crate::program::program;

/// What takes the place of the desktop's opener: it writes down what it was to open.
#[cfg(target_os = "linux")]
fn opener(folder: &Path) {
    use std::os::unix::fs::PermissionsExt;
    let file = folder.join("xdg-open");
    fs::write(&file, "#!/bin/sh\necho \"$1\" > \"${0%/*}/part\"\nmv \"${0%/*}/part\" \"${0%/*}/opened\"\n").unwrap();
    fs::set_permissions(&file, fs::Permissions::from_mode(0o755)).unwrap();
}

/// The program with no arguments, in a folder, on a desktop or none.
fn started(folder: &Path, desktop: bool) -> Child {
    let mut command = program(&[]);
    if desktop {
        let path = std::env::join_paths([folder, Path::new("/usr/bin"), Path::new("/bin")]).unwrap();
        command.env("DISPLAY", ":7").env("PATH", path);
    }
    command.current_dir(folder).stdout(Stdio::piped()).stderr(Stdio::piped()).spawn().unwrap()
}

#[cfg(target_os = "linux")]
#[test]
fn with_nothing_asked_for_on_a_desktop_the_page_of_the_folder_opens() {
    let folder = tempdir().unwrap();
    opener(folder.path());
    fs::write(folder.path().join("quay.yaml"), demo("which-hand.yaml")).unwrap();
    let child = started(folder.path(), true);
    let opened = folder.path().join("opened");
    let begun = Instant::now();
    while !opened.exists() {
        assert!(begun.elapsed() < Duration::from_secs(30), "nothing is opened");
        std::thread::sleep(Duration::from_millis(20));
    }
    let link = fs::read_to_string(opened).unwrap();
    let served = Served::of(child, link.trim(), folder);
    let page = served.get("/");
    assert_eq!(page.status, 200);
    assert!(page.text().contains("quay.yaml"), "{}", page.text());
}

#[test]
fn with_nothing_asked_for_and_no_desktop_help_is_told() {
    let folder = tempdir().unwrap();
    let ended = started(folder.path(), false).wait_with_output().unwrap();
    assert_eq!(ended.status.code(), Some(2));
    assert!(ended.stdout.is_empty() && String::from_utf8_lossy(&ended.stderr).contains("Usage: elbowroom"));
}
