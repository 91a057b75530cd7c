//! Reading what the user names: a file or standard input, text and of a sane size.

use std::fs::File;
use std::io::{ErrorKind, Read};
use std::path::Path;

use crate::failure::Failure;

/// Largest file that is read, bytes: the scenario format refuses more.
const MOST_BYTES: u64 = 1 << 20;
/// What stands for standard input on the command line.
const STANDARD_INPUT: &str = "-";

/// A text and what the user calls it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Source {
    /// The file's name as given, or `standard input`.
    pub name: String,
    /// All of its text, without a byte order mark.
    pub text: String,
}

/// Why a file cannot be read.
#[derive(Debug, thiserror::Error)]
pub(crate) enum Unreadable {
    /// Not there.
    #[error("there is no such file")]
    Missing,
    /// A folder.
    #[error("it is a directory, not a file")]
    Directory,
    /// A pipe or a device.
    #[error("it is no ordinary file")]
    NoFile,
    /// More than [`MOST_BYTES`].
    #[error("it is larger than 1 MiB, which no scenario needs to be")]
    TooLarge,
    /// Holds zero bytes, or is not UTF-8 from this byte on.
    #[error("it is not text: byte {0} belongs to no UTF-8 text")]
    NotText(usize),
    /// Whatever else the system says.
    #[error("{0}")]
    System(#[from] std::io::Error),
}

impl Unreadable {
    /// What to do about it.
    pub(crate) const fn remedy(&self) -> &'static str {
        match self {
            Self::Missing => "Check the name and the folder.",
            Self::Directory => "Name a file in it.",
            Self::NoFile => "Put the scenario into a file.",
            Self::TooLarge => "Name the scenario file itself: one room, a few dozen lines.",
            Self::NotText(_) => "Save the file as plain text in UTF-8, not as a document, a picture or UTF-16.",
            Self::System(_) => "See that the file can be read.",
        }
    }
}

/// Reads the file at `path`.
pub(crate) fn file(path: &Path) -> Result<String, Unreadable> {
    open(path).and_then(|mut file| bytes_of(&mut file)).and_then(text_of)
}

/// Reads the file at `path`, or `stdin` where `path` is `-`.
pub(crate) fn read(path: &Path, stdin: &mut dyn Read) -> Result<Source, Failure> {
    let name = name(path);
    let bytes =
        if is_standard_input(path) { bytes_of(stdin) } else { open(path).and_then(|mut file| bytes_of(&mut file)) };
    match bytes.and_then(text_of) {
        Ok(text) => Ok(Source { name, text }),
        Err(why) => Err(Failure::Unreadable { name, why }),
    }
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
