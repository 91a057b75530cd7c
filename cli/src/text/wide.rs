//! Letters that take the room of two, as those of Chinese and Japanese do.

use textwrap::core::display_width;

/// Whether it is as wide as it is high.
pub(crate) fn is_wide(letter: char) -> bool {
    display_width(letter.encode_utf8(&mut [0; 4])) == 2
}
