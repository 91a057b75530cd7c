//! The letters of a sheet: our own, and those of a font that somebody gives for the letters that ours has not.

use std::collections::BTreeSet;

use ttf_parser::Face;

use super::lettering::{width_in, width_of};
use super::{Mark, Sheet, Weight};
use crate::text::safe::safe;

/// What sheets are lettered in.
#[derive(Debug, Default)]
pub(crate) struct Typeface {
    given: Option<Vec<u8>>,
}

/// Letters that come from one font.
#[derive(Debug, PartialEq, Eq)]
pub(super) struct Run {
    /// From the font that was given.
    pub(super) is_given: bool,
    pub(super) text: String,
}

impl Typeface {
    /// Our own letters, and those of this font file (of a collection its first) where ours has none; `None` where it is no font.
    pub(crate) fn with(file: Vec<u8>) -> Option<Self> {
        Face::parse(&file, 0).ok()?;
        Some(Self { given: Some(file) })
    }

    /// The font that was given.
    pub(super) fn given(&self) -> Option<&[u8]> {
        self.given.as_deref()
    }

    /// The letters of these that come from the font that was given.
    pub(super) fn given_of(&self, letters: &BTreeSet<char>) -> BTreeSet<char> {
        let Some(fonts) = self.fonts() else { return BTreeSet::new() };
        letters.iter().copied().filter(|letter| fonts.is_given(*letter)).collect()
    }

    /// The letters on these sheets that no font at hand has.
    pub(crate) fn lacks(&self, sheets: &[Sheet]) -> BTreeSet<char> {
        let Ok(ours) = Face::parse(Weight::Book.file(), 0) else { return BTreeSet::new() };
        let missing: BTreeSet<char> =
            sheets.iter().flat_map(letters).filter(|letter| ours.glyph_index(*letter).is_none()).collect();
        let given = self.given_of(&missing);
        missing.difference(&given).copied().collect()
    }

    /// A text as runs of letters from one font each.
    pub(super) fn runs(&self, text: &str) -> Vec<Run> {
        let Some(fonts) = self.fonts() else { return vec![Run { is_given: false, text: text.to_owned() }] };
        let mut runs: Vec<Run> = Vec::new();
        for letter in text.chars() {
            let is_given = fonts.is_given(letter);
            match runs.last_mut() {
                Some(run) if run.is_given == is_given => run.text.push(letter),
                _ => runs.push(Run { is_given, text: letter.to_string() }),
            }
        }
        runs
    }

    /// How wide a run of letters is at this size, mm.
    pub(super) fn width_of(&self, run: &Run, size: f64, weight: Weight) -> f64 {
        match self.fonts().filter(|_| run.is_given) {
            Some(fonts) => width_in(&fonts.given, &run.text, size),
            None => width_of(&run.text, size, weight),
        }
    }

    /// Ours and the one that was given; `None` without one.
    fn fonts(&self) -> Option<Fonts<'_>> {
        let given = Face::parse(self.given()?, 0).ok()?;
        Some(Fonts { ours: Face::parse(Weight::Book.file(), 0).ok()?, given })
    }
}

struct Fonts<'f> {
    ours: Face<'f>,
    given: Face<'f>,
}

impl Fonts<'_> {
    /// Whether the letter comes from the font that was given: ours goes before.
    fn is_given(&self, letter: char) -> bool {
        self.ours.glyph_index(letter).is_none() && self.given.glyph_index(letter).is_some()
    }
}

/// Every letter of a sheet.
pub(super) fn letters(sheet: &Sheet) -> BTreeSet<char> {
    let texts = sheet.marks.iter().filter_map(|mark| match mark {
        Mark::Text(text) => Some(safe(&text.text)),
        Mark::Path(_) | Mark::Layer(_) => None,
    });
    let mut found = BTreeSet::new();
    texts.for_each(|text| found.extend(text.chars()));
    found
}

