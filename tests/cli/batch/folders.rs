//! A folder of results: lines, rows, pages, plans; done again; compared.

use std::fs;
use std::path::Path;

use serde_json::Value;
use tempfile::tempdir;

use super::{files, put_rooms, text, values, varied};
use crate::program::{Ended, root, run};

/// How many rooms the demo has.
fn demo_rooms() -> usize {
    let all = fs::read_dir(root().join("scenarios")).unwrap().map(|entry| entry.unwrap().path());
    all.filter(|path| path.extension().is_some_and(|end| end == "yaml")).count()
}

/// Runs over `rooms` into `out`.
fn batch(rooms: &Path, out: &Path, more: &[&str]) -> Ended {
    let ended = run(&[&["batch", text(rooms), "-o", text(out)], more].concat());
    assert_eq!((ended.code, ended.stderr.as_str()), (Some(0), ""));
    ended
}

#[test]
fn demo_rooms_stand_in_every_file() {
    let folder = tempdir().unwrap();
    let out = folder.path().join("out");
    let ended = batch(&root().join("scenarios"), &out, &[]);
    let shown = ended.stdout.replace(text(&out), "OUT");
    insta::assert_snapshot!("demo_rooms", shown);
    let lines = values(&fs::read_to_string(out.join("rooms.ndjson")).unwrap());
    let names: Vec<&str> = lines.iter().map(|line| line["source"].as_str().unwrap()).collect();
    assert!(names.len() == demo_rooms() && names.is_sorted(), "{names:?}");
    let rows: Vec<csv::StringRecord> =
        csv::Reader::from_path(out.join("rooms.csv")).unwrap().records().map(Result::unwrap).collect();
    assert!(rows.iter().map(|row| &row[0]).eq(names.iter().copied()));
    let text_of_rows = fs::read_to_string(out.join("rooms.csv")).unwrap();
    let some =
        |line: &&str| ["source", "nothing-fits", "which-hand"].iter().any(|start| line.contains(&format!("\"{start}")));
    insta::assert_snapshot!("demo_rows", text_of_rows.lines().filter(some).collect::<Vec<_>>().join("\n"));
    let page = fs::read_to_string(out.join("index.html")).unwrap();
    for line in &lines {
        assert!(page.contains(line["source"].as_str().unwrap()));
        let plan = of_room("plans", line, "svg");
        let fits = !line["result"]["options"].as_array().unwrap().is_empty();
        assert_eq!((page.contains(&plan), out.join(plan).exists()), (fits, fits));
    }
}

/// The file of a room: named by where it came from, and by what it depends on.
fn of_room(folder: &str, line: &Value, ending: &str) -> String {
    let name = line["source"].as_str().unwrap().strip_suffix(".yaml").unwrap();
    format!("{folder}/{name}-{}.{ending}", &line["content"].as_str().unwrap()[..16])
}

#[test]
fn each_room_has_its_report_where_that_is_asked_for() {
    let folder = tempdir().unwrap();
    let (rooms, out) = (folder.path().join("rooms"), folder.path().join("out"));
    put_rooms(&rooms, 3);
    fs::copy(root().join("scenarios/nothing-fits.yaml"), rooms.join("none.yaml")).unwrap();
    fs::write(rooms.join("wrong.yaml"), "units: furlong\n").unwrap();
    assert!(!batch(&rooms, &out, &[]).stdout.contains("known"));
    // What has no report yet is solved for one, and not again; under another name it is the same room.
    assert!(batch(&rooms, &out, &["--reports", "--top", "1"]).stdout.contains("1 known already"));
    let first = files(&out);
    assert!(batch(&rooms, &out, &["--reports", "--top", "1"]).stdout.contains("5 known already"));
    assert!(files(&out) == first);
    fs::rename(rooms.join("none.yaml"), rooms.join("nothing.yaml")).unwrap();
    assert!(batch(&rooms, &out, &["--reports", "--top", "1"]).stdout.contains("5 known already"));
    let (found, page) = (files(&out), fs::read_to_string(out.join("index.html")).unwrap());
    for line in values(&fs::read_to_string(out.join("rooms.ndjson")).unwrap()) {
        let (report, is_sound) = (of_room("reports", &line, "html"), line["result"].is_object());
        let held = (found.contains_key(&report), page.contains(&format!("href=\"{report}\"")));
        assert_eq!(held, (is_sound, is_sound), "{report}");
        let name = line["result"]["room"]["name"].as_str().unwrap_or_default();
        let told = found.get(&report).map(|report| String::from_utf8(report.clone()).unwrap());
        assert!(told.is_none_or(|told| told.contains(&format!("<h1>{name}</h1>"))), "{report}");
    }
    assert!(found.keys().filter(|name| name.starts_with("reports/")).count() == 4);
    batch(&rooms, &out, &["--top", "1"]);
    assert!(!out.join("reports").exists());
}

