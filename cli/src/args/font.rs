//! A font for letters of names that our own has not.

use std::path::PathBuf;

use crate::drawing::Typeface;
use crate::process::failure::Failure;
use crate::process::source;

/// Larger than any font, bytes.
const LARGEST: u64 = 64 << 20;

/// The font that is given.
#[derive(Debug, Clone, clap::Args)]
pub(crate) struct FontArgs {
    /// A font file (TTF, OTF) for letters of names that our own font has not, on plans and paper
    #[arg(long, value_name = "FONT")]
    pub font: Option<PathBuf>,
}

impl FontArgs {
    /// What sheets are lettered in.
    ///
    /// # Errors
    /// The file cannot be read, or is no font.
    pub(crate) fn typeface(&self) -> Result<Typeface, Failure> {
        let Some(path) = self.font.as_deref() else { return Ok(Typeface::default()) };
        let name = path.display().to_string();
        match source::whole(path, LARGEST) {
            Ok(file) => file.and_then(Typeface::with).ok_or(Failure::NoFont { name }),
            Err(why) => Err(Failure::Unreadable { name, why }),
        }
    }
}
