//! Pieces that make a group of their own beside the main one: `group: reading` on a chair, its lamp, its table.

use super::names::Names;
use crate::kind::{PieceKind, SeatForm, Stands};
use crate::piece::Piece;
use crate::quote::{is_control, quoted};
use crate::report::Report;
use crate::scenario::document::{Document, PieceRow};
use crate::yaml::Trail;

/// Gives each of `pieces` the group that its row names, and what stands at seats those of its own group.
pub(super) fn resolve(document: &Document, names: &Names, pieces: &mut [Piece], report: &mut Report<'_>) {
    let root = Trail::default().key("pieces");
    let mut named: Vec<(String, Trail)> = Vec::new();
    for (place, row) in document.pieces.iter().flatten().enumerate() {
        let at = root.index(place);
        let Some(group) = row.as_ref().and_then(|row| group_of(row, &names.pieces[place], &at, report)) else {
            continue;
        };
        for piece in pieces.iter_mut().filter(|piece| names.pieces[place].contains(&piece.name)) {
            piece.group = Some(group.clone());
        }
        if !named.iter().any(|(known, _)| *known == group) {
            named.push((group, at.key("group")));
        }
    }
    tell_without_seat(&named, pieces, report);
    tell_nothing_left(&named, pieces, &root, report);
    share_seats(document, names, pieces, report);
}

/// The group that a row names; `None` where it names none, or may not.
fn group_of(row: &PieceRow, names: &[String], at: &Trail, report: &mut Report<'_>) -> Option<String> {
    let (group, kind, at) = (row.group.as_deref()?, row.kind?, at.key("group"));
    let name = names.first().map_or("a piece", String::as_str);
    let group = group.trim();
    if group.is_empty() || group.chars().any(is_control) {
        let message = format!("`group` of {name} is empty or holds control characters: `{}`.", quoted(group));
        let remedy = "Write a plain word, such as reading.".to_owned();
        report.add(&at, "control_character", name, message, remedy);
        return None;
    }
    if may_be_apart(kind) {
        return Some(group.to_owned());
    }
    let message = format!("`group` is no key of {name}, whose kind is {}.", kind.key());
    let remedy = "Leave `group` out; a group of its own has sofas or armchairs, and coffee tables, side tables, lamps and \
                  poufs at them.";
    report.add(&at, "key_of_another_kind", name, message, remedy.to_owned());
    None
}

/// Seats but for corner sofas, and what stands before them or at their ends.
fn may_be_apart(kind: PieceKind) -> bool {
    let traits = kind.traits();
    match traits.seat {
        Some(form) => form != SeatForm::Corner,
        None => matches!(traits.stands, Stands::BeforeSeat | Stands::BesideSeats),
    }
}

fn tell_without_seat(named: &[(String, Trail)], pieces: &[Piece], report: &mut Report<'_>) {
    let has_seat = |group: &str| pieces.iter().any(|piece| piece.kind.is_seat() && piece.is_of_group(group));
    for (group, at) in named.iter().filter(|(group, _)| !has_seat(group)) {
        let message = format!("The group `{}` has no seat.", quoted(group));
        let remedy = format!(
            "Give an armchair or a sofa the same `group: {}`, or leave `group` out: it then belongs to the main group.",
            quoted(group)
        );
        report.add(at, "group_without_seat", group, message, remedy);
    }
}

/// Tells where every seat is of a group of its own.
fn tell_nothing_left(named: &[(String, Trail)], pieces: &[Piece], root: &Trail, report: &mut Report<'_>) {
    let mut seats = pieces.iter().filter(|piece| piece.kind.is_seat()).peekable();
    if named.is_empty() || seats.peek().is_none() || seats.any(|seat| seat.group.is_none()) {
        return;
    }
    let message = "Every seat has a `group`, so the main group has none.".to_owned();
    let remedy = "Leave `group` out of the seats that people mostly sit on.".to_owned();
    report.add(root, "no_seat", "", message, remedy);
}

/// What stands at seats stands at those of its own group; what is said to stand at the seats of a group belongs to it.
fn share_seats(document: &Document, names: &Names, pieces: &mut [Piece], report: &mut Report<'_>) {
    let seats: Vec<(String, Option<String>)> = pieces
        .iter()
        .filter(|piece| piece.kind.is_seat())
        .map(|seat| (seat.name.clone(), seat.group.clone()))
        .collect();
    if seats.iter().all(|(_, group)| group.is_none()) {
        return;
    }
    for piece in pieces.iter_mut().filter(|piece| piece.kind.traits().stands == Stands::BesideSeats) {
        let mut groups = seats.iter().filter(|(name, _)| piece.at.contains(name)).map(|(_, group)| group);
        let first = groups.next().cloned();
        let is_one = groups.all(|group| Some(group) == first.as_ref());
        if let (None, Some(group), true) = (&piece.group, first, is_one) {
            piece.group = group;
        }
        let own = seats.iter().filter(|(_, group)| *group == piece.group).map(|(name, _)| name.clone());
        let own: Vec<String> = own.collect();
        let asked = std::mem::take(&mut piece.at);
        piece.at = if asked.is_empty() && piece.group.is_some() {
            own
        } else {
            asked.iter().filter(|seat| own.contains(seat)).cloned().collect()
        };
        if piece.at.is_empty() && !asked.is_empty() {
            tell_other_group(document, names, piece, report);
        }
    }
}

fn tell_other_group(document: &Document, names: &Names, piece: &Piece, report: &mut Report<'_>) {
    let rows = document.pieces.iter().flatten().count();
    let row = (0..rows).find(|place| names.pieces[*place].first() == Some(&piece.name));
    let Some(place) = row else { return };
    let at = Trail::default().key("pieces").index(place).key("at");
    let group =
        piece.group.as_deref().map_or("the main group".to_owned(), |group| format!("the group `{}`", quoted(group)));
    let message = format!("{} belongs to {group}, and stands at a seat of another.", piece.name);
    let remedy = "Give it the `group` of that seat, or leave `at` out.".to_owned();
    report.add(&at, "unknown_seat", &piece.name, message, remedy);
}
