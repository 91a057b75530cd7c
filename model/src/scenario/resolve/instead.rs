//! What may stand in for a piece where a stock has none to give: `instead: [sofa]`.

use std::collections::BTreeSet;

use super::hung;
use super::names::Names;
use super::piece_row::Reader;
use crate::article::a;
use crate::furnishing::furnishings;
use crate::kind::PieceKind;
use crate::piece::Piece;
use crate::quote::quoted;
use crate::report::Report;
use crate::rules::Rules;
use crate::scenario::check::limits::MOST_FURNISHINGS;
use crate::scenario::document::{Document, PieceRow, SizedRow, StandInRow};
use crate::tables::Tables;
use crate::yaml::Trail;

/// What is needed to read what may stand in.
pub(super) struct StandIns<'a> {
    pub(super) document: &'a Document,
    pub(super) names: &'a Names,
    pub(super) rules: &'a Rules,
    pub(super) tables: &'a Tables,
}

/// A row that something may stand in for.
struct Asked<'a> {
    row: &'a PieceRow,
    kind: PieceKind,
    /// Names of its pieces.
    names: &'a [String],
    at: Trail,
}

/// One of the things that may stand in for it.
struct Given<'a> {
    row: &'a StandInRow,
    at: Trail,
}

impl StandIns<'_> {
    /// Gives each of `pieces` what may stand in for it, where the file has something. They belong to their groups by now.
    pub(super) fn resolve(&self, pieces: &mut [Piece], report: &mut Report<'_>) {
        let root = Trail::default().key("pieces");
        let mut taken: BTreeSet<String> = self.names.all().map(str::to_owned).collect();
        for (place, row) in self.document.pieces.iter().flatten().enumerate() {
            let Some(row) = row else { continue };
            let (Some(kind), Some(given)) = (row.kind, &row.instead) else { continue };
            let asked = Asked { row, kind, names: &self.names.pieces[place], at: root.index(place).key("instead") };
            if !asked.may_have_any(report) {
                continue;
            }
            let mut kinds = vec![kind];
            for (nth, one) in given.iter().enumerate() {
                let Some(one) = one else { continue };
                let one = Given { row: one, at: asked.at.index(nth) };
                self.stand_in(&asked, &one, &mut kinds, &mut taken, pieces, report);
            }
        }
        tell_too_many(pieces, &root, report);
    }

    /// Reads one stand-in. `kinds`: those that were there before it; `taken`: names that it must not have.
    fn stand_in(
        &self,
        asked: &Asked<'_>,
        given: &Given<'_>,
        kinds: &mut Vec<PieceKind>,
        taken: &mut BTreeSet<String>,
        pieces: &mut [Piece],
        report: &mut Report<'_>,
    ) {
        let Given { row: given, at } = given;
        let row = as_piece(given, asked.row);
        let Some(kind) = row.kind else { return };
        if !asked.may_be(kind, kinds, at, report) {
            return;
        }
        kinds.push(kind);
        let called = asked.called(kind);
        let Some(name) = called.first() else { return };
        if asked.row.name.is_none() && !asked.is_free(&called, kind, taken, at, report) {
            return;
        }
        let reader = Reader { row: &row, kind, name, at, rules: self.rules };
        let Some(mut found) = reader.piece(self.tables, report) else { return };
        if kind.hangs() {
            let Some(hung) = hung::hang(&row, found, self.document.ceiling.as_ref(), at, report) else { return };
            found = hung;
        }
        for (own, name) in asked.names.iter().zip(called) {
            for piece in pieces.iter_mut().filter(|piece| piece.name == *own) {
                piece.instead.push(in_place_of(piece, Piece { name: name.clone(), ..found.clone() }));
            }
        }
    }
}

/// The row of a piece that is asked for so, in place of `asked`: its kind and sizes alone, and the screen of `asked` where it
/// carries one.
fn as_piece(given: &StandInRow, asked: &PieceRow) -> PieceRow {
    let row = match given {
        StandInRow::Kind(kind) => PieceRow { kind: Some(*kind), ..PieceRow::default() },
        StandInRow::Sized(SizedRow { kind, width, return_length, depth, seats }) => PieceRow {
            kind: *kind,
            width: width.clone(),
            return_length: return_length.clone(),
            depth: depth.clone(),
            seats: *seats,
            ..PieceRow::default()
        },
    };
    let screen = asked.screen.clone().filter(|_| row.kind.is_some_and(PieceKind::carries_screen));
    PieceRow { screen, ..row }
}