#[cfg(test)]
mod tests {
    use std::collections::{BTreeMap, BTreeSet};

    use ttf_parser::Face;

    use super::{Run, Typeface};
    use crate::drawing::web_font::with_letters;
    use crate::drawing::{At, Font, Mark, Paper, Sheet, Side, Text, Tone, Weight, pdf, png, svg, width_of};

    /// A font whose one letter is one that ours has not: drawn as our A.
    fn one_letter() -> Vec<u8> {
        let ours = Weight::Book.file();
        let glyph = Face::parse(ours, 0).unwrap().glyph_index('A').unwrap().0;
        with_letters(ours, ours, &BTreeMap::from([('\u{5ba2}', glyph)])).unwrap()
    }

    fn sheet(text: &str) -> Sheet {
        let text = Text {
            at: At::new(10.0, 20.0),
            text: text.to_owned(),
            size: 5.0,
            weight: Weight::Bold,
            side: Side::Start,
            turned: 0.0,
            tone: Tone::Ink,
            in_table: None,
        };
        Sheet {
            title: String::new(),
            description: String::new(),
            paper: Paper { width: 80.0, height: 40.0 },
            marks: vec![Mark::Text(text)],
        }
    }

    #[test]
    fn what_is_no_font_is_none() {
        assert!(Typeface::with(b"no font".to_vec()).is_none());
        assert!(Typeface::with(Weight::Book.file().to_vec()).is_some());
    }

    #[test]
    fn letters_that_ours_has_not_come_from_the_font_that_is_given() {
        let (ours, given) = (Typeface::default(), Typeface::with(one_letter()).unwrap());
        let name = "sofa \u{5ba2}\u{5385}";
        assert_eq!(ours.runs(name), [Run { is_given: false, text: name.to_owned() }]);
        let run = |is_given, text: &str| Run { is_given, text: text.to_owned() };
        assert_eq!(given.runs(name), [run(false, "sofa "), run(true, "\u{5ba2}"), run(false, "\u{5385}")]);
        // What comes next begins where the letter ends in its own font.
        let letter = given.width_of(&run(true, "\u{5ba2}"), 5.0, Weight::Bold);
        assert_eq!(letter, width_of("A", 5.0, Weight::Book));
        assert_eq!(ours.lacks(&[sheet(name)]), BTreeSet::from(['\u{5ba2}', '\u{5385}']));
        assert_eq!(given.lacks(&[sheet(name)]), BTreeSet::from(['\u{5385}']));
    }

    /// As a picture the letter is drawn as our own A is, in the SVG it goes along, and the PDF holds both fonts.
    #[test]
    fn every_form_draws_the_letters_that_are_given() {
        let given = Typeface::with(one_letter()).unwrap();
        let drawn = svg(&sheet("sofa \u{5ba2}"), Font::Within, &given);
        assert!(drawn.contains("font-family:'elbowroom given'") && drawn.contains(">\u{5ba2}</tspan>"), "{drawn}");
        let picture = |text: &str, typeface: &Typeface| png(&sheet(text), typeface).unwrap();
        let book = |text: &str| {
            let mut sheet = sheet(text);
            if let [Mark::Text(text)] = &mut sheet.marks[..] {
                text.weight = Weight::Book;
            }
            sheet
        };
        assert_eq!(picture("\u{5ba2}", &given), png(&book("A"), &Typeface::default()).unwrap());
        assert!(picture("\u{5ba2}", &given) != picture("\u{5ba2}", &Typeface::default()));
        let document = pdf(&[sheet("sofa \u{5ba2}")], &given).unwrap();
        let plain = pdf(&[sheet("sofa \u{5ba2}")], &Typeface::default()).unwrap();
        let fonts = |file: &[u8]| String::from_utf8_lossy(file).matches("/FontFile").count();
        assert_eq!((fonts(&document), fonts(&plain)), (2, 1));
    }
}
