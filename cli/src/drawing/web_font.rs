//! The font for what a browser shows: only the letters that are used, within the page itself.
//!
//! A subset for print has no table from letters to glyphs, and a browser needs one: it is put back here, in the one form
//! (12: runs of code points) that holds every letter.

use std::collections::{BTreeMap, BTreeSet};
use std::fmt::Write;

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use subsetter::GlyphRemapper;
use ttf_parser::Face;

use super::typeface::letters;
use super::{Mark, Sheet, Typeface, Weight};

/// The name that the font goes by in what is written.
pub(super) const FAMILY: &str = "elbowroom plan";

/// The name of the font that was given for the letters that ours has not.
pub(super) const GIVEN: &str = "elbowroom given";

/// What a style sheet says of the fonts that `sheet` is lettered in.
pub(super) fn faces(sheet: &Sheet, typeface: &Typeface) -> String {
    let mut css = faces_of(std::iter::once(sheet), "");
    let font = typeface.given().and_then(|file| font_of(file, &typeface.given_of(&letters(sheet))));
    put_face(&mut css, GIVEN, "normal", font);
    css
}

/// The same for several sheets on one page, whose own words are `text`.
pub(crate) fn faces_of<'a>(sheets: impl Iterator<Item = &'a Sheet>, text: &str) -> String {
    let own: BTreeSet<char> = text.chars().collect();
    let (mut book, mut bold) = (own.clone(), own);
    for text in sheets.flat_map(|sheet| &sheet.marks).filter_map(|mark| match mark {
        Mark::Text(text) => Some(text),
        Mark::Path(_) | Mark::Layer(_) => None,
    }) {
        let letters = if text.weight == Weight::Bold { &mut bold } else { &mut book };
        letters.extend(crate::text::safe::safe(&text.text).chars());
    }
    let mut css = String::new();
    for (weight, letters, name) in [(Weight::Book, book, "normal"), (Weight::Bold, bold, "bold")] {
        put_face(&mut css, FAMILY, name, font_of(weight.file(), &letters));
    }
    css
}

fn put_face(css: &mut String, family: &str, weight: &str, font: Option<Vec<u8>>) {
    let Some(data) = font.map(|font| STANDARD.encode(font)) else { return };
    let _ = write!(
        css,
        "@font-face{{font-family:'{family}';font-weight:{weight};src:url(data:font/ttf;base64,{data}) format('truetype')}}"
    );
}

/// Letters of a page whose words are not known beforehand.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Letters {
    /// Those without marks, and the signs of plans: `U+20-7E, U+B0, U+B2, U+D7, U+2013-2033, U+FFFD`.
    Plain,
    /// The others of western Europe: `U+A0-AF, U+B1, U+B3-D6, U+D8-FF`.
    Further,
}

/// Signs of plans that are no letters.
const SIGNS: &str =
    "\u{b0}\u{b2}\u{d7}\u{2013}\u{2014}\u{2018}\u{2019}\u{201c}\u{201d}\u{2026}\u{2032}\u{2033}\u{fffd}";

/// The font with these letters.
pub(crate) fn letters_of(weight: Weight, letters: Letters) -> Vec<u8> {
    let letters: BTreeSet<char> = match letters {
        Letters::Plain => ('\u{20}'..='\u{7e}').chain(SIGNS.chars()).collect(),
        Letters::Further => ('\u{a0}'..='\u{ff}').filter(|letter| !SIGNS.contains(*letter)).collect(),
    };
    font_of(weight.file(), &letters).and_then(|font| briefly_named(&font)).unwrap_or_default()
}

/// The font with these letters alone; `None` where there are none.
fn font_of(file: &[u8], letters: &BTreeSet<char>) -> Option<Vec<u8>> {
    let face = Face::parse(file, 0).ok()?;
    let mut remapper = GlyphRemapper::new();
    let known = letters.iter().filter_map(|letter| Some((*letter, face.glyph_index(*letter)?)));
    let glyphs: BTreeMap<char, u16> = known.map(|(letter, glyph)| (letter, remapper.remap(glyph.0))).collect();
    if glyphs.is_empty() {
        return None;
    }
    let subset = subsetter::subset(file, 0, &remapper).ok()?;
    with_letters(&subset, file, &glyphs)
}

/// Puts the tables into a font that a browser asks for: from letters to glyphs, and what the whole font says of itself.
pub(super) fn with_letters(subset: &[u8], whole: &[u8], glyphs: &BTreeMap<char, u16>) -> Option<Vec<u8>> {
    let mut tables = tables(subset)?;
    let whole = self::tables(whole)?;
    tables.insert(*b"cmap", cmap(glyphs));
    for name in [*b"OS/2", *b"name"] {
        if let Some(table) = whole.get(&name) {
            tables.insert(name, table.clone());
        }
    }
    // Version 3: no names of glyphs.
    let mut post = whole.get(b"post").and_then(|post| post.get(..32)).map_or_else(|| vec![0; 32], <[u8]>::to_vec);
    post[..4].copy_from_slice(&0x0003_0000_u32.to_be_bytes());
    tables.insert(*b"post", post);
    Some(assembled(&tables))
}

/// The font with its names told once, in as few bytes as they take, its licence among them: two thirds of a font of a hundred
/// letters are its names.
fn briefly_named(font: &[u8]) -> Option<Vec<u8>> {
    let mut tables = tables(font)?;
    let names = tables.get(b"name").map(|table| brief_names(table))?;
    tables.insert(*b"name", names?);
    Some(assembled(&tables))
}

/// What a font's licence wants told wherever the font goes: whose it is, and the licence itself; and what it is called.
const TOLD: [u16; 4] = [0, 1, 2, 13];

