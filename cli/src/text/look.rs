//! How text may look where it goes.

/// Columns of text where nobody looks at a terminal.
const PLAIN_WIDTH: usize = 100;
/// Columns of text at a terminal, whatever its own width: longer lines do not read well, shorter ones hold no table.
const TERMINAL_WIDTHS: std::ops::RangeInclusive<usize> = 60..=100;

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
    pub(crate) fn of_terminal(columns: Option<u16>) -> Self {
        let width = columns.map_or(PLAIN_WIDTH, usize::from).clamp(*TERMINAL_WIDTHS.start(), *TERMINAL_WIDTHS.end());
        let refused = std::env::var_os("NO_COLOR").is_some_and(|value| !value.is_empty());
        Self { width, colour: !refused }
    }
}
