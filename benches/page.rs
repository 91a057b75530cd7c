//! The page under load, on loopback: `cargo bench -p elbowroom --bench page`. A run of bounded length: what the first screen weighs
//! and how soon it is there, how soon a size brings new answers and a wish a new order, many asking at once, memory at rest.
//! Figures are of the server; what a browser adds is in `tests/cli/browser`.
#![allow(clippy::unwrap_used, clippy::print_stdout, reason = "a bench prints, and a panic is how it fails")]

use std::fs;
use std::io::{BufRead, BufReader, Read, Write};
use std::net::TcpStream;
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::time::{Duration, Instant};

/// Sizes and wishes that are changed in each room.
const CHANGES: u64 = 8;
/// Who ask at once, and how often each.
const ASKING: usize = 20;
const TIMES: usize = 50;

fn main() {
    let demo = Path::new(concat!(env!("CARGO_MANIFEST_DIR"), "/../scenarios"));
    let mut rooms: Vec<PathBuf> = fs::read_dir(demo).unwrap().map(|entry| entry.unwrap().path()).collect();
    rooms.retain(|room| room.extension().is_some_and(|ending| ending == "yaml"));
    rooms.sort();
    let mut sums = Sums::default();
    for room in &rooms {
        of_room(room, &mut sums);
    }
    println!("over {} rooms, ms: median, 95th of a hundred, most", rooms.len());
    for (what, times) in [
        ("first screen, answers on it", &mut sums.first),
        ("a size changed, to new answers", &mut sums.sizes),
        ("a wish changed, to a new order", &mut sums.wishes),
    ] {
        times.sort();
        println!("{what}: {}", spread(times));
    }
    println!("first screen, bytes before compression: {} at most", sums.bytes);
    at_once(&rooms[0]);
}

/// What all rooms come to.
#[derive(Default)]
struct Sums {
    first: Vec<Duration>,
    sizes: Vec<Duration>,
    wishes: Vec<Duration>,
    bytes: usize,
}

fn of_room(room: &Path, sums: &mut Sums) {
    let served = Served::of(room);
    let begun = Instant::now();
    let mut first = served.get("options");
    if !first.contains("id=\"first\"") {
        served.settled();
        first = served.get("options");
    }
    sums.first.push(begun.elapsed());
    let parts =
        ["page.css", "page.js", "address.js", "parts.js", "room.js", "options.js", "icon.svg", "book.ttf", "bold.ttf"];
    let parts: usize = parts.iter().map(|part| served.asked("GET", &format!("/{part}"), "").len()).sum();
    sums.bytes = sums.bytes.max(first.len() + parts);
    let (mut sizes, mut wishes) = (Vec::new(), Vec::new());
    for change in 0..CHANGES {
        let to = 1.0 + change as f64 / 2.0;
        wishes.push(served.changed("wishes.ways", &format!("{to}")));
        // Walls that may stand in by so much more are another room to every search.
        sizes.push(served.changed("measured_within", &format!("\"{} mm\"", 11 + change)));
    }
    let name = room.file_stem().unwrap().to_string_lossy();
    sizes.sort();
    println!("{name}: a size changed, {}; {} kB at rest", spread(&sizes), served.memory());
    sums.sizes.extend(sizes);
    sums.wishes.extend(wishes);
}

/// Many at once, and nobody is refused.
fn at_once(room: &Path) {
    let served = Served::of(room);
    served.settled();
    let begun = Instant::now();
    let mut times: Vec<Duration> = std::thread::scope(|scope| {
        let each = || {
            let one = |_| {
                let begun = Instant::now();
                assert!(served.get("options").contains("id=\"first\""));
                begun.elapsed()
            };
            (0..TIMES).map(one).collect::<Vec<_>>()
        };
        let asking: Vec<_> = (0..ASKING).map(|_| scope.spawn(each)).collect();
        asking.into_iter().flat_map(|one| one.join().unwrap()).collect()
    });
    let took = begun.elapsed();
    times.sort();
    let second = times.len() as f64 / took.as_secs_f64();
    println!(
        "{ASKING} at once, {} screens: {}; {second:.0} a second; {} kB",
        times.len(),
        spread(&times),
        served.memory()
    );
}

