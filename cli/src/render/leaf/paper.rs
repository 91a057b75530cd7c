//! A sheet of words and tables on paper: upright pages, or pages on their side that fold to a pocket.

use super::row::Row;
use super::rows::rows;
use super::{Block, Leaf, Set};
use crate::drawing::{Area, At, Dash, Mark, Paper, Path, Pen, Sheet, Stock, Text, Tone};
use crate::words::leaf as words;

/// Kept free at every edge, mm.
pub(crate) const MARGIN: f64 = 12.0;
/// Kept free on either side of the fold, mm.
const BY_THE_FOLD: f64 = 7.0;
/// For the foot of a page, mm.
const FOOT: f64 = 6.0;
/// Size of the type on upright pages, mm.
const TYPE: f64 = 3.1;
/// Sizes of the type on a page that folds, mm: the first in which all stands on one page, or else the last.
const FOLDED_TYPES: [f64; 4] = [2.9, 2.7, 2.5, 2.3];
/// Columns of a page that folds, each as wide as a pocket.
const PANELS: usize = 3;

/// The pages.
pub(crate) fn pages(leaf: &Leaf, stock: Stock) -> Vec<Sheet> {
    match leaf.set {
        Set::Upright => return plain(leaf, stock.portrait()),
        Set::OnItsSide => return plain(leaf, stock.landscape()),
        Set::Folding => {}
    }
    let on_one = FOLDED_TYPES.iter().map(|size| folded(leaf, stock, *size)).find(|pages| pages.len() == 1);
    on_one.unwrap_or_else(|| folded(leaf, stock, FOLDED_TYPES[FOLDED_TYPES.len() - 1]))
}

/// All on one sheet as wide as the paper and as high as it must be: for pictures, which have no second page.
pub(crate) fn on_one(leaf: &Leaf, stock: Stock) -> Sheet {
    let paper = stock.landscape();
    let column = Area { height: f64::INFINITY, ..paper.within(MARGIN) };
    let marks: Vec<Mark> = flowed(leaf, &column, TYPE).into_iter().flatten().collect();
    let taken: f64 = chunks(leaf, column.width, TYPE).iter().flatten().map(|row| row.height).sum();
    sheet(leaf, Paper { height: (taken + 2.0 * MARGIN).max(paper.height), ..paper }, marks)
}

/// Pages, as many as it takes.
fn plain(leaf: &Leaf, paper: Paper) -> Vec<Sheet> {
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

/// Pages on their side, each in columns with a fold between them.
fn folded(leaf: &Leaf, stock: Stock, size: f64) -> Vec<Sheet> {
    let paper = stock.landscape();
    let panel = paper.width / PANELS as f64;
    let first = Area { width: panel - 2.0 * BY_THE_FOLD, ..paper.within(BY_THE_FOLD) };
    let filled = flowed(leaf, &first, size);
    let page = |columns: &[Vec<Mark>]| {
        let fold = |place: usize| {
            let x = panel * place as f64;
            let pen = Pen::of(0.2, Tone::Grey).broken(Dash::Dashed);
            Path::line([At::new(x, 4.0), At::new(x, paper.height - 4.0)], pen).into()
        };
        let mut marks: Vec<Mark> = (1..PANELS).map(fold).collect();
        for (place, column) in columns.iter().enumerate() {
            let by = At::new(panel * place as f64, 0.0);
            marks.extend(column.iter().cloned().map(|mark| mark.moved(by)));
        }
        sheet(leaf, paper, marks)
    };
    filled.chunks(PANELS).map(page).collect()
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
