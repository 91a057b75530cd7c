//! Where text goes, and what can be shown there.

use std::io::{ErrorKind, IsTerminal, Write};

use crate::failure::Failure;

/// Columns of text where nobody looks at a terminal.
const PLAIN_WIDTH: usize = 100;
/// Columns of text at a terminal, whatever its own width: longer lines do not read well, shorter ones hold no table.
const TERMINAL_WIDTHS: std::ops::RangeInclusive<usize> = 60..=100;

/// A stream to write to, with what is known of the reader.
pub struct Outlet<'a> {
    to: &'a mut dyn Write,
    look: Look,
    terminal: bool,
}

/// How text may look.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Look {
    /// Columns.
    pub width: usize,
    /// Weight and tone by escape sequences.
    pub colour: bool,
}

impl Look {
    /// Plain text of the width that a file or a pipe gets.
    pub(crate) const PLAIN: Self = Self { width: PLAIN_WIDTH, colour: false };

    /// What a terminal of this many columns gets.
    fn of_terminal(columns: Option<u16>) -> Self {
        let width = columns.map_or(PLAIN_WIDTH, usize::from).clamp(*TERMINAL_WIDTHS.start(), *TERMINAL_WIDTHS.end());
        let refused = std::env::var_os("NO_COLOR").is_some_and(|value| !value.is_empty());
        Self { width, colour: !refused }
    }
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

    /// Writes all of `text`. A reader who has gone away has read enough: that is no failure.
    pub(crate) fn write(&mut self, text: &str) -> Result<(), Failure> {
        self.write_bytes(text.as_bytes())
    }

    /// Writes all of `text` and says whether anybody is still there to read on.
    pub(crate) fn write_on(&mut self, text: &str) -> Result<bool, Failure> {
        match self.to.write_all(text.as_bytes()).and_then(|()| self.to.flush()) {
            Ok(()) => Ok(true),
            Err(error) if error.kind() == ErrorKind::BrokenPipe => Ok(false),
            Err(error) => Err(Failure::Unwritable(error)),
        }
    }

    /// The same of bytes that are no text.
    pub(crate) fn write_bytes(&mut self, bytes: &[u8]) -> Result<(), Failure> {
        match self.to.write_all(bytes).and_then(|()| self.to.flush()) {
            Err(error) if error.kind() != ErrorKind::BrokenPipe => Err(Failure::Unwritable(error)),
            _ => Ok(()),
        }
    }
}
