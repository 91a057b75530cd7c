//! Many rooms: as a stream, into a folder, interrupted, and out of bad input.

mod bad_rooms;
mod folders;
mod furnished;
mod kept_apart;
mod kills;
mod stock;
mod streams;
mod workbooks;

use std::collections::BTreeMap;
use std::fs;
use std::path::Path;

use serde_json::Value;

pub(crate) use crate::support::varied::varied;

/// A path as an argument.
fn text(path: &Path) -> &str {
    path.to_str().unwrap()
}

/// Puts the first `count` varied rooms into `folder`, a file each.
fn put_rooms(folder: &Path, count: u64) {
    fs::create_dir_all(folder).unwrap();
    for number in 0..count {
        fs::write(folder.join(format!("room-{number:05}.yaml")), varied(number)).unwrap();
    }
}

/// The scenarios of a folder as lines of JSON, in the order of their names.
fn as_lines(folder: &Path) -> String {
    let mut names: Vec<_> = fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().file_name()).collect();
    names.sort();
    let line = |name: &std::ffi::OsString| {
        let scenario = fs::read_to_string(folder.join(name)).unwrap();
        format!("{}\n", serde_json::json!({ "source": name.to_str().unwrap(), "scenario": scenario }))
    };
    names.iter().filter(|name| name.to_string_lossy().ends_with(".yaml")).map(line).collect()
}

/// Every file of a run by its name, plans and reports included, with all that stands in it.
fn files(out: &Path) -> BTreeMap<String, Vec<u8>> {
    let mut found = BTreeMap::new();
    for folder in [out.to_owned(), out.join("plans"), out.join("reports")] {
        for entry in fs::read_dir(folder).into_iter().flatten().map(Result::unwrap) {
            if entry.file_type().unwrap().is_file() {
                let name = entry.path().strip_prefix(out).unwrap().display().to_string();
                found.insert(name, fs::read(entry.path()).unwrap());
            }
        }
    }
    found
}

/// Lines of JSON.
fn values(lines: &str) -> Vec<Value> {
    lines.lines().map(|line| serde_json::from_str(line).unwrap()).collect()
}
