//! Text read line by line, each line of a bounded length.

use std::io::{BufRead, Read};

use crate::process::source::{Unreadable, text_of};

/// Longest line that is read, bytes: a scenario of the largest size, its quotes and line ends escaped.
const LONGEST: u64 = 4 << 20;

/// The lines of a text, without their ends; one that is too long or no text is an error in its place.
pub(crate) struct Lines<R> {
    reader: R,
    ended: bool,
}

impl<R: BufRead> Lines<R> {
    /// The lines of what `reader` reads.
    pub(crate) const fn of(reader: R) -> Self {
        Self { reader, ended: false }
    }

    /// The bytes of the next line with its end; none where there is no further line.
    fn bytes(&mut self) -> Result<Vec<u8>, Unreadable> {
        let mut bytes = Vec::new();
        self.reader.by_ref().take(LONGEST).read_until(b'\n', &mut bytes)?;
        if bytes.len() as u64 == LONGEST && bytes.last() != Some(&b'\n') {
            self.skip_rest()?;
            return Err(Unreadable::TooLarge);
        }
        Ok(bytes)
    }

    /// Passes over what is left of a line.
    fn skip_rest(&mut self) -> std::io::Result<()> {
        loop {
            let buffered = self.reader.fill_buf()?;
            let (all, end) = (buffered.len(), buffered.iter().position(|byte| *byte == b'\n'));
            self.reader.consume(end.map_or(all, |end| end + 1));
            if end.is_some() || all == 0 {
                return Ok(());
            }
        }
    }
}

impl<R: BufRead> Iterator for Lines<R> {
    type Item = Result<String, Unreadable>;

    fn next(&mut self) -> Option<Self::Item> {
        if self.ended {
            return None;
        }
        match self.bytes() {
            Ok(bytes) if bytes.is_empty() => None,
            Ok(mut bytes) => {
                if bytes.last() == Some(&b'\n') {
                    bytes.pop();
                }
                if bytes.last() == Some(&b'\r') {
                    bytes.pop();
                }
                Some(text_of(bytes))
            }
            Err(why) => {
                // What the system cannot read once, it is not asked again.
                self.ended = matches!(why, Unreadable::System(_));
                Some(Err(why))
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{LONGEST, Lines, Unreadable};

    #[test]
    fn a_bad_line_is_an_error_in_its_place() {
        let mut text = b"\xef\xbb\xbfone\r\n\n".to_vec();
        text.extend(std::iter::repeat_n(b'x', LONGEST as usize + 10));
        text.extend(b"\ntwo\nca\xe9\nthree");
        let lines: Vec<_> = Lines::of(text.as_slice()).collect();
        assert_eq!(lines.len(), 6);
        assert_eq!(lines[0].as_deref().unwrap(), "one");
        assert_eq!(lines[1].as_deref().unwrap(), "");
        assert!(matches!(lines[2], Err(Unreadable::TooLarge)));
        assert_eq!(lines[3].as_deref().unwrap(), "two");
        assert!(matches!(lines[4], Err(Unreadable::NotText(3))));
        assert_eq!(lines[5].as_deref().unwrap(), "three");
    }
}
