//! Reading what the user names: a file or standard input, text and of a sane size.

use std::fs::File;
use std::io::{ErrorKind, Read};
use std::path::Path;

/// Largest file that is read, bytes: the scenario format refuses more.
const MOST_BYTES: u64 = 1 << 20;
/// What stands for standard input on the command line.
const STANDARD_INPUT: &str = "-";

/// How the names of scenario files end.
const SCENARIOS: [&str; 3] = ["yaml", "yml", "json"];

/// A text and what the user calls it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Source {
    /// The file's name as given, or `standard input`.
    pub name: String,
    /// All of its text, without a byte order mark.
    pub text: String,
}

/// Why a file cannot be read.
#[derive(Debug)]
pub(crate) enum Unreadable {
    /// Not there.
    Missing,
    /// A folder.
    Directory,
    /// A pipe or a device.
    NoFile,
    /// More than [`MOST_BYTES`].
    TooLarge,
    /// Holds zero bytes, or is not UTF-8 from this byte on.
    NotText(usize),
    /// Whatever else the system says.
    System(std::io::Error),
}

impl From<std::io::Error> for Unreadable {
    fn from(error: std::io::Error) -> Self {
        Self::System(error)
    }
}

/// A file that cannot be read.
#[derive(Debug)]
pub(crate) struct Unread {
    /// What the user calls it.
    pub name: String,
    /// Why.
    pub why: Unreadable,
}

/// Reads the file at `path`.
pub(crate) fn file(path: &Path) -> Result<String, Unreadable> {
    open(path).and_then(|mut file| bytes_of(&mut file)).and_then(text_of)
}

/// Reads the file at `path`, or `stdin` where `path` is `-`.
pub(crate) fn read(path: &Path, stdin: &mut dyn Read) -> Result<Source, Unread> {
    let name = name(path);
    let bytes =
        if is_standard_input(path) { bytes_of(stdin) } else { open(path).and_then(|mut file| bytes_of(&mut file)) };
    match bytes.and_then(text_of) {
        Ok(text) => Ok(Source { name, text }),
        Err(why) => Err(Unread { name, why }),
    }
}

/// All bytes of the file at `path`; `None` where they are more than `most`.
pub(crate) fn whole(path: &Path, most: u64) -> Result<Option<Vec<u8>>, Unreadable> {
    let mut bytes = Vec::new();
    open(path)?.take(most + 1).read_to_end(&mut bytes)?;
    Ok((bytes.len() as u64 <= most).then_some(bytes))
}

/// The file is named as a scenario is.
pub(crate) fn is_scenario(path: &Path) -> bool {
    ends_in(path, &SCENARIOS)
}

/// Whether the file's name ends in one of these, small letters or capitals.
pub(crate) fn ends_in(path: &Path, extensions: &[&str]) -> bool {
    let extension = path.extension().map(|extension| extension.to_string_lossy().to_lowercase());
    extension.is_some_and(|extension| extensions.contains(&extension.as_str()))
}

/// Whether `path` stands for standard input (or output).
pub(crate) fn is_standard_input(path: &Path) -> bool {
    path.as_os_str() == STANDARD_INPUT
}

/// What messages call the file.
pub(crate) fn name(path: &Path) -> String {
    if is_standard_input(path) { "standard input".to_owned() } else { path.display().to_string() }
}

/// Opens a file that is not a directory.
pub(crate) fn open(path: &Path) -> Result<File, Unreadable> {
    if path.is_dir() {
        return Err(Unreadable::Directory);
    }
    File::open(path).map_err(|error| match error.kind() {
        ErrorKind::NotFound => Unreadable::Missing,
        _ => Unreadable::System(error),
    })
}

/// All bytes, as long as they are not too many; never reads far past the limit.
fn bytes_of(reader: &mut dyn Read) -> Result<Vec<u8>, Unreadable> {
    let mut bytes = Vec::new();
    reader.take(MOST_BYTES + 1).read_to_end(&mut bytes)?;
    if bytes.len() as u64 > MOST_BYTES { Err(Unreadable::TooLarge) } else { Ok(bytes) }
}

/// The bytes as text, a byte order mark taken off.
pub(crate) fn text_of(bytes: Vec<u8>) -> Result<String, Unreadable> {
    if let Some(place) = bytes.iter().position(|byte| *byte == 0) {
        return Err(Unreadable::NotText(place + 1));
    }
    let text = String::from_utf8(bytes).map_err(|error| Unreadable::NotText(error.utf8_error().valid_up_to() + 1))?;
    Ok(text.strip_prefix('\u{feff}').map(str::to_owned).unwrap_or(text))
}
