//! Leg room, what is before a front, room between seats, a table on its axis.

use elbowroom_model::{Brief, Clearance, PieceKind};

use super::look::opposite;
use super::{Found, figure, main_seat};
use crate::support::checker::plane::{Polygon, apart, dot, extent, left, overlap};
use crate::support::checker::room::Ground;
use crate::support::checker::stand::Stand;
use crate::support::checker::step;

fn seats<'s, 'a>(stands: &'s [Stand<'a>]) -> impl Iterator<Item = &'s Stand<'a>> {
    stands.iter().filter(|stand| stand.piece.kind.is_seat())
}

fn names(between: &[&str]) -> Vec<String> {
    between.iter().map(|name| (*name).to_owned()).collect()
}

pub(super) fn leg_room(brief: &Brief, stands: &[Stand<'_>]) -> Vec<Found> {
    let Some(wanted) = figure(brief, Clearance::LegRoom) else { return Vec::new() };
    let main = main_seat(brief, stands).map(Stand::name);
    let mut all = Vec::new();
    for seat in seats(stands) {
        let is_main = main == Some(seat.name());
        let arm = if is_main { 100.0 } else { 0.0 };
        let of_group = |other: &Stand<'_>| seat.piece.group.is_some() && other.piece.group == seat.piece.group;
        let own_table = |other: &Stand<'_>| {
            other.piece.kind == PieceKind::CoffeeTable && (is_main && other.piece.group.is_none() || of_group(other))
        };
        let counts = |other: &&Stand<'_>| other.name() != seat.name() && !other.is_flat() && !other.is_footrest();
        for other in stands.iter().filter(counts).filter(|other| !own_table(other)) {
            let looks = [Some(seat.looks()), seat.return_looks(), seat.second_return_looks()].into_iter().flatten();
            for given in looks.filter_map(|look| look.less(arm).clear(&other.parts())) {
                let between = names(&[seat.name(), other.name()]);
                all.push(Found { rule: "leg_room", between, given: Some(given), short: wanted - given });
            }
        }
    }
    all
}

/// Walls and what stands for good, by name.
pub(super) fn standing(ground: &Ground) -> Vec<(String, Polygon)> {
    let walls = ground.walls.iter().map(|wall| (wall.name.clone(), wall.ends.to_vec()));
    walls.chain(ground.bodies.iter().cloned()).collect()
}

pub(super) fn front_open(brief: &Brief, ground: &Ground, stands: &[Stand<'_>]) -> Vec<Found> {
    let Some(wanted) = figure(brief, Clearance::FrontOpen) else { return Vec::new() };
    let main = main_seat(brief, stands).map(Stand::name);
    let mut all = Vec::new();
    for seat in seats(stands) {
        let wanted = if main == Some(seat.name()) { wanted } else { wanted / 2.0 };
        let look = seat.looks().less(100.0);
        // Nobody gets up onto a step: its line counts as wide as it may be off.
        let by = brief.room.measured_within;
        let steps = ground.steps.iter().map(|(name, line)| (name.clone(), step::strip(line, by)));
        for (name, shape) in standing(ground).into_iter().chain(steps) {
            if let Some(given) = look.clear(&[shape]) {
                let between = names(&[seat.name(), &name]);
                all.push(Found { rule: "front_open", between, given: Some(given), short: wanted - given });
            }
        }
    }
    all
}

pub(super) fn between(brief: &Brief, stands: &[Stand<'_>]) -> Vec<Found> {
    let Some(wanted) = figure(brief, Clearance::BetweenSeats) else { return Vec::new() };
    let mut all = Vec::new();
    for (i, seat) in stands.iter().enumerate().filter(|(_, stand)| stand.piece.kind.is_seat()) {
        for other in stands[i + 1..].iter().filter(|other| other.piece.kind.is_seat()) {
            let away = |a: &Stand<'_>, b: &Stand<'_>| {
                let ((a_low, _), (low, high)) = (extent(&a.main(), a.facing), extent(&b.main(), a.facing));
                (low + high) / 2.0 < a_low
            };
            if opposite(seat.facing, other.facing) && away(seat, other) && away(other, seat) {
                continue;
            }
            let (first, second) = (seat.parts(), other.parts());
            let pairs = first.iter().flat_map(|a| second.iter().map(move |b| apart(a, b)));
            let given = pairs.fold(f64::INFINITY, f64::min);
            let between = names(&[seat.name(), other.name()]);
            all.push(Found { rule: "between_seats", between, given: Some(given), short: wanted - given });
        }
    }
    all
}

pub(super) fn table_axis(brief: &Brief, stands: &[Stand<'_>]) -> Vec<Found> {
    let Some(wanted) = figure(brief, Clearance::TableAxis) else { return Vec::new() };
    let needs = brief.rules.get(Clearance::SeatToTable);
    let main = main_seat(brief, stands).map(Stand::name);
    let mut all = Vec::new();
    for table in stands.iter().filter(|stand| stand.piece.kind == PieceKind::CoffeeTable) {
        let off = |seat: &Stand<'_>| {
            let across = left(seat.facing);
            let beside = overlap(extent(&table.main(), across), extent(&seat.main(), across)) <= 0.0;
            let clear = extent(&table.main(), seat.facing).0 - extent(&seat.main(), seat.facing).1;
            let off = (clear - needs).abs();
            // In its place before the main seat it serves the main seat.
            let off = if off <= 1.5 && main == Some(seat.name()) { 0.0 } else { off };
            if beside { f64::INFINITY } else { off }
        };
        let of_group = seats(stands).filter(|seat| seat.piece.group == table.piece.group);
        let Some(seat) = of_group.min_by(|a, b| off(a).total_cmp(&off(b))) else { continue };
        let look = seat.looks();
        let (from, to) = extent(&table.main(), look.along);
        let given = ((from + to) / 2.0 - dot(look.middle, look.along)).abs();
        let along = dot(table.facing, look.out).abs() >= dot(table.facing, look.along).abs();
        let least = if along { table.piece.width.least } else { table.piece.depth.least };
        let by_return = if seat.away.is_some() { least / 2.0 + needs - look.half + 50.0 } else { 0.0 };
        let between = names(&[table.name(), seat.name()]);
        let short = given - wanted.max(by_return);
        all.push(Found { rule: "table_axis", between, given: Some(given), short });
    }
    all
}
