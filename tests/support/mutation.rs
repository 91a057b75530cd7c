//! Bad input without end: sound files, changed here and there by a seeded draw, and put to a reader.
//!
//! Sound files and those that once broke a reader stand in `tests/data/fuzz/`. A run of the suite tries the same few
//! thousand changes every time; `ELBOWROOM_FUZZ_SECONDS=900` goes on for so many seconds of the processor, from the case
//! `ELBOWROOM_FUZZ_FROM` on. What breaks a reader is left as a file for that folder.
#![allow(dead_code, reason = "each suite uses its own part")]
#![allow(clippy::print_stdout, reason = "a long run tells what it did")]

#[path = "varied.rs"]
pub(crate) mod varied;

use std::collections::BTreeMap;
use std::fs;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::{Path, PathBuf};
use std::sync::atomic::{AtomicU64, Ordering};
use std::time::{Duration, Instant};

pub(crate) use varied::Draw;

/// Longest file that changes make, bytes; a line that is repeated makes the long ones.
const LONGEST: usize = 1 << 16;
/// No reader may take longer over one file.
const TOO_LONG: Duration = Duration::from_secs(20);
/// Draws that each file is tried with as it stands.
const ROUNDS: u64 = 8;
/// A run ends after so many different breaks.
const MOST_BREAKS: usize = 20;
/// Memory that the process may grow by in a run on its own, KB.
const MOST_MEMORY: u64 = 400_000;

/// What is put in anywhere, whatever the format.
const WORDS: [&[u8]; 52] = [
    b"\"",
    b"\"\"",
    b",",
    b";",
    b"\t",
    b"|",
    b"\n",
    b"\r",
    b"\r\n",
    b"\n\n",
    b"\0",
    b" ",
    b"\\",
    b"\xef\xbb\xbf",
    b"\xff\xfe",
    b"\xfe\xff",
    b"\xc3",
    b"\xe9",
    b"\xed\xa0\x80",
    b"\xf4\x90\x80\x80",
    "é".as_bytes(),
    "\u{a0}".as_bytes(),
    "\u{202e}".as_bytes(),
    "\u{2028}".as_bytes(),
    "\u{85}".as_bytes(),
    "\u{1f6cb}".as_bytes(),
    "٣".as_bytes(),
    "½".as_bytes(),
    "İ".as_bytes(),
    b"\\ud83d",
    b"\\ud83d\\udecb",
    b"\\u0000",
    b"\x1b[2J",
    b"=1+1",
    b"@SUM(A1)",
    b"-",
    b"../../",
    b"null",
    b"true",
    b"{",
    b"}",
    b"[",
    b"]",
    b":",
    b"- ",
    b"&a ",
    b"*a",
    b"1e308",
    b"nan",
    b"99999999999999999999",
    b"0.0000000000001",
    b"1,234.5",
];

/// The sound files of `folder`, by name.
fn kept(folder: &str) -> BTreeMap<PathBuf, Vec<u8>> {
    let place = Path::new(concat!(env!("CARGO_MANIFEST_DIR"), "/../tests/data/fuzz")).join(folder);
    let files = fs::read_dir(place).unwrap().map(|entry| entry.unwrap().path());
    files.map(|path| (path.clone(), fs::read(path).unwrap())).collect()
}

/// Processor time of this thread; of a system that does not say, time.
struct Clock(Instant);

impl Clock {
    fn seconds(&self) -> f64 {
        let told = fs::read_to_string("/proc/thread-self/schedstat").unwrap_or_default();
        let nanoseconds = told.split(' ').next().and_then(|first| first.parse::<f64>().ok());
        nanoseconds.map_or_else(|| self.0.elapsed().as_secs_f64(), |nanoseconds| nanoseconds / 1e9)
    }
}

/// The most memory that the process has held, KB; 0 where the system does not say.
fn memory() -> u64 {
    let status = fs::read_to_string("/proc/self/status").unwrap_or_default();
    let held = status.lines().find_map(|line| line.strip_prefix("VmHWM:"));
    held.and_then(|held| held.trim().strip_suffix(" kB")?.trim().parse().ok()).unwrap_or(0)
}

fn asked(name: &str) -> Option<u64> {
    std::env::var(name).ok()?.parse().ok()
}

