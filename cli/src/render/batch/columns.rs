//! The columns of sizes in the rows of many rooms: one for each piece and dimension that any of the rooms has.

use std::collections::BTreeMap;

use elbowroom_model::{Dimension, Rounding, Unit};
use elbowroom_solver::Size;

use crate::render::batch::room_line::{LineOption, RoomLine};
use crate::text::cells::Cell;
use crate::words::batch as words;
use crate::words::lengths::shop_unit;
use crate::words::number::number;

/// Most columns of sizes: with those before them they are fewer than a sheet of a spreadsheet has (16384 in ECMA-376, M).
const MOST: usize = 16_000;

/// Which of the two sizes of a piece a column has.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Which {
    /// As planned.
    Planned,
    /// The most that all pieces may have together.
    Most,
}

/// What columns of sizes the rooms need, in the order in which the rooms bring their pieces.
#[derive(Debug, Default)]
pub(crate) struct Columns {
    /// What lengths are told in; that of the first room whose file is sound, where none is asked for.
    unit: Option<Unit>,
    pieces: Vec<(String, Vec<Dimension>)>,
    places: BTreeMap<String, usize>,
    count: usize,
    /// Pieces that have no column, since there are too many.
    pub left_out: usize,
}

impl Columns {
    /// Of rooms whose lengths are told in `unit`.
    pub(crate) fn new(unit: Option<Unit>) -> Self {
        Self { unit, ..Self::default() }
    }

    /// Makes room for what stands in one more room.
    pub(crate) fn add(&mut self, room: &RoomLine) {
        self.unit = self.unit.or(room.units);
        for piece in room.best().into_iter().flat_map(|best| &best.pieces) {
            let size = piece.size.whole();
            let has: Vec<Dimension> = Dimension::ALL.iter().copied().filter(|one| size.get(*one).is_some()).collect();
            let known = self.places.get(&piece.name).and_then(|place| self.pieces.get(*place));
            let more = has.iter().filter(|one| known.is_none_or(|(_, there)| !there.contains(one))).count();
            if self.count + 2 * more > MOST {
                self.left_out += 1;
                continue;
            }
            self.count += 2 * more;
            let place = *self.places.entry(piece.name.clone()).or_insert(self.pieces.len());
            if place == self.pieces.len() {
                self.pieces.push((piece.name.clone(), Vec::new()));
            }
            let Some((_, there)) = self.pieces.get_mut(place) else { continue };
            there.extend(has);
            there.sort_unstable();
            there.dedup();
        }
    }

    /// The unit of the lengths.
    pub(crate) fn unit(&self) -> Unit {
        self.unit.unwrap_or_default()
    }

    /// The heads.
    pub(super) fn heads(&self) -> Vec<Cell> {
        let unit = shop_unit(self.unit()).key();
        let head = |(name, dimension, which): (&str, Dimension, Which)| {
            Cell::text(words::size_column(name, dimension.key(), which == Which::Most, unit))
        };
        self.each().map(head).collect()
    }

    /// The cells of an option; empty where it has no such piece, or none at all.
    pub(super) fn cells(&self, option: Option<&LineOption>) -> Vec<Cell> {
        let mut pieces = BTreeMap::new();
        for piece in option.into_iter().flat_map(|option| &option.pieces) {
            pieces.insert(piece.name.as_str(), [piece.size.whole(), piece.range.together()]);
        }
        let size = |(name, dimension, which): (&str, Dimension, Which)| {
            let [planned, most]: &[Size; 2] = pieces.get(name)?;
            let size = if which == Which::Planned { planned } else { most };
            size.get(dimension).map(|size| number(self.unit(), size, Rounding::Down))
        };
        self.each().map(|column| Cell::maybe(size(column))).collect()
    }

    fn each(&self) -> impl Iterator<Item = (&str, Dimension, Which)> {
        self.pieces.iter().flat_map(|(name, there)| {
            let both = [Which::Planned, Which::Most].into_iter();
            both.flat_map(move |which| there.iter().map(move |one| (name.as_str(), *one, which)))
        })
    }
}