#[test]
fn what_is_solved_is_not_solved_again() {
    let folder = tempdir().unwrap();
    let (rooms, out) = (folder.path().join("rooms"), folder.path().join("out"));
    put_rooms(&rooms, 6);
    assert!(!batch(&rooms, &out, &[]).stdout.contains("known"));
    let first = files(&out);
    assert!(batch(&rooms, &out, &[]).stdout.contains("6 known already"));
    assert!(files(&out) == first);
    fs::write(rooms.join("room-00003.yaml"), varied(99)).unwrap();
    fs::rename(rooms.join("room-00000.yaml"), rooms.join("zzz.yaml")).unwrap();
    assert!(batch(&rooms, &out, &[]).stdout.contains("5 known already"));
    assert!(batch(&rooms, &out, &["--top", "2"]).stdout.ends_with("everything.\n"));
    // A plan that somebody took away is drawn again; results under other terms are others.
    fs::remove_file(fs::read_dir(out.join("plans")).unwrap().next().unwrap().unwrap().path()).unwrap();
    assert!(batch(&rooms, &out, &["--top", "2"]).stdout.contains("5 known already"));
    let fresh = folder.path().join("fresh");
    batch(&rooms, &fresh, &["--top", "2"]);
    assert!(files(&out) == files(&fresh));
}

#[test]
fn many_rooms_fill_several_pages_and_fewer_take_them_away() {
    let folder = tempdir().unwrap();
    let (list, out) = (folder.path().join("list"), folder.path().join("out"));
    fs::write(folder.path().join("a.yaml"), varied(1)).unwrap();
    fs::write(&list, "a.yaml\n".repeat(401)).unwrap();
    batch(&list, &out, &[]);
    let pages = |out: &Path| files(out).into_keys().filter(|name| name.ends_with(".html")).collect::<Vec<_>>();
    assert_eq!(pages(&out), ["index-2.html", "index-3.html", "index.html"]);
    let second = fs::read_to_string(out.join("index-2.html")).unwrap();
    assert!(second.contains("Rooms 201 to 400 of 401") && second.contains("href=\"index-3.html\""));
    fs::write(&list, "a.yaml\n").unwrap();
    batch(&list, &out, &[]);
    assert_eq!(pages(&out), ["index.html"]);
}

