//! A coffee table lies before the seat it serves, free of the return, with nothing in between, and a passage from the
//! media unit.

use elbowroom_model::{Clearance, PieceId, PieceKind, Point};

use super::breach::{Breach, Wrong};
use super::checked_layout::{CheckedLayout, InPlace, common};
use super::tolerance::{PLACE, SLACK};
use crate::answer::Thing;
use crate::arrangement::Relation;
use crate::geometry::{Convex, apart, meets};

/// Breaches of the distances that are leasts: they hold for smaller pieces too.
pub(super) fn breaches(scene: &CheckedLayout<'_>) -> Vec<Breach> {
    let tables = scene.those(PieceKind::stands_before_seat);
    tables.flat_map(|table| best_served(scene, table, too_near)).chain(media(scene)).collect()
}

/// Breaches of the place itself: the table lies exactly so far before its seat.
pub(super) fn out_of_place(scene: &CheckedLayout<'_>) -> Vec<Breach> {
    let tables = scene.those(PieceKind::stands_before_seat);
    tables.flat_map(|table| best_served(scene, table, too_far)).collect()
}

/// The seats that the arrangement has the table serve; every seat where it names none.
pub(super) fn served<'s>(scene: &'s CheckedLayout<'_>, table: &InPlace<'_>) -> Vec<&'s InPlace<'s>> {
    let standing = scene.arrangement.standings.iter().find(|standing| standing.piece == table.placed.piece);
    let stands = standing.map_or(&[][..], |standing| &standing.stands);
    let named: Vec<PieceId> = stands
        .iter()
        .filter_map(|stand| match stand.relation {
            Relation::Before { seat } => Some(seat),
            _ => None,
        })
        .collect();
    scene.seats().filter(|seat| named.is_empty() || named.contains(&seat.placed.piece)).collect()
}

/// The way from a coffee table to the seat it serves; `None` for every other piece.
pub(super) fn side_of_seat(scene: &CheckedLayout<'_>, table: &InPlace<'_>) -> Option<Point> {
    if !table.piece.kind.stands_before_seat() {
        return None;
    }
    let off = |seat: &&InPlace<'_>| (before(seat, table) - scene.rule(Clearance::SeatToTable)).abs();
    let nearest = served(scene, table).into_iter().min_by(|first, second| off(first).total_cmp(&off(second)));
    nearest.map(|seat| -seat.placed.facing)
}

/// The seat before which a coffee table lies best: one that it overlaps sideways, nearest to its place.
pub(super) fn best_seat<'s>(scene: &'s CheckedLayout<'_>, table: &InPlace<'_>) -> Option<&'s InPlace<'s>> {
    let off = |seat: &InPlace<'_>| (before(seat, table) - scene.rule(Clearance::SeatToTable)).abs();
    let beside = |seat: &InPlace<'_>| sideways(seat, table) <= 0.0;
    let order = |first: &&InPlace<'_>, second: &&InPlace<'_>| {
        beside(first).cmp(&beside(second)).then(off(first).total_cmp(&off(second)))
    };
    served(scene, table).into_iter().min_by(order)
}

/// The coffee tables that lie in their place before a seat.
pub(super) fn tables_of(scene: &CheckedLayout<'_>, seat: &InPlace<'_>) -> Vec<PieceId> {
    let needs = scene.rule(Clearance::SeatToTable);
    let serves = |table: &&InPlace<'_>| {
        let served = served(scene, table);
        served.iter().any(|other| other.placed.piece == seat.placed.piece)
            && (before(seat, table) - needs).abs() <= PLACE
            && sideways(seat, table) > 0.0
    };
    scene.those(PieceKind::stands_before_seat).filter(serves).map(|table| table.placed.piece).collect()
}

