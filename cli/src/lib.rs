//! Speaks: the command line of elbowroom, and how a result looks as text and as JSON.
//!
//! Nothing here decides about furniture: what was measured comes from the model, what fits from the solver. [`run`] is the
//! whole program but for the process itself, so a test can hold it by its streams.
//!
//! The modules stand on floors, and each names only what stands on a floor below its own or beside it:
//!
//! | floor | modules | what it does |
//! | --- | --- | --- |
//! | 8 | `page` | the page in the browser: what is asked of it, its screens, the files that it changes |
//! | 7 | `commands` | what is read, what is asked of the model or the solver, what is written: a file a command |
//! | 6 | `args`, `ranked`, `watch`, `batch`, `stock` | the command line, and the work that several commands share |
//! | 5 | `render` | pages, sheets, rows, and the results read back that they are made from |
//! | 4 | `drawing` | marks on paper, labels, and the writers of SVG, PNG and PDF |
//! | 4 | `result` | the structs of each JSON format, field for field, made from what was decided and from words |
//! | 3 | `words` | every sentence, in the units asked for |
//! | 2 | `process` | what a run reads, where it writes, how it ends |
//! | 1 | `text` | text made fit for where it goes: safe, escaped, wrapped, in columns, as cells, as JSON |

mod args;
mod batch;
mod commands;
mod drawing;
#[cfg(any(test, fuzzing))]
pub mod fuzz;
mod page;
mod process;
mod ranked;
mod render;
mod result;
mod stock;
mod text;
mod watch;
mod words;

use std::ffi::OsString;
use std::io::Read;

pub use process::exit::Exit;
pub use process::outlet::Outlet;

use args::Asked;
use process::failure::Failure;

/// The arguments of this process; those that open the page, where it was started by a hand on a desktop: with no arguments
/// and no terminal.
#[must_use]
pub fn as_started() -> Vec<OsString> {
    args::as_started(std::env::args_os())
}

/// Runs the program: reads `args` (the program's own name first), takes `-` from `stdin`, results to `stdout`, messages
/// to `stderr`.
///
/// ```
/// use elbowroom::{Exit, Outlet};
/// let (mut found, mut told) = (Vec::new(), Vec::new());
/// let args = ["elbowroom", "check", "no-such-room.yaml"].map(Into::into);
/// let exit = elbowroom::run(args, &mut std::io::empty(), &mut Outlet::plain(&mut found), &mut Outlet::plain(&mut told));
/// assert_eq!(exit, Exit::Faulty);
/// assert!(found.is_empty() && !told.is_empty());
/// ```
pub fn run(
    args: impl IntoIterator<Item = OsString>,
    stdin: &mut (dyn Read + Send),
    stdout: &mut Outlet<'_>,
    stderr: &mut Outlet<'_>,
) -> Exit {
    let ended = args::parse(args).and_then(|args| match args.asked {
        Asked::Command(command) => commands::run(command, stdin, stdout, stderr),
        Asked::Page(args) => page::run(&args, stdout),
    });
    match ended {
        Ok(exit) => exit,
        // Whoever has read enough need not be told.
        Err(failure @ Failure::ReaderGone) => failure.exit(),
        // Help that was asked for is a result.
        Err(failure) if failure.exit() == Exit::Done => tell(&failure, stdout),
        Err(failure) => tell(&failure, stderr),
    }
}

/// Tells a failure and says how the run ends. If even that cannot be written, the exit code still speaks.
fn tell(failure: &Failure, outlet: &mut Outlet<'_>) -> Exit {
    match (outlet.write(&render::failure::text(failure, outlet.look())), failure.exit()) {
        (Err(_), Exit::Done) => Exit::Failed,
        (_, exit) => exit,
    }
}
