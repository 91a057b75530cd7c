//! The room: its walls and what they hold, what stands in it for good, how its survey closed.

use elbowroom_model::{
    Brief, Door, Hinge, ItemKind, LeadsTo, Room, Socket, Stance, Swings, Unit, View, WallId, Window,
};

use crate::text::page::Page;
use crate::text::table::{Stand, Table};
use crate::words::check as words;
use crate::words::lengths::{taped, taped_bare};

/// Everything measured.
pub(super) fn tell(page: &mut Page, file: &str, brief: &Brief) {
    let room = &brief.room;
    page.paragraph(2, &words::room_read(file, room, |length| taped(brief.units, length)));
    walls(page, room, brief.units);
    items(page, room, brief.units);
    fixed(page, room, brief.units);
    survey(page, room, brief.units);
}

fn walls(page: &mut Page, room: &Room, units: Unit) {
    page.heading(words::WALLS);
    let mut table = Table::new(&[
        ("", Stand::Left),
        ("length", Stand::Right),
        ("inside angle at its right end", Stand::Left),
        ("", Stand::Left),
    ]);
    for (id, wall) in room.walls() {
        let bearing = room.bearing.filter(|(at, _)| *at == id);
        let mut notes: Vec<String> = bearing.map(|(_, bearing)| words::bearing(bearing)).into_iter().collect();
        notes.extend(kept_off(room, id, units));
        let note = notes.join("; ");
        let angle = words::degrees(inside_angle(room, id));
        table.row([wall.name.clone(), taped(units, wall.length()), angle, note]);
    }
    page.table(2, &table);
}

/// What a wall keeps off it.
fn kept_off(room: &Room, id: WallId, units: Unit) -> Vec<String> {
    let kinds: Vec<String> =
        room.kept_free.iter().filter(|kept| kept.wall == id).map(|kept| kept.kind.words()).collect();
    let kept = (!kinds.is_empty()).then(|| words::kept_free(&kinds.join(", ")));
    let slopes = room.slopes.iter().filter(|slope| slope.wall == id);
    let falls =
        slopes.map(|slope| words::falls(&[slope.from, slope.over, slope.to].map(|length| taped(units, length))));
    kept.into_iter().chain(falls).collect()
}

/// Inside angle at the right-hand end of a wall, degrees.
fn inside_angle(room: &Room, WallId(wall): WallId) -> f64 {
    let along = |wall: usize| room.wall(WallId(wall % room.walls.len())).map(elbowroom_model::Wall::along);
    match (along(wall), along(wall + 1)) {
        (Some(here), Some(next)) => 180.0 + here.turn_to(next).to_degrees(),
        _ => 0.0,
    }
}

fn items(page: &mut Page, room: &Room, units: Unit) {
    if room.items.is_empty() {
        return;
    }
    page.heading(words::ITEMS);
    let mut table = Table::new(&[
        ("", Stand::Left),
        ("on", Stand::Left),
        ("from", Stand::Right),
        ("to", Stand::Right),
        ("", Stand::Left),
    ]);
    for item in &room.items {
        let wall = room.wall(item.wall).map_or_else(String::new, |wall| wall.name.clone());
        let (from, to) = (taped(units, item.at), taped(units, item.at + item.width));
        let to = if item.width > 0.0 { to } else { String::new() };
        table.row([item.name.clone(), wall, from, to, said(&item.kind, units)]);
    }
    page.table(2, &table);
}

/// What the file says of an item, defaults filled in.
fn said(kind: &ItemKind, units: Unit) -> String {
    let taped = |length: f64| taped(units, length);
    match kind {
        ItemKind::Window(window) => of_window(window, units),
        ItemKind::Door(door) => of_door(door),
        ItemKind::Opening(opening) => {
            let stance = match opening.stance {
                Stance::Open => ", keep sight of it",
                Stance::Away => ", seats may turn their backs on it",
                Stance::None => "",
            };
            format!("opening to {}{stance}", space(&opening.leads_to))
        }
        ItemKind::Radiator(it) => {
            format!(
                "radiator {} deep, {} high, {} clear before it",
                taped(it.depth),
                taped(it.height),
                taped(it.keep_clear)
            )
        }
        ItemKind::Fireplace(it) => {
            let height = it.height.map_or_else(String::new, |height| format!(", {} high", taped(height)));
            let clear = taped(it.keep_clear);
            let (of, front) = match it.opening {
                Some(mouth) => (
                    format!(", opening {} wide {} from its left end", taped(mouth.width), taped(mouth.at)),
                    "the opening's",
                ),
                None => (String::new(), "its front's"),
            };
            format!("fireplace {} deep{height}{of}, {clear} clear before it and round {front} ends", taped(it.depth))
        }
        ItemKind::Socket(Socket::Power) => "socket, power".to_owned(),
        ItemKind::Socket(Socket::Aerial) => "socket, aerial".to_owned(),
        ItemKind::Socket(Socket::Data) => "socket, data".to_owned(),
    }
}