/// Puts every file of `folder` to `check`, then `usual` changes of them, or as many as the time that is asked for allows.
///
/// # Panics
/// Where `check` does, once all is tried, with the case and the file that is left of it.
pub(crate) fn fuzz(folder: &str, usual: u64, check: impl Fn(&[u8], &mut Draw)) {
    let seeds = kept(folder);
    let mut breaks: BTreeMap<String, String> = BTreeMap::new();
    let at_work = AtomicU64::new(0);
    let mut put = |case: &str, bytes: &[u8], draw: &mut Draw| {
        let started = Instant::now();
        let tried = catch_unwind(AssertUnwindSafe(|| check(bytes, draw)));
        let took = started.elapsed();
        let why = match tried {
            Ok(()) if took < TOO_LONG => return true,
            Ok(()) => format!("took {took:?}"),
            Err(why) => {
                let said = why.downcast_ref::<String>().map(String::as_str);
                said.or_else(|| why.downcast_ref::<&str>().copied()).unwrap_or("a panic").to_owned()
            }
        };
        let left = std::env::temp_dir().join(format!("{folder}-{case}"));
        fs::write(&left, bytes).unwrap();
        let kind: String = why.chars().filter(|c| !c.is_ascii_digit()).take(60).collect();
        breaks.entry(kind).or_insert_with(|| format!("{}: {why}", left.display()));
        breaks.len() < MOST_BREAKS
    };
    for (path, bytes) in &seeds {
        for round in 0..ROUNDS {
            put(&format!("{}-{round}", path.file_name().unwrap().display()), bytes, &mut Draw(round));
        }
    }
    let files: Vec<&[u8]> = seeds.values().map(Vec::as_slice).collect();
    let clock = Clock(Instant::now());
    let (start, held) = (clock.seconds(), memory());
    let (seconds, from) = (asked("ELBOWROOM_FUZZ_SECONDS"), asked("ELBOWROOM_FUZZ_FROM").unwrap_or(0));
    for case in from.. {
        let go_on = match seconds {
            Some(seconds) => !case.is_multiple_of(64) || clock.seconds() - start < seconds as f64,
            None => case < from + usual,
        };
        if !go_on {
            break;
        }
        at_work.store(case, Ordering::Relaxed);
        let mut draw = Draw(case);
        let bytes = changed(&files, &mut draw);
        if !put(&case.to_string(), &bytes, &mut draw) {
            break;
        }
    }
    let cases = (at_work.into_inner() + 1).saturating_sub(from);
    assert!(breaks.is_empty(), "{cases} cases, {} break: {:#?}", breaks.len(), breaks.values());
    if seconds.is_some() {
        let grown = memory().saturating_sub(held);
        println!("{folder}: {cases} cases, {:.0} s, {grown} KB more", clock.seconds() - start);
        assert!(grown < MOST_MEMORY, "{grown} KB");
    }
}

/// Puts one file to `check`, with a draw that a run of the suite tries on it too, once it is kept.
pub(crate) fn once(bytes: &[u8], check: impl Fn(&[u8], &mut Draw)) {
    check(bytes, &mut Draw(bytes.len() as u64 % ROUNDS));
}

/// One of `files` with some changes.
fn changed(files: &[&[u8]], draw: &mut Draw) -> Vec<u8> {
    let mut bytes = files[draw.from(0, files.len() as u64 - 1) as usize].to_vec();
    for _ in 0..draw.from(1, 6) {
        change(&mut bytes, files, draw);
        bytes.truncate(LONGEST);
    }
    bytes
}

fn change(bytes: &mut Vec<u8>, files: &[&[u8]], draw: &mut Draw) {
    let at = draw.from(0, bytes.len() as u64) as usize;
    let (start, end) = span(bytes, draw);
    match draw.from(0, 14) {
        0 => {
            if let Some(byte) = bytes.get_mut(at) {
                *byte ^= 1 << draw.from(0, 7);
            }
        }
        1 => {
            if let Some(byte) = bytes.get_mut(at) {
                *byte = draw.from(0, 255) as u8;
            }
        }
        2 => drop(bytes.drain(start..end)),
        3 => {
            let again = bytes[start..end].to_vec();
            bytes.splice(at..at, again);
        }
        4 => bytes.truncate(at),
        5 => {
            let other = files[draw.from(0, files.len() as u64 - 1) as usize];
            let (start, end) = span(other, draw);
            bytes.splice(at..at, other[start..end].iter().copied());
        }
        6 => swap_lines(bytes, draw),
        7 => repeat_line(bytes, draw),
        8 => figure(bytes, draw),
        9 => recode(bytes, draw),
        10 => ends_of_lines(bytes, draw),
        _ => {
            let word = WORDS[draw.from(0, WORDS.len() as u64 - 1) as usize];
            let taken = if draw.one_in(2) { at } else { bytes.len().min(at + word.len()) };
            bytes.splice(at..taken, word.iter().copied());
        }
    }
}

