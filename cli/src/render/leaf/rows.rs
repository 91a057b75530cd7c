//! Blocks as rows of lettering, each as high as it must be.

use super::{Block, Grid, Picture};
use crate::drawing::{Area, At, Fill, Mark, Path, Pen, Text, Weight, width_of, wrapped};
use crate::text::safe::safe;
use crate::text::table::Stand;

/// From foot to foot of two lines, in sizes of the type.
const LINE: f64 = 1.32;
/// Above headings, in sizes of the type.
const ABOVE: f64 = 1.0;
/// Between columns of a table, in sizes of the type.
const BETWEEN: f64 = 1.3;
/// How far lists and tables stand in, in sizes of the type.
const INDENT: f64 = 1.6;
/// A last column of words is broken into lines no narrower than this, in sizes of the type.
const NARROWEST_LAST: f64 = 10.0;
/// Width of a line to write on, in sizes of the type.
const BLANK: f64 = 7.0;

/// One row: what stands on it, from its left top corner.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Row {
    /// mm.
    pub height: f64,
    words: Vec<(f64, String, Weight)>,
    size: f64,
    /// Where a box to tick stands.
    tick: bool,
    /// Where lines to write on start.
    blanks: Vec<f64>,
    /// A drawing, its left top corner at the row's own.
    drawing: Vec<Mark>,
}

impl Row {
    fn of(size: f64, words: Vec<(f64, String, Weight)>) -> Self {
        Self { height: size * LINE, words, size, tick: false, blanks: Vec::new(), drawing: Vec::new() }
    }

    fn space(height: f64) -> Self {
        Self { height, ..Self::of(0.0, Vec::new()) }
    }

    /// Nothing stands on it.
    pub(super) fn is_space(&self) -> bool {
        self.words.is_empty() && self.blanks.is_empty() && self.drawing.is_empty()
    }

    /// Its marks, its left top corner being there.
    pub(super) fn marks(&self, at: At) -> Vec<Mark> {
        let foot = at + At::new(0.0, self.size);
        let text = |(x, words, weight): &(f64, String, Weight)| {
            Text { weight: *weight, ..Text::new(foot + At::new(*x, 0.0), self.size, words.clone()) }.into()
        };
        let mut marks: Vec<Mark> = self.words.iter().map(text).collect();
        if self.tick {
            marks.push(tick(at + At::new(0.0, self.size * 0.2), self.size * 0.85));
        }
        marks.extend(self.drawing.iter().cloned().map(|mark| mark.moved(at)));
        marks.extend(self.blanks.iter().map(|x| blank(foot + At::new(*x, self.size * 0.15), self.size * BLANK)));
        marks
    }
}

/// A block in lettering of this size, `width` wide.
pub(super) fn rows(block: &Block, width: f64, size: f64) -> Vec<Row> {
    let indent = size * INDENT;
    match block {
        Block::Heading(words) => headed(paragraph(words, 0.0, width, size * 1.25, Weight::Bold), size * ABOVE),
        Block::Part(words) => headed(paragraph(words, 0.0, width, size * 1.08, Weight::Bold), size * ABOVE * 0.6),
        Block::Strong(words) => paragraph(words, 0.0, width, size, Weight::Bold),
        Block::Words(words) => paragraph(words, 0.0, width, size, Weight::Book),
        Block::List(entries) => entries
            .iter()
            .flat_map(|entry| {
                let mut rows = paragraph(entry, indent, width, size, Weight::Book);
                if let Some(first) = rows.first_mut() {
                    first.words.push((0.0, "\u{2022}".to_owned(), Weight::Book));
                }
                rows
            })
            .collect(),
        Block::Ticks(entries) => entries
            .iter()
            .flat_map(|entry| {
                let mut rows = paragraph(entry, indent, width, size, Weight::Book);
                if let Some(first) = rows.first_mut() {
                    first.tick = true;
                }
                rows
            })
            .collect(),
        Block::Grid(grid) => table(grid, width - indent, size, indent),
        Block::Drawing(picture) => drawing(picture, width, size),
    }
}

/// A drawing as it is, and what stands under it.
fn drawing(picture: &Picture, width: f64, size: f64) -> Vec<Row> {
    let row = Row { drawing: picture.sheet.marks.clone(), ..Row::space(picture.sheet.paper.height) };
    std::iter::once(row).chain(paragraph(&picture.caption, 0.0, width, size, Weight::Book)).collect()
}

