//! How many rows a table has, counted without the readers: RFC 4180 (P), with rows in which nothing stands left out.

/// Rows of a table parted by `mark`, its header not counted.
pub(crate) fn rows(text: &str, mark: char) -> usize {
    let (mut rows, mut quoted, mut starts, mut says) = (0, false, true, false);
    let mut signs = text.chars().peekable();
    while let Some(sign) = signs.next() {
        match sign {
            '"' if quoted && signs.peek() == Some(&'"') => says = signs.next().is_some(),
            '"' if quoted => quoted = false,
            '"' if starts => quoted = true,
            '\n' | '\r' if !quoted => {
                rows += usize::from(says);
                says = false;
            }
            _ => says |= !sign.is_whitespace() && (quoted || sign != mark),
        }
        starts = !quoted && (sign == mark || matches!(sign, '\n' | '\r'));
    }
    (rows + usize::from(says)).saturating_sub(1)
}

/// The counts that a table may have, by what its first line says of the mark, or else by every mark there is.
pub(crate) fn counts(text: &str) -> Vec<usize> {
    let said = text.split_once('\n').filter(|(first, _)| first.starts_with("sep="));
    let rest = said.map_or(text, |(_, rest)| rest);
    [',', ';', '\t'].map(|mark| rows(rest, mark)).to_vec()
}

/// The bytes as text, by what their mark says.
pub(crate) fn text_of(bytes: &[u8]) -> String {
    let wide = |unit: fn([u8; 2]) -> u16| {
        let units: Vec<u16> = bytes[2..].as_chunks::<2>().0.iter().map(|pair| unit(*pair)).collect();
        String::from_utf16_lossy(&units)
    };
    let text = match bytes {
        [0xff, 0xfe, ..] => wide(u16::from_le_bytes),
        [0xfe, 0xff, ..] => wide(u16::from_be_bytes),
        _ => String::from_utf8_lossy(bytes).into_owned(),
    };
    text.strip_prefix('\u{feff}').map_or(text.clone(), str::to_owned).replace("\r\n", "\n").replace('\r', "\n")
}
