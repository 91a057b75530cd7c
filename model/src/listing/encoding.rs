//! From bytes to text: UTF-8, or UTF-16 that says so by its byte order mark. Anything else is refused, not guessed. Lines
//! end with a line feed once read, whichever of the three ways to end them was used.

use crate::fault::{Fault, Place};

/// Largest table that is read, bytes.
pub const LARGEST: usize = 256 << 20;

/// The bytes as text, a byte order mark taken off, every line ended alike.
pub(super) fn text(bytes: &[u8]) -> Result<String, Box<Fault>> {
    if bytes.len() > LARGEST {
        let message = format!("The list is {} bytes long; at most {} are read.", bytes.len(), LARGEST);
        return Err(fault("file_too_large", message, "Split it.", None));
    }
    let text = match bytes {
        [0xff, 0xfe, rest @ ..] => utf16(rest, u16::from_le_bytes)?,
        [0xfe, 0xff, rest @ ..] => utf16(rest, u16::from_be_bytes)?,
        [0xef, 0xbb, 0xbf, rest @ ..] => utf8(rest)?,
        rest => utf8(rest)?,
    };
    if text.trim().is_empty() {
        let remedy = "Write a header line (kind, name, width, depth) and a row for each piece.";
        return Err(fault("empty_file", "The list is empty.".to_owned(), remedy, None));
    }
    Ok(if text.contains('\r') { text.replace("\r\n", "\n").replace('\r', "\n") } else { text })
}

fn utf8(bytes: &[u8]) -> Result<String, Box<Fault>> {
    if let Some(at) = bytes.iter().position(|byte| *byte == 0) {
        let message = "The list holds NUL bytes: it is no text, or UTF-16 without its mark.".to_owned();
        return Err(fault("not_text", message, "Save it again as CSV in UTF-8.", Some(line_of(bytes, at))));
    }
    match std::str::from_utf8(bytes) {
        Ok(text) => Ok(text.to_owned()),
        Err(error) => {
            let at = error.valid_up_to();
            let byte = bytes.get(at).copied().unwrap_or_default();
            let message = format!("The list is not in UTF-8: the byte {byte:#04x} stands in no such text.");
            let remedy = "Save it again as CSV in UTF-8: which letter an older encoding meant is not guessed.";
            Err(fault("not_text", message, remedy, Some(line_of(bytes, at))))
        }
    }
}

fn utf16(bytes: &[u8], unit: fn([u8; 2]) -> u16) -> Result<String, Box<Fault>> {
    let (pairs, rest) = bytes.as_chunks::<2>();
    let decoded: Result<String, _> = char::decode_utf16(pairs.iter().map(|pair| unit(*pair))).collect();
    match decoded {
        Ok(text) if rest.is_empty() && !text.contains('\0') => Ok(text),
        _ => {
            let message = "The list says that it is UTF-16, and is not.".to_owned();
            Err(fault("not_text", message, "Save it again as CSV in UTF-8.", None))
        }
    }
}

fn line_of(bytes: &[u8], at: usize) -> usize {
    let ends = |place: &usize| match bytes.get(*place) {
        Some(b'\n') => true,
        Some(b'\r') => bytes.get(place + 1) != Some(&b'\n'),
        _ => false,
    };
    1 + (0..at).filter(ends).count()
}

fn fault(code: &'static str, message: String, remedy: &str, line: Option<usize>) -> Box<Fault> {
    let place = line.map(|line| Place { line, column: 1, offset: 0, length: 0 });
    Box::new(Fault { code, item: None, message, remedy: remedy.to_owned(), place })
}
