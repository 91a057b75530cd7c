//! Text from a file, made fit for a terminal.

/// What stands in the place of a character that a terminal would obey instead of show.
const STAND_IN: char = '\u{fffd}';

/// Whether a terminal would obey `character`, or turn the text round it, instead of showing it.
pub(crate) fn is_obeyed(character: char) -> bool {
    character.is_control()
        || matches!(character, '\u{200e}' | '\u{200f}' | '\u{2028}'..='\u{202e}' | '\u{2066}'..='\u{2069}' | '\u{feff}')
}

/// `text` on one line, without anything that a terminal would obey.
pub(crate) fn safe(text: &str) -> String {
    let shown = |character| match character {
        '\n' | '\r' | '\t' => ' ',
        obeyed if is_obeyed(obeyed) => STAND_IN,
        shown => shown,
    };
    text.chars().map(shown).collect()
}

/// `text` with its lines kept and every byte offset into it still true: what would be obeyed becomes a sign of as many bytes.
pub(crate) fn safe_in_place(text: &str) -> String {
    let shown = |character: char| match character {
        '\n' | '\t' => character,
        // Before a line feed a carriage return is the end of a line; a space there is not seen.
        '\r' => ' ',
        obeyed if is_obeyed(obeyed) => match obeyed.len_utf8() {
            1 => '?',
            2 => '\u{bf}',
            _ => STAND_IN,
        },
        shown => shown,
    };
    text.chars().map(shown).collect()
}

#[cfg(test)]
mod tests {
    use super::{safe, safe_in_place};

    #[test]
    fn what_a_terminal_would_obey_is_gone() {
        assert_eq!(safe("hall\x1b[2J door\u{9b}31m\n\u{202e}x"), "hall\u{fffd}[2J door\u{fffd}31m \u{fffd}x");
    }

    #[test]
    fn offsets_stay_true() {
        let text = "a\x07b\u{85}c\u{2028}d\r\ne";
        let shown = safe_in_place(text);
        assert_eq!(shown.len(), text.len());
        assert_eq!(shown.find('d'), text.find('d'));
        assert!(!shown.contains('\x07'));
    }
}
