//! Blocks as rows of lettering, each as high as it must be.

use super::row::{LINE, Line, Row};
use super::{Beside, Block, Grid, Picture};
use crate::drawing::{Area, At, Fill, InTable, Mark, Path, Pen, Tone, Weight, width_of, wrapped};
use crate::text::safe::safe;
use crate::text::table::Stand;

/// Above headings, in sizes of the type.
const ABOVE: f64 = 1.0;
/// Between columns of a table, in sizes of the type.
const BETWEEN: f64 = 1.3;
/// Round a line between two rows of a table, and below a paragraph, in sizes of the type.
const RULE: f64 = 0.35;
/// What a figure takes beside its bar, in sizes of the type.
const FIGURE: f64 = 2.4;
/// How far lists stand in, in sizes of the type.
const INDENT: f64 = 1.6;
/// What stands beside a drawing is no narrower than this, in sizes of the type.
const NARROWEST_BESIDE: f64 = 22.0;
/// A last column of words is broken into lines no narrower than this, in sizes of the type.
const NARROWEST_LAST: f64 = 10.0;
/// Between a drawing and what stands beside it, mm.
const GAP: f64 = 5.0;

/// A block in lettering of this size, `width` wide.
pub(super) fn rows(block: &Block, width: f64, size: f64) -> Vec<Row> {
    let indent = size * INDENT;
    match block {
        Block::Heading(words) => headed(paragraph(words, 0.0, width, size * 1.25, Weight::Bold), size * ABOVE),
        Block::Part(words) => headed(paragraph(words, 0.0, width, size * 1.08, Weight::Bold), size * ABOVE * 0.6),
        Block::Strong(words) => spaced(paragraph(words, 0.0, width, size, Weight::Bold), size),
        Block::Words(words) => spaced(paragraph(words, 0.0, width, size, Weight::Book), size),
        Block::List(entries) => entries
            .iter()
            .flat_map(|entry| {
                let mut rows = paragraph(entry, indent, width, size, Weight::Book);
                if let Some(first) = rows.first_mut() {
                    first.words.push(Line::plain(0.0, "\u{2022}".to_owned(), Weight::Book));
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
        Block::Grid(grid) => table(grid, width, size),
        Block::Drawing(picture) => drawing(picture, width, size),
        Block::Beside(beside) => self::beside(beside, width, size),
        Block::Row(pictures) => in_a_row(pictures, width, size),
        Block::Write(words) => words.iter().map(|word| written(word, width, size)).collect(),
    }
}

/// Drawings side by side, each with its caption below.
fn in_a_row(pictures: &[Picture], width: f64, size: f64) -> Vec<Row> {
    let column = width / pictures.len().max(1) as f64;
    let columns = pictures
        .iter()
        .enumerate()
        .map(|(place, picture)| (drawing(picture, column - GAP, size), column * place as f64));
    vec![abreast(columns)]
}

/// Columns of rows as one row, which no page parts; each with where it begins.
fn abreast(columns: impl IntoIterator<Item = (Vec<Row>, f64)>) -> Row {
    let (mut marks, mut height) = (Vec::new(), 0.0_f64);
    for (column, from) in columns {
        let mut down = 0.0;
        for row in column {
            marks.extend(row.marks(At::new(from, down)));
            down += row.height;
        }
        height = height.max(down);
    }
    Row { drawing: marks, ..Row::space(height) }
}

/// A line to write on behind its word, as long as there is room.
fn written(word: &str, width: f64, size: f64) -> Row {
    let word = safe(word);
    let from = width_of(&word, size, Weight::Book) + size * 0.5;
    let row = Row::of(size, vec![Line::plain(0.0, word, Weight::Book)]);
    Row { height: size * LINE * 1.5, blanks: vec![(from, (width - from).max(0.0))], ..row }
}

/// A drawing, and at its side what is said of it: one row, which no page parts. Where that has no room there, below.
fn beside(beside: &Beside, width: f64, size: f64) -> Vec<Row> {
    let Beside { picture, blocks } = beside;
    let wide = picture.sheet.paper.width + GAP;
    let narrow = width - wide < size * NARROWEST_BESIDE;
    if narrow || blocks.iter().any(|block| is_too_wide(block, width - wide, size)) {
        let below = blocks.iter().flat_map(|block| rows(block, width, size));
        return drawing(picture, width, size).into_iter().chain(below).collect();
    }
    let left = drawing(picture, picture.sheet.paper.width, size);
    let right: Vec<Row> = blocks.iter().flat_map(|block| rows(block, width - wide, size)).collect();
    vec![abreast([(left, 0.0), (right, wide)])]
}

/// A drawing as it is, and what stands under it.
fn drawing(picture: &Picture, width: f64, size: f64) -> Vec<Row> {
    let row = Row { drawing: picture.sheet.marks.clone(), ..Row::space(picture.sheet.paper.height) };
    std::iter::once(row).chain(paragraph(&picture.caption, 0.0, width, size, Weight::Book)).collect()
}

fn spaced(rows: Vec<Row>, size: f64) -> Vec<Row> {
    rows.into_iter().chain([Row::space(size * RULE)]).collect()
}

fn headed(rows: Vec<Row>, above: f64) -> Vec<Row> {
    std::iter::once(Row::space(above)).chain(rows).collect()
}

/// Lines from `from` to `to`.
fn paragraph(words: &str, from: f64, to: f64, size: f64, weight: Weight) -> Vec<Row> {
    let lines = wrapped(&safe(words), size, weight, to - from);
    lines.into_iter().map(|line| Row::of(size, vec![Line::plain(from, line, weight)])).collect()
}

/// Heads, then rows; a last column of words wraps into what is left.
fn table(grid: &Grid, width: f64, size: f64) -> Vec<Row> {
    let (columns, within) = (columns(grid, size), Within { left: 0.0, right: width, size });
    let mut rows = Vec::new();
    let heads: Vec<String> = grid.heads.iter().map(|head| head.words.clone()).collect();
    if heads.iter().any(|head| !head.is_empty()) {
        rows.extend(table_row(grid, 0, &heads, &columns, within));
        rows.push(rule(table_width(&columns, size), size));
    }
    for (place, row) in grid.rows.iter().enumerate() {
        rows.extend(table_row(grid, place + 1, row, &columns, within));
        rows.push(rule(table_width(&columns, size), size));
    }
    rows.push(Row::space(size * RULE));
    rows
}

/// Whether a block is wider than `width` in this type, whatever is broken into lines: a table with too many figures.
fn is_too_wide(block: &Block, width: f64, size: f64) -> bool {
    let Block::Grid(grid) = block else { return false };
    let wraps = grid.heads.last().is_some_and(|head| head.stand == Stand::Left && !head.blank);
    let mut columns = columns(grid, size);
    if let Some(last) = columns.last_mut().filter(|_| wraps) {
        *last = last.min(size * NARROWEST_LAST);
    }
    table_width(&columns, size) > width
}

/// Of columns so wide, mm.
fn table_width(columns: &[f64], size: f64) -> f64 {
    columns.iter().sum::<f64>() + size * BETWEEN * columns.len().saturating_sub(1) as f64
}

/// A hair line under a row of a table.
fn rule(width: f64, size: f64) -> Row {
    let line =
        Path::line([At::new(0.0, size * RULE * 0.4), At::new(width, size * RULE * 0.4)], Pen::of(0.1, Tone::Pale));
    Row { drawing: vec![line.into()], ..Row::space(size * RULE) }
}

/// How wide each column must be, mm.
fn columns(grid: &Grid, size: f64) -> Vec<f64> {
    let column = |place: usize| {
        let head = grid.heads.get(place).map_or(0.0, |head| {
            let own = width_of(&safe(&head.words), size, Weight::Bold);
            own.max(size * head.least)
        });
        let cells = grid.rows.iter().filter_map(|row| row.get(place));
        let lines = cells.flat_map(|cell| cell.lines());
        lines.map(|line| width_of(&safe(line), size, Weight::Book)).fold(head, f64::max)
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

/// The row at a place of a table; the heads are at 0.
fn table_row(grid: &Grid, row: usize, cells: &[String], columns: &[f64], within: Within) -> Vec<Row> {
    let (Within { left, right, size }, is_head) = (within, row == 0);
    let weight = if is_head { Weight::Bold } else { Weight::Book };
    let (mut rows, mut blanks, mut x) = (vec![Row::of(size, Vec::new())], Vec::new(), left);
    for (place, (cell, column)) in cells.iter().zip(columns).enumerate() {
        let head = &grid.heads[place];
        let wraps = place + 1 == cells.len() && head.stand == Stand::Left;
        let lines = if head.blank && !is_head {
            blanks.push((x, *column));
            Vec::new()
        } else if wraps {
            wrapped(&safe(cell), size, weight, (right - x).max(size * NARROWEST_LAST))
        } else {
            cell.lines().map(safe).collect()
        };
        for (down, line) in lines.into_iter().enumerate() {
            if down == rows.len() {
                rows.push(Row::of(size, Vec::new()));
            }
            if let Some(share) = line.parse::<f64>().ok().filter(|_| head.bars && !is_head) {
                rows[down].drawing.extend(bar(At::new(x, 0.0), column - size * FIGURE, share, size));
            }
            let shift = match head.stand {
                Stand::Left => 0.0,
                Stand::Right => column - width_of(&line, size, weight),
            };
            let in_table = Some(InTable { row, column: place, is_head });
            rows[down].words.push(Line { from: x + shift, words: line, weight, in_table });
        }
        x += column + size * BETWEEN;
    }
    // One writes where the last line of the row stands.
    if let Some(last) = rows.last_mut() {
        last.blanks = blanks;
    }
    rows
}

/// A figure of 100 as a bar, on a light ground that is the whole.
fn bar(at: At, width: f64, share: f64, size: f64) -> [Mark; 2] {
    let bar = |width: f64, tone: Tone| {
        let area = Area::new(at.x, at.y + size * 0.3, width.max(0.0), size * 0.7);
        Path::area(&area, None, Fill::Tone(tone)).into()
    };
    [bar(width, Tone::Rug), bar(width * (share / 100.0).clamp(0.0, 1.0), Tone::Seat)]
}
