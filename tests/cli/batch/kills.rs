//! Runs that are killed, at any moment, and what is left.

use std::fs;
use std::path::Path;
use std::process::Stdio;
use std::time::{Duration, Instant};

use tempfile::tempdir;

use super::{files, put_rooms, text, values};
use crate::program::{program, run};

/// Kills.
const KILLS: u64 = 20;
/// Rooms in a run.
const ROOMS: u64 = 24;

/// What is under its own name is whole: lines that are JSON to their ends, rows, pages and plans that are closed.
fn see_that_all_is_whole(out: &Path) {
    for (name, bytes) in files(out) {
        let text = String::from_utf8(bytes).unwrap();
        match name.rsplit('.').next().unwrap() {
            _ if name.starts_with('.') || name.contains("/.") => {}
            "ndjson" => assert!(text.ends_with('\n') && values(&text).len() as u64 == ROOMS, "{name}"),
            "csv" => assert_eq!(
                csv::Reader::from_reader(text.as_bytes()).records().map(Result::unwrap).count() as u64,
                ROOMS
            ),
            "html" => assert!(text.ends_with("</html>\n"), "{name}"),
            "svg" => assert!(text.ends_with("</svg>\n"), "{name}"),
            other => panic!("{name}: {other}"),
        }
    }
}

#[test]
fn twenty_kills_leave_no_half_file_and_the_end_is_the_same() {
    let folder = tempdir().unwrap();
    let (rooms, calm, out) = (folder.path().join("rooms"), folder.path().join("calm"), folder.path().join("out"));
    put_rooms(&rooms, ROOMS);
    let started = Instant::now();
    assert_eq!(run(&["batch", text(&rooms), "-o", text(&calm)]).code, Some(0));
    let (took, calm) = (started.elapsed(), files(&calm));
    let (mut killed, mut moment, mut resumed) = (0, 0x2545_f491_4f6c_dd1d_u64, 0);
    while killed < KILLS {
        let mut child = program(&["batch", text(&rooms), "-o", text(&out)]).stdout(Stdio::piped()).spawn().unwrap();
        // Xorshift, Marsaglia 2003: somewhere in the first half of an undisturbed run.
        moment ^= moment << 13;
        moment ^= moment >> 7;
        moment ^= moment << 17;
        std::thread::sleep(Duration::from_nanos(moment % (took.as_nanos() as u64 / 2)));
        let over = child.try_wait().unwrap().is_some();
        child.kill().unwrap();
        let stdout = child.wait_with_output().unwrap().stdout;
        see_that_all_is_whole(&out);
        if over {
            resumed += u64::from(String::from_utf8(stdout).unwrap().contains("known already"));
            assert!(files(&out) == calm);
            fs::remove_dir_all(&out).unwrap();
        } else {
            killed += 1;
        }
    }
    let last = run(&["batch", text(&rooms), "-o", text(&out)]);
    assert_eq!((last.code, last.stderr.as_str()), (Some(0), ""));
    resumed += u64::from(last.stdout.contains("known already"));
    assert!(files(&out) == calm);
    assert!(resumed > 0, "no killed run was ever gone on with");
}

#[test]
fn a_disk_that_fills_up_loses_nothing() {
    let folder = tempdir().unwrap();
    let (rooms, out) = (folder.path().join("rooms"), folder.path().join("out"));
    put_rooms(&rooms, 4);
    // Files may grow to 64 blocks of 512 bytes and no further, and the signal that says so is passed over.
    let tight = "trap '' XFSZ; ulimit -f 64; exec \"$0\" batch \"$1\" -o \"$2\"";
    let ended = std::process::Command::new("sh")
        .args(["-c", tight, env!("CARGO_BIN_EXE_elbowroom"), text(&rooms), text(&out)])
        .output()
        .unwrap();
    assert_eq!(ended.status.code(), Some(1));
    let told = String::from_utf8(ended.stderr).unwrap();
    assert!(told.contains("too large") && told.contains("goes on from there"), "{told}");
    assert!(!files(&out).keys().any(|name| name.ends_with("rooms.ndjson") || name.ends_with(".html")));
    let ended = run(&["batch", text(&rooms), "-o", text(&out)]);
    assert_eq!((ended.code, ended.stderr.as_str()), (Some(0), ""));
    let fresh = folder.path().join("fresh");
    run(&["batch", text(&rooms), "-o", text(&fresh)]);
    assert!(files(&out) == files(&fresh));
}

#[test]
fn two_runs_in_one_folder_do_not_mix() {
    let folder = tempdir().unwrap();
    let (rooms, out) = (folder.path().join("rooms"), folder.path().join("out"));
    put_rooms(&rooms, 12);
    let mut first = program(&["batch", text(&rooms), "-o", text(&out)]).stdout(Stdio::null()).spawn().unwrap();
    while !out.join(".unfinished.ndjson").exists() && first.try_wait().unwrap().is_none() {}
    let second = run(&["batch", text(&rooms), "-o", text(&out)]);
    let over = first.try_wait().unwrap().is_some();
    assert!(first.wait().unwrap().success());
    if !over {
        assert_eq!(second.code, Some(1));
        assert!(second.stderr.contains("another run is at work"), "{}", second.stderr);
    }
}
