//! One row of a sheet: lines of words abreast, a box to tick, lines to write on, a drawing.

use crate::drawing::{Area, At, Fill, InTable, Mark, Path, Pen, Text, Weight};

/// From foot to foot of two lines, in sizes of the type.
pub(super) const LINE: f64 = 1.32;

/// One row: what stands on it, from its left top corner.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Row {
    /// mm.
    pub height: f64,
    /// Its lines, abreast.
    pub words: Vec<Line>,
    /// Of their type, mm.
    pub size: f64,
    /// Where a box to tick stands.
    pub tick: bool,
    /// Where lines to write on start, and how long each is.
    pub blanks: Vec<(f64, f64)>,
    /// A drawing, its left top corner at the row's own.
    pub drawing: Vec<Mark>,
}

/// A line of words on a row.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Line {
    /// Where it starts, mm.
    pub from: f64,
    pub words: String,
    pub weight: Weight,
    /// Its cell, where it stands in a table.
    pub in_table: Option<InTable>,
}

impl Line {
    /// A line that stands in no table.
    pub(super) const fn plain(from: f64, words: String, weight: Weight) -> Self {
        Self { from, words, weight, in_table: None }
    }
}

impl Row {
    /// Lines in lettering of this size, abreast.
    pub(super) fn of(size: f64, words: Vec<Line>) -> Self {
        Self { height: size * LINE, words, size, tick: false, blanks: Vec::new(), drawing: Vec::new() }
    }

    /// So much left free.
    pub(super) fn space(height: f64) -> Self {
        Self { height, ..Self::of(0.0, Vec::new()) }
    }

    /// Nothing stands on it.
    pub(super) fn is_space(&self) -> bool {
        self.words.is_empty() && self.blanks.is_empty() && self.drawing.is_empty()
    }

    /// Its marks, its left top corner being there.
    pub(super) fn marks(&self, at: At) -> Vec<Mark> {
        let foot = at + At::new(0.0, self.size);
        let text = |line: &Line| {
            let text = Text::new(foot + At::new(line.from, 0.0), self.size, line.words.clone());
            Text { weight: line.weight, in_table: line.in_table, ..text }.into()
        };
        let mut marks: Vec<Mark> = self.words.iter().map(text).collect();
        if self.tick {
            marks.push(tick(at + At::new(0.0, self.size * 0.2), self.size * 0.85));
        }
        marks.extend(self.drawing.iter().cloned().map(|mark| mark.moved(at)));
        marks.extend(self.blanks.iter().map(|(x, wide)| blank(foot + At::new(*x, self.size * 0.15), *wide)));
        marks
    }
}

/// A box to tick, with its left top corner there.
fn tick(at: At, side: f64) -> Mark {
    Path::area(&Area::new(at.x, at.y, side, side), Some(Pen::ink(0.25)), Fill::None).into()
}

/// A line to write on.
fn blank(at: At, width: f64) -> Mark {
    Path::line([at, at + At::new(width, 0.0)], Pen::ink(0.15)).into()
}
