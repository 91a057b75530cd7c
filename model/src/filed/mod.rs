//! The file as it is filed: its values as they stand in it, and changes that leave everything else of its text as it is.
//!
//! A change is worked out in the text, by the places of the tree that was read from it, and is handed back only where the
//! text that comes of it reads as the same values with that one change: comments, order and spelling of all else stay.

mod change;
mod extent;
mod read_text;
mod scalar;
mod values;

use serde_json::Value;

use crate::fault::Fault;
use crate::yaml::{Node, NodeValue};
use read_text::ReadText;

pub use change::{Change, Unchanged};

/// The text of a scenario, with the places of its values.
#[derive(Debug, Clone)]
pub struct Filed(ReadText);

impl Filed {
    /// Reads the text of a scenario as far as its values; whether they make sense is for [`crate::scenario::read`].
    ///
    /// ```
    /// use elbowroom_model::filed::{Change, Filed};
    /// let filed = Filed::read("units: cm\nname: Quay # ours\n").map_err(|fault| fault.message)?;
    /// let change = Change::Set { at: "name".to_owned(), to: "Lock".into() };
    /// assert_eq!(filed.changed(&change).map_err(|why| why.to_string())?, "units: cm\nname: Lock # ours\n");
    /// # Ok::<(), String>(())
    /// ```
    ///
    /// # Errors
    /// The fault that keeps the text from being read as YAML.
    pub fn read(text: &str) -> Result<Self, Box<Fault>> {
        Ok(Self(ReadText { text: text.to_owned(), tree: Node::read(text)? }))
    }

    /// The text.
    #[must_use]
    pub fn text(&self) -> &str {
        &self.0.text
    }

    /// The values as they stand: `200..260` is a text, `352` a number.
    #[must_use]
    pub fn values(&self) -> Value {
        values::of(&self.0.tree)
    }

    /// The way to the value or key that stands at a byte of the text: `walls.0.length`.
    #[must_use]
    pub fn path_at(&self, offset: usize) -> String {
        let mut path = Vec::new();
        let mut here = &self.0.tree;
        while let Some((step, next)) = self.step_toward(here, offset) {
            path.push(step);
            here = next;
        }
        path.join(".")
    }

    /// The text with one thing changed.
    ///
    /// # Errors
    /// There is no such place, or the text is written so that it cannot be changed there without touching something else.
    pub fn changed(&self, change: &Change) -> Result<String, Unchanged> {
        let text = change::rewritten(&self.0, change)?;
        let expected = values::changed(self.values(), change).ok_or(Unchanged::NoPlace)?;
        match Self::read(&text) {
            Ok(read) if read.values() == expected => Ok(text),
            _ => Err(Unchanged::NotKept),
        }
    }

    fn step_toward<'a>(&self, node: &'a Node, offset: usize) -> Option<(String, &'a Node)> {
        let reaches = |child: &Node| extent::end(&self.0.text, child).is_some_and(|end| offset <= end);
        match &node.value {
            NodeValue::Map(entries) => {
                let entry = entries
                    .iter()
                    .find(|entry| entry.place.is_some_and(|key| key.offset <= offset) && reaches(&entry.node))?;
                Some((entry.key.clone(), &entry.node))
            }
            NodeValue::List(rows) => {
                let starts = |row: &Node| row.place.is_some_and(|place| place.offset <= offset);
                let (at, row) = rows.iter().enumerate().find(|(_, row)| starts(row) && reaches(row))?;
                Some((at.to_string(), row))
            }
            _ => None,
        }
    }
}
