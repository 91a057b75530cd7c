//! What a room's result depends on, as one short name.

use std::fmt;
use std::path::Path;

use elbowroom_model::Unit;
use elbowroom_model::tables::Tables;
use elbowroom_solver::Limits;

use crate::process::failure::Failure;
use crate::process::source;
use crate::result::rank::FORMAT;

/// How long a content's name is, hexadecimal digits.
pub(crate) const DIGITS: usize = 64;

/// The BLAKE3 hash of all that a room's line depends on: the program's version, the format, how far the ranking goes, the
/// unit that is asked for, the table of sizes and the scenario's text. The same content has the same line.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) struct Content([u8; 32]);

impl Content {
    /// Reads a content's name; `None` where it is none.
    pub(crate) fn of_name(name: &str) -> Option<Self> {
        blake3::Hash::from_hex(name).ok().map(|hash| Self(*hash.as_bytes()))
    }
}

impl fmt::Display for Content {
    fn fmt(&self, formatter: &mut fmt::Formatter<'_>) -> fmt::Result {
        formatter.write_str(blake3::Hash::from_bytes(self.0).to_hex().as_str())
    }
}

impl fmt::Debug for Content {
    fn fmt(&self, formatter: &mut fmt::Formatter<'_>) -> fmt::Result {
        fmt::Display::fmt(self, formatter)
    }
}

/// What all rooms of a run have in common, hashed once.
#[derive(Debug, Clone)]
pub(crate) struct Terms {
    /// How far the ranking goes.
    pub limits: Limits,
    /// The unit that lengths are told in; `None`: each file's own.
    pub units: Option<Unit>,
    /// The text of the user's table of sizes.
    pub table: Option<String>,
    hasher: blake3::Hasher,
}

impl Terms {
    /// The terms of a run.
    pub(crate) fn new(limits: Limits, units: Option<Unit>, table: Option<String>) -> Self {
        let mut hasher = blake3::Hasher::new();
        let by = limits.by.map_or("", elbowroom_model::Criterion::key);
        let counts = format!("{} {} {} {by}", limits.shown, limits.one_by_one, limits.nodes);
        let unit = units.map_or("", Unit::key);
        for part in [env!("CARGO_PKG_VERSION"), FORMAT, &counts, unit, table.as_deref().unwrap_or_default()] {
            // Its length goes before each part, so that no two lists of parts read alike.
            hasher.update(&(part.len() as u64).to_le_bytes());
            hasher.update(part.as_bytes());
        }
        Self { limits, units, table, hasher }
    }

    /// The terms of a run with the user's own table of sizes, where one is named: what is at fault in it is told once, not
    /// for each room.
    ///
    /// # Errors
    /// The table cannot be read, or is at fault.
    pub(crate) fn read(table: Option<&Path>, limits: Limits, units: Option<Unit>) -> Result<Self, Failure> {
        let Some(table) = table else { return Ok(Self::new(limits, units, None)) };
        let table = source::read(table, &mut std::io::empty())?;
        match Tables::with(Some(&table.text)) {
            Ok(_) => Ok(Self::new(limits, units, Some(table.text))),
            Err(faults) => Err(Failure::Faults { scenario: table, faults }),
        }
    }

    /// The content of a room whose scenario is `text`.
    pub(crate) fn content(&self, text: &str) -> Content {
        Content(*self.hasher.clone().update(text.as_bytes()).finalize().as_bytes())
    }
}

#[cfg(test)]
mod tests {
    use elbowroom_model::Unit;
    use elbowroom_solver::Limits;

    use super::{Content, DIGITS, Terms};

    #[test]
    fn whatever_changes_the_result_changes_the_content() {
        let plain = Terms::new(Limits::default(), None, None);
        let all = [
            plain.content("a"),
            plain.content("b"),
            Terms::new(Limits { shown: 1, ..Limits::default() }, None, None).content("a"),
            Terms::new(Limits { by: Some(elbowroom_model::Criterion::View), ..Limits::default() }, None, None)
                .content("a"),
            Terms::new(Limits::default(), None, Some("a".to_owned())).content("a"),
            Terms::new(Limits::default(), Some(Unit::Inch), None).content("a"),
            Terms::new(Limits::default(), Some(Unit::Centimetre), None).content("a"),
        ];
        let different: std::collections::BTreeSet<_> = all.iter().collect();
        assert_eq!(different.len(), all.len());
        assert_eq!(plain.content("a"), all[0]);
    }

    #[test]
    fn a_name_reads_back() {
        let content = Terms::new(Limits::default(), None, None).content("a");
        assert_eq!(content.to_string().len(), DIGITS);
        assert_eq!(Content::of_name(&content.to_string()), Some(content));
        assert_eq!(Content::of_name("../../etc/passwd"), None);
    }
}
