//! A sheet as a part of a page: its tones are the page's to say, and to change, as in the dark.

use super::{Font, Sheet, Tone, Typeface, svg};

/// What a style sheet says of the tones: the page's own paper, and in the dark lighter lines on darker fills. Paper is printed
/// in plain tones.
const IN_PAGE: &str = include_str!("svg_in_page.css");

/// The paper of a drawing that stands in no page.
const ALONE: &str = ":root{--paper:#fdfcfa}@media (prefers-color-scheme:dark){:root{--paper:#121416}}";

/// What every page with drawings says of their tones.
pub(crate) fn style_in_page() -> String {
    plain_tones() + IN_PAGE
}

/// Each tone as it is printed.
pub(crate) fn plain_tones() -> String {
    let tone = |tone: &Tone| format!("--plan-{}:{};", property(*tone), tone.code());
    format!(":root{{{}}}\n", Tone::ALL.iter().map(tone).collect::<String>())
}

/// The sheet as SVG whose every tone is a property that the page's style sets.
pub(crate) fn svg_in_page(sheet: &Sheet) -> String {
    toned(svg(sheet, Font::Beside, &Typeface::default()))
}

/// The sheet as a file by itself, which turns dark where the page that shows it is dark.
pub(crate) fn svg_with_tones(sheet: &Sheet) -> String {
    // The first style is the font's: text goes in escaped.
    toned(svg(sheet, Font::Within, &Typeface::default())).replacen(
        "<style>",
        &format!("<style>{ALONE}{}", style_in_page()),
        1,
    )
}

fn toned(svg: String) -> String {
    let toned = |svg: String, tone: &Tone| {
        let code = tone.code();
        // Text goes in escaped, so that a code within quotes is a mark's own.
        svg.replace(&format!("=\"{code}\""), &format!("=\"var(--plan-{})\"", property(*tone)))
    };
    Tone::ALL.iter().fold(svg, toned)
}

/// What a style sheet calls a tone.
const fn property(tone: Tone) -> &'static str {
    match tone {
        Tone::Ink => "ink",
        Tone::Wall => "wall",
        Tone::Grey => "grey",
        Tone::Pale => "pale",
        Tone::Piece => "piece",
        Tone::Seat => "seat",
        Tone::Rug => "rug",
        Tone::Floor => "floor",
        Tone::Fixed => "fixed",
        Tone::Paper => "paper",
        Tone::Blue => "blue",
        Tone::Vermilion => "vermilion",
        Tone::Green => "green",
    }
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use super::Tone;

    #[test]
    fn no_two_tones_are_one_colour() {
        let codes: BTreeSet<String> = Tone::ALL.iter().map(|tone| tone.code()).collect();
        assert_eq!(codes.len(), Tone::ALL.len());
    }
}