fn of_window(window: &Window, units: Unit) -> String {
    let view = match window.view {
        View::Liked => "liked",
        View::Plain => "plain",
        View::Avoided => "avoided",
    };
    let opens = match (window.opens, window.must_reach) {
        (_, true) => ", must be reached",
        (true, false) => ", opens",
        (false, false) => ", does not open",
    };
    format!("window, sill {}, head {}, view {view}{opens}", taped(units, window.sill), taped(units, window.head))
}

fn of_door(door: &Door) -> String {
    let hinge = match door.hinge {
        Some(Hinge::Left) => ", hinge left",
        Some(Hinge::Right) => ", hinge right",
        None => "",
    };
    let swings = match door.swings {
        Swings::In => "swings in",
        Swings::Out => "swings out",
        Swings::Slides => "slides",
        Swings::Folds => "folds into the room",
        Swings::Pocket => "slides into the wall",
    };
    let opens_to = door.opens_to.map_or_else(String::new, |degrees| format!(", {}", words::opens_to(degrees)));
    format!("door to {}{hinge}, {swings}{opens_to}", space(&door.leads_to))
}

fn space(leads_to: &LeadsTo) -> &str {
    match leads_to {
        LeadsTo::Entrance => "the entrance",
        LeadsTo::Space(space) => space,
    }
}

fn fixed(page: &mut Page, room: &Room, units: Unit) {
    if room.fixed.is_empty() {
        return;
    }
    page.heading(words::FIXED);
    for thing in &room.fixed {
        let corners = thing.corners.iter();
        let corners: Vec<String> =
            corners.map(|at| format!("({}, {})", taped_bare(units, at.x), taped_bare(units, at.y))).collect();
        if thing.step().is_some() {
            let height = thing.height.map(|height| taped(units, height));
            page.entry(2, &words::step(&thing.name, &corners, height.as_deref()));
            continue;
        }
        let used = thing.use_depth.map(|depth| format!(", {}", words::used(&taped(units, depth)))).unwrap_or_default();
        page.entry(2, &format!("{}: {}, corners {}{used}", thing.name, thing.kind, corners.join(" ")));
    }
}

fn survey(page: &mut Page, room: &Room, units: Unit) {
    page.heading(words::SURVEY);
    let tape = |length: f64| taped(units, length);
    page.paragraph(2, &words::closure(&room.survey, tape));
    if room.survey.spread {
        for (wall, correction) in room.walls.iter().zip(&room.survey.corrections).filter(|(_, by)| **by > 0.5) {
            page.entry(4, &format!("{}: moved by {}", wall.name, units.finely(*correction)));
        }
    }
    residuals(page, room, units);
}

fn residuals(page: &mut Page, room: &Room, units: Unit) {
    let mut table =
        Table::new(&[("", Stand::Left), ("measured", Stand::Right), ("fitted", Stand::Right), ("", Stand::Left)]);
    for residual in &room.survey.residuals {
        let slip = if residual.likely_slip { words::LIKELY_SLIP } else { "" };
        let figure = |figure: f64| if is_angle(&residual.of) { words::degrees(figure) } else { taped(units, figure) };
        table.row([residual.of.clone(), figure(residual.measured), figure(residual.fitted), slip.to_owned()]);
    }
    if !table.is_empty() {
        page.table(2, &table);
    }
}

/// Whether a measured quantity is a corner's angle; all others are lengths.
fn is_angle(of: &str) -> bool {
    of.starts_with("corner")
}
