//! What exit codes say.

use std::fmt::Write;

use crate::process::exit::Exit;

/// What `--help` says of exit codes.
pub(crate) fn codes() -> String {
    Exit::ALL.iter().fold("Exit codes:".to_owned(), |mut text, exit| {
        let _ = write!(text, "\n  {}  {}", exit.code(), meaning(*exit));
        text
    })
}

const fn meaning(exit: Exit) -> &'static str {
    match exit {
        Exit::Done => "done; of `rank`: options were found; of `batch`: each room has its line",
        Exit::Failed => "not done for a reason outside the command line and the file, or not read to its end",
        Exit::Faulty => "the command line or the file is at fault",
        Exit::NothingFits => "the file is sound, and nothing fits as asked (what would help is told)",
    }
}
