//! Exit codes, all of them.

use std::process::ExitCode;

use strum::VariantArray;

/// How a run ends.
#[derive(Debug, Clone, Copy, PartialEq, Eq, VariantArray)]
#[repr(u8)]
pub enum Exit {
    /// It did what was asked; of `rank`: at least one arrangement fits.
    Done = 0,
    /// Anything that is neither the command line's fault nor the file's: a full disk, a thread that would not start, a
    /// reader who went away before the end.
    Failed = 1,
    /// The command line or the file is at fault.
    Faulty = 2,
    /// The file is sound, and nothing fits as asked.
    NothingFits = 3,
}

impl Exit {
    /// Every exit, by its code.
    pub const ALL: &[Self] = Self::VARIANTS;

    /// The code that the process ends with.
    #[must_use]
    pub const fn code(self) -> u8 {
        self as u8
    }
}

impl From<Exit> for ExitCode {
    fn from(exit: Exit) -> Self {
        Self::from(exit.code())
    }
}
