//! Solid wall behind, nothing before openings, what is behind seats and returns.

use elbowroom_model::{Brief, Clearance, ItemKind, Stance, WallItem};

use super::look::{Look, opposite};
use super::seats::standing;
use super::{Found, figure, main_seat};
use crate::support::checker::plane::{P, Polygon, add, dot, extent, left, minus, overlap, shared, unit};
use crate::support::checker::room::{Ground, xy};
use crate::support::checker::stand::Stand;

/// The wall of an item as moved in, over the item, looking into the room.
fn face_of(brief: &Brief, item: &WallItem) -> Look {
    let wall = &brief.room.walls[item.wall.0];
    let along = unit(minus(xy(wall.end), xy(wall.start)));
    let inward = minus([0.0, 0.0], left(along));
    let at = |x: f64| add(add(xy(wall.start), along, x), inward, brief.room.measured_within);
    Look::new(at(item.at), at(item.at + item.width), inward)
}

fn is_doorway(item: &WallItem) -> bool {
    matches!(item.kind, ItemKind::Door(_) | ItemKind::Opening(_))
}

pub(super) fn solid(brief: &Brief, stands: &[Stand<'_>]) -> Vec<Found> {
    let Some(wanted) = figure(brief, Clearance::SolidWall) else { return Vec::new() };
    let mut all = Vec::new();
    for stand in stands.iter().filter(|stand| !stand.is_flat()) {
        let wall = brief.room.walls.iter().position(|wall| Some(&wall.name) == stand.at_wall.as_ref());
        let Some(place) = wall else { continue };
        let wall = &brief.room.walls[place];
        let (start, end) = (xy(wall.start), xy(wall.end));
        let along = unit(minus(end, start));
        let (from, to) = extent(&stand.main(), along);
        let back = (from - dot(start, along), to - dot(start, along));
        let mut given = to - from - overlap(back, (0.0, dot(minus(end, start), along))).max(0.0);
        let mut between = vec![stand.name().to_owned(), wall.name.clone()];
        for item in brief.room.items.iter().filter(|item| item.wall.0 == place && is_doorway(item)) {
            let open = overlap(back, (item.at, item.at + item.width)).max(0.0);
            if open > 0.0 {
                between.push(item.name.clone());
            }
            given += open;
        }
        all.push(Found { rule: "solid_wall", between, given: Some(given), short: given - wanted });
    }
    all
}

/// The floor before what people use.
pub(super) fn in_use(ground: &Ground, stands: &[Stand<'_>]) -> Vec<Found> {
    let mut all = Vec::new();
    for used in &ground.used {
        let face = Look::new(used.edge[0], used.edge[1], used.out);
        for stand in stands.iter().filter(|stand| !stand.is_flat()) {
            let Some(given) = face.clear(&stand.parts()) else { continue };
            let between = vec![stand.name().to_owned(), used.name.clone()];
            all.push(Found { rule: "use", between, given: Some(given), short: used.depth - given });
        }
    }
    all
}

pub(super) fn openings(brief: &Brief, stands: &[Stand<'_>]) -> Vec<Found> {
    let Some(wanted) = figure(brief, Clearance::BeforeOpening) else { return Vec::new() };
    let walkway = brief.rules.get(Clearance::Walkway);
    let mut all = Vec::new();
    for item in brief.room.items.iter().filter(|item| is_doorway(item)) {
        let face = face_of(brief, item);
        let may_be_backed =
            matches!(&item.kind, ItemKind::Opening(it) if it.stance != Stance::Open) && item.width > 1200.0;
        for stand in stands.iter().filter(|stand| !stand.is_flat()) {
            let Some(given) = face.clear(&stand.parts()) else { continue };
            let ends: Vec<f64> = stand.parts().iter().flatten().map(|&p| face.place(p).1).collect();
            let (from, to) =
                (ends.iter().copied().fold(f64::INFINITY, f64::min), ends.iter().copied().fold(-1e9, f64::max));
            let beside = (from + face.half).max(face.half - to);
            let free_seat = stand.piece.kind.is_seat() && stand.at_wall.is_none();
            let turned = opposite(minus([0.0, 0.0], face.out), stand.facing);
            if may_be_backed && free_seat && turned && beside >= walkway - 1.0 {
                continue;
            }
            let between = vec![stand.name().to_owned(), item.name.clone()];
            all.push(Found { rule: "before_opening", between, given: Some(given), short: wanted - given });
        }
    }
    all
}

pub(super) fn behind(brief: &Brief, ground: &Ground, stands: &[Stand<'_>]) -> Vec<Found> {
    let Some(hand) = figure(brief, Clearance::BehindSeat) else { return Vec::new() };
    let passage = brief.rules.get(Clearance::Passage);
    let main = main_seat(brief, stands).map(Stand::name);
    let seats = stands.iter().filter(|stand| stand.piece.kind.is_seat());
    let of_seat = |seat: &Stand<'_>| {
        let back = seat.back();
        let shapes: Vec<Polygon> = standing(ground).into_iter().map(|(_, shape)| shape).collect();
        let others: Vec<&Stand<'_>> =
            stands.iter().filter(|other| other.name() != seat.name() && !other.is_flat()).collect();
        let to_room = back.clear(&shapes).unwrap_or(f64::INFINITY);
        let to_piece = others.iter().filter_map(|other| back.clear(&other.parts())).fold(f64::INFINITY, f64::min);
        let given = to_room.min(to_piece);
        let gap = if seat.at_wall.is_some() { seat.piece.off_wall } else { 0.0 };
        let near = others.iter().any(|other| {
            let parts = other.parts();
            let covered = parts.iter().filter_map(|part| back.covers(part, (-1.0, 151.0)));
            covered.map(|(from, to)| to - from).sum::<f64>() >= back.half - 1.0
        });
        let closed = to_room <= hand.max(gap) + 1.0 || near || held_off(brief, ground, seat);
        let free = main == Some(seat.name()) && seat.at_wall.is_none();
        let reason = to_piece <= 1001.0 || brief.room.items.iter().any(|item| is_reason(brief, &back, item));
        let needs_room = free && !reason;
        let wanted = if needs_room { passage.max(1000.0) } else { passage };
        let short = if closed && !needs_room { 0.0 } else { wanted - given };
        Found { rule: "behind_seat", between: vec![seat.name().to_owned()], given: Some(given), short }
    };
    seats.map(of_seat).collect()
}

/// Half of a doorway or window, at most 400 mm of it, behind a back within a metre.
fn is_reason(brief: &Brief, back: &Look, item: &WallItem) -> bool {
    let face = face_of(brief, item);
    let ends: [P; 2] = [-face.half, face.half].map(|x| add(face.middle, face.along, x));
    let part = back.part(&ends, (-1.0, 1001.0));
    let (from, to) = extent(&part, face.along);
    (is_doorway(item) || matches!(item.kind, ItemKind::Window(_)))
        && !part.is_empty()
        && to - from >= (item.width / 2.0).min(400.0) - 1.0
}

/// Whether a window's front, a radiator or a fire lies right behind a seat.
fn held_off(brief: &Brief, ground: &Ground, seat: &Stand<'_>) -> bool {
    let moved: Polygon = seat.main().iter().map(|&p| add(p, seat.facing, -2.0)).collect();
    let of_item = |name: &str| brief.room.items.iter().any(|item| item.name == name);
    ground.zones.iter().any(|zone| {
        ["window_front", "keep_clear", "fixed"].contains(&zone.rule)
            && of_item(&zone.item)
            && seat.piece.height_with_screen() > zone.above
            && zone.shapes.iter().any(|shape| shared(&moved, shape) > 0.5)
    })
}

pub(super) fn returns(ground: &Ground, stands: &[Stand<'_>]) -> Vec<Found> {
    let mut all = Vec::new();
    let with_gap = stands.iter().filter(|stand| stand.piece.off_wall > 0.0);
    let backs = with_gap.flat_map(|stand| {
        let first = stand.return_back().filter(|_| !stand.piece.chaise);
        [first, stand.second_return_back()].into_iter().flatten().map(move |back| (stand, back))
    });
    for (seat, back) in backs {
        for wall in ground.walls.iter().filter(|wall| opposite(wall.inward, back.out)) {
            if let Some(given) = back.clear(&[wall.ends.to_vec()]) {
                let between = vec![seat.name().to_owned(), wall.name.clone()];
                let short = seat.piece.off_wall - given;
                all.push(Found { rule: "return_off_wall", between, given: Some(given), short });
            }
        }
    }
    all
}