type Check = fn(&CheckedLayout<'_>, &InPlace<'_>, &InPlace<'_>) -> Vec<Breach>;

/// What is wrong with the table before the seat that it serves best.
fn best_served(scene: &CheckedLayout<'_>, table: &InPlace<'_>, check: Check) -> Vec<Breach> {
    let missing = |breaches: &Vec<Breach>| breaches.iter().map(|breach| breach.short_by).sum::<f64>();
    let all = served(scene, table).into_iter().map(|seat| check(scene, seat, table));
    all.min_by(|first, second| missing(first).total_cmp(&missing(second))).unwrap_or_default()
}

fn too_near(scene: &CheckedLayout<'_>, seat: &InPlace<'_>, table: &InPlace<'_>) -> Vec<Breach> {
    let rule = Clearance::SeatToTable;
    let needs = scene.rule(rule);
    let between = [table.thing(), seat.thing()];
    let mut found = Vec::new();
    let clear = before(seat, table);
    if clear < needs - PLACE {
        found.push(Breach::new(rule, Wrong::TableTooNear, &between, needs - clear));
    }
    let beside = -sideways(seat, table);
    if beside >= 0.0 {
        found.push(Breach::new(rule, Wrong::TableBeside, &between, beside));
    }
    for run in seat.parts.iter().skip(1) {
        let clear = table.parts.iter().map(|part| apart(run, part)).fold(f64::INFINITY, f64::min);
        if clear < needs - SLACK {
            found.push(Breach::new(rule, Wrong::TableNearReturn, &between, needs - clear));
        }
    }
    found.extend(in_between(scene, seat, table));
    found
}

fn too_far(scene: &CheckedLayout<'_>, seat: &InPlace<'_>, table: &InPlace<'_>) -> Vec<Breach> {
    let past = before(seat, table) - scene.rule(Clearance::SeatToTable);
    let between = [table.thing(), seat.thing()];
    let breach = || Breach::new(Clearance::SeatToTable, Wrong::TableTooFar, &between, past);
    (past > PLACE).then(breach).into_iter().collect()
}

/// What stands between the seat's front and its table, where the two overlap sideways.
fn in_between(scene: &CheckedLayout<'_>, seat: &InPlace<'_>, table: &InPlace<'_>) -> Vec<Breach> {
    let Some(strip) = strip(seat, table).and_then(|strip| strip.pulled_in(SLACK)) else { return Vec::new() };
    let others = [seat.placed.piece, table.placed.piece];
    let pieces = scene.standing_but(&others);
    let pieces = pieces.flat_map(|piece| piece.parts.iter().map(|part| (piece.thing(), part)));
    let bodies = scene.checked.bodies.iter().map(|(of, body)| (*of, body));
    let between = pieces.chain(bodies).filter(|(_, shape)| meets(shape, &strip));
    let breach = |(of, _): (Thing, &Convex)| {
        let between = [of, seat.thing(), table.thing()];
        Breach::new(Clearance::SeatToTable, Wrong::BeforeTable, &between, SLACK)
    };
    between.map(breach).collect()
}

/// The floor between the seat's front and the table, over the stretch they share.
fn strip(seat: &InPlace<'_>, table: &InPlace<'_>) -> Option<Convex> {
    let (facing, left) = (seat.placed.facing, seat.placed.left());
    let (of_seat, of_table) = (seat.extent(left), table.extent(left));
    let (from, to) = (of_seat.0.max(of_table.0), of_seat.1.min(of_table.1));
    let (near, far) = (seat.extent(facing).1, table.extent(facing).0);
    let at = |along: f64, out: f64| left * along + facing * out;
    (from < to && near < far)
        .then(|| Convex::counter_clockwise([at(from, near), at(from, far), at(to, far), at(to, near)]))
}

/// How far the table lies before the seat's front.
fn before(seat: &InPlace<'_>, table: &InPlace<'_>) -> f64 {
    table.extent(seat.placed.facing).0 - seat.extent(seat.placed.facing).1
}

fn sideways(seat: &InPlace<'_>, table: &InPlace<'_>) -> f64 {
    let left = seat.placed.left();
    common(seat.extent(left), table.extent(left))
}

/// The passage between table and media unit; without a table, between the media unit and the seats that face it.
fn media(scene: &CheckedLayout<'_>) -> Vec<Breach> {
    let needs = scene.rule(Clearance::Passage);
    let mut found = Vec::new();
    let no_table = scene.those(PieceKind::stands_before_seat).next().is_none();
    for media in scene.those(PieceKind::carries_screen) {
        let is_watched = scene.brief.is_watched(media.piece);
        let tables = scene.those(PieceKind::stands_before_seat).map(|table| (table.thing(), table.apart(media)));
        let seats = scene.seats().filter(|seat| is_watched && no_table && super::group::face(seat, media));
        let from_front = |seat: &InPlace<'_>| {
            media.parts.iter().map(|part| apart(part, &seat.front())).fold(f64::INFINITY, f64::min)
        };
        let seats = seats.map(|seat| (seat.thing(), from_front(seat)));
        for (of, clear) in tables.chain(seats).filter(|(_, clear)| *clear < needs - SLACK) {
            found.push(Breach::new(Clearance::Passage, Wrong::TooNear, &[of, media.thing()], needs - clear));
        }
    }
    found
}
