//! A run over many rooms writes over nothing that it reads, and over nothing that no run left.

use std::fs;
use std::path::Path;

use tempfile::{TempDir, tempdir};

use super::{as_lines, files, put_rooms, text, varied};
use crate::program::{Ended, program, run};

/// A folder with a room, a list of it, and the same room as lines of JSON.
fn with_a_room() -> TempDir {
    let folder = tempdir().unwrap();
    put_rooms(folder.path(), 1);
    fs::write(folder.path().join("rooms.ndjson"), as_lines(folder.path())).unwrap();
    folder
}

fn batch(rooms: &Path, out: &Path, more: &[&str]) -> Ended {
    run(&[&["batch", text(rooms), "-o", text(out)], more].concat())
}

/// Nothing was done, and this was said.
fn refused(ended: &Ended, said: &[&str]) {
    assert_eq!((ended.code, ended.stdout.as_str()), (Some(2), ""), "{ended:?}");
    for said in said {
        assert!(ended.stderr.contains(said), "{said}: {}", ended.stderr);
    }
}

#[test]
fn lines_are_not_replaced_by_their_own_results() {
    let folder = with_a_room();
    let before = files(folder.path());
    for force in [&[][..], &["--force"]] {
        let ended = batch(&folder.path().join("rooms.ndjson"), folder.path(), force);
        refused(&ended, &["rooms.ndjson is read by this run", "Name another"]);
        // The same from standard input, where no name tells.
        let lines = fs::File::open(folder.path().join("rooms.ndjson")).unwrap();
        let ended =
            program(&[&["batch", "-", "-o", text(folder.path())], force].concat()).stdin(lines).output().unwrap();
        refused(&Ended::from(ended), &["standard input"]);
    }
    assert!(files(folder.path()) == before && !folder.path().join("plans").exists());
    // Nor do results run on into what is read, without end.
    let both = fs::File::options().append(true).open(folder.path().join("rooms.ndjson")).unwrap();
    let ended = program(&["batch", text(&folder.path().join("rooms.ndjson"))]).stdout(both).output().unwrap();
    refused(&Ended::from(ended), &["standard output"]);
    assert!(files(folder.path()) == before);
}

#[test]
fn lists_tables_stocks_and_bookings_are_inputs_too() {
    let folder = with_a_room();
    let path = |name: &str| folder.path().join(name);
    fs::remove_file(path("rooms.ndjson")).unwrap();
    fs::write(path("rooms.csv"), "room-00000.yaml\n").unwrap();
    refused(&batch(&path("rooms.csv"), folder.path(), &["--force"]), &["rooms.csv is read"]);
    fs::write(path("rooms.csv"), "sizes: { sofa: { weight: 2 } }\n").unwrap();
    let by_table = ["--table", text(&path("rooms.csv")), "--force"].map(str::to_owned);
    let by_table: Vec<&str> = by_table.iter().map(String::as_str).collect();
    refused(&batch(&path("room-00000.yaml"), folder.path(), &by_table), &["rooms.csv is read"]);
    // A room of a list, by a name that leads elsewhere first.
    fs::write(path("index.html"), varied(1)).unwrap();
    fs::write(path("list"), "room-00000.yaml\nplans/../index.html\n").unwrap();
    fs::create_dir(path("plans")).unwrap();
    refused(&batch(&path("list"), folder.path(), &["--force"]), &["index.html"]);
    // Bookings and a stock under the names that the results get.
    fs::write(path("picks.csv"), "room\nroom-00000.yaml\n").unwrap();
    fs::write(path("stock.csv"), "kind,name,width (cm),depth (cm)\nsofa,Heron,200,90\n").unwrap();
    let before = files(folder.path());
    let of_stock =
        |rooms: &str, stock: &str| batch(&path(rooms), folder.path(), &["--stock", text(&path(stock)), "--force"]);
    refused(&of_stock("picks.csv", "stock.csv"), &["picks.csv is read"]);
    fs::rename(path("stock.csv"), path("stock.json")).unwrap();
    fs::write(
        path("stock.json"),
        "{\"kind\": \"sofa\", \"name\": \"Heron\", \"width\": \"200 cm\", \"depth\": \"90 cm\"}\n",
    )
    .unwrap();
    refused(&of_stock("room-00000.yaml", "stock.json"), &["stock.json is read"]);
    assert_eq!(before.len(), files(folder.path()).len());
    assert_eq!(fs::read_to_string(path("picks.csv")).unwrap(), "room\nroom-00000.yaml\n");
}

#[cfg(unix)]
#[test]
fn links_are_seen_through() {
    let folder = with_a_room();
    let (lines, out) = (folder.path().join("rooms.ndjson"), folder.path().join("out"));
    for hard in [false, true] {
        fs::create_dir(&out).unwrap();
        let link = out.join("rooms.ndjson");
        if hard { fs::hard_link(&lines, &link) } else { std::os::unix::fs::symlink(&lines, &link) }.unwrap();
        refused(&batch(&lines, &out, &["--force"]), &["out/rooms.ndjson is the file", "which is read"]);
        assert_eq!(fs::read_dir(&out).unwrap().count(), 1);
        fs::remove_dir_all(&out).unwrap();
    }
}

#[test]
fn what_no_run_left_stays_unless_it_is_to_be_replaced() {
    let folder = tempdir().unwrap();
    let (rooms, out) = (folder.path().join("rooms"), folder.path().join("out"));
    put_rooms(&rooms, 1);
    fs::create_dir(&out).unwrap();
    let names = ["index.html", "index-2.html", "rooms.csv", "rooms.ndjson", ".unfinished.ndjson"];
    for name in names {
        fs::write(out.join(name), "<!DOCTYPE html>\nmine\n").unwrap();
        let ended = batch(&rooms, &out, &[]);
        refused(&ended, &[name, "no run of `batch` left it", "--force"]);
        assert_eq!(fs::read_dir(&out).unwrap().count(), 1, "{name}");
        fs::remove_file(out.join(name)).unwrap();
    }
    for name in names {
        fs::write(out.join(name), "mine\n").unwrap();
    }
    let ended = batch(&rooms, &out, &["--force"]);
    assert_eq!((ended.code, ended.stderr.as_str()), (Some(0), ""));
    // What is replaced was to be; a page beyond the run's own was not.
    let found = files(&out);
    assert!(found["index-2.html"] == b"mine\n" && !found.contains_key(".unfinished.ndjson"));
    fs::remove_file(out.join("index-2.html")).unwrap();
    let fresh = folder.path().join("fresh");
    assert_eq!(batch(&rooms, &fresh, &[]).code, Some(0));
    assert!(files(&out) == files(&fresh));
    // What a run left, the next one replaces; also an assignment's.
    assert_eq!(batch(&rooms, &out, &[]).code, Some(0));
    let stock = folder.path().join("stock.csv");
    fs::write(&stock, "kind,name,width (cm),depth (cm)\nsofa,Heron,200,90\n").unwrap();
    for _ in 0..2 {
        let ended = batch(&rooms, &out, &["--stock", text(&stock)]);
        assert_eq!((ended.code, ended.stderr.as_str()), (Some(0), ""));
    }
    fs::write(out.join("picks.csv"), "mine\n").unwrap();
    refused(&batch(&rooms, &out, &["--stock", text(&stock)]), &["picks.csv is there"]);
    assert_eq!(batch(&rooms, &out, &["--stock", text(&stock), "--force"]).code, Some(0));
}
