//! A file's text as messages repeat it.

/// Longest piece of a file's text that a message repeats, characters.
const LONGEST_QUOTE: usize = 60;

/// Whether a character could move a cursor, change a terminal or turn the reading direction.
#[must_use]
pub fn is_control(character: char) -> bool {
    character.is_control()
        || matches!(character, '\u{2028}' | '\u{2029}' | '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}' | '\u{feff}')
}

/// `text` with every control character replaced, so that it can be shown anywhere.
#[must_use]
pub fn clean(text: &str) -> String {
    text.chars().map(|c| if is_control(c) { '\u{fffd}' } else { c }).collect()
}

/// A piece of the file's text as a message repeats it: clean, and cut where it is long.
#[must_use]
pub fn quoted(text: &str) -> String {
    let short: String = clean(text).chars().take(LONGEST_QUOTE).collect();
    if text.chars().count() > LONGEST_QUOTE { format!("{short}...") } else { short }
}
