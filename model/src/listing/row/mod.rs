//! From text cells to pieces: headers matched, every cell read, every fault told with its line.

use std::collections::BTreeMap;

mod choices;
mod figures;
mod reading;
mod section;

use self::reading::Reading;
use super::columns::{Column, Which};
use super::faults::FaultList;
use super::figure::{Style, has_decimal_comma};
use super::grid::{Grid, GridRow};
use super::headers::{Places, headers};
use super::odd::odd_sizes;
use super::{Asked, ListedPiece, Listing, OddSize, Section};
use crate::corner::{Runs, TooShort};
use crate::dimension::Dimension;
use crate::kind::PieceKind;
use crate::piece::SizeRange;
use crate::quote::quoted;
use crate::tables::Tables;
use crate::unit::Unit;

/// The pieces of `grid`; all of its faults go to `told`.
pub(super) fn listing(grid: &Grid, asked: &Asked<'_>, told: &mut FaultList) -> Listing {
    let (places, passed_over) = headers(grid, asked, told);
    let style = Style { said: asked.decimals, has_commas: has_commas(grid, &places) };
    let (currency, bare) = (None, BTreeMap::new());
    let mut reading = Reading { grid, asked, places: &places, style, currency, unpriced: Vec::new(), bare, told };
    for meant in places.values() {
        if meant.1.which == Which::Usual(Column::Price) {
            reading.currency = meant.1.currency.clone().map(|currency| (currency, grid.header_line));
        }
    }
    let mut pieces: Vec<ListedPiece> = Vec::new();
    let mut lines: BTreeMap<String, usize> = BTreeMap::new();
    // The built-in tables have no faults, which tests keep so.
    let (mut odd, tables) = (Vec::new(), Tables::built_in().ok());
    for row in &grid.rows {
        let Some(piece) = reading.piece(row) else { continue };
        if let Some(first) = lines.insert(piece.name.clone(), row.line) {
            let message = format!("{} stands on {} already.", piece.name, reading.told.called(first));
            let remedy = "Give each row a name of its own; of one piece in hand several times give the `count`.";
            reading.tell(row, Column::Name, "name_twice", &piece.name, message, remedy.to_owned());
        }
        odd.extend(tables.iter().flat_map(|tables| reading.odd(row, &piece, tables)));
        pieces.push(piece);
    }
    reading.no_units();
    reading.no_currencies();
    let currency = reading.currency.map(|(currency, _)| currency);
    if pieces.is_empty() && told.is_empty() {
        let remedy = "Write a row for each piece under the header.".to_owned();
        told.add(grid.header_line, "empty_file", "", "The list has no rows.".to_owned(), remedy);
    }
    Listing { pieces, currency, passed_over, odd, sheet: told.sheet() }
}

fn has_commas(grid: &Grid, places: &Places) -> bool {
    let figures = places.iter().filter(|(which, _)| {
        matches!(which, Which::Usual(column) if column.is_length() || matches!(column, Column::Price | Column::Score))
    });
    let at: Vec<usize> = figures.map(|(_, (place, _))| *place).collect();
    grid.rows.iter().any(|row| at.iter().any(|place| row.cells.get(*place).is_some_and(|cell| has_decimal_comma(cell))))
}

