//! Cells that hold a word: the kind, the name, the hand, yes or no.

use super::reading::Reading;
use crate::kind::PieceKind;
use crate::listing::columns::{Column, Which};
use crate::listing::grid::GridRow;
use crate::nearest::nearest;
use crate::piece::Hand;
use crate::quote::{is_control, quoted};
use crate::tables::{Meaning, meaning};

/// Longest name of a piece, characters.
const LONGEST_NAME: usize = 120;

impl Reading<'_> {
    pub(super) fn kind(&mut self, row: &GridRow) -> Option<PieceKind> {
        let word = self.usual(row, Column::Kind).to_owned();
        let plain = word.to_lowercase().replace([' ', '_'], "-");
        let keys = PieceKind::ALL.iter().map(|kind| kind.key());
        let meant = meaning(&word, keys);
        let found = plain.parse::<PieceKind>().ok().or_else(|| match &meant {
            Some(Meaning::Same { means }) => means.parse().ok(),
            _ => None,
        });
        if found.is_none() && self.places.contains_key(&Which::Usual(Column::Kind)) {
            let keys: Vec<&str> = PieceKind::ALL.iter().map(|kind| kind.key()).collect();
            let near = meant.as_ref().map(Meaning::kind).or_else(|| nearest(&plain, keys.iter().copied()));
            let remedy = match near {
                Some(near) => format!("Did you mean `{near}`?"),
                None => format!("Kinds are {}.", keys.join(", ")),
            };
            let message = match word.as_str() {
                "" => "The row says no kind.".to_owned(),
                word => format!("`{}` is no known kind of piece.", quoted(word)),
            };
            let name = quoted(self.usual(row, Column::Name));
            self.tell(row, Column::Kind, "unknown_kind", &name, message, remedy);
        }
        found
    }

    pub(super) fn name(&mut self, row: &GridRow, kind: Option<PieceKind>) -> String {
        let name = self.usual(row, Column::Name);
        if name.is_empty() {
            let words = kind.map_or_else(|| "piece".to_owned(), PieceKind::words);
            return format!("{words}, {}", self.told.called(row.line));
        }
        if name.chars().any(is_control) {
            let message = format!("The name `{}` holds control characters.", quoted(name));
            let remedy = "Write it on one line, with plain characters alone.".to_owned();
            self.tell(row, Column::Name, "control_character", name, message, remedy);
        } else if name.chars().count() > LONGEST_NAME {
            let message = format!("The name `{}` is longer than {LONGEST_NAME} characters.", quoted(name));
            self.tell(row, Column::Name, "name_too_long", name, message, "Shorten it.".to_owned());
        }
        name.to_owned()
    }

    pub(super) fn hands(&mut self, row: &GridRow, kind: Option<PieceKind>, name: &str) -> Vec<Hand> {
        let word = self.usual(row, Column::Hand).to_lowercase();
        match word.as_str() {
            "left" => vec![Hand::Left],
            "right" => vec![Hand::Right],
            "" | "either" if kind.is_some_and(PieceKind::has_return) => Hand::ALL.to_vec(),
            "" => Vec::new(),
            _ => {
                let message =
                    format!("The hand of {}, `{}`, is neither left, right nor either.", quoted(name), quoted(&word));
                let remedy = "Write the side of the return as you SIT on the main run: left, right or either.";
                self.tell(row, Column::Hand, "unknown_name", name, message, remedy.to_owned());
                Vec::new()
            }
        }
    }

    pub(super) fn truth(&mut self, row: &GridRow, column: Column, name: &str) -> Option<bool> {
        let word = self.usual(row, column).to_lowercase();
        match word.as_str() {
            "" => None,
            "true" | "yes" | "y" | "1" => Some(true),
            "false" | "no" | "n" | "0" => Some(false),
            _ => {
                let message =
                    format!("The {} of {}, `{}`, is neither yes nor no.", column.key(), quoted(name), quoted(&word));
                self.tell(row, column, "wrong_type", name, message, "Write yes or no.".to_owned());
                None
            }
        }
    }
}
