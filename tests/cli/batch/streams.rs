//! Lines in, lines out.

use std::io::{BufRead, BufReader, Write};
use std::process::Stdio;
use std::time::{Duration, Instant};

use serde_json::{Value, json};
use tempfile::tempdir;

use super::{as_lines, put_rooms, text, values, varied};
use crate::program::{program, root, run, run_with};
use crate::screens::scenarios;

#[test]
fn a_line_holds_what_rank_prints_less_the_seconds() {
    let files: Vec<_> = scenarios()
        .into_iter()
        .filter(|path| path.ends_with("which-hand.yaml") || path.ends_with("nothing-fits.yaml"))
        .collect();
    assert_eq!(files.len(), 2);
    for file in files {
        let line = run(&["batch", text(&file)]);
        assert_eq!((line.code, line.stderr.as_str()), (Some(0), ""));
        let [line] = &values(&line.stdout)[..] else { panic!("{}", line.stdout) };
        let mut ranked: Value =
            serde_json::from_str(&run(&["rank", "--json", "--top", "1", text(&file)]).stdout).unwrap();
        ranked["work"]["seconds"] = Value::Null;
        assert_eq!(line["result"], ranked);
        assert_eq!(line["source"].as_str(), Some(text(&file)));
        assert_eq!((&line["faults"], line["content"].as_str().unwrap().len()), (&json!([]), 64));
    }
}

#[test]
fn a_stream_a_folder_and_a_list_give_the_same_bytes_whatever_the_threads() {
    let folder = tempdir().unwrap();
    let (rooms, out) = (folder.path().join("rooms"), folder.path().join("out"));
    put_rooms(&rooms, 10);
    let ended = run(&["batch", text(&rooms), "-o", text(&out), "--threads", "2"]);
    assert_eq!((ended.code, ended.stderr.as_str()), (Some(0), ""), "{}", ended.stdout);
    let whole = std::fs::read_to_string(out.join("rooms.ndjson")).unwrap();
    assert_eq!(values(&whole).len(), 10);
    for threads in ["1", "2"] {
        let stream = run_with(&["batch", "-", "--threads", threads], as_lines(&rooms).as_bytes());
        assert_eq!((stream.code, stream.stderr.as_str()), (Some(0), ""));
        assert!(stream.stdout == whole, "{threads} threads");
    }
    let list = rooms.join("list.txt");
    let names: String = (0..10).map(|number| format!("room-{number:05}.yaml\r\n")).collect();
    std::fs::write(&list, format!("\u{feff}# all of them\n\n{names}")).unwrap();
    assert!(run(&["batch", text(&list)]).stdout == whole);
    let lines = folder.path().join("rooms.ndjson");
    std::fs::write(&lines, as_lines(&rooms)).unwrap();
    assert!(run(&["batch", text(&lines)]).stdout == whole);
}

#[test]
fn nothing_in_nothing_out() {
    for input in ["", "\n", "\n\n  \n"] {
        let ended = run_with(&["batch", "-"], input.as_bytes());
        assert_eq!((ended.code, ended.stdout.as_str(), ended.stderr.as_str()), (Some(0), "", ""));
    }
}

#[test]
fn each_line_is_answered_before_the_next_is_asked_for() {
    let mut child = program(&["batch", "-"]).stdin(Stdio::piped()).stdout(Stdio::piped()).spawn().unwrap();
    let (mut to, mut from) = (child.stdin.take().unwrap(), BufReader::new(child.stdout.take().unwrap()));
    for number in 0..3 {
        let line = json!({ "source": number.to_string(), "scenario": varied(number) });
        writeln!(to, "{line}").unwrap();
        to.flush().unwrap();
        let mut answer = String::new();
        from.read_line(&mut answer).unwrap();
        assert_eq!(values(&answer)[0]["source"], number.to_string());
    }
    drop(to);
    assert!(child.wait().unwrap().success());
}

#[test]
fn a_room_may_be_written_as_json() {
    let room = json!({
        "name": "caf\u{e9} \u{1f6cb}", "units": "cm",
        "walls": [{ "length": 420 }, { "length": 360 }, { "length": 420, "holds": [
            { "kind": "door", "at": 20, "width": 80, "hinge": "left", "swings": "in", "leads_to": "entrance" }] }, { "length": 360 }],
        "pieces": [{ "kind": "sofa", "width": "180..240" }]
    });
    // The same room bare, wrapped, and with every sign beyond ASCII escaped, as many writers of JSON do.
    let escaped = room.to_string().replace('\u{e9}', "\\u00e9").replace('\u{1f6cb}', "\\ud83d\\udecb");
    let wrapped = json!({ "source": null, "scenario": room });
    let ended = run_with(&["batch", "-"], format!("{room}\n{wrapped}\n{escaped}\n").as_bytes());
    let found = values(&ended.stdout);
    assert_eq!(found.len(), 3);
    for line in &found {
        assert_eq!(line["faults"], json!([]), "{line}");
        assert_eq!(line["result"]["room"]["name"], room["name"]);
    }
    assert_eq!(found[0], found[1]);
}

#[test]
fn who_has_read_enough_goes_and_the_work_ends_without_a_word() {
    let many: String = (0..4_000).map(|number| format!("{}\n", json!({ "scenario": varied(number) }))).collect();
    let started = Instant::now();
    let mut child =
        program(&["batch", "-"]).stdin(Stdio::piped()).stdout(Stdio::piped()).stderr(Stdio::piped()).spawn().unwrap();
    let mut stdin = child.stdin.take().unwrap();
    let writer = std::thread::spawn(move || stdin.write_all(many.as_bytes()));
    let mut first = String::new();
    BufReader::new(child.stdout.take().unwrap()).read_line(&mut first).unwrap();
    let ended = child.wait_with_output().unwrap();
    let _ = writer.join().unwrap();
    // What was not read is not done.
    assert_eq!((ended.status.code(), ended.stderr.as_slice()), (Some(1), &b""[..]));
    assert!(started.elapsed() < Duration::from_secs(60), "{:?}", started.elapsed());
}

#[test]
fn a_full_disk_is_told() {
    let full = std::fs::File::options().write(true).open("/dev/full").unwrap();
    let file = root().join("scenarios/nothing-fits.yaml");
    let ended = program(&["batch", text(&file)]).stdout(full).stderr(Stdio::piped()).output().unwrap();
    assert_eq!(ended.status.code(), Some(1));
    assert!(String::from_utf8(ended.stderr).unwrap().contains("cannot write the result"));
}
