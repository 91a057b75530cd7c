//! The pieces: rows with a count spread out, what is amiss with a row as a whole.

use super::aims;
use super::hung;
use super::names::Names;
use super::pairs;
use super::piece_row::Reader;
use crate::kind::PieceKind;
use crate::piece::{Piece, PieceId};
use crate::report::{Of, Report};
use crate::rules::Rules;
use crate::scenario::document::{Document, PieceRow};
use crate::tables::Tables;
use crate::yaml::Trail;

/// The pieces that are sound, in the file's order.
pub(super) fn pieces(
    document: &Document,
    names: &Names,
    rules: &Rules,
    tables: &Tables,
    report: &mut Report<'_>,
) -> Vec<Piece> {
    let found = rows(document, names, rules, tables, report);
    let rows = document.pieces.iter().flatten();
    let unread = document.pieces.is_none() || rows.clone().any(|row| row.as_ref().is_none_or(|row| row.kind.is_none()));
    let mut kinds = rows.flatten().filter_map(|row| row.kind);
    if !unread && !kinds.any(PieceKind::is_seat) {
        let message = "The scenario asks for no seat.".to_owned();
        let remedy = "Add a sofa, a corner-sofa or an armchair to `pieces`.".to_owned();
        report.add(&Trail::default().key("pieces"), "no_seat", "", message, remedy);
    }
    found
}

/// The rows that are sound, whether or not there is a seat among them.
pub(super) fn rows(
    document: &Document,
    names: &Names,
    rules: &Rules,
    tables: &Tables,
    report: &mut Report<'_>,
) -> Vec<Piece> {
    let root = Trail::default().key("pieces");
    let mut found: Vec<Piece> = Vec::new();
    for (place, row) in document.pieces.iter().flatten().enumerate() {
        let at = root.index(place);
        let Some(row) = row else { continue };
        let Some(kind) = row.kind else {
            tell_no_sizes(row, &names.pieces[place], &at, report);
            continue;
        };
        tell_nobody(row, kind, &at, report);
        pairs::tell(row, &names.pieces[place], &at, report);
        let names = &names.pieces[place];
        let Some(name) = names.first() else { continue };
        let reader = Reader { row, kind, name, at: &at, rules };
        let Some(mut piece) = reader.piece(tables, report) else { continue };
        if kind.hangs() {
            let Some(hung) = hung::hang(row, piece, document.ceiling.as_ref(), &at, report) else { continue };
            piece = hung;
        }
        piece.aim = aims::aim(row, &piece, &at, report);
        let alike = (names.len() > 1).then_some(PieceId(found.len()));
        found.extend(names.iter().map(|name| Piece { name: name.clone(), alike, ..piece.clone() }));
    }
    pairs::tell_screen(&found, report);
    found
}

/// Tells a count or a number of seats that is 0.
fn tell_nobody(row: &PieceRow, kind: PieceKind, at: &Trail, report: &mut Report<'_>) {
    let words = kind.words();
    for (key, number) in [("count", row.count), ("seats", row.seats)] {
        if number == Some(0) {
            let message = format!("The {key} of {words} is 0; it must be 1 or more.");
            report.add(&at.key(key), "not_positive", &words, message, format!("Leave `{key}` out, or the whole row."));
        }
    }
}

/// Tells what is amiss with the sizes of a row whose kind is at fault.
fn tell_no_sizes(row: &PieceRow, names: &[String], at: &Trail, report: &mut Report<'_>) {
    let item = names.first().map_or("a piece", String::as_str);
    let given = [
        ("width", &row.width),
        ("return", &row.return_length),
        ("second_return", &row.second_return),
        ("depth", &row.depth),
        ("return_depth", &row.return_depth),
    ];
    for (figure, measure) in given {
        if let Some(measure) = measure {
            report.extent(measure, &at.key(figure), Of { item, figure });
        }
    }
}
