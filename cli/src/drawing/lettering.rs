//! The letters: DejaVu Sans Condensed (licence beside the files in `cli/fonts`), and how wide words are in it.

use ttf_parser::Face;

use crate::text::wide::is_wide;

/// Book or bold.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Weight {
    /// For most.
    Book,
    /// For what a sheet is about.
    Bold,
}

impl Weight {
    /// The font's file.
    pub(crate) const fn file(self) -> &'static [u8] {
        match self {
            Self::Book => include_bytes!("../../fonts/DejaVuSansCondensed.ttf"),
            Self::Bold => include_bytes!("../../fonts/DejaVuSansCondensed-Bold.ttf"),
        }
    }
}

/// How far letters reach above the line that they stand on, in sizes of the type.
pub(crate) const RISE: f64 = 0.76;
/// How far they reach below it.
pub(crate) const FALL: f64 = 0.24;
/// Taken for a letter that the font has not, in sizes of the type: so much, or as much as it is high where it is written in a
/// square.
const UNKNOWN: f64 = 0.6;
const SQUARE: f64 = 1.0;

/// Width of `text` on one line at this size, mm.
pub(crate) fn width_of(text: &str, size: f64, weight: Weight) -> f64 {
    match Face::parse(weight.file(), 0) {
        Ok(face) => width_in(&face, text, size),
        Err(_) => UNKNOWN * size * text.chars().count() as f64,
    }
}

/// The same in any font.
pub(super) fn width_in(face: &Face<'_>, text: &str, size: f64) -> f64 {
    let units = f64::from(face.units_per_em());
    let advance = |letter: char| {
        let glyph = face.glyph_index(letter).and_then(|glyph| face.glyph_hor_advance(glyph));
        glyph.map_or_else(|| unknown(letter), |advance| f64::from(advance) / units)
    };
    text.chars().map(advance).sum::<f64>() * size
}

fn unknown(letter: char) -> f64 {
    if is_wide(letter) { SQUARE } else { UNKNOWN }
}

/// Letters of a text that a sheet shows at most: no name that somebody means is longer.
const LONGEST: usize = 2_000;

/// `text`, its end left off with a mark where it is longer than any sheet shows.
pub(crate) fn clipped(text: &str) -> String {
    match text.char_indices().nth(LONGEST) {
        Some((end, _)) => format!("{}\u{2026}", &text[..end]),
        None => text.to_owned(),
    }
}

/// What holds two words on one line.
const HELD: char = '\u{a0}';

/// `text` broken into lines no wider than `width`; a word that is wider by itself is cut. Two dimensions stay on one line.
pub(crate) fn wrapped(text: &str, size: f64, weight: Weight, width: f64) -> Vec<String> {
    let (mut lines, mut line) = (Vec::new(), String::new());
    let held = clipped(text).replace(" \u{d7} ", &format!("{HELD}\u{d7}{HELD}"));
    for word in held.split(|letter: char| letter.is_whitespace() && letter != HELD).filter(|word| !word.is_empty()) {
        let longer = if line.is_empty() { word.to_owned() } else { format!("{line} {word}") };
        if width_of(&longer, size, weight) <= width {
            line = longer;
            continue;
        }
        if !line.is_empty() {
            lines.push(std::mem::take(&mut line));
        }
        line = cut(word, size, weight, width);
    }
    if !line.is_empty() {
        lines.push(line);
    }
    lines.into_iter().map(|line| line.replace(HELD, " ")).collect()
}

/// `word`, its end left off with a mark where it is wider than `width`.
pub(crate) fn cut(word: &str, size: f64, weight: Weight, width: f64) -> String {
    if width_of(word, size, weight) <= width {
        return word.to_owned();
    }
    let mut kept = String::new();
    for letter in word.chars() {
        if width_of(&format!("{kept}{letter}\u{2026}"), size, weight) > width {
            break;
        }
        kept.push(letter);
    }
    kept + "\u{2026}"
}

#[cfg(test)]
mod tests {
    use ttf_parser::Face;

    use super::{Weight, width_of, wrapped};

    /// Signs that sheets use, and letters of the languages that a room's names may be in.
    #[test]
    fn the_font_has_the_letters() {
        let signs = "⌀½¼⅛¾⅜⅝⅞°×−→↑″′m²–—…•①";
        let letters = "ÀÉÎÕÜßåæçđęğħłńőřśťůžșțŷΑΩαωЖЯжяЄЇІҐ";
        for weight in [Weight::Book, Weight::Bold] {
            let face = Face::parse(weight.file(), 0).unwrap();
            let missing: Vec<char> =
                signs.chars().chain(letters.chars()).filter(|letter| face.glyph_index(*letter).is_none()).collect();
            assert!(missing.is_empty(), "{weight:?}: {missing:?}");
        }
    }

    #[test]
    fn lines_are_no_wider_than_asked() {
        let text = "corner sofa 280 x 230 x 98 and a-word-that-is-longer-than-any-line-could-be-on-this-sheet";
        for line in wrapped(text, 2.5, Weight::Book, 20.0) {
            assert!(width_of(&line, 2.5, Weight::Book) <= 20.0, "{line}");
        }
    }

    #[test]
    fn dimensions_stay_on_one_line() {
        let width = width_of("a sofa of 220 \u{d7}", 2.5, Weight::Book);
        let lines = wrapped("a sofa of 220 \u{d7} 110", 2.5, Weight::Book, width);
        assert_eq!(lines, ["a sofa of", "220 \u{d7} 110"]);
    }
}
