//! What a run reads, held against what it would write: no result goes over its own input.

use std::fs::{self, Metadata};
use std::path::{Path, PathBuf};

use super::failure::Failure;
use super::source;

/// Where the system shows this process's standard input as a file, if it does.
const STANDARD_INPUT: &str = "/dev/stdin";
/// The same of standard output.
pub(crate) const STANDARD_OUTPUT: &str = "/dev/stdout";

/// Sees that none of the files that are to be written is one that is read, by whatever name or link.
///
/// # Errors
/// The first that is.
pub(crate) fn see_that_none_is_written<'a>(
    outputs: &[impl AsRef<Path>],
    inputs: impl IntoIterator<Item = &'a Path>,
) -> Result<(), Failure> {
    let there = |path: &Path| Identity::of(path).map(|identity| (path.to_owned(), identity));
    let outputs: Vec<(PathBuf, Identity)> = outputs.iter().filter_map(|path| there(path.as_ref())).collect();
    if outputs.is_empty() {
        return Ok(());
    }
    for input in inputs {
        let at = if source::is_standard_input(input) { Path::new(STANDARD_INPUT) } else { input };
        let Some(read) = Identity::of(at) else { continue };
        if let Some((output, _)) = outputs.iter().find(|(_, written)| written.is(&read)) {
            let output =
                if output == Path::new(STANDARD_OUTPUT) { "standard output".to_owned() } else { source::name(output) };
            return Err(Failure::WouldWriteInput { output, input: source::name(input) });
        }
    }
    Ok(())
}

/// A file as the system knows it, whatever the names that lead to it.
struct Identity {
    /// Its path with every link on the way followed.
    path: Option<PathBuf>,
    /// What all hard links to it share.
    inode: Option<(u64, u64)>,
}

impl Identity {
    /// Of an ordinary file that is there; what is a device or a folder, no result replaces.
    fn of(path: &Path) -> Option<Self> {
        let there = fs::metadata(path).ok().filter(Metadata::is_file)?;
        Some(Self { path: fs::canonicalize(path).ok(), inode: inode(&there) })
    }

    fn is(&self, other: &Self) -> bool {
        self.path.is_some() && self.path == other.path || self.inode.is_some() && self.inode == other.inode
    }
}

#[cfg(unix)]
fn inode(there: &Metadata) -> Option<(u64, u64)> {
    use std::os::unix::fs::MetadataExt;
    Some((there.dev(), there.ino()))
}

/// Elsewhere the standard library does not say; paths are compared all the same.
#[cfg(not(unix))]
const fn inode(_: &Metadata) -> Option<(u64, u64)> {
    None
}
