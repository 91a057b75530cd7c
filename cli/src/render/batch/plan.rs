//! A small plan of the first option, as a file of its own, and what the files of a room are called.

use elbowroom_solver::answer::{Answer, RankedOption};

use crate::drawing::{Paper, svg_with_tones};
use crate::render::plan::{Shown, thumbnail};

/// How large a small plan is at most, mm: shown at the width of a phone its figures read.
const WIDEST: Paper = Paper { width: 84.0, height: 72.0 };
/// Digits of a content that the name of a file ends in.
const DIGITS: usize = 16;
/// Letters of a room's name that the name of a file has at most.
const LONGEST: usize = 60;

/// The files that a run leaves of each room.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum OfRoom {
    /// A small plan of the first option.
    Plan,
    /// The report.
    Report,
}

impl OfRoom {
    /// Each of them.
    pub(crate) const ALL: [Self; 2] = [Self::Plan, Self::Report];

    /// The folder beside the pages that holds them.
    pub(crate) const fn folder(self) -> &'static str {
        match self {
            Self::Plan => "plans",
            Self::Report => "reports",
        }
    }

    const fn ending(self) -> &'static str {
        match self {
            Self::Plan => ".svg",
            Self::Report => ".html",
        }
    }

    /// The name of the file, from the folder of the run: where the room came from, then what it depends on.
    pub(crate) fn name(self, source: Option<&str>, content: &str) -> String {
        format!("{}/{}-{}{}", self.folder(), slug(source), digits(content), self.ending())
    }

    /// The digits of the content that a file of this name is of; `None` where it is no such file.
    pub(crate) fn content_of(self, name: &str) -> Option<&str> {
        let (_, digits) = name.strip_suffix(self.ending())?.rsplit_once('-')?;
        (digits.len() == DIGITS && digits.bytes().all(|it| matches!(it, b'0'..=b'9' | b'a'..=b'f'))).then_some(digits)
    }
}

/// The digits of a content that stand in names of files.
pub(crate) fn digits(content: &str) -> &str {
    content.get(..DIGITS).unwrap_or(content)
}

/// Where a room came from as every system takes it for the name of a file.
fn slug(source: Option<&str>) -> String {
    let source = source.unwrap_or_default();
    let stem = [".yaml", ".yml", ".json"].iter().find_map(|ending| source.strip_suffix(ending)).unwrap_or(source);
    let mut slug = String::new();
    for letter in stem.chars() {
        match letter {
            letter if letter.is_ascii_alphanumeric() => slug.push(letter),
            _ if slug.is_empty() || slug.ends_with('-') => {}
            _ => slug.push('-'),
        }
        if slug.len() == LONGEST {
            break;
        }
    }
    let slug = slug.trim_end_matches('-');
    if slug.is_empty() { "room".to_owned() } else { slug.to_owned() }
}

/// The plan as a file, which a dark page shows dark.
pub(crate) fn plan(answer: &Answer, option: &RankedOption) -> String {
    svg_with_tones(&thumbnail(Shown::Option { answer, option }, &WIDEST))
}

#[cfg(test)]
mod tests {
    use super::OfRoom;

    #[test]
    fn files_are_named_by_room_and_known_again_by_what_they_are_of() {
        let content = "0123456789abcdef".repeat(4);
        for (source, name) in [
            (Some("flats/canal flat.yaml"), "plans/flats-canal-flat-0123456789abcdef.svg"),
            (Some("../../etc/passwd"), "plans/etc-passwd-0123456789abcdef.svg"),
            (Some("\u{1b}[2J.yaml"), "plans/2J-0123456789abcdef.svg"),
            (None, "plans/room-0123456789abcdef.svg"),
        ] {
            assert_eq!(OfRoom::Plan.name(source, &content), name);
            assert_eq!(OfRoom::Plan.content_of(name.strip_prefix("plans/").unwrap()), Some(&content[..16]));
        }
        for foreign in ["mine.svg", "my-plan.svg", "a-0123456789abcdeX.svg", "a-0123456789abcdef.html"] {
            assert_eq!(OfRoom::Plan.content_of(foreign), None, "{foreign}");
        }
    }
}