#[test]
fn variants_of_one_room_are_compared() {
    let folder = tempdir().unwrap();
    let room = fs::read_to_string(root().join("scenarios/which-hand.yaml")).unwrap();
    let variant = |from: &str, to: &str| {
        assert!(room.contains(from), "{from}");
        room.replacen(from, to, 1)
    };
    let put = |name: &str, text: &str| fs::write(folder.path().join(name), text).unwrap();
    put("1-as-it-is.yaml", &room);
    put("2-shorter-sofa.yaml", &variant("width: 210..280", "width: 210..240"));
    put("3-wider-ways.yaml", &format!("{room}clearances: {{ passage: 90 }}\n"));
    put("4-other-wish.yaml", &variant("openness: 5", "openness: 0"));
    put("5-no-table.yaml", &variant("  - kind: coffee-table\n", ""));
    put("6-same.yaml", &format!("# the same\n{room}"));
    put("7-too-much.yaml", &variant("width: 210..280", "width: 600..700"));
    put("8-another.yaml", &varied(3));
    let out = folder.path().join("out");
    let ended = batch(folder.path(), &out, &["--compare"]);
    insta::assert_snapshot!("compared", ended.stdout.replace(text(&out), "OUT"));
    let alone = folder.path().join("alone");
    fs::create_dir(&alone).unwrap();
    fs::write(alone.join("a.yaml"), varied(3)).unwrap();
    let ended = batch(&alone, &folder.path().join("out-2"), &["--compare", "--units", "in"]);
    assert!(ended.stdout.contains("No two rooms go by one name"), "{}", ended.stdout);
}

/// The lines, the pages and the rows of a run say what `rank` says, in the unit asked for, else in each file's own.
#[test]
fn every_file_of_a_run_tells_lengths_in_the_unit_asked_for() {
    let folder = tempdir().unwrap();
    let (rooms, out) = (folder.path().join("rooms"), folder.path().join("out"));
    fs::create_dir(&rooms).unwrap();
    for name in ["narrow.yaml", "nothing-fits.yaml", "feet-and-inches.yaml"] {
        fs::copy(root().join("scenarios").join(name), rooms.join(name)).unwrap();
    }
    for (units, of_pages) in [(Some("in"), ["in", "in"]), (Some("ft"), ["in", "in"]), (None, ["in", "cm"])] {
        let asked = units.map_or(vec![], |unit| vec!["--units", unit]);
        let ended = batch(&rooms, &out, &asked);
        assert!(!ended.stdout.contains("known already"), "{units:?}: {}", ended.stdout);
        let page = fs::read_to_string(out.join("index.html")).unwrap();
        for unit in ["in", "cm", "ft", "mm", "m"] {
            assert_eq!(page.contains(&format!(" {unit}</b>")), of_pages.contains(&unit), "{units:?}: {unit}");
        }
        let rows = fs::read_to_string(out.join("rooms.csv")).unwrap();
        for line in values(&fs::read_to_string(out.join("rooms.ndjson")).unwrap()) {
            let file = rooms.join(line["source"].as_str().unwrap());
            let ranked = run(&[vec!["rank", "--json", "--top", "1", text(&file)], asked.clone()].concat());
            let mut ranked: Value = serde_json::from_str(&ranked.stdout).unwrap();
            ranked["work"]["seconds"] = Value::Null;
            assert_eq!(line["result"], ranked, "{units:?}");
            let told = units.map_or_else(|| line["units"].as_str().unwrap().to_owned(), str::to_owned);
            assert_eq!(line["units"], told.as_str());
            let remedy = line["result"]["remedies"][0]["sentence"].as_str().unwrap_or_default();
            assert!(rows.contains(remedy), "{units:?}: {remedy}");
        }
        // One header, each length of a piece in a column of its own, as a number.
        let unit = if units.is_some() { "_in" } else { "_in,_cm" };
        let mut rows = csv::Reader::from_reader(rows.as_bytes());
        let heads = rows.headers().unwrap().clone();
        let sizes: Vec<usize> =
            (14..heads.len()).filter(|place| unit.split(',').any(|unit| heads[*place].ends_with(unit))).collect();
        assert_eq!(sizes.len(), heads.len() - 14, "{heads:?}");
        let sofa = heads.iter().position(|head| head.starts_with("sofa_width_")).unwrap();
        for row in rows.records().map(Result::unwrap) {
            let fits = &row[2] == "fits";
            assert_eq!(row[sofa].parse::<f64>().is_ok_and(|width| width > 40.0), fits, "{row:?}");
            assert!(sizes.iter().all(|place| row[*place].is_empty() || row[*place].parse::<f64>().is_ok()), "{row:?}");
        }
    }
}
