//! A result as JSON: one field a line, a list of plain figures on one line, nothing in it that a terminal would obey.

use std::io::{self, Write};

use serde::Serialize;
use serde_json::ser::{Formatter, PrettyFormatter};

use super::safe::is_obeyed;

/// The value, ready to write, with a line feed at its end.
///
/// # Errors
/// It has a form that JSON has not, as a map whose keys are no text.
pub(crate) fn text(value: &impl Serialize) -> serde_json::Result<String> {
    let mut bytes = Vec::new();
    value.serialize(&mut serde_json::Serializer::with_formatter(&mut bytes, Tidy::default()))?;
    bytes.push(b'\n');
    Ok(String::from_utf8_lossy(&bytes).into_owned())
}

/// The value on one line, without a line feed; errors as of [`text`].
pub(crate) fn line(value: &impl Serialize) -> serde_json::Result<String> {
    let mut bytes = Vec::new();
    value.serialize(&mut serde_json::Serializer::with_formatter(&mut bytes, OneLine))?;
    Ok(String::from_utf8_lossy(&bytes).into_owned())
}

/// Everything on one line.
struct OneLine;

impl Formatter for OneLine {
    fn write_string_fragment<W: ?Sized + Write>(&mut self, writer: &mut W, fragment: &str) -> io::Result<()> {
        write_shown(writer, fragment)
    }
}

/// A stretch of a text with what a terminal would obey written as an escape.
fn write_shown<W: ?Sized + Write>(writer: &mut W, fragment: &str) -> io::Result<()> {
    let mut rest = fragment;
    while let Some((place, obeyed)) = rest.char_indices().find(|(_, character)| is_obeyed(*character)) {
        writer.write_all(&rest.as_bytes()[..place])?;
        write!(writer, "\\u{:04x}", u32::from(obeyed))?;
        rest = &rest[place + obeyed.len_utf8()..];
    }
    writer.write_all(rest.as_bytes())
}

/// Indents objects and lists of objects; keeps lists within lists (shapes, places) on one line.
#[derive(Default)]
struct Tidy {
    pretty: PrettyFormatter<'static>,
    /// Lists open at present that stand on one line.
    flat: usize,
    /// What is open at present: true for a list.
    open: Vec<bool>,
}

impl Tidy {
    /// A list under a key that is known to hold figures only cannot be told ahead; one inside another list can.
    fn in_list(&self) -> bool {
        self.open.last().copied().unwrap_or(false)
    }
}

impl Formatter for Tidy {
    fn begin_array<W: ?Sized + Write>(&mut self, writer: &mut W) -> io::Result<()> {
        if self.flat > 0 || self.in_list() {
            self.flat += 1;
        }
        self.open.push(true);
        if self.flat > 0 { writer.write_all(b"[") } else { self.pretty.begin_array(writer) }
    }

    fn end_array<W: ?Sized + Write>(&mut self, writer: &mut W) -> io::Result<()> {
        self.open.pop();
        if self.flat > 0 {
            self.flat -= 1;
            writer.write_all(b"]")
        } else {
            self.pretty.end_array(writer)
        }
    }

    fn begin_array_value<W: ?Sized + Write>(&mut self, writer: &mut W, first: bool) -> io::Result<()> {
        match (self.flat > 0, first) {
            (true, true) => Ok(()),
            (true, false) => writer.write_all(b", "),
            (false, first) => self.pretty.begin_array_value(writer, first),
        }
    }

    fn end_array_value<W: ?Sized + Write>(&mut self, writer: &mut W) -> io::Result<()> {
        if self.flat > 0 { Ok(()) } else { self.pretty.end_array_value(writer) }
    }

    fn begin_object<W: ?Sized + Write>(&mut self, writer: &mut W) -> io::Result<()> {
        self.open.push(false);
        self.pretty.begin_object(writer)
    }

    fn end_object<W: ?Sized + Write>(&mut self, writer: &mut W) -> io::Result<()> {
        self.open.pop();
        self.pretty.end_object(writer)
    }

    fn begin_object_key<W: ?Sized + Write>(&mut self, writer: &mut W, first: bool) -> io::Result<()> {
        self.pretty.begin_object_key(writer, first)
    }

    fn begin_object_value<W: ?Sized + Write>(&mut self, writer: &mut W) -> io::Result<()> {
        self.pretty.begin_object_value(writer)
    }

    fn end_object_value<W: ?Sized + Write>(&mut self, writer: &mut W) -> io::Result<()> {
        self.pretty.end_object_value(writer)
    }

    fn write_string_fragment<W: ?Sized + Write>(&mut self, writer: &mut W, fragment: &str) -> io::Result<()> {
        write_shown(writer, fragment)
    }
}

#[cfg(test)]
mod tests {
    fn tidy(value: &serde_json::Value) -> String {
        super::text(value).unwrap()
    }

    #[test]
    fn it_reads_back_the_same() {
        let value = serde_json::json!({
            "a": [[1, 2], [3.5, 4]], "b": [], "c": [{ "d": [[[0, 1]]] }, {}], "name": "x\u{9b}\u{202e}\u{7f}\u{1b}y"
        });
        let text = tidy(&value);
        assert_eq!(serde_json::from_str::<serde_json::Value>(&text).unwrap(), value);
        assert!(text.contains("[1, 2]"), "{text}");
        assert!(!text.contains(|character: char| character != '\n' && super::is_obeyed(character)), "{text:?}");
    }
}
