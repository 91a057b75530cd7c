//! A tried room as the script draws and tells it.

use elbowroom_model::{Brief, Hand, ItemKind, Point};
use elbowroom_solver::answer::{RankedOption, Thing, corners_of, degrees};
use elbowroom_solver::judge::JudgedRoom;
use elbowroom_solver::routes::Route;
use elbowroom_solver::verify::Breach;
use elbowroom_solver::{Placed, Site, Swing};
use serde_json::{Value, json};

use super::tried::Tried;
use crate::text::safe::safe;
use crate::words::answer::broken;
use crate::words::lengths::{shop_unit, sign};
use crate::words::page::trial as words;

/// Chords of a quarter circle.
const CHORDS: usize = 12;

/// A tried room.
pub(super) struct Shown<'a> {
    /// What ids are places in.
    pub(super) brief: &'a Brief,
    /// Where everything stands.
    pub(super) placed: &'a [Placed],
    /// What somebody did to it.
    pub(super) tried: &'a [Tried],
    /// Every rule that does not hold.
    pub(super) broken: &'a [Breach],
    /// Its ways.
    pub(super) routes: &'a [Route],
    /// 0 to 100.
    pub(super) score: f64,
}

impl<'a> Shown<'a> {
    /// A room that was judged.
    pub(super) fn judged(room: &'a JudgedRoom, tried: &'a [Tried]) -> Self {
        let JudgedRoom { brief, broken, routes, score, layout, .. } = room;
        Self { brief, placed: &layout.placed, tried, broken, routes, score: *score }
    }

    /// An option, which keeps every rule.
    pub(super) fn option(brief: &'a Brief, option: &'a RankedOption, tried: &'a [Tried]) -> Self {
        let RankedOption { layout, routes, score, .. } = option;
        Self { brief, placed: &layout.placed, tried, broken: &[], routes, score: *score }
    }

    /// How the room then is; `before`: the score that it is held against.
    pub(super) fn told(&self, before: Option<f64>) -> Value {
        let brief = self.brief;
        let unit = shop_unit(brief.units);
        let way = |route: &Route| safe(&words::way(brief, route));
        json!({
            "unit": { "sign": sign(unit), "mm": unit.millimetres() },
            "pieces": self.placed.iter().map(|placed| self.piece(placed)).collect::<Vec<_>>(),
            "outline": ring(&brief.room.outline()),
            "walls": walls(brief),
            "items": items(brief),
            "swings": swings(brief),
            "fixed": brief.room.fixed.iter().map(|fixed| ring(&fixed.corners)).collect::<Vec<_>>(),
            "broken": self.broken.iter().map(|breach| self.breach(breach)).collect::<Vec<_>>(),
            "ways": self.routes.iter().map(way).collect::<Vec<_>>(),
            "before": before,
            "score": words::score(self.score, before.unwrap_or(self.score)),
        })
    }

    fn piece(&self, placed: &Placed) -> Value {
        let size = placed.size;
        let kind = self.brief.piece(placed.piece).map(|piece| piece.kind);
        let it = self.tried.iter().find(|it| it.placed.piece == placed.piece);
        json!({
            "piece": placed.piece.0,
            "name": safe(self.brief.piece_name(placed.piece)),
            "x": placed.anchor.x,
            "y": -placed.anchor.y,
            "facing": degrees(placed.facing),
            "hand": placed.hand.map(Hand::key),
            "wall": placed.at_wall.map(|wall| wall.0),
            "width": size.width,
            "return": size.return_length,
            "second_return": size.second_return,
            "depth": size.depth,
            "return_depth": size.return_depth,
            "moved": it.is_some_and(|it| it.moved),
            "sized": it.is_some_and(|it| it.sized),
            // What lies flat is drawn under the others, what hangs over them.
            "level": kind.map_or(0, |kind| i32::from(kind.hangs()) - i32::from(kind.lies_under())),
            "parts": corners_of(placed).iter().map(|part| ring(part)).collect::<Vec<_>>(),
        })
    }

    fn breach(&self, breach: &Breach) -> Value {
        let piece = |thing: &Thing| match thing {
            Thing::Piece(piece) => Some(piece.0),
            _ => None,
        };
        let pieces: Vec<usize> = breach.between.iter().filter_map(piece).collect();
        json!({ "told": safe(&broken(self.brief, breach)), "pieces": pieces })
    }
}

fn walls(brief: &Brief) -> Vec<Value> {
    let wall = |(id, wall): (elbowroom_model::WallId, &elbowroom_model::Wall)| json!({ "name": safe(brief.room.wall_name(id)), "ends": ring(&[wall.start, wall.end]) });
    brief.room.walls().map(wall).collect()
}

fn items(brief: &Brief) -> Vec<Value> {
    let item = |item: &elbowroom_model::WallItem| {
        let (from, to) = brief.room.ends(item)?;
        let out = brief.room.wall(item.wall)?.inward() * depth(&item.kind);
        let ends = if depth(&item.kind) > 0.0 { vec![from, to, to + out, from + out] } else { vec![from, to] };
        Some(json!({ "kind": kind(&item.kind), "ends": ring(&ends) }))
    };
    brief.room.items.iter().filter_map(item).collect()
}

/// How far into the room a thing stands, mm.
fn depth(kind: &ItemKind) -> f64 {
    match kind {
        ItemKind::Radiator(radiator) => radiator.depth,
        ItemKind::Fireplace(fire) => fire.depth,
        ItemKind::Door(_) | ItemKind::Opening(_) | ItemKind::Window(_) | ItemKind::Socket(_) => 0.0,
    }
}

/// A kind as the page's style knows it.
const fn kind(kind: &ItemKind) -> &'static str {
    match kind {
        ItemKind::Door(_) => "door",
        ItemKind::Opening(_) => "opening",
        ItemKind::Window(_) => "window",
        ItemKind::Radiator(_) => "radiator",
        ItemKind::Fireplace(_) => "fireplace",
        ItemKind::Socket(_) => "socket",
    }
}

/// What each leaf sweeps: from its hinge, open, round to the jamb.
fn swings(brief: &Brief) -> Vec<Vec<[f64; 2]>> {
    let swept = |swing: &Swing| {
        let mut line = vec![swing.hinge];
        let step = |step: usize| swing.after(swing.turn * step as f64 / CHORDS as f64) * swing.radius;
        line.extend((0..=CHORDS).map(|chord| swing.hinge + step(chord)));
        ring(&line)
    };
    Site::of(brief).swings.iter().map(swept).collect()
}

/// Places as the script has them: y runs down.
fn ring(places: &[Point]) -> Vec<[f64; 2]> {
    places.iter().map(|place| [place.x, -place.y]).collect()
}