/// A short stretch.
fn span(bytes: &[u8], draw: &mut Draw) -> (usize, usize) {
    let start = draw.from(0, bytes.len() as u64) as usize;
    let longest = if draw.one_in(8) { 4000 } else { 24 };
    (start, bytes.len().min(start + draw.from(0, longest) as usize))
}

fn lines(bytes: &[u8]) -> Vec<Vec<u8>> {
    bytes.split_inclusive(|byte| *byte == b'\n').map(<[u8]>::to_vec).collect()
}

fn swap_lines(bytes: &mut Vec<u8>, draw: &mut Draw) {
    let mut lines = lines(bytes);
    if !lines.is_empty() {
        let last = lines.len() as u64 - 1;
        lines.swap(draw.from(0, last) as usize, draw.from(0, last) as usize);
        *bytes = lines.concat();
    }
}

fn repeat_line(bytes: &mut Vec<u8>, draw: &mut Draw) {
    let mut lines = lines(bytes);
    if !lines.is_empty() {
        let which = draw.from(0, lines.len() as u64 - 1) as usize;
        let times = if draw.one_in(50) { 2000 } else { draw.from(1, 4) };
        let most = LONGEST / lines[which].len() + 1;
        lines[which] = lines[which].repeat(most.min(times as usize));
        *bytes = lines.concat();
    }
}

/// Another figure in the place of one.
fn figure(bytes: &mut Vec<u8>, draw: &mut Draw) {
    let starts: Vec<usize> = (0..bytes.len()).filter(|at| bytes[*at].is_ascii_digit()).collect();
    if !starts.is_empty() {
        let start = starts[draw.from(0, starts.len() as u64 - 1) as usize];
        let is_figure = |byte: &u8| byte.is_ascii_digit() || matches!(byte, b'.' | b',');
        let end = start + bytes[start..].iter().take_while(|byte| is_figure(byte)).count();
        let digits = draw.from(0, 9);
        let whole = draw.from(0, 10_u64.pow(digits as u32));
        let figure = match draw.from(0, 6) {
            0 => format!("{whole},{}", draw.from(0, 9999)),
            1 => format!("{whole}.{}", draw.from(0, 9999)),
            2 => format!("{}.{:03},{}", draw.from(0, 999), draw.from(0, 999), draw.from(0, 99)),
            3 => format!("-{whole}"),
            4 => format!("{whole}e{}", draw.from(0, 400)),
            _ => whole.to_string(),
        };
        bytes.splice(start..end, figure.into_bytes());
    }
}

/// The same text as UTF-16, or in an older encoding.
fn recode(bytes: &mut Vec<u8>, draw: &mut Draw) {
    let Ok(text) = std::str::from_utf8(bytes) else { return };
    *bytes = match draw.from(0, 2) {
        0 => [0xff, 0xfe].into_iter().chain(text.encode_utf16().flat_map(u16::to_le_bytes)).collect(),
        1 => [0xfe, 0xff].into_iter().chain(text.encode_utf16().flat_map(u16::to_be_bytes)).collect(),
        _ => text.chars().map(|c| u8::try_from(u32::from(c)).unwrap_or(b'?')).collect(),
    };
}

fn ends_of_lines(bytes: &mut Vec<u8>, draw: &mut Draw) {
    let end: &[u8] = if draw.one_in(2) { b"\r\n" } else { b"\r" };
    *bytes = lines(bytes)
        .iter()
        .map(|line| [line.strip_suffix(b"\n").unwrap_or(line), end].concat())
        .collect::<Vec<_>>()
        .concat();
}
