//! A sheet of words and tables on paper: upright pages, or one page on its side that folds down its middle.

use super::rows::{Row, is_too_wide, rows};
use super::{Block, Leaf};
use crate::drawing::{Area, At, Dash, Mark, Paper, Path, Pen, Sheet, Stock, Text, Tone};
use crate::words::leaf as words;

/// Kept free at every edge, mm.
const MARGIN: f64 = 12.0;
/// Kept free on either side of the fold, mm.
const BY_THE_FOLD: f64 = 7.0;
/// For the foot of a page, mm.
const FOOT: f64 = 6.0;
/// Size of the type on upright pages, mm.
const TYPE: f64 = 3.1;
/// Sizes of the type on a page that folds, mm: the first that fits is taken.
const FOLDED_TYPES: [f64; 8] = [3.1, 2.8, 2.5, 2.3, 2.1, 1.9, 1.7, 1.5];

/// The pages.
pub(crate) fn pages(leaf: &Leaf, stock: Stock) -> Vec<Sheet> {
    if leaf.folds {
        let folded = FOLDED_TYPES.iter().find_map(|size| folded(leaf, stock, *size));
        return folded.map_or_else(|| upright(leaf, stock), |sheet| vec![sheet]);
    }
    upright(leaf, stock)
}

/// Upright pages, as many as it takes.
fn upright(leaf: &Leaf, stock: Stock) -> Vec<Sheet> {
    let paper = stock.portrait();
    let all = paper.within(MARGIN);
    let column = Area { height: all.height - FOOT, ..all };
    let filled = flowed(leaf, &column, TYPE);
    let count = filled.len();
    let page = |(place, mut marks): (usize, Vec<Mark>)| {
        let foot = At::new(all.at.x, all.bottom());
        marks.push(Text::new(foot, 2.4, words::foot(&leaf.title, place + 1, count)).toned(Tone::Grey).into());
        sheet(leaf, paper, marks)
    };
    filled.into_iter().enumerate().map(page).collect()
}

/// One page on its side with two columns, where all fits in this type.
fn folded(leaf: &Leaf, stock: Stock, size: f64) -> Option<Sheet> {
    let paper = stock.landscape();
    let all = paper.within(MARGIN);
    let (middle, width) = (paper.width / 2.0, paper.width / 2.0 - MARGIN - BY_THE_FOLD);
    let left = Area { width, ..all };
    let filled = flowed(leaf, &left, size);
    if filled.len() > 2 || leaf.blocks.iter().any(|block| is_too_wide(block, width, size)) {
        return None;
    }
    let fold = Pen::of(0.2, Tone::Grey).broken(Dash::Dashed);
    let mut marks = vec![Path::line([At::new(middle, 4.0), At::new(middle, paper.height - 4.0)], fold).into()];
    let shift = middle + BY_THE_FOLD - all.at.x;
    for (place, column) in filled.into_iter().enumerate() {
        let by = At::new(if place == 0 { 0.0 } else { shift }, 0.0);
        marks.extend(column.into_iter().map(|mark| mark.moved(by)));
    }
    Some(sheet(leaf, paper, marks))
}

fn sheet(leaf: &Leaf, paper: Paper, marks: Vec<Mark>) -> Sheet {
    Sheet { paper, title: leaf.title.clone(), description: leaf.title.clone(), marks }
}

/// The marks of one column after the other, each as long as `column`; what belongs together stays together where it can.
fn flowed(leaf: &Leaf, column: &Area, size: f64) -> Vec<Vec<Mark>> {
    let mut columns = vec![Vec::new()];
    let mut down = 0.0;
    for chunk in chunks(leaf, column.width, size) {
        let height: f64 = chunk.iter().map(|row| row.height).sum();
        if down + height > column.height && height <= column.height && down > 0.0 {
            columns.push(Vec::new());
            down = 0.0;
        }
        for row in chunk {
            if down + row.height > column.height && down > 0.0 {
                columns.push(Vec::new());
                down = 0.0;
            }
            if down == 0.0 && row.is_space() {
                continue;
            }
            if let Some(marks) = columns.last_mut() {
                marks.extend(row.marks(At::new(column.at.x, column.at.y + down)));
            }
            down += row.height;
        }
    }
    columns
}

/// Rows that should not be parted: a heading with what follows it, a part from its name to its end.
fn chunks(leaf: &Leaf, width: f64, size: f64) -> Vec<Vec<Row>> {
    let title = Block::Heading(leaf.title.clone());
    let mut chunks: Vec<Vec<Row>> = vec![rows(&title, width, size * 1.25)];
    let mut in_part = false;
    let mut after_heading = true;
    for block in &leaf.blocks {
        let block_rows = rows(block, width, size);
        let joins = match block {
            Block::Heading(_) => {
                in_part = true;
                false
            }
            Block::Part(_) => {
                in_part = true;
                after_heading
            }
            _ => after_heading || in_part,
        };
        after_heading = matches!(block, Block::Heading(_));
        match chunks.last_mut() {
            Some(last) if joins => last.extend(block_rows),
            _ => chunks.push(block_rows),
        }
    }
    chunks
}
