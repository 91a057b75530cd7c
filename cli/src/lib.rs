//! Speaks: the command line of elbowroom, and how a result looks as text and as JSON.
//!
//! Here live the arguments, the commands, the exit codes, the prose and the rendering. Nothing here decides about
//! furniture: what was measured comes from the model, what fits from the solver. [`run`] is the whole program but for
//! the process itself, so a test can hold it by its streams.

mod args;
mod batch;
mod commands;
mod destination;
mod drawing;
mod exit;
mod failure;
#[cfg(test)]
mod fuzz;
mod listed;
mod outlet;
mod ranked;
mod render;
mod source;
mod stock;
mod watch;
mod words;

use std::ffi::OsString;
use std::io::Read;

pub use exit::Exit;
pub use outlet::Outlet;

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
    let ended = args::parse(args).and_then(|args| commands::run(args, stdin, stdout, stderr));
    match ended {
        Ok(exit) => exit,
        Err(failure) => failure.tell(stdout, stderr),
    }
}
