//! The furniture that is asked for, and the sizes each piece may have.

use std::cmp::Ordering;

use serde::{Deserialize, Serialize};
use strum::{EnumString, IntoStaticStr, VariantArray};

use crate::aim::{PieceAim, SizesAim};
use crate::dimension::Dimension;
use crate::kind::{KeepsClear, PieceKind};
use crate::pair::Pair;
use crate::rules::Clearance;
use crate::screen::screen_height;
use crate::sits::Sits;
use crate::stands_at::StandsAt;
use crate::turned::Turned;

/// Side of the return of a corner sofa, as one SITS on the main run.
#[derive(
    Debug,
    Clone,
    Copy,
    PartialEq,
    Eq,
    PartialOrd,
    Ord,
    Hash,
    Serialize,
    Deserialize,
    schemars::JsonSchema,
    EnumString,
    IntoStaticStr,
    VariantArray,
)]
#[serde(rename_all = "kebab-case")]
#[strum(serialize_all = "kebab-case")]
pub enum Hand {
    /// The return is on the sitter's left.
    Left,
    /// The return is on the sitter's right.
    Right,
}

impl Hand {
    /// Both hands.
    pub const ALL: &[Self] = Self::VARIANTS;

    /// The hand as files write it.
    #[must_use]
    pub fn key(self) -> &'static str {
        self.into()
    }
}

/// Least, usual and most of one dimension, mm: 0 < `least` <= `usual` <= `most`, all finite.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct SizeRange {
    /// The least that still does its work.
    pub least: f64,
    /// The size people usually want; beyond it a millimetre counts a quarter.
    pub usual: f64,
    /// The most that is sold or asked for.
    pub most: f64,
}

impl SizeRange {
    /// One size and no other.
    #[must_use]
    pub const fn fixed(size: f64) -> Self {
        Self { least: size, usual: size, most: size }
    }

    /// Value of `size` from `least` on: slope 1 up to usual, a quarter beyond.
    #[must_use]
    pub fn value(&self, size: f64) -> f64 {
        size.min(self.usual) - self.least + 0.25 * (size - self.usual).max(0.0)
    }
}

/// One size of a piece that comes in steps (rugs, dining tables by seats), mm.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Step {
    /// Along the long side.
    pub width: f64,
    /// Along the short side.
    pub depth: f64,
}

/// Which piece of a brief, by its place in [`crate::Brief::pieces`].
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct PieceId(pub usize);

impl PieceId {
    /// The same piece once the piece `gone` is taken out of the brief; `None` where it is that piece.
    #[must_use]
    pub fn without(self, gone: Self) -> Option<Self> {
        match self.cmp(&gone) {
            Ordering::Less => Some(self),
            Ordering::Equal => None,
            Ordering::Greater => Some(Self(self.0 - 1)),
        }
    }
}

/// One piece that should stand in the room. A row of the file with a count of 2 gives two of these.
#[derive(Debug, Clone, PartialEq)]
pub struct Piece {
    /// Its name in the room's own words, unique.
    pub name: String,
    /// What it is.
    pub kind: PieceKind,
    /// Range along its back.
    pub width: SizeRange,
    /// Range away from its back.
    pub depth: SizeRange,
    /// Range of a corner sofa's return; `None` for every other kind.
    pub return_length: Option<SizeRange>,
    /// Range of the depth of that return, where it is another than that of the main run.
    pub return_depth: Option<SizeRange>,
    /// Range of a second return, at the other end of the main run: a U. It is as deep as the main run.
    pub second_return: Option<SizeRange>,
    /// Sizes it comes in, smallest first; empty where it may have any size in its ranges.
    pub steps: Vec<Step>,
    /// Width and depth are one size (floor lamps, square side tables).
    pub square: bool,
    /// Height above the floor, mm, without a screen that stands on it: of what hangs, of its lower edge; 0 for a rug.
    pub height: f64,
    /// Diagonal of the 16:9 screen that a media unit carries, or that hangs, mm.
    pub screen: Option<f64>,
    /// Hands that are allowed: one or both for a corner sofa, none for any other kind.
    pub hands: Vec<Hand>,
    /// The return has no back, so one sees over it; a second return has one.
    pub chaise: bool,
    /// Gap kept behind its backs where they stand at a wall, mm, as in force.
    pub off_wall: f64,
    /// It must stand in the room; `false`: only if it fits.
    pub needed: bool,
    /// People pass behind the chairs of this dining table.
    pub passing: bool,
    /// Chairs at a dining table.
    pub seats: Option<u32>,
    /// How many sit on it, where it is a sofa of one run.
    pub sits: Sits,
    /// How it stands to the other sofa of its row, where the row is of two.
    pub pair: Pair,
    /// Names of the seats that it stands at one of; empty where any will do.
    pub at: Vec<String>,
    /// The group of its own that it belongs to beside the main one; `None`: the main group.
    pub group: Option<String>,
    /// Pieces of one row of the file share one size: the first of them.
    pub alike: Option<PieceId>,
    /// What one millimetre of any of its dimensions counts in the size value.
    pub weight: f64,
    /// What plans aim at with it, where the file says so.
    pub aim: Option<PieceAim>,
    /// Where it stands in the room as it is, where the file says so.
    pub stands: Option<StandsAt>,
    /// Plans leave it where it stands.
    pub held: bool,
    /// Whether it may stand turned toward the heart of its group.
    pub turned: Turned,
    /// The file gives it no size of its own: it may have any that its kind is sold in, with as many places as are asked for.
    pub sold_sizes: bool,
    /// What may stand in for it where a stock has none to give, each as it would be asked for. Those of pieces of one row go
    /// together, place by place.
    pub instead: Vec<Piece>,
}

