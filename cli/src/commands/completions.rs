//! `completions`: what a shell needs to complete the command line.

use crate::args::{self, CompletionsArgs};
use crate::process::exit::Exit;
use crate::process::failure::Failure;
use crate::process::outlet::Outlet;

/// Prints the completions for one shell.
pub(super) fn run(args: &CompletionsArgs, stdout: &mut Outlet<'_>) -> Result<Exit, Failure> {
    let mut script = Vec::new();
    clap_complete::generate(args.shell, &mut args::command(), "elbowroom", &mut script);
    stdout.write(&String::from_utf8_lossy(&script))?;
    Ok(Exit::Done)
}
