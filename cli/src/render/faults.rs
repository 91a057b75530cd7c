//! Every fault of a file, each under its own line, each with its remedy.

use std::fmt;

use elbowroom_model::Fault;
use miette::{Diagnostic, GraphicalReportHandler, GraphicalTheme, LabeledSpan, NamedSource, SourceCode};

use crate::process::source::Source;
use crate::text::look::Look;
use crate::text::safe::{safe, safe_in_place};
use crate::words;

/// Faults shown with their line; any more are told in a line each, so that a file that is wrong all over stays readable.
const SHOWN_AT_LENGTH: usize = 40;
/// A line longer than this, bytes, is not shown: nobody wrote it by hand.
const LONGEST_LINE: usize = 400;

/// All faults of `scenario`, then how many there are.
pub(crate) fn text(scenario: &Source, faults: &[Fault], look: Look) -> String {
    let name = safe(&scenario.name);
    let shown = NamedSource::new(&name, safe_in_place(&scenario.text));
    let handler = handler(look);
    let mut text = String::new();
    for (place, fault) in faults.iter().enumerate() {
        let shown = (place < SHOWN_AT_LENGTH && is_short_line(&scenario.text, fault)).then_some(&shown);
        let marked = shown.map_or(0, |_| on_its_line(&scenario.text, fault));
        let report = Report { message: message(fault, &name, shown.is_some()), fault, shown, marked };
        if place >= SHOWN_AT_LENGTH || handler.render_report(&mut text, &report).is_err() {
            text.push_str(&format!("{report}\n"));
        }
        text.push('\n');
    }
    text.push_str(&words::failure::faults(faults.len(), &name));
    text
}

/// How a fault is drawn.
fn handler(look: Look) -> GraphicalReportHandler {
    let theme = if look.colour { GraphicalTheme::unicode() } else { GraphicalTheme::unicode_nocolor() };
    GraphicalReportHandler::new_themed(theme).with_width(look.width).with_context_lines(1).with_links(false)
}

/// What is wrong, with the place in words where the line itself is not shown.
fn message(fault: &Fault, name: &str, line_is_shown: bool) -> String {
    let message = safe(&fault.message);
    match fault.place {
        Some(place) if !line_is_shown => format!("{name}, line {}: {message}", place.line),
        _ => message,
    }
}

/// Whether the line of `fault` can be had and is short enough to show, with the one before and the one after.
fn is_short_line(text: &str, fault: &Fault) -> bool {
    let Some(place) = fault.place else { return false };
    let lines = text.lines().skip(place.line.saturating_sub(2)).take(3);
    place.offset + place.length <= text.len()
        && text.is_char_boundary(place.offset)
        && text.is_char_boundary(place.offset + place.length)
        && lines.map(str::len).all(|length| length <= LONGEST_LINE)
}

/// How much of a fault's place lies on its first line, bytes: what runs over many lines would fill the screen.
fn on_its_line(text: &str, fault: &Fault) -> usize {
    let Some(place) = fault.place else { return 0 };
    let rest = text.get(place.offset..place.offset + place.length).unwrap_or_default();
    rest.find(['\n', '\r']).unwrap_or(rest.len())
}

/// A fault as miette draws it.
#[derive(Debug)]
struct Report<'a> {
    message: String,
    fault: &'a Fault,
    shown: Option<&'a NamedSource<String>>,
    /// How much is marked, bytes.
    marked: usize,
}

impl fmt::Display for Report<'_> {
    fn fmt(&self, formatter: &mut fmt::Formatter<'_>) -> fmt::Result {
        formatter.write_str(&self.message)
    }
}

impl std::error::Error for Report<'_> {}

impl Diagnostic for Report<'_> {
    fn help<'a>(&'a self) -> Option<Box<dyn fmt::Display + 'a>> {
        Some(Box::new(words::failure::remedy_and_code(&safe(&self.fault.remedy), self.fault.code)))
    }

    fn source_code(&self) -> Option<&dyn SourceCode> {
        self.shown.map(|shown| shown as &dyn SourceCode)
    }

    fn labels(&self) -> Option<Box<dyn Iterator<Item = LabeledSpan> + '_>> {
        let place = self.fault.place.filter(|_| self.shown.is_some())?;
        let label = self.fault.item.as_deref().map_or_else(|| "here".to_owned(), safe);
        Some(Box::new(std::iter::once(LabeledSpan::new(Some(label), place.offset, self.marked))))
    }
}
