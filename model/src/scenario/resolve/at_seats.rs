//! Which seats small things belong to: `at: sofa` on a lamp or a side table.

use super::names::Names;
use crate::kind::Stands;
use crate::nearest::nearest;
use crate::piece::Piece;
use crate::quote::quoted;
use crate::report::Report;
use crate::scenario::document::Document;
use crate::yaml::Trail;

/// Gives each of `pieces` the seats that its row names: a seat by its name, or all seats of a kind by that.
pub(super) fn resolve(document: &Document, names: &Names, pieces: &mut [Piece], report: &mut Report<'_>) {
    let root = Trail::default().key("pieces");
    for (place, row) in document.pieces.iter().flatten().enumerate() {
        let (Some(row), at) = (row, root.index(place).key("at")) else { continue };
        let (Some(wanted), Some(kind)) = (&row.at, row.kind) else { continue };
        let own = &names.pieces[place];
        let Some(name) = own.first() else { continue };
        if !matches!(kind.traits().stands, Stands::BesideSeats | Stands::AtWallOrBehindSeat) {
            let message = format!("`at` is no key of {name}, whose kind is {}.", kind.key());
            let remedy = "Leave `at` out; it belongs to what stands at the end of a seat or behind it: lamps, side tables, consoles.";
            report.add(&at, "key_of_another_kind", name, message, remedy.to_owned());
            continue;
        }
        let seats = seats(wanted, document, names, pieces);
        if seats.is_empty() && !is_among_the_faulty(wanted, document, names, pieces) {
            tell_no_such_seat(wanted, name, pieces, &at, report);
        }
        for piece in pieces.iter_mut().filter(|piece| own.contains(&piece.name)) {
            piece.at.clone_from(&seats);
        }
    }
}

/// What stands at seats that may all be left out is left out where none of them stands, and told once.
pub(super) fn go_with_seats(pieces: &mut [Piece], report: &mut Report<'_>) {
    let may_go: Vec<String> =
        pieces.iter().filter(|seat| seat.kind.is_seat() && !seat.needed).map(|seat| seat.name.clone()).collect();
    let hangs_on_them =
        |piece: &&mut Piece| piece.needed && !piece.at.is_empty() && piece.at.iter().all(|seat| may_go.contains(seat));
    for piece in pieces.iter_mut().filter(hangs_on_them) {
        piece.needed = false;
        let seats = piece.at.join(" or ");
        report.notice(format!(
            "{} stands at {seats}, which may be left out: where no such seat stands, it is left out too.",
            piece.name
        ));
    }
}

/// The seat of this name, the seats of the row of this name, or those of this kind.
fn seats(wanted: &str, document: &Document, names: &Names, pieces: &[Piece]) -> Vec<String> {
    let rows = document.pieces.iter().flatten().zip(&names.pieces);
    let mut named_so = rows.filter(|(row, _)| row.as_ref().is_some_and(|row| row.name.as_deref() == Some(wanted)));
    let of_row: &[String] = named_so.next().map_or(&[], |(_, own)| own);
    let seats = || pieces.iter().filter(|piece| piece.kind.is_seat());
    let named =
        |is_it: &dyn Fn(&Piece) -> bool| seats().filter(|seat| is_it(seat)).map(|seat| seat.name.clone()).collect();
    let one: Vec<String> = named(&|seat| seat.name == wanted || of_row.contains(&seat.name));
    if one.is_empty() { named(&|seat| seat.kind.key() == wanted || seat.kind.words() == wanted) } else { one }
}

/// Whether a row of which no piece came, for a fault of its own, may be the seat: that fault is told, and is enough.
fn is_among_the_faulty(wanted: &str, document: &Document, names: &Names, pieces: &[Piece]) -> bool {
    let rows = document.pieces.iter().flatten().zip(&names.pieces);
    let mut faulty = rows.filter(|(_, own)| !pieces.iter().any(|piece| own.contains(&piece.name)));
    faulty.any(|(row, own)| {
        let kind = row.as_ref().and_then(|row| row.kind);
        own.iter().any(|name| name == wanted) || kind.is_none_or(|kind| kind.key() == wanted || kind.words() == wanted)
    })
}

fn tell_no_such_seat(wanted: &str, name: &str, pieces: &[Piece], at: &Trail, report: &mut Report<'_>) {
    let seats: Vec<&str> = pieces.iter().filter(|piece| piece.kind.is_seat()).map(|seat| seat.name.as_str()).collect();
    let message = format!("{name} stands at `{}`, and there is no such seat.", quoted(wanted));
    let remedy = nearest(wanted, seats.iter().copied()).map_or_else(
        || format!("The seats are {}.", seats.iter().map(|seat| quoted(seat)).collect::<Vec<_>>().join(", ")),
        |near| format!("Did you mean `{}`?", quoted(near)),
    );
    report.add(at, "unknown_seat", name, message, remedy);
}
