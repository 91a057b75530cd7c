//! Steps of a room: saved whole, told where something else wrote, taken back and again.

use std::fs;
use std::sync::Arc;
use std::time::{Duration, Instant};

use elbowroom_model::filed::Change;
use serde_json::json;

use super::{By, NotTaken, Room, Seen, Stage, Step};

const ROOM: &str = "# ours\nunits: cm\nwalls:\n  - { length: 420 }   # measured twice\n  - { length: 360, holds: [{ kind: door, at: 20, width: 80, hinge: left, swings: in, leads_to: entrance }] }\n  - { length: 420 }\n  - { length: 360 }\npieces:\n  - { kind: sofa, width: 180..240 }\n";

fn set(at: &str, to: serde_json::Value) -> Step {
    Step::Changes(vec![Change::Set { at: at.to_owned(), to }])
}

fn room() -> (tempfile::TempDir, Arc<Room>) {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("room.yaml");
    fs::write(&path, ROOM).unwrap();
    (folder, Arc::new(Room::at("room.yaml".to_owned(), path)))
}

fn taken(room: &Arc<Room>, from: u64, step: &Step) -> Seen {
    room.step(from, step).unwrap().seen
}

fn done(room: &Arc<Room>) -> Seen {
    let begun = Instant::now();
    loop {
        let seen = room.seen().unwrap();
        if seen.stage == Stage::Done || begun.elapsed() > Duration::from_secs(60) {
            return seen;
        }
        std::thread::sleep(Duration::from_millis(5));
    }
}

#[test]
fn a_step_is_saved_with_comments_and_can_be_taken_back_and_again() {
    let (_folder, room) = room();
    let first = room.opened().unwrap();
    let second = taken(&room, first.step, &set("walls.0.length", json!("4.25 m")));
    let saved = || fs::read_to_string(room.path()).unwrap();
    assert_eq!(saved(), ROOM.replacen("{ length: 420 }", "{ length: 4.25 m }", 1));
    assert_eq!(second.can, [true, false]);
    let third = taken(&room, second.step, &Step::Undo);
    assert_eq!((saved().as_str(), third.can), (ROOM, [false, true]));
    taken(&room, third.step, &Step::Redo);
    assert!(saved().contains("4.25 m"));
}

#[test]
fn two_windows_do_not_lose_a_change() {
    let (_folder, room) = room();
    let both = room.opened().unwrap();
    taken(&room, both.step, &set("walls.0.length", json!(425)));
    let late = room.step(both.step, &set("walls.0.length", json!(430)));
    assert!(matches!(late, Err(NotTaken::Crossed { by: By::Window, .. })));
    assert!(fs::read_to_string(room.path()).unwrap().contains("425"));
}

#[test]
fn what_something_else_wrote_is_told_and_never_written_over() {
    let (_folder, room) = room();
    let seen = room.opened().unwrap();
    let theirs = ROOM.replace("# ours", "# theirs").replacen("length: 420", "length: 422", 1);
    fs::write(room.path(), &theirs).unwrap();
    let crossed = room.step(seen.step, &set("walls.0.length", json!(425)));
    assert!(matches!(crossed, Err(NotTaken::Crossed { by: By::Other, there }) if there == [json!(422)]));
    assert!(matches!(room.step(seen.step, &Step::Undo), Err(NotTaken::Behind)));
    assert_eq!(fs::read_to_string(room.path()).unwrap(), theirs);
    // Once it is looked at, it is what steps start from.
    let seen = room.opened().unwrap();
    taken(&room, seen.step, &set("walls.0.length", json!(425)));
    assert!(fs::read_to_string(room.path()).unwrap().starts_with("# theirs"));
}

#[test]
fn a_wish_is_ranked_anew_without_a_run_and_a_size_with_one() {
    let (_folder, room) = room();
    room.opened().unwrap();
    let solved = done(&room).solved.unwrap();
    let seen = taken(&room, 1, &set("wishes.seats", json!(5)));
    assert_eq!(seen.stage, Stage::Done);
    let again = seen.solved.unwrap();
    assert_eq!((again.drawn_of, again.step), (solved.drawn_of, seen.step));
    let seen = taken(&room, seen.step, &set("pieces.0.width", json!("180..200")));
    assert!(matches!(seen.stage, Stage::Busy { .. }));
    let last = done(&room).solved.unwrap();
    assert_eq!(last.step, seen.step);
}

#[test]
fn a_faulty_file_keeps_the_last_answer_and_tells_the_fault() {
    let (_folder, room) = room();
    room.opened().unwrap();
    done(&room);
    let seen = taken(&room, 1, &set("walls.0.length", json!("about four")));
    assert_eq!(seen.stage, Stage::Faulty);
    assert!(seen.solved.is_some() && seen.read.is_err());
    // Something odd in the text is saved as text, and nothing else.
    let seen = taken(&room, seen.step, &set("name", json!("</script>: {- \"' \u{1b}[2J")));
    assert_eq!(seen.stage, Stage::Faulty);
    let text = fs::read_to_string(room.path()).unwrap();
    assert!(text.contains("# measured twice") && !text.contains('\u{1b}'));
}
