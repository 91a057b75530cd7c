//! The archive that a workbook is: whether it can be opened, and how much comes out of it.

use std::io::{self, Cursor, Read, Write};

use zip::ZipArchive;

use crate::listing::encoding::LARGEST;
use crate::listing::faults::FaultList;

/// How every workbook starts: as the first file of an archive.
const ARCHIVE: &[u8] = b"PK\x03\x04";
/// How workbooks of an older kind start, and those that a password locks.
const COMPOUND: &[u8] = &[0xd0, 0xcf, 0x11, 0xe0];
/// Most parts of a workbook: a sheet is one, a picture is one.
const MOST_PARTS: usize = 10_000;
/// How the name of the part ends that has the texts of all cells.
const TEXTS: &str = "sharedstrings.xml";
/// The attribute by which it says how many they are: memory for so many is taken at once.
const SAYS_COUNT: &[u8] = b"uniqueCount";
/// Shortest text of such a table, bytes: `<si/>`.
const SHORTEST_TEXT: usize = 5;

/// Why a workbook is not read.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum NotRead {
    /// Of an older kind, or locked by a password: both look alike.
    OldOrLocked,
    /// No workbook at all.
    NoWorkbook,
    /// More would come out of it than is read.
    TooLarge,
    /// Something in it is not as it must be.
    Damaged,
}

impl NotRead {
    pub(super) fn tell(self, told: &mut FaultList) {
        let (code, message, remedy) = match self {
            Self::OldOrLocked => (
                "not_a_workbook",
                "The workbook is of an older kind, or a password locks it.".to_owned(),
                "Save it again as .xlsx without a password, or as CSV in UTF-8.",
            ),
            Self::NoWorkbook => (
                "not_a_workbook",
                "The file is no workbook of the kind .xlsx, though its name says so.".to_owned(),
                "Save it again as .xlsx, or name a list that is text .csv.",
            ),
            Self::TooLarge => (
                "file_too_large",
                format!("More than {LARGEST} bytes come out of the workbook; at most so many are read."),
                "Keep the sheet of the list alone, without pictures, or split it.",
            ),
            Self::Damaged => (
                "not_a_workbook",
                "The workbook is damaged: not all of it can be read.".to_owned(),
                "Open it in a spreadsheet program and save it again as .xlsx, or as CSV in UTF-8.",
            ),
        };
        told.add(0, code, "", message, remedy.to_owned());
    }
}

/// Whether the bytes are those of a workbook, whatever their file is called; text starts otherwise.
pub(in crate::listing) fn is_one(bytes: &[u8]) -> bool {
    bytes.starts_with(ARCHIVE) || bytes.starts_with(COMPOUND)
}

/// Looks at every part of the archive. What comes out is counted and not what the archive says of it, which may be false.
///
/// # Errors
/// Why it is not to be read.
pub(super) fn look(bytes: &[u8]) -> Result<(), NotRead> {
    if bytes.starts_with(COMPOUND) {
        return Err(NotRead::OldOrLocked);
    }
    if !bytes.starts_with(ARCHIVE) {
        return Err(NotRead::NoWorkbook);
    }
    if bytes.len() > LARGEST {
        return Err(NotRead::TooLarge);
    }
    let mut archive = ZipArchive::new(Cursor::new(bytes)).map_err(|_| NotRead::Damaged)?;
    if archive.len() > MOST_PARTS {
        return Err(NotRead::TooLarge);
    }
    let mut left = LARGEST;
    for place in 0..archive.len() {
        let part = archive.by_index(place).map_err(|_| NotRead::Damaged)?;
        let has_texts = part.name().map_err(|_| NotRead::Damaged)?.to_lowercase().ends_with(TEXTS);
        let mut texts = Vec::new();
        left -= if has_texts { unpacked(part, left, &mut texts)? } else { unpacked(part, left, &mut io::sink())? };
        if !is_sound(&texts) {
            return Err(NotRead::Damaged);
        }
    }
    Ok(())
}

/// How many bytes come out of a part, `out` gets them; at most so many are `left`.
fn unpacked(part: impl Read, left: usize, out: &mut impl Write) -> Result<usize, NotRead> {
    let count = io::copy(&mut part.take(left as u64 + 1), out).map_err(|_| NotRead::Damaged)?;
    usize::try_from(count).ok().filter(|count| *count <= left).ok_or(NotRead::TooLarge)
}

/// Whether a table of texts is in UTF-8, as all are written (others have signs of control in them), and says that it has no
/// more texts than it can hold.
fn is_sound(texts: &[u8]) -> bool {
    if texts.iter().any(|byte| byte.is_ascii_control() && !byte.is_ascii_whitespace()) {
        return false;
    }
    let mut rest = texts;
    while let Some(place) = rest.windows(SAYS_COUNT.len()).position(|word| word == SAYS_COUNT) {
        rest = rest.get(place + SAYS_COUNT.len()..).unwrap_or_default();
        let value = rest.iter().skip_while(|byte| !byte.is_ascii_digit() && **byte != b'>');
        let digits = value.take_while(|byte| byte.is_ascii_digit()).map(|digit| usize::from(digit - b'0'));
        let count = digits.fold(0_usize, |count, digit| count.saturating_mul(10).saturating_add(digit));
        if count > texts.len() / SHORTEST_TEXT {
            return false;
        }
    }
    true
}
