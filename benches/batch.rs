//! Many rooms, measured: `cargo bench -p elbowroom --bench batch`. Two threads against one, memory over ten thousand
//! rooms, and the demo rooms. Rooms are the varied ones of the tests.
#![allow(
    clippy::unwrap_used,
    clippy::print_stdout,
    clippy::print_stderr,
    reason = "a bench prints, and a panic is how it fails"
)]

#[path = "../tests/support/varied.rs"]
mod varied;

use std::fs;
use std::path::Path;
use std::process::{Command, Stdio};
use std::time::{Duration, Instant};

/// Rooms that two threads are measured against one on.
const ROOMS: u64 = 200;
/// Rooms that memory is measured over.
const MANY: u64 = 10_000;
/// Times that each figure is taken; the least counts.
const TIMES: usize = 3;
/// How often the memory of a run is looked at.
const LOOK: Duration = Duration::from_millis(20);

fn main() {
    let folder = tempfile::tempdir().unwrap();
    let rooms = put(&folder.path().join("rooms"), ROOMS);
    let least = |threads: &str| {
        let times = (0..TIMES).map(|_| {
            let out = folder.path().join("out");
            let (took, memory) = run(&rooms, &out, threads);
            fs::remove_dir_all(out).unwrap();
            (took, memory)
        });
        times.min().unwrap()
    };
    let (one, two) = (least("1"), least("2"));
    println!("{ROOMS} rooms: one thread {:.2} s, two {:.2} s", one.0.as_secs_f64(), two.0.as_secs_f64());
    println!("two threads are {:.2} times one", one.0.as_secs_f64() / two.0.as_secs_f64());
    println!("one thread does {:.0} rooms a second", ROOMS as f64 / one.0.as_secs_f64());
    let demo = Path::new(concat!(env!("CARGO_MANIFEST_DIR"), "/../scenarios"));
    let (took, _) = run(demo, &folder.path().join("demo"), "2");
    println!("demo rooms, two threads: {:.2} s", took.as_secs_f64());
    let many = put(&folder.path().join("many"), MANY);
    let (took, memory) = run(&many, &folder.path().join("many-out"), "2");
    println!(
        "{MANY} rooms, two threads: {:.1} s, {} MB at most (a fiftieth of them: {} MB)",
        took.as_secs_f64(),
        memory / 1000,
        two.1 / 1000
    );
}

/// Puts so many rooms into a folder.
fn put(folder: &Path, count: u64) -> std::path::PathBuf {
    fs::create_dir(folder).unwrap();
    for number in 0..count {
        fs::write(folder.join(format!("{number:06}.yaml")), varied::varied(number)).unwrap();
    }
    folder.to_owned()
}

/// How long a run takes, and the most memory it held, KB (0 where the system does not say).
fn run(rooms: &Path, out: &Path, threads: &str) -> (Duration, u64) {
    let started = Instant::now();
    let mut child = Command::new(env!("CARGO_BIN_EXE_elbowroom"))
        .arg("batch")
        .arg(rooms)
        .arg("-o")
        .arg(out)
        .args(["--threads", threads])
        .stdout(Stdio::null())
        .spawn()
        .unwrap();
    let mut most = 0;
    loop {
        let status = fs::read_to_string(format!("/proc/{}/status", child.id())).unwrap_or_default();
        let held = status.lines().find_map(|line| line.strip_prefix("VmHWM:"));
        most = held.and_then(|held| held.trim().strip_suffix(" kB")?.parse().ok()).unwrap_or(most);
        if let Some(ended) = child.try_wait().unwrap() {
            assert!(ended.success());
            return (started.elapsed(), most);
        }
        std::thread::sleep(LOOK);
    }
}