fn headed(rows: Vec<Row>, above: f64) -> Vec<Row> {
    std::iter::once(Row::space(above)).chain(rows).collect()
}

/// Lines from `from` to `to`.
fn paragraph(words: &str, from: f64, to: f64, size: f64, weight: Weight) -> Vec<Row> {
    let lines = wrapped(&safe(words), size, weight, to - from);
    lines.into_iter().map(|line| Row::of(size, vec![(from, line, weight)])).collect()
}

/// Heads, then rows; a last column of words wraps into what is left.
fn table(grid: &Grid, width: f64, size: f64, indent: f64) -> Vec<Row> {
    let (columns, within) = (columns(grid, size), Within { left: indent, right: indent + width, size });
    let mut rows = Vec::new();
    let heads: Vec<String> = grid.heads.iter().map(|head| head.words.clone()).collect();
    if heads.iter().any(|head| !head.is_empty()) {
        rows.extend(table_row(grid, &heads, &columns, within, true));
    }
    for row in &grid.rows {
        rows.extend(table_row(grid, row, &columns, within, false));
    }
    rows
}

/// Whether a block is wider than `width` in this type, whatever is broken into lines: a table with too many figures.
pub(super) fn is_too_wide(block: &Block, width: f64, size: f64) -> bool {
    let Block::Grid(grid) = block else { return false };
    let wraps = grid.heads.last().is_some_and(|head| head.stand == Stand::Left && !head.blank);
    let mut columns = columns(grid, size);
    if let Some(last) = columns.last_mut().filter(|_| wraps) {
        *last = last.min(size * NARROWEST_LAST);
    }
    let between = size * BETWEEN * columns.len().saturating_sub(1) as f64;
    size * INDENT + columns.iter().sum::<f64>() + between > width
}

/// How wide each column must be, mm.
fn columns(grid: &Grid, size: f64) -> Vec<f64> {
    let column = |place: usize| {
        let head = grid.heads.get(place).map_or(0.0, |head| {
            let own = width_of(&safe(&head.words), size, Weight::Bold);
            if head.blank { own.max(size * BLANK) } else { own }
        });
        let cells = grid.rows.iter().filter_map(|row| row.get(place));
        cells.map(|cell| width_of(&safe(cell), size, Weight::Book)).fold(head, f64::max)
    };
    (0..grid.heads.len()).map(column).collect()
}

/// Where a table stands, and the size of its type; mm.
#[derive(Debug, Clone, Copy)]
struct Within {
    left: f64,
    right: f64,
    size: f64,
}

fn table_row(grid: &Grid, cells: &[String], columns: &[f64], within: Within, is_head: bool) -> Vec<Row> {
    let Within { left, right, size } = within;
    let weight = if is_head { Weight::Bold } else { Weight::Book };
    let (mut row, mut more, mut x) = (Row::of(size, Vec::new()), Vec::new(), left);
    for (place, (cell, column)) in cells.iter().zip(columns).enumerate() {
        let head = &grid.heads[place];
        let cell = safe(cell);
        if head.blank && !is_head {
            row.blanks.push(x);
        } else if place + 1 == cells.len() && head.stand == Stand::Left {
            let mut lines = wrapped(&cell, size, weight, (right - x).max(size * NARROWEST_LAST)).into_iter();
            row.words.extend(lines.next().map(|line| (x, line, weight)));
            more.extend(lines.map(|line| Row::of(size, vec![(x, line, weight)])));
        } else {
            let shift = match head.stand {
                Stand::Left => 0.0,
                Stand::Right => column - width_of(&cell, size, weight),
            };
            row.words.push((x + shift, cell, weight));
        }
        x += column + size * BETWEEN;
    }
    std::iter::once(row).chain(more).collect()
}

/// A box to tick, with its left top corner there.
fn tick(at: At, side: f64) -> Mark {
    Path::area(&Area::new(at.x, at.y, side, side), Some(Pen::ink(0.25)), Fill::None).into()
}

/// A line to write on.
fn blank(at: At, width: f64) -> Mark {
    Path::line([at, at + At::new(width, 0.0)], Pen::ink(0.15)).into()
}
