//! What is kept of a run with something wrong somewhere: it is known by its sound lines, and no sound line is lost.

use std::collections::BTreeSet;
use std::fs;

use elbowroom_solver::Limits;
use tempfile::TempDir;

use super::mutation::Draw;
use crate::batch::content::{Content, Terms};
use crate::batch::kept::{JOURNAL, Kept, ROOMS};
use crate::batch::record::{Record, record, told_under, untold};
use crate::render::batch::OfRoom;
use crate::render::batch::room_line::RoomLine;

/// A folder that a run keeps lines in, and a line more.
pub(super) struct Journals {
    folder: TempDir,
    new: Record,
}

impl Journals {
    /// An empty one.
    pub(super) fn new() -> Self {
        let folder = tempfile::tempdir().unwrap();
        fs::create_dir(folder.path().join(OfRoom::Plan.folder())).unwrap();
        let terms = Terms::new(Limits { shown: 1, ..Limits::default() }, None, None);
        let new = record(Ok("units: new"), &terms, None).unwrap();
        Self { folder, new }
    }

    /// What is kept there, be it `bytes`, is known by its sound lines, and no sound line is lost.
    ///
    /// # Panics
    /// Where one is.
    pub(super) fn check(&self, bytes: &[u8], draw: &mut Draw) {
        let (folder, new) = (self.folder.path(), &self.new);
        let is_journal = draw.one_in(2);
        for (name, is_it) in [(JOURNAL, is_journal), (ROOMS, !is_journal)] {
            fs::write(folder.join(name), if is_it { bytes } else { b"" }).unwrap();
        }
        let text = String::from_utf8_lossy(bytes);
        // Plans of half of the contents are there.
        let named: BTreeSet<Content> = text.lines().filter_map(|line| Some(untold(line)?.0)).collect();
        for content in &named {
            let plan = folder.join(OfRoom::Plan.name(None, &content.to_string()));
            if draw.one_in(2) { fs::write(plan, "").unwrap() } else { drop(fs::remove_file(plan)) }
        }
        let mut kept = Kept::open(folder, false).unwrap();
        let known = kept.known();
        for content in &known {
            let line = kept.line(*content).unwrap();
            assert!(text.split('\n').any(|whole| whole.ends_with(&line[1..])), "a line that nobody wrote");
            let told = RoomLine::of(&told_under(None, &line).unwrap()).unwrap();
            assert_eq!(Content::of_name(&told.content), Some(*content));
        }
        // Every whole line that reads, whatever stands before it; those with options where their plans are there.
        let whole = bytes.iter().rposition(|byte| *byte == b'\n').map_or(&[][..], |end| &bytes[..end]);
        for line in whole.split(|byte| *byte == b'\n').filter_map(|line| std::str::from_utf8(line).ok()) {
            let (Ok(told), Some((content, _))) = (RoomLine::of(line), untold(line)) else { continue };
            if Content::of_name(&told.content) != Some(content) {
                continue;
            }
            let drawn = folder.join(OfRoom::Plan.name(None, &told.content)).exists();
            assert!(known.contains(&content) || (told.best().is_some() && !drawn), "lost: {line}");
        }
        kept.keep(new).unwrap();
        drop(kept);
        let again = Kept::open(folder, false).unwrap();
        assert!(again.known().contains(&new.content) && again.known().is_superset(&known), "lost once opened again");
        assert_eq!(again.line(new.content).unwrap(), new.line);
        drop(again);
        for content in &named {
            let _ = fs::remove_file(folder.join(OfRoom::Plan.name(None, &content.to_string())));
        }
    }
}

#[test]
fn what_is_kept_with_something_wrong_is_known_by_its_sound_lines_alone() {
    let journals = Journals::new();
    super::mutation::fuzz("journal", 2_000, |bytes, draw| journals.check(bytes, draw));
}
