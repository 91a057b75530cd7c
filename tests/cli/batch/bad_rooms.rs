//! Rooms that are at fault stand in the table with their reason and stop nothing; names are names and never paths.

use std::fs;

use serde_json::json;
use tempfile::tempdir;

use super::{files, put_rooms, text, values, varied};
use crate::program::{run, run_with};

/// A sound room that goes by this name.
fn named(name: &str) -> String {
    let room = varied(1);
    let (_, rest) = room.split_once('\n').unwrap();
    format!("name: {}\n{rest}", json!(name))
}

#[test]
fn a_line_that_is_at_fault_is_told_in_its_place() {
    let good = json!({ "source": "good", "scenario": varied(1) }).to_string();
    let cases: [(&[u8], &str); 10] = [
        (b"{", "not_json"),
        (b"units: cm", "not_json"),
        (b"[1, 2]", ""),
        (b"\"text\"", ""),
        (b"caf\xe9", "unreadable"),
        (b"\x00\x00", "unreadable"),
        (br#"{"source": "x", "scenario": "units: furlong"}"#, ""),
        (br#"{"source": "x", "scenario": 7}"#, ""),
        (br#"{"source": "x", "scenario": {}, "rev": 2}"#, "unknown_key"),
        (br#"{"units": "cm", "units": "cm"}"#, ""),
    ];
    let mut input = Vec::new();
    for (bad, _) in &cases {
        input.extend([bad, b"\n" as &[u8], good.as_bytes(), b"\n"].concat());
    }
    input.extend(format!("{{\"scenario\": \"{}\"}}\n", "x".repeat(5 << 20)).as_bytes());
    let ended = run_with(&["batch", "-"], &input);
    assert_eq!((ended.code, ended.stderr.as_str()), (Some(0), ""));
    let lines = values(&ended.stdout);
    assert_eq!(lines.len(), 2 * cases.len() + 1);
    for (place, (bad, code)) in cases.iter().enumerate() {
        let (faulty, sound) = (&lines[2 * place], &lines[2 * place + 1]);
        let fault = &faulty["faults"][0];
        assert!(faulty["result"].is_null() && !fault["message"].as_str().unwrap().is_empty(), "{faulty}");
        assert!(code.is_empty() || fault["code"] == *code, "{}: {fault}", String::from_utf8_lossy(bad));
        assert_eq!((&sound["faults"], &sound["source"]), (&json!([]), &json!("good")));
    }
    let with_one_key_more = &lines[2 * (cases.len() - 2)];
    assert_eq!(with_one_key_more["source"], "x");
    assert!(with_one_key_more["faults"][0]["message"].as_str().unwrap().contains("`rev`"), "{with_one_key_more}");
    assert!(lines.last().unwrap()["faults"][0]["message"].as_str().unwrap().contains("1 MiB"));
}

#[test]
fn names_with_slashes_formulas_and_markup_stay_names() {
    let folder = tempdir().unwrap();
    let (rooms, out) = (folder.path().join("rooms"), folder.path().join("deep/out"));
    fs::create_dir(&rooms).unwrap();
    let names = [
        "../../escaped",
        "/etc/passwd",
        "=cmd|' /C calc'!A0",
        "<script>alert(1)</script>",
        "twice",
        "twice",
        "..",
        "@SUM(A1)",
    ];
    for (place, name) in names.iter().enumerate() {
        fs::write(rooms.join(format!("{place}.yaml")), named(name)).unwrap();
    }
    let ended = run(&["batch", text(&rooms), "-o", text(&out)]);
    assert_eq!((ended.code, ended.stderr.as_str()), (Some(0), ""));
    let found = files(&out);
    for name in found.keys() {
        let plan = name.strip_prefix("plans/").and_then(|plan| plan.strip_suffix(".svg"));
        let is_plan = plan.is_some_and(|plan| plan.chars().all(|it| it.is_ascii_alphanumeric() || it == '-'));
        assert!(is_plan || ["rooms.ndjson", "rooms.csv", "index.html"].contains(&name.as_str()), "{name}");
    }
    // What a terminal would obey is refused in a name; in the name of a file it is only shown otherwise.
    fs::write(rooms.join("\u{1b}[2J\u{202e}.yaml"), named("a\u{1b}b")).unwrap();
    assert_eq!(run(&["batch", text(&rooms), "-o", text(&out)]).code, Some(0));
    let found = files(&out);
    let outside: Vec<_> = fs::read_dir(folder.path()).unwrap().map(|entry| entry.unwrap().file_name()).collect();
    assert_eq!(outside.len(), 2, "{outside:?}");
    let lines = values(std::str::from_utf8(&found["rooms.ndjson"]).unwrap());
    let told = lines.iter().filter_map(|line| line["result"]["room"]["name"].as_str());
    assert!(lines.len() == names.len() + 1 && told.eq(names));
    let rows: Vec<csv::StringRecord> =
        csv::Reader::from_reader(&found["rooms.csv"][..]).records().map(Result::unwrap).collect();
    for name in names {
        let row = rows.iter().find(|row| row[1].trim_start_matches('\'') == name).unwrap();
        assert_eq!(row[1].starts_with('\''), name.starts_with(['=', '@']), "{row:?}");
        assert!(!row.iter().any(|cell| cell.starts_with(['=', '+', '-', '@'])), "{row:?}");
    }
    for name in ["index.html", "rooms.csv", "rooms.ndjson"] {
        let shown = String::from_utf8(found[name].clone()).unwrap();
        assert!(!shown.contains(['\u{1b}', '\u{202e}']), "{name}");
    }
    let page = std::str::from_utf8(&found["index.html"]).unwrap();
    assert!(page.matches("<script").count() == 1 && page.contains("&lt;script&gt;alert(1)"));
}

/// A name is bytes to the system: one that is no text is read and written like any other, and only told otherwise.
#[cfg(target_os = "linux")]
#[test]
fn a_file_whose_name_is_no_text_is_a_file() {
    use std::ffi::OsStr;
    use std::os::unix::ffi::OsStrExt;
    let folder = tempdir().unwrap();
    let rooms = folder.path().join(OsStr::from_bytes(b"r\xf6oms"));
    fs::create_dir(&rooms).unwrap();
    let room = rooms.join(OsStr::from_bytes(b"caf\xe9.yaml"));
    fs::write(&room, varied(1)).unwrap();
    let batch = |named: &std::path::Path| {
        let ended = crate::program::program(&["batch"]).arg(named).output().unwrap();
        values(std::str::from_utf8(&ended.stdout).unwrap()).remove(0)
    };
    for (line, source) in [(batch(folder.path()), "r\u{fffd}oms/caf\u{fffd}.yaml"), (batch(&rooms), "caf\u{fffd}.yaml")]
    {
        assert_eq!((&line["faults"], &line["source"]), (&json!([]), &json!(source)));
    }
    assert_eq!(batch(&room)["faults"], json!([]));
    let plan = rooms.join(OsStr::from_bytes(b"pl\xe1n.svg"));
    let drawn = crate::program::program(&["draw"]).arg(&room).arg("-o").arg(&plan).output().unwrap();
    assert_eq!((drawn.status.code(), plan.is_file()), (Some(0), true), "{drawn:?}");
}

#[cfg(unix)]
#[test]
fn links_pipes_and_folders_that_look_like_rooms_stop_nothing() {
    use std::os::unix::fs::symlink;
    let folder = tempdir().unwrap();
    let rooms = folder.path().join("rooms");
    put_rooms(&rooms.join("below"), 1);
    fs::write(rooms.join("ok.yml"), varied(2)).unwrap();
    fs::write(rooms.join("ok.json"), json!({ "units": "cm" }).to_string()).unwrap();
    fs::write(rooms.join(".hidden.yaml"), varied(2)).unwrap();
    fs::write(rooms.join("notes.txt"), "no room").unwrap();
    fs::write(rooms.join("latin.yaml"), b"name: caf\xe9\n").unwrap();
    fs::write(rooms.join("large.yaml"), "# line\n".repeat(200_000)).unwrap();
    fs::create_dir(rooms.join("folder.yaml")).unwrap();
    symlink(&rooms, rooms.join("loop")).unwrap();
    symlink(&rooms, rooms.join("loop.yaml")).unwrap();
    symlink("nowhere", rooms.join("broken.yaml")).unwrap();
    symlink("itself.yaml", rooms.join("itself.yaml")).unwrap();
    symlink("ok.yml", rooms.join("link.yaml")).unwrap();
    symlink("/dev/zero", rooms.join("zero.yaml")).unwrap();
    let made = std::process::Command::new("mkfifo").arg(rooms.join("pipe.yaml")).status().unwrap();
    assert!(made.success());
    let ended = run(&["batch", text(&rooms)]);
    assert_eq!((ended.code, ended.stderr.as_str()), (Some(0), ""));
    let told: Vec<String> = values(&ended.stdout)
        .iter()
        .map(|line| {
            format!(
                "{}: {}",
                line["source"].as_str().unwrap(),
                line["faults"][0]["message"].as_str().unwrap_or("sound")
            )
        })
        .collect();
    insta::assert_snapshot!("rooms_that_are_none", told.join("\n"));
}

#[test]
fn what_cannot_be_begun_is_refused() {
    let folder = tempdir().unwrap();
    let path = |name: &str| text(&folder.path().join(name)).to_owned();
    fs::create_dir(path("empty")).unwrap();
    fs::write(path("file"), "x").unwrap();
    put_rooms(&folder.path().join("rooms"), 1);
    fs::write(path("table"), "sofa: {}\nwordrobe: {}\n").unwrap();
    let cases = [
        (vec!["batch".to_owned(), path("missing")], "no such file"),
        (vec!["batch".to_owned(), path("missing.yaml"), "--table".to_owned(), path("missing")], "no such file"),
        (vec!["batch".to_owned(), path("empty")], "no scenario"),
        (vec!["batch".to_owned(), path("rooms"), "-o".to_owned(), path("file")], "cannot write"),
        (vec!["batch".to_owned(), path("rooms"), "--table".to_owned(), path("table")], "wordrobe"),
        (vec!["batch".to_owned(), path("rooms"), "--compare".to_owned()], "--output"),
        (vec!["batch".to_owned()], "ROOMS"),
    ];
    for (args, said) in cases {
        let ended = run(&args.iter().map(String::as_str).collect::<Vec<_>>());
        assert_eq!((ended.code, ended.stdout.as_str()), (Some(2), ""), "{args:?}");
        assert!(ended.stderr.contains(said), "{args:?}: {}", ended.stderr);
    }
}
