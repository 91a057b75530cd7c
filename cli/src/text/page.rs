//! A page of text: paragraphs that wrap, headings, tables. The only place that writes escape sequences.

use textwrap::core::display_width;

use super::look::Look;
use super::safe::safe;
use super::table::Table;

/// How a stretch of text stands out, where the reader's screen can show it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Tone {
    /// It does not.
    Plain,
    /// It is what the page is about.
    Strong,
    /// It is there for whoever looks for it.
    Faint,
}

/// A page that grows downward.
#[derive(Debug, Clone)]
pub(crate) struct Page {
    text: String,
    look: Look,
}

impl Page {
    /// An empty page.
    pub(crate) const fn new(look: Look) -> Self {
        Self { text: String::new(), look }
    }

    /// Its columns.
    pub(crate) const fn width(&self) -> usize {
        self.look.width
    }

    /// How many lines it has so far.
    pub(crate) fn height(&self) -> usize {
        self.text.lines().count()
    }

    /// All of it.
    pub(crate) fn into_text(self) -> String {
        self.text
    }

    /// An empty line; never two of them, and none at the top.
    pub(crate) fn gap(&mut self) {
        if !self.text.is_empty() && !self.text.ends_with("\n\n") {
            self.text.push('\n');
        }
    }

    /// A heading, after an empty line.
    pub(crate) fn heading(&mut self, text: &str) {
        self.gap();
        self.wrapped(text, 0, 2, Tone::Strong);
    }

    /// A line that stands out, wrapped if it must.
    pub(crate) fn strong(&mut self, text: &str) {
        self.wrapped(text, 0, 3, Tone::Strong);
    }

    /// A paragraph that stands out, `indent` columns in.
    pub(crate) fn strong_in(&mut self, indent: usize, text: &str) {
        self.wrapped(text, indent, indent, Tone::Strong);
    }

    /// A paragraph, `indent` columns in.
    pub(crate) fn paragraph(&mut self, indent: usize, text: &str) {
        self.wrapped(text, indent, indent, Tone::Plain);
    }

    /// A paragraph that stands back.
    pub(crate) fn faint(&mut self, indent: usize, text: &str) {
        self.wrapped(text, indent, indent, Tone::Faint);
    }

    /// An entry of a list: its further lines stand in by two.
    pub(crate) fn entry(&mut self, indent: usize, text: &str) {
        self.wrapped(text, indent, indent + 2, Tone::Plain);
    }

    /// An entry behind a mark: its further lines stand in as far as its first.
    pub(crate) fn hung(&mut self, indent: usize, mark: &str, text: &str) {
        let hang = indent + display_width(mark);
        for (place, line) in self.lines(text, hang, hang).iter().enumerate() {
            if place == 0 {
                self.push(&" ".repeat(indent), Tone::Plain);
                self.push(mark, Tone::Plain);
                self.push(line.trim_start(), Tone::Plain);
            } else {
                self.push(line, Tone::Plain);
            }
            self.end_line();
        }
    }

    /// A label and what it says, the text hung at column `hang`.
    pub(crate) fn labelled(&mut self, indent: usize, label: &str, hang: usize, text: &str) {
        let label = safe(label);
        let fill = hang.saturating_sub(indent + display_width(&label)).max(1);
        let lines = self.lines(text, hang, hang);
        for (place, line) in lines.iter().enumerate() {
            if place == 0 {
                self.push(&" ".repeat(indent), Tone::Plain);
                self.push(&label, Tone::Faint);
                self.push(&" ".repeat(fill), Tone::Plain);
                self.push(line.trim_start(), Tone::Plain);
            } else {
                self.push(line, Tone::Plain);
            }
            self.end_line();
        }
    }

    /// A table, `indent` columns in.
    pub(crate) fn table(&mut self, indent: usize, table: &Table) {
        let drawn = table.drawn(self.look.width.saturating_sub(indent));
        for (place, line) in drawn.iter().enumerate() {
            self.push(&" ".repeat(indent), Tone::Plain);
            self.push(line, if place == 0 && table.has_heads() { Tone::Faint } else { Tone::Plain });
            self.end_line();
        }
    }

    /// A line as it is, `indent` columns in: every space of it counts.
    pub(crate) fn verbatim(&mut self, indent: usize, line: &str) {
        self.push(&" ".repeat(indent), Tone::Plain);
        self.push(&safe(line), Tone::Plain);
        self.end_line();
    }

    fn wrapped(&mut self, text: &str, first: usize, rest: usize, tone: Tone) {
        for line in self.lines(text, first, rest) {
            self.push(&line, tone);
            self.end_line();
        }
    }

    /// `text` made safe and broken into lines that fit, the first `first` columns in, the others `rest`.
    fn lines(&self, text: &str, first: usize, rest: usize) -> Vec<String> {
        let (first, rest) = (" ".repeat(first), " ".repeat(rest));
        let options = textwrap::Options::new(self.look.width)
            .initial_indent(&first)
            .subsequent_indent(&rest)
            .wrap_algorithm(textwrap::WrapAlgorithm::FirstFit);
        textwrap::wrap(&safe(text), options).into_iter().map(std::borrow::Cow::into_owned).collect()
    }

    /// Adds `text`, which is safe already, to the line.
    fn push(&mut self, text: &str, tone: Tone) {
        let sequence = match tone {
            _ if !self.look.colour || text.trim().is_empty() => None,
            Tone::Plain => None,
            Tone::Strong => Some("\x1b[1m"),
            Tone::Faint => Some("\x1b[2m"),
        };
        match sequence {
            Some(sequence) => {
                let body = text.trim_start();
                self.text.push_str(&text[..text.len() - body.len()]);
                self.text.push_str(sequence);
                self.text.push_str(body);
                self.text.push_str("\x1b[0m");
            }
            None => self.text.push_str(text),
        }
    }

    fn end_line(&mut self) {
        while self.text.ends_with(' ') {
            self.text.pop();
        }
        self.text.push('\n');
    }
}