impl Reading<'_> {
    fn piece(&mut self, row: &GridRow) -> Option<ListedPiece> {
        let before = self.told.count();
        let kind = self.kind(row);
        let name = self.name(row, kind);
        let units = self.units(row);
        let mut size = |column| self.length(row, column, &name, units);
        let (width, depth, return_length) = (size(Column::Width), size(Column::Depth), size(Column::Return));
        let (second_return, return_depth) = (size(Column::SecondReturn), size(Column::ReturnDepth));
        let (height, screen) = (size(Column::Height), size(Column::Screen));
        let (legs_off, diagonal_depth) = (size(Column::LegsOff), size(Column::DiagonalDepth));
        let section = Section {
            seat_height: size(Column::SeatHeight),
            arm_height: size(Column::ArmHeight),
            back_thickness: size(Column::BackThickness),
            leg_height: size(Column::LegHeight),
        };
        self.section_is_within(row, &name, depth, height, section);
        let parts = self.parts(row, &name, units);
        let hands = self.hands(row, kind, &name);
        let chaise = self.truth(row, Column::Chaise, &name);
        let seats = self.whole(row, Column::Seats, &name);
        let count = self.whole(row, Column::Count, &name).unwrap_or(self.asked.uncounted);
        let score = self.score(row, &name);
        let price = self.price(row, &name);
        self.fits_its_kind(row, kind, &name);
        if kind.is_some_and(PieceKind::has_return)
            && let [Some(width), Some(depth), Some(return_length)] = [width, depth, return_length]
        {
            let [width, return_length, depth] = [width, return_length, depth].map(SizeRange::fixed);
            let [second_return, return_depth] = [second_return, return_depth].map(|one| one.map(SizeRange::fixed));
            let runs = Runs { width, return_length, second_return, depth, return_depth };
            self.runs_are_long_enough(row, &name, &runs);
        }
        let more = (0..self.asked.extra.len()).map(|place| self.cell(row, Which::Extra(place)).to_owned()).collect();
        if self.told.count() > before {
            return None;
        }
        Some(ListedPiece {
            line: row.line,
            name,
            kind: kind?,
            width: width?,
            depth: depth?,
            return_length,
            second_return,
            return_depth,
            height,
            hands,
            chaise,
            screen,
            seats,
            price,
            count,
            score,
            legs_off,
            diagonal_depth,
            section,
            parts,
            more,
        })
    }

    /// The sizes of a piece that no shop has; of a cell with a unit of its own no other is likely.
    fn odd(&self, row: &GridRow, piece: &ListedPiece, tables: &Tables) -> Vec<OddSize> {
        let of_row = Unit::of(self.usual(row, Column::Units));
        let written = |dimension: Dimension| {
            let column = match dimension {
                Dimension::Width => Column::Width,
                Dimension::Depth => Column::Depth,
                Dimension::Return => Column::Return,
                Dimension::SecondReturn => Column::SecondReturn,
                Dimension::ReturnDepth => Column::ReturnDepth,
            };
            let is_bare = self.usual(row, column).chars().all(|c| !c.is_alphabetic() && c != '\'' && c != '"');
            self.unit_of(column, of_row).filter(|_| is_bare)
        };
        odd_sizes(piece, &tables.sizes(piece.kind), written)
    }

    /// Tells a corner sofa of which a run is not longer than the other is deep.
    fn runs_are_long_enough(&mut self, row: &GridRow, name: &str, runs: &Runs) {
        let Some(short) = runs.too_short() else { return };
        let column = match short.which {
            Dimension::Return => Column::Return,
            Dimension::SecondReturn => Column::SecondReturn,
            _ => Column::Width,
        };
        let of_row = Unit::of(self.usual(row, Column::Units));
        let units = self.unit_of(column, of_row).unwrap_or_default();
        self.tell(row, column, TooShort::CODE, name, short.message(&quoted(name), units), short.remedy(units));
    }

    /// Cells that belong to another kind, and a corner sofa without its return.
    fn fits_its_kind(&mut self, row: &GridRow, kind: Option<PieceKind>, name: &str) {
        let Some(kind) = kind else { return };
        for column in [Column::Return, Column::SecondReturn, Column::ReturnDepth, Column::Hand, Column::Chaise] {
            let given = !self.usual(row, column).is_empty();
            if given && !kind.has_return() {
                let message = format!("{} is a {}, which has no {}.", quoted(name), kind.words(), column.key());
                let remedy = format!(
                    "Leave the cell empty, or make it a {}.",
                    PieceKind::keys_where(PieceKind::has_return).replace('-', " ")
                );
                self.tell(row, column, "key_of_another_kind", name, message, remedy);
            }
        }
        if kind.has_return() && self.usual(row, Column::Return).is_empty() {
            self.missing(row, Column::Return, name);
        }
    }
}