/// `found` as it stands in for `piece`: as needed, at the same seats, of the same group.
fn in_place_of(piece: &Piece, found: Piece) -> Piece {
    Piece {
        needed: piece.needed,
        at: piece.at.clone(),
        group: piece.group.clone(),
        alike: piece.alike,
        turned: if found.kind.may_turn() { piece.turned } else { found.turned },
        ..found
    }
}

impl Asked<'_> {
    fn name(&self) -> &str {
        self.names.first().map_or("a piece", String::as_str)
    }

    /// Whether anything may stand in for it at all.
    fn may_have_any(&self, report: &mut Report<'_>) -> bool {
        let name = self.name();
        if self.row.hold == Some(true) {
            let message = format!("{name} is held where it stands, and something is to stand in for it.");
            let remedy = "Leave `instead` out, or `hold`.".to_owned();
            report.add(&self.at, "stand_in_for_held", name, message, remedy);
            return false;
        }
        if self.kind.stays_open() {
            let message = format!("{name} is floor that stays open: nothing can stand in for it.");
            report.add(&self.at, "stand_in_of_open_floor", name, message, "Leave `instead` out.".to_owned());
            return false;
        }
        true
    }

    /// Whether something of `kind` may stand in for it, beside those of `kinds`.
    fn may_be(&self, kind: PieceKind, kinds: &[PieceKind], at: &Trail, report: &mut Report<'_>) -> bool {
        let (name, word) = (self.name(), a(&kind.words()));
        let (code, message, remedy) = if kind == self.kind {
            let message = format!("{name} is {word} itself, and needs none to stand in for it.");
            ("stand_in_of_its_kind", message, format!("Leave {} out of `instead`, or widen its sizes.", kind.key()))
        } else if kinds.contains(&kind) {
            let message = format!("{word} stands in for {name} twice.");
            ("stand_in_twice", message, format!("Give {} once, with all the sizes it may have.", kind.key()))
        } else if kind.stays_open() {
            let message = format!("Floor that stays open cannot stand in for {name}.");
            ("stand_in_of_open_floor", message, format!("Leave {} out of `instead`.", kind.key()))
        } else if self.kind.is_seat() && !kind.is_seat() {
            let message = format!("{word} cannot stand in for {name}: people sit there.");
            ("stand_in_no_seat", message, format!("Seats are {}.", PieceKind::keys_where(PieceKind::is_seat)))
        } else {
            return true;
        };
        report.add(at, code, name, message, remedy);
        false
    }

    /// What its stand-ins of `kind` are called: as its row is, or by their kind.
    fn called(&self, kind: PieceKind) -> Vec<String> {
        let word = kind.words();
        match (self.row.name.is_some(), self.names) {
            (true, names) => names.to_vec(),
            (false, [_]) => vec![word],
            (false, names) => (1..=names.len()).map(|nth| format!("{word} {nth}")).collect(),
        }
    }

    /// Whether nothing else has one of these names, which then are `taken`.
    fn is_free(
        &self,
        called: &[String],
        kind: PieceKind,
        taken: &mut BTreeSet<String>,
        at: &Trail,
        report: &mut Report<'_>,
    ) -> bool {
        let clash = called.iter().find(|name| taken.contains(*name));
        if let Some(clash) = clash {
            let (name, word) = (self.name(), a(&kind.words()));
            let message =
                format!("{word} that stands in for {name} is called `{}`, as something else is.", quoted(clash));
            report.add(at, "name_twice", name, message, format!("Give {name} a `name` of its own: it holds for both."));
            return false;
        }
        taken.extend(called.iter().cloned());
        true
    }
}

/// Tells a file whose stand-ins make too many rooms.
fn tell_too_many(pieces: &[Piece], at: &Trail, report: &mut Report<'_>) {
    let count = furnishings(pieces);
    if count > MOST_FURNISHINGS {
        let message = format!(
            "With all that may stand in, the room can be furnished in {count} ways, {} more than the {MOST_FURNISHINGS} \
             that are tried.",
            count - MOST_FURNISHINGS
        );
        let remedy = "Keep `instead` for what the stock is often short of.".to_owned();
        report.add(at, "too_many", "", message, remedy);
    }
}
