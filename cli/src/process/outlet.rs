//! Where text goes, and what is known of its reader.

use std::io::{ErrorKind, IsTerminal, Write};

use super::failure::Failure;
use crate::text::look::Look;

/// A stream to write to, with what is known of the reader.
pub struct Outlet<'a> {
    to: &'a mut dyn Write,
    look: Look,
    terminal: bool,
}

impl<'a> Outlet<'a> {
    /// A stream that is no terminal: a file, a pipe, a test's buffer.
    pub fn plain(to: &'a mut dyn Write) -> Self {
        Self { to, look: Look::PLAIN, terminal: false }
    }

    /// This process's standard output.
    pub fn of_stdout(to: &'a mut dyn Write) -> Self {
        let stdout = std::io::stdout();
        if !stdout.is_terminal() {
            return Self::plain(to);
        }
        Self::terminal(to, terminal_size::terminal_size_of(stdout))
    }

    /// This process's standard error.
    pub fn of_stderr(to: &'a mut dyn Write) -> Self {
        let stderr = std::io::stderr();
        if !stderr.is_terminal() {
            return Self::plain(to);
        }
        Self::terminal(to, terminal_size::terminal_size_of(stderr))
    }

    fn terminal(to: &'a mut dyn Write, size: Option<(terminal_size::Width, terminal_size::Height)>) -> Self {
        Self { to, look: Look::of_terminal(size.map(|(width, _)| width.0)), terminal: true }
    }

    /// How text may look here.
    pub(crate) const fn look(&self) -> Look {
        self.look
    }

    /// Somebody watches.
    pub(crate) const fn is_terminal(&self) -> bool {
        self.terminal
    }

    /// Writes all of `text`.
    ///
    /// # Errors
    /// The reader has gone away before its end; a full disk, or whatever else the system says.
    pub(crate) fn write(&mut self, text: &str) -> Result<(), Failure> {
        self.write_bytes(text.as_bytes())
    }

    /// The same of bytes that are no text.
    pub(crate) fn write_bytes(&mut self, bytes: &[u8]) -> Result<(), Failure> {
        self.to.write_all(bytes).and_then(|()| self.to.flush()).map_err(|why| match why.kind() {
            ErrorKind::BrokenPipe => Failure::ReaderGone,
            _ => Failure::Unwritable(why),
        })
    }
}
