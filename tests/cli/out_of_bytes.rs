//! Rooms out of bytes: what is told of them stands up to the second checker, and is the same each time.
//!
//! `tests/fuzz/` makes the bytes after what of the solver they reach; those that once broke something, and a few that reach
//! far, are kept in `tests/data/fuzz/rooms/` and tried here. `ELBOWROOM_FUZZ_SECONDS=900` goes on with bytes that are drawn, for
//! so many seconds, from the case `ELBOWROOM_FUZZ_FROM` on.

use std::panic::catch_unwind;
use std::time::{Duration, Instant};

use elbowroom::{Exit, Outlet};
use elbowroom_model::scenario;

use crate::support::checker;
use crate::support::from_bytes::plan;
use crate::support::varied::Draw;

/// Bytes that a drawn room is made of: more than any decides by.
const BYTES: usize = 80;

/// What the program prints for a scenario on its standard input.
fn ranked(text: &str) -> (Exit, String) {
    let (mut found, mut told) = (Vec::new(), Vec::new());
    let args = ["elbowroom", "rank", "--json", "-"].map(Into::into);
    let mut text = text.as_bytes();
    let exit = elbowroom::run(args, &mut text, &mut Outlet::plain(&mut found), &mut Outlet::plain(&mut told));
    assert!(!found.is_empty(), "nothing but {}", String::from_utf8_lossy(&told));
    let told = String::from_utf8(found).unwrap();
    // How long it took, the last figure of all, is another each time.
    let (before, took) = told.rsplit_once("\"seconds\": ").unwrap();
    let after = took.trim_start_matches(|sign: char| !sign.is_whitespace());
    (exit, format!("{before}\"seconds\": 0{after}"))
}

/// Whether a room has an entrance is no matter here; that nothing false is told of it is. Whether the bytes are a sound room.
pub(crate) fn check(bytes: &[u8]) -> bool {
    let text = plan(bytes).text();
    let Ok(brief) = scenario::read(&text, None) else { return false };
    let (exit, json) = ranked(&text);
    let complaints = checker::complaints(&brief, &json);
    assert!(complaints.is_empty(), "{complaints:#?}\n{text}");
    assert!(!json.contains("did not pass the second check"), "the search and the check disagree:\n{text}");
    assert!(matches!(exit, Exit::Done | Exit::NothingFits), "{exit:?}\n{text}");
    assert_eq!(ranked(&text), (exit, json), "told otherwise:\n{text}");
    true
}

#[test]
fn rooms_that_reach_far_or_once_broke_something_are_told_truly() {
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/../tests/data/fuzz/rooms");
    let files = std::fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path());
    let sound = files.filter(|path| check(&std::fs::read(path).unwrap())).count();
    assert!(sound >= 5, "{sound} sound rooms are kept");
}

#[test]
#[allow(clippy::print_stdout, reason = "a long run tells what it did")]
fn rooms_that_are_drawn_without_end_are_told_truly() {
    let asked = |name: &str| std::env::var(name).ok().and_then(|value| value.parse::<u64>().ok());
    let (seconds, from) = (asked("ELBOWROOM_FUZZ_SECONDS"), asked("ELBOWROOM_FUZZ_FROM").unwrap_or(0));
    let (begun, mut sound, mut broken) = (Instant::now(), 0, Vec::new());
    for case in from.. {
        let time_left = seconds.is_some_and(|seconds| begun.elapsed() < Duration::from_secs(seconds));
        if !time_left && sound >= 2 {
            break;
        }
        let mut draw = Draw(case);
        let bytes: Vec<u8> = (0..BYTES).map(|_| draw.from(0, 255) as u8).collect();
        match catch_unwind(|| check(&bytes)) {
            Ok(is_sound) => sound += u64::from(is_sound),
            Err(_) => {
                let left = std::env::temp_dir().join(format!("rooms-{case}"));
                std::fs::write(&left, &bytes).unwrap();
                broken.push(left);
            }
        }
    }
    assert!(broken.is_empty(), "{} of {sound} sound rooms: {broken:?}", broken.len());
    if seconds.is_some() {
        println!("{sound} sound rooms");
    }
}
