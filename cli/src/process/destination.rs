//! Where a result is written: a file, whole or not at all, or a stream.
//!
//! A file is written beside its place under another name and moved there when it is whole, so that neither a full disk
//! nor an interruption leaves half of one; never over a file that is there already, unless that is asked for. What is
//! no ordinary file (a pipe, a device) is written to as it is.

use std::fs::{self, File, Permissions};
use std::io::{self, ErrorKind, Write};
use std::path::{Path, PathBuf};

use tempfile::{Builder, NamedTempFile};

use super::failure::Failure;
use super::outlet::Outlet;
use super::source;

/// How the name of a file starts that is not in its place yet.
pub(crate) const UNDER_WAY: &str = ".elbowroom-";

/// Where a result goes, looked at before any work is done for it.
#[derive(Debug, PartialEq, Eq)]
pub(crate) enum Destination {
    /// Standard output.
    Stdout,
    /// A file.
    File {
        /// Its place.
        path: PathBuf,
        /// It may replace a file that is there.
        force: bool,
    },
    /// A device or a pipe.
    Device(PathBuf),
}

impl Destination {
    /// At `path`, `-` being standard output.
    ///
    /// # Errors
    /// A file is there already and must not be replaced; a folder is there, or none to put the file in.
    pub(crate) fn at(path: &Path, force: bool) -> Result<Self, Failure> {
        if source::is_standard_input(path) {
            return Ok(Self::Stdout);
        }
        let Ok(there) = fs::metadata(path) else {
            return see_folder(path).map(|()| Self::File { path: path.to_owned(), force });
        };
        match there.file_type() {
            kind if kind.is_dir() => Err(uncreatable(path, ErrorKind::IsADirectory.into())),
            kind if !kind.is_file() => Ok(Self::Device(path.to_owned())),
            _ if !force => Err(Failure::AlreadyThere(name(path))),
            // What a link points to is replaced, not the link.
            _ => Ok(Self::File { path: fs::canonicalize(path).unwrap_or_else(|_| path.to_owned()), force }),
        }
    }

    /// The extension of the file's name, in small letters.
    pub(crate) fn extension(&self) -> Option<String> {
        match self {
            Self::Stdout => None,
            Self::File { path, .. } | Self::Device(path) => Some(path.extension()?.to_str()?.to_lowercase()),
        }
    }

    /// The file as the user would call it; `None` for standard output.
    pub(crate) fn name(&self) -> Option<String> {
        match self {
            Self::Stdout => None,
            Self::File { path, .. } | Self::Device(path) => Some(name(path)),
        }
    }

    /// Writes all of `bytes`.
    ///
    /// # Errors
    /// No permission, a full disk, a file that has come there in the meantime: then nothing is left of it.
    pub(crate) fn write(&self, bytes: &[u8], stdout: &mut Outlet<'_>) -> Result<(), Failure> {
        match self {
            Self::Stdout => stdout.write_bytes(bytes),
            Self::File { path, force } => whole(path, bytes, *force),
            Self::Device(path) => {
                let written = File::options().write(true).open(path).and_then(|mut device| device.write_all(bytes));
                written.map_err(|why| match why.kind() {
                    ErrorKind::BrokenPipe => Failure::ReaderGone,
                    _ => Failure::NotWritten { name: name(path), why },
                })
            }
        }
    }
}

/// Writes a file that is there whole or not at all.
fn whole(path: &Path, bytes: &[u8], force: bool) -> Result<(), Failure> {
    let mut file = beside(path).map_err(|why| uncreatable(path, why))?;
    file.as_file_mut().write_all(bytes).map_err(|why| Failure::NotWritten { name: name(path), why })?;
    let moved = if force { file.persist(path) } else { file.persist_noclobber(path) };
    match moved {
        Ok(_) => Ok(()),
        Err(failed) if failed.error.kind() == ErrorKind::AlreadyExists => Err(Failure::AlreadyThere(name(path))),
        Err(failed) => Err(uncreatable(path, failed.error)),
    }
}

/// An empty file in the folder of `path`, with the permissions of the file that it will replace, or of any new one;
/// gone again unless it is moved to its place.
pub(crate) fn beside(path: &Path) -> io::Result<NamedTempFile> {
    let mut builder = Builder::new();
    builder.prefix(UNDER_WAY);
    if let Some(permissions) = fs::metadata(path).ok().map(|there| there.permissions()).or_else(of_new_files) {
        builder.permissions(permissions);
    }
    builder.tempfile_in(folder(path)).map_err(of_the_system)
}

/// What the system said, without the name of a file that the user has not named: `tempfile` puts it behind.
fn of_the_system(why: io::Error) -> io::Error {
    let said = why.to_string();
    match said.split_once(" at path ") {
        Some((said, _)) => io::Error::new(why.kind(), said),
        None => why,
    }
}

/// What a new file may be read by, before the user's own mask.
#[cfg(unix)]
fn of_new_files() -> Option<Permissions> {
    use std::os::unix::fs::PermissionsExt;
    Some(Permissions::from_mode(0o666))
}

/// Systems without modes have nothing to say.
#[cfg(not(unix))]
const fn of_new_files() -> Option<Permissions> {
    None
}

/// The folder that holds `path`.
fn folder(path: &Path) -> &Path {
    match path.parent() {
        Some(folder) if !folder.as_os_str().is_empty() => folder,
        _ => Path::new("."),
    }
}

/// Whether there is a folder to put `path` in.
fn see_folder(path: &Path) -> Result<(), Failure> {
    match fs::metadata(folder(path)) {
        Ok(found) if found.is_dir() => Ok(()),
        Ok(_) => Err(uncreatable(path, ErrorKind::NotADirectory.into())),
        Err(why) => Err(uncreatable(path, why)),
    }
}

fn uncreatable(path: &Path, why: io::Error) -> Failure {
    Failure::Uncreatable { name: name(path), why }
}

fn name(path: &Path) -> String {
    path.display().to_string()
}

#[cfg(test)]
mod tests {
    use std::path::Path;

    use super::{UNDER_WAY, beside};

    #[test]
    fn what_the_system_says_names_no_file_that_the_user_has_not_named() {
        let why = beside(Path::new("/no/such/folder/sheet.pdf")).unwrap_err().to_string();
        assert!(why.starts_with("No such file or directory") && !why.contains(UNDER_WAY), "{why}");
    }
}
