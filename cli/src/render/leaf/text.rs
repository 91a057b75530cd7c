//! A sheet as text.

use super::{Block, Grid, Leaf};
use crate::text::look::Look;
use crate::text::page::Page;
use crate::text::table::{Stand, Table};

/// What is put where somebody is to write.
const BLANK: &str = "________";
/// Before what is to be done.
const BOX: &str = "[ ] ";

/// The sheet.
pub(crate) fn text(leaf: &Leaf, look: Look) -> String {
    let mut page = Page::new(look);
    page.strong(&leaf.title);
    let mut before = None;
    for block in &leaf.blocks {
        tell(&mut page, block, before);
        before = Some(block);
    }
    page.into_text()
}

fn tell(page: &mut Page, block: &Block, before: Option<&Block>) {
    match block {
        Block::Heading(words) => page.heading(words),
        Block::Part(words) => {
            if !matches!(before, Some(Block::Heading(_))) {
                page.gap();
            }
            page.strong(words);
        }
        Block::Strong(words) => page.strong_in(2, words),
        Block::Words(words) => page.paragraph(2, words),
        Block::List(entries) => entries.iter().for_each(|entry| page.entry(2, entry)),
        Block::Ticks(entries) => entries.iter().for_each(|entry| page.hung(2, BOX, entry)),
        Block::Grid(grid) => page.table(4, &table(grid)),
        Block::Drawing(_) => {}
        Block::Row(pictures) => pictures.iter().for_each(|picture| page.entry(2, &picture.caption)),
        Block::Beside(beside) => {
            let mut before = None;
            for block in &beside.blocks {
                tell(page, block, before);
                before = Some(block);
            }
        }
        Block::Write(words) => {
            let lines: Vec<String> = words.iter().map(|word| format!("{word} {BLANK}{BLANK}")).collect();
            page.paragraph(2, &lines.join("  "));
        }
    }
}

fn table(grid: &Grid) -> Table {
    let mut heads: Vec<(&str, Stand)> = grid.heads.iter().map(|head| (head.words.as_str(), head.stand)).collect();
    // A table's last column holds words and wraps; figures stand before it.
    if grid.heads.last().is_some_and(|head| head.stand == Stand::Right || head.blank) {
        heads.push(("", Stand::Left));
    }
    let mut table = Table::new(&heads);
    for row in &grid.rows {
        let cells = row.iter().zip(&grid.heads);
        table.cells(
            cells.map(|(cell, head)| if head.blank { BLANK.to_owned() } else { cell.replace('\n', ", ") }).collect(),
        );
    }
    table
}
