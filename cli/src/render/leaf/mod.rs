//! A sheet of words and tables to print and take along, told in several forms.
//!
//! What a sheet says is a list of [`Block`]s; `text`, `html` and `paper` write them down, each in its own way, none with anything
//! that the others have not, but for drawings, which text leaves off. What the blocks say is made by `tape` and `card`.

mod html;
mod paper;
mod row;
mod rows;
mod text;

pub(crate) use html::{html, within};
pub(crate) use paper::{MARGIN, on_one, pages};
pub(crate) use text::text;

use crate::drawing::Sheet;
use crate::text::table::Stand;

/// Width of a line to write on, in sizes of the type.
const BLANK: f64 = 7.0;
/// Width of a column of bars.
const BARS: f64 = 14.0;

/// A sheet.
#[derive(Debug, Clone, PartialEq, Default)]
pub(crate) struct Leaf {
    /// What it is, and of which room.
    pub title: String,
    /// How it is printed.
    pub set: Set,
    /// What it says, from its top.
    pub blocks: Vec<Block>,
}

/// How a sheet is printed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub(crate) enum Set {
    /// On upright pages.
    #[default]
    Upright,
    /// On pages on their side.
    OnItsSide,
    /// On pages on their side in three columns, to be folded between them.
    Folding,
}

/// A stretch of a sheet.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Block {
    /// Over what follows.
    Heading(String),
    /// Over a part of that.
    Part(String),
    /// What must not be misread.
    Strong(String),
    /// A paragraph.
    Words(String),
    /// A list.
    List(Vec<String>),
    /// Things to do, each with a box to tick.
    Ticks(Vec<String>),
    /// Figures under heads.
    Grid(Grid),
    /// A drawing; the text form, which has none, leaves it off.
    Drawing(Picture),
    /// A drawing with what is said of it at its side; text says it alone.
    Beside(Beside),
    /// Drawings side by side, below each other where there is no room for that; text has their captions.
    Row(Vec<Picture>),
    /// Lines to write on, each behind its word.
    Write(Vec<String>),
}

/// A drawing, and what stands beside it where there is room, else below.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Beside {
    /// The drawing.
    pub picture: Picture,
    /// What is said of it; no headings.
    pub blocks: Vec<Block>,
}

/// A drawing with what stands under it.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Picture {
    /// The drawing, on paper of its own size.
    pub sheet: Sheet,
    /// Under it; nothing where it is empty.
    pub caption: String,
}

/// A table.
#[derive(Debug, Clone, PartialEq, Default)]
pub(crate) struct Grid {
    /// What each column holds.
    pub heads: Vec<Head>,
    /// Rows of as many cells; a line feed in a cell begins a second line of it.
    pub rows: Vec<Vec<String>>,
}

/// The head of a column.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Head {
    /// What it holds.
    pub words: String,
    /// Where its cells stand.
    pub stand: Stand,
    /// It is left blank, to write in.
    pub blank: bool,
    /// Its figures, of 100, are drawn as bars too.
    pub bars: bool,
    /// How wide it is at least on paper, in sizes of the type: tables whose columns agree in that stand in line.
    pub least: f64,
}

impl Head {
    /// A column of words.
    pub(crate) fn words(words: impl Into<String>) -> Self {
        Self { words: words.into(), stand: Stand::Left, blank: false, bars: false, least: 0.0 }
    }

    /// A column of figures.
    pub(crate) fn figures(words: impl Into<String>) -> Self {
        Self { words: words.into(), stand: Stand::Right, blank: false, bars: false, least: 0.0 }
    }

    /// A column to write in.
    pub(crate) fn blank(words: impl Into<String>) -> Self {
        Self { words: words.into(), stand: Stand::Left, blank: true, bars: false, least: BLANK }
    }

    /// A column of figures of 100, each with its bar.
    pub(crate) fn bars(words: impl Into<String>) -> Self {
        Self { bars: true, ..Self::figures(words) }.at_least(BARS)
    }

    /// The same, so wide at least on paper, in sizes of the type.
    pub(crate) fn at_least(self, least: f64) -> Self {
        Self { least, ..self }
    }
}

impl Leaf {
    /// A sheet with nothing on it yet.
    pub(crate) fn new(title: impl Into<String>) -> Self {
        Self { title: title.into(), set: Set::Upright, blocks: Vec::new() }
    }

    /// The same, set so.
    pub(crate) fn set(self, set: Set) -> Self {
        Self { set, ..self }
    }

    /// Adds a block.
    pub(crate) fn put(&mut self, block: Block) {
        self.blocks.push(block);
    }
}
