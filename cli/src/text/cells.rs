//! Rows and cells of a spreadsheet, which must show their text and not run it.

use std::io;

use csv::{QuoteStyle, WriterBuilder};

use super::safe::safe;

/// What a spreadsheet takes for the start of a formula (OWASP, CSV injection: `=`, `+`, `-`, `@`, and their full-width
/// forms; tab and line ends cannot occur, since [`safe`] makes spaces of them).
const STARTS: [char; 8] = ['=', '+', '-', '@', '\u{ff1d}', '\u{ff0b}', '\u{ff0d}', '\u{ff20}'];

/// `text` on one line; an apostrophe before what would be taken for a formula, which a spreadsheet does not show.
pub(crate) fn cell(text: &str) -> String {
    let shown = safe(text);
    if shown.trim_start().starts_with(STARTS) { format!("'{shown}") } else { shown }
}

/// Cells as a line: each text in quotes, so that no sign in it starts another cell.
///
/// # Errors
/// None that a line in memory could bring about.
pub(crate) fn line(cells: &[String]) -> io::Result<String> {
    let mut writer = WriterBuilder::new().quote_style(QuoteStyle::NonNumeric).from_writer(Vec::new());
    writer.write_record(cells)?;
    let bytes = writer.into_inner().map_err(|error| io::Error::other(error.to_string()))?;
    Ok(String::from_utf8_lossy(&bytes).into_owned())
}

#[cfg(test)]
mod tests {
    use super::cell;

    #[test]
    fn a_formula_is_shown_and_not_run() {
        // Starts of formulas as OWASP lists them under CSV injection (P).
        for text in ["=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", "\n=1", "  =1", "\u{ff1d}1", "=cmd|' /C calc'!A0"]
        {
            assert!(cell(text).starts_with('\''), "{text:?}");
        }
        for text in ["canal flat", "a=1", "3-seat", "'=1", ""] {
            assert_eq!(cell(text), text);
        }
        assert_eq!(cell("a\u{1b}[2J\nb"), "a\u{fffd}[2J b");
    }
}