/// Of sorted times, in milliseconds.
fn spread(times: &[Duration]) -> String {
    let at = |share: f64| times[((times.len() - 1) as f64 * share).ceil() as usize].as_secs_f64() * 1000.0;
    format!("{:.1}, {:.1}, {:.1}", at(0.5), at(0.95), at(1.0))
}

/// A page of one room.
struct Served {
    child: Child,
    address: String,
    token: String,
    name: String,
    _folder: tempfile::TempDir,
}

impl Served {
    fn of(room: &Path) -> Self {
        let folder = tempfile::tempdir().unwrap();
        let name = room.file_name().unwrap().to_string_lossy().into_owned();
        let file = folder.path().join(&name);
        fs::copy(room, &file).unwrap();
        let program = env!("CARGO_BIN_EXE_elbowroom");
        let mut child = Command::new(program).arg("page").arg(file).stdout(Stdio::piped()).spawn().unwrap();
        let mut line = String::new();
        BufReader::new(child.stdout.as_mut().unwrap()).read_line(&mut line).unwrap();
        let link = line.split_whitespace().find_map(|word| word.strip_prefix("http://")).unwrap();
        let (address, token) = link.split_once("/enter/").unwrap();
        Self { child, address: address.to_owned(), token: token.to_owned(), name, _folder: folder }
    }

    fn asked(&self, method: &str, path: &str, body: &str) -> String {
        let (address, length) = (&self.address, body.len());
        let port = address.rsplit_once(':').unwrap().1;
        let mut stream = TcpStream::connect(address).unwrap();
        write!(
            stream,
            "{method} {path} HTTP/1.1\r\nHost: {address}\r\nOrigin: http://{address}\r\nCookie: elbowroom-{port}={}\r\n\
             Connection: close\r\nContent-Length: {length}\r\n\r\n{body}",
            self.token
        )
        .unwrap();
        let mut all = Vec::new();
        stream.read_to_end(&mut all).unwrap();
        let end = all.windows(4).position(|four| four == b"\r\n\r\n").unwrap();
        assert!(all.starts_with(b"HTTP/1.1 200"), "{path}: {}", String::from_utf8_lossy(&all[..end]));
        // A font is no text, and only its length counts.
        all[end + 4..].iter().map(|byte| char::from(byte & 0x7f)).collect()
    }

    fn get(&self, part: &str) -> String {
        self.asked("GET", &format!("/room/{}/{part}", self.name), "")
    }

    /// How the room stands once nothing is worked on.
    fn settled(&self) -> String {
        loop {
            let stage = self.get("stage");
            if !stage.contains("\"stage\":\"busy\"") {
                return stage;
            }
        }
    }

    /// How long it takes from a change to the answers that follow it.
    fn changed(&self, at: &str, to: &str) -> Duration {
        let stage = self.settled();
        let from = stage.split_once("\"step\":").unwrap().1;
        let from: String = from.chars().take_while(char::is_ascii_digit).collect();
        let body = format!("{{\"from\":{from},\"changes\":[{{\"do\":\"set\",\"at\":\"{at}\",\"to\":{to}}}]}}");
        let begun = Instant::now();
        self.asked("POST", &format!("/room/{}/step", self.name), &body);
        self.settled();
        self.get("part/answers");
        begun.elapsed()
    }

    /// What it holds, KB (0 where the system does not say).
    fn memory(&self) -> u64 {
        let status = fs::read_to_string(format!("/proc/{}/status", self.child.id())).unwrap_or_default();
        let held = status.lines().find_map(|line| line.strip_prefix("VmRSS:"));
        held.and_then(|held| held.trim().strip_suffix(" kB")?.parse().ok()).unwrap_or(0)
    }
}

impl Drop for Served {
    fn drop(&mut self) {
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}
