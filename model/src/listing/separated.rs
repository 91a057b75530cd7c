//! Tables whose cells are parted by commas, semicolons or tabs. The one module of this member that names the `csv` crate.

use csv::{ReaderBuilder, StringRecord};

use super::faults::FaultList;
use super::gathering::Gathering;
use super::grid::Grid;
use super::quoting;
use crate::quote::{clean, quoted};

/// What may part cells, the more usual first.
const DELIMITERS: [u8; 3] = [b',', b';', b'\t'];

/// The cells of `text`, `most_rows` rows at most; `is_known`: whether a header is one of those looked for. `None` after
/// faults that keep it from being read.
pub(super) fn grid(
    text: &str,
    most_rows: usize,
    is_known: &dyn Fn(&str) -> bool,
    told: &mut FaultList,
) -> Option<Grid> {
    let (text, skipped, delimiter) = dialect(text, is_known, told)?;
    if !quoting::sound(text, 1 + skipped, delimiter, told) {
        return None;
    }
    let mut reader =
        ReaderBuilder::new().delimiter(delimiter).has_headers(false).flexible(true).from_reader(text.as_bytes());
    let mut gathering = Gathering::new(most_rows);
    let mut record = StringRecord::new();
    let mut lines = Lines { text, at: 0, line: 1 + skipped };
    loop {
        match reader.read_record(&mut record) {
            Ok(true) => {}
            Ok(false) => return gathering.finish(told),
            Err(error) => {
                told.add(
                    lines.line,
                    "not_text",
                    "",
                    clean(&error.to_string()),
                    "Save it again as CSV in UTF-8.".to_owned(),
                );
                return None;
            }
        }
        let line = lines.line_of(record.position().map_or(0, |position| position.byte()));
        gathering.row(line, record.iter(), Vec::new(), told)?;
    }
}

/// The lines of a text, counted as the records go by: the crate's own count starts a record at the blank line before it.
struct Lines<'a> {
    text: &'a str,
    at: usize,
    line: usize,
}

impl Lines<'_> {
    fn line_of(&mut self, byte: u64) -> usize {
        let bytes = self.text.as_bytes();
        let mut to = usize::try_from(byte).unwrap_or(bytes.len()).min(bytes.len());
        while bytes.get(to).is_some_and(|byte| *byte == b'\n') {
            to += 1;
        }
        self.line += bytes.get(self.at..to).map_or(0, |gone| gone.iter().filter(|byte| **byte == b'\n').count());
        self.at = self.at.max(to);
        self.line
    }
}

/// The text from its header on, the lines before that, and what parts its cells: what a first line `sep=;` says, else
/// what lets the header name the most columns that are known.
fn dialect<'a>(text: &'a str, is_known: &dyn Fn(&str) -> bool, told: &mut FaultList) -> Option<(&'a str, usize, u8)> {
    let (first, rest) = text.split_once('\n').unwrap_or((text, ""));
    if let Some(mark) = first.strip_prefix("sep=") {
        let said = DELIMITERS.into_iter().find(|delimiter| mark.as_bytes().first() == Some(delimiter));
        if said.is_none() {
            let message = format!("`{}` names no mark that may part cells.", quoted(first));
            let remedy = "Part cells by commas, semicolons or tabs, or leave the line out.".to_owned();
            told.add(1, "wrong_separator", "", message, remedy);
        }
        return said.map(|delimiter| (rest, 1, delimiter));
    }
    let header = text.lines().find(|line| !line.trim().is_empty()).unwrap_or_default();
    let known = |delimiter: &u8| {
        let cells = header.split(char::from(*delimiter)).map(|cell| cell.trim().trim_matches('"'));
        cells.filter(|cell| is_known(cell)).count()
    };
    let best = DELIMITERS.into_iter().rev().max_by_key(known).unwrap_or(b',');
    Some((text, 0, best))
}
