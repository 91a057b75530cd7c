//! A file that grows beside its place and is moved there when it is whole.

use std::fs::File;
use std::io::{self, BufWriter, Write};
use std::path::{Path, PathBuf};

use tempfile::TempPath;

use super::destination;
use super::failure::Failure;

/// A file under way; nothing is left of it unless it is put in its place.
pub(crate) struct Whole {
    path: PathBuf,
    file: BufWriter<File>,
    /// Where it is until it is whole.
    under_way: TempPath,
}

impl Whole {
    /// Starts the file that is to stand at `path`, over one that stands there.
    pub(crate) fn start(path: PathBuf) -> Result<Self, Failure> {
        match destination::beside(&path) {
            Ok(file) => {
                let (file, under_way) = file.into_parts();
                Ok(Self { path, file: BufWriter::with_capacity(1 << 16, file), under_way })
            }
            Err(why) => Err(Failure::Uncreatable { name: path.display().to_string(), why }),
        }
    }

    /// Adds `text`.
    pub(crate) fn add(&mut self, text: &str) -> Result<(), Failure> {
        self.add_bytes(text.as_bytes())
    }

    /// Adds `bytes`.
    pub(crate) fn add_bytes(&mut self, bytes: &[u8]) -> Result<(), Failure> {
        self.file.write_all(bytes).map_err(|why| not_written(&self.path, why))
    }

    /// Puts it in its place, so that it is there even if the machine stops at once.
    pub(crate) fn put(self) -> Result<(), Failure> {
        self.moved(true)
    }

    /// Puts it in its place; the system writes it to the disk in its own time.
    pub(crate) fn put_soon(self) -> Result<(), Failure> {
        self.moved(false)
    }

    fn moved(self, at_once: bool) -> Result<(), Failure> {
        let Self { path, file, under_way } = self;
        let put = || -> io::Result<()> {
            let file = file.into_inner().map_err(io::IntoInnerError::into_error)?;
            if at_once {
                file.sync_all()?;
            }
            under_way.persist(&path)?;
            Ok(())
        };
        put().map_err(|why| not_written(&path, why))
    }
}

fn not_written(path: &Path, why: io::Error) -> Failure {
    Failure::NotWritten { name: path.display().to_string(), why }
}