impl Piece {
    /// Whether it belongs to the group of this name.
    #[must_use]
    pub fn is_of_group(&self, group: &str) -> bool {
        self.group.as_deref() == Some(group)
    }

    /// Whether a way must lead to it: by its kind, and to a table that is to seat so many.
    #[must_use]
    pub const fn is_led_to(&self) -> bool {
        self.kind.is_led_to() || (self.kind.is_dined_at() && self.seats.is_some())
    }

    /// Whether it is a seat of a group of its own, which is none of the main group's.
    #[must_use]
    pub fn is_seat_apart(&self) -> bool {
        self.group.is_some() && self.kind.is_seat()
    }

    /// Whether it is a seat of the main group.
    #[must_use]
    pub fn is_seat_of_main_group(&self) -> bool {
        self.group.is_none() && self.kind.is_seat()
    }

    /// Whether it is a table that stands before a seat of the main group.
    #[must_use]
    pub fn is_table_of_main_group(&self) -> bool {
        self.group.is_none() && self.kind.stands_before_seat()
    }

    /// The range of `dimension`; `None` where this kind has no such dimension.
    #[must_use]
    pub fn range(&self, dimension: Dimension) -> Option<SizeRange> {
        match dimension {
            Dimension::Width => Some(self.width),
            Dimension::Return => self.return_length,
            Dimension::SecondReturn => self.second_return,
            Dimension::Depth => Some(self.depth),
            Dimension::ReturnDepth => self.return_depth,
        }
    }

    /// The range of a dimension, to change it; `None` where this kind has no such dimension.
    pub const fn range_mut(&mut self, dimension: Dimension) -> Option<&mut SizeRange> {
        match dimension {
            Dimension::Width => Some(&mut self.width),
            Dimension::Return => self.return_length.as_mut(),
            Dimension::SecondReturn => self.second_return.as_mut(),
            Dimension::Depth => Some(&mut self.depth),
            Dimension::ReturnDepth => self.return_depth.as_mut(),
        }
    }

    /// A U whose two returns are alike: seen in a glass it is the same, and its hand says nothing.
    #[must_use]
    pub fn has_like_returns(&self) -> bool {
        let is_own = self.chaise || self.return_depth.is_some();
        self.second_return.is_some() && self.second_return == self.return_length && !is_own
    }

    /// The size that the file itself gives as this piece's aim in one dimension, mm, within its range; `None` where it leaves
    /// that to what is usual, or to `all`, what the sizes of all pieces aim at.
    #[must_use]
    pub fn aimed(&self, dimension: Dimension, all: SizesAim) -> Option<f64> {
        let range = self.range(dimension)?;
        match (self.aim, all) {
            (Some(PieceAim::Sizes(sizes)), _) if sizes.get(dimension).is_some() => {
                // The way in may have lowered the range since.
                sizes.get(dimension).map(|size| size.max(range.least).min(range.most))
            }
            (Some(PieceAim::Largest), _) | (None | Some(PieceAim::Sizes(_)), SizesAim::Largest) => Some(range.most),
            (Some(PieceAim::Usual), _) | (None | Some(PieceAim::Sizes(_)), SizesAim::Usual) => None,
        }
    }

    /// Its size in the room as it is, mm: the one size that the file gives it, else the size that is aimed at, else what is
    /// usual; `None` where this kind has no such dimension.
    #[must_use]
    pub fn size_as_it_stands(&self, dimension: Dimension) -> Option<f64> {
        let range = self.range(dimension)?;
        match self.aim {
            Some(PieceAim::Sizes(sizes)) => sizes.get(dimension).map(|size| size.max(range.least).min(range.most)),
            _ => None,
        }
        .or(Some(range.usual))
    }

    /// Whether the file says which size it has in this dimension: one size, or the one aimed at.
    #[must_use]
    pub fn size_is_known(&self, dimension: Dimension) -> bool {
        let one = self.range(dimension).is_none_or(|range| range.least >= range.most);
        one || matches!(self.aim, Some(PieceAim::Sizes(sizes)) if sizes.get(dimension).is_some())
    }

    /// Whether both are of one row of the file and nothing but their names tells them apart.
    #[must_use]
    pub fn is_twin_of(&self, other: &Self) -> bool {
        self.alike.is_some() && self.alike == other.alike && *self == Self { name: self.name.clone(), ..other.clone() }
    }

    /// The dimensions that this piece has, in the order they are told.
    #[must_use]
    pub fn dimensions(&self) -> Vec<Dimension> {
        Dimension::ALL.iter().copied().filter(|dimension| self.range(*dimension).is_some()).collect()
    }

    /// The clearance kept before it or along its sides; `None` where nothing is kept.
    #[must_use]
    pub const fn keeps_clear(&self) -> Option<Clearance> {
        match self.kind.traits().keeps_clear {
            KeepsClear::Nothing => None,
            KeepsClear::Before(clearance) => Some(clearance),
            KeepsClear::AlongSides { passing, .. } if self.passing => Some(passing),
            KeepsClear::AlongSides { seated, .. } => Some(seated),
        }
    }

    /// Height of what it puts before a window: its own, or to the top of the screen it carries (16:9), mm.
    #[must_use]
    pub fn height_with_screen(&self) -> f64 {
        self.height + self.screen.map_or(0.0, screen_height)
    }
}