/// The records of a table of names that are told: those for platform 1, a byte a letter.
fn brief_names(table: &[u8]) -> Option<Vec<u8>> {
    let word = |at: usize| Some(u16::from_be_bytes(table.get(at..at + 2)?.try_into().ok()?));
    let (count, start) = (usize::from(word(2)?), usize::from(word(4)?));
    let (mut records, mut strings, mut kept) = (Vec::new(), Vec::new(), 0_u16);
    for record in (0..count).map(|which| 6 + 12 * which) {
        if word(record)? != 1 || !TOLD.contains(&word(record + 6)?) {
            continue;
        }
        let (length, from) = (usize::from(word(record + 8)?), start + usize::from(word(record + 10)?));
        records.extend(table.get(record..record + 10)?);
        records.extend(u16::try_from(strings.len()).ok()?.to_be_bytes());
        strings.extend(table.get(from..from + length)?);
        kept += 1;
    }
    let mut brief = Vec::new();
    for word in [0, kept, 6 + 12 * kept] {
        brief.extend(word.to_be_bytes());
    }
    Some([brief, records, strings].concat())
}

/// The tables of a font by name.
fn tables(font: &[u8]) -> Option<BTreeMap<[u8; 4], Vec<u8>>> {
    let raw = ttf_parser::RawFace::parse(font, 0).ok()?;
    let table = |record: ttf_parser::TableRecord| {
        let (from, length) = (usize::try_from(record.offset).ok()?, usize::try_from(record.length).ok()?);
        Some((record.tag.to_bytes(), font.get(from..from.checked_add(length)?)?.to_vec()))
    };
    Some(raw.table_records.into_iter().filter_map(table).collect())
}

/// From letters to glyphs: one subtable of form 12, a run for each letter.
fn cmap(glyphs: &BTreeMap<char, u16>) -> Vec<u8> {
    let count = u32::try_from(glyphs.len()).unwrap_or(0);
    let mut table = Vec::new();
    // Version, one subtable: platform 3, encoding 10, at byte 12.
    for word in [0_u16, 1, 3, 10] {
        table.extend(word.to_be_bytes());
    }
    table.extend(12_u32.to_be_bytes());
    for word in [12_u16, 0] {
        table.extend(word.to_be_bytes());
    }
    for long in [16 + 12 * count, 0, count] {
        table.extend(long.to_be_bytes());
    }
    for (letter, glyph) in glyphs {
        for long in [u32::from(*letter), u32::from(*letter), u32::from(*glyph)] {
            table.extend(long.to_be_bytes());
        }
    }
    table
}

/// A font file of these tables, each with its checksum.
fn assembled(tables: &BTreeMap<[u8; 4], Vec<u8>>) -> Vec<u8> {
    let count = u16::try_from(tables.len()).unwrap_or(0);
    let selector = count.max(1).ilog2() as u16;
    let range = 16 << selector;
    let mut font = Vec::new();
    // Outlines are written in one of two languages, and a font says in which at its start.
    let is_cff = tables.contains_key(b"CFF ");
    font.extend(if is_cff { *b"OTTO" } else { 0x0001_0000_u32.to_be_bytes() });
    for word in [count, range, selector, count * 16 - range] {
        font.extend(word.to_be_bytes());
    }
    let mut offset = 12 + 16 * tables.len();
    for (name, table) in tables {
        font.extend(name);
        for long in [checksum(table), u32::try_from(offset).unwrap_or(0), u32::try_from(table.len()).unwrap_or(0)] {
            font.extend(long.to_be_bytes());
        }
        offset += table.len().next_multiple_of(4);
    }
    for table in tables.values() {
        font.extend(table);
        font.resize(font.len().next_multiple_of(4), 0);
    }
    font
}

/// Sum of a table's words, as font files state it.
fn checksum(table: &[u8]) -> u32 {
    table.chunks(4).fold(0_u32, |sum, chunk| {
        let mut word = [0; 4];
        word[..chunk.len()].copy_from_slice(chunk);
        sum.wrapping_add(u32::from_be_bytes(word))
    })
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use ttf_parser::Face;

    use super::{Letters, Weight, font_of, letters_of};

    #[test]
    fn a_part_of_the_font_has_its_letters_and_their_widths() {
        let letters: BTreeSet<char> = "sofa 2½ × Ж".chars().collect();
        let part = font_of(Weight::Book.file(), &letters).unwrap();
        assert!(part.len() < 60_000, "{}", part.len());
        let (part, whole) = (Face::parse(&part, 0).unwrap(), Face::parse(Weight::Book.file(), 0).unwrap());
        for letter in letters {
            let advance = |face: &Face| face.glyph_hor_advance(face.glyph_index(letter).unwrap()).unwrap();
            assert_eq!(advance(&part), advance(&whole), "{letter}");
        }
        assert!(part.glyph_index('Q').is_none());
    }

    #[test]
    fn the_letters_of_a_page_are_light_and_tell_whose_they_are() {
        for weight in [Weight::Book, Weight::Bold] {
            let letters = letters_of(weight, Letters::Plain);
            assert!(letters.len() < 20_000, "{}", letters.len());
            let face = Face::parse(&letters, 0).unwrap();
            assert!(face.glyph_index('Q').is_some());
            let table = face.raw_face().table(ttf_parser::Tag::from_bytes(b"name")).unwrap();
            for told in ["DejaVu Sans Condensed", "Copyright (c) 2003 by Bitstream", "shall be included in all copies"]
            {
                assert!(table.windows(told.len()).any(|part| part == told.as_bytes()), "{told}");
            }
        }
    }
}
