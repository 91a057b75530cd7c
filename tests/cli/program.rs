//! The program as a process.

use std::io::Write;
use std::path::PathBuf;
use std::process::{Command, Output, Stdio};

/// The folder that holds everything.
pub(crate) fn root() -> PathBuf {
    PathBuf::from(concat!(env!("CARGO_MANIFEST_DIR"), "/.."))
}

/// The program with these arguments, in a plain setting.
pub(crate) fn program(args: &[&str]) -> Command {
    let mut command = Command::new(env!("CARGO_BIN_EXE_elbowroom"));
    command.args(args).env_remove("NO_COLOR").stdin(Stdio::null());
    // With no arguments it would open its page on a desktop.
    command.env_remove("DISPLAY").env_remove("WAYLAND_DISPLAY");
    command
}

/// Runs it to its end.
pub(crate) fn run(args: &[&str]) -> Ended {
    Ended::from(program(args).output().unwrap())
}

/// Runs it to its end with this on standard input.
pub(crate) fn run_with(args: &[&str], input: &[u8]) -> Ended {
    let mut command = program(args);
    let mut child = command.stdin(Stdio::piped()).stdout(Stdio::piped()).stderr(Stdio::piped()).spawn().unwrap();
    let mut stdin = child.stdin.take().unwrap();
    let input = input.to_vec();
    // From a thread of its own: the program may answer before it has read all, or stop reading.
    let writer = std::thread::spawn(move || {
        let _ = stdin.write_all(&input);
    });
    let output = child.wait_with_output().unwrap();
    writer.join().unwrap();
    Ended::from(output)
}

/// How a run ended.
#[derive(Debug)]
pub(crate) struct Ended {
    /// Exit code; `None` where a signal ended it.
    pub(crate) code: Option<i32>,
    /// Results.
    pub(crate) stdout: String,
    /// Messages.
    pub(crate) stderr: String,
}

impl From<Output> for Ended {
    fn from(output: Output) -> Self {
        Self {
            code: output.status.code(),
            stdout: String::from_utf8(output.stdout).unwrap(),
            stderr: String::from_utf8(output.stderr).unwrap(),
        }
    }
}
