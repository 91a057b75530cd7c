//! A piece tried elsewhere: what that breaks, how the room then scores, and the rest settled about it. Nothing is written.

use axum::extract::{Path, State};
use axum::http::StatusCode;
use axum::response::Response;
use elbowroom_model::{Brief, Hand, PieceId, Point, SizeRange, StandsAt, Unit, WallId};
use elbowroom_solver::answer::{Answer, Thing, corners_of, degrees};
use elbowroom_solver::judge::{JudgedRoom, Placement, judge as judged};
use elbowroom_solver::{Limits, Placed, Size, Watch, rank};
use serde_json::{Value, json};

use super::asked::Asked;
use super::beside::while_waited_for;
use crate::page::desk::Desk;
use crate::page::reply;
use crate::text::safe::safe;
use crate::words::answer::{broken, title};
use crate::words::lengths::{shop_unit, sign};
use crate::words::page as words;
use crate::words::page::trial as trial_words;

/// Most places from the room's corner that figures may name, mm.
const FARTHEST: f64 = 100_000.0;

/// Says what pieces break where they are put.
pub(super) async fn judge(State(desk): State<Desk>, Path(name): Path<String>, on: Asked, body: String) -> Response {
    with_answer(desk, name, on.units, body, |answer, asked, _| {
        let placed = placed(answer, asked)?;
        let (brief, placement) = stood(&answer.brief, &placed);
        let room = judged(&brief, &placement).ok()?;
        Some(told(answer, &room, &placed, asked))
    })
    .await
}

/// Solves the room again with what was moved held there, for as long as somebody waits for it.
pub(super) async fn settle(State(desk): State<Desk>, Path(name): Path<String>, on: Asked, body: String) -> Response {
    with_answer(desk, name, on.units, body, |answer, asked, watch| {
        let placed = placed(answer, asked)?;
        let mut brief = answer.brief.clone();
        for (placed, _) in placed.iter().filter(|(_, moved)| *moved) {
            hold(&mut brief, placed);
        }
        let settled = rank(&brief, &Limits { shown: 0, ..Limits::default() }, watch);
        let Some(option) = settled.options.first() else { return Some(json!({ "told": trial_words::NOT_SETTLED })) };
        let kept = |piece: PieceId| placed.iter().any(|(one, moved)| *moved && one.piece == piece);
        let placed: Vec<(Placed, bool)> =
            option.layout.placed.iter().map(|one| (one.clone(), kept(one.piece))).collect();
        let (brief, placement) = stood(&answer.brief, &placed);
        let room = judged(&brief, &placement).ok()?;
        let mut told = told(answer, &room, &placed, asked);
        told["told"] = trial_words::SETTLED.into();
        told["title"] = safe(&title(&settled.brief, option)).into();
        Some(told)
    })
    .await
}

async fn with_answer(
    desk: Desk,
    name: String,
    units: Option<Unit>,
    body: String,
    made: impl FnOnce(&Answer, &Value, &dyn Watch) -> Option<Value> + Send + 'static,
) -> Response {
    while_waited_for(move |watch| {
        let solved = desk.room(&name).and_then(|room| room.seen().ok()?.told_in(units).solved);
        let asked: Value = serde_json::from_str(&body).unwrap_or_default();
        match solved.and_then(|solved| made(&solved.answer, &asked, watch)) {
            Some(value) => reply::json(StatusCode::OK, &value),
            None => reply::json(StatusCode::UNPROCESSABLE_ENTITY, &json!({ "told": words::NOT_UNDERSTOOD })),
        }
    })
    .await
}

/// Where each piece is put, and whether somebody moved it: as a script says, or as the option has it.
fn placed(answer: &Answer, asked: &Value) -> Option<Vec<(Placed, bool)>> {
    match asked["pieces"].as_array() {
        Some(pieces) => pieces.iter().map(|piece| one(&answer.brief, piece)).collect(),
        None => {
            let option = answer.keyed(asked["key"].as_str()?)?;
            Some(option.layout.placed.iter().map(|placed| (placed.clone(), false)).collect())
        }
    }
}

fn one(brief: &Brief, asked: &Value) -> Option<(Placed, bool)> {
    let figure = |key: &str| asked[key].as_f64().filter(|figure| figure.is_finite() && figure.abs() < FARTHEST);
    let size = |key: &str| figure(key).filter(|size| *size > 0.0);
    let piece = PieceId(usize::try_from(asked["piece"].as_u64()?).ok()?);
    brief.piece(piece)?;
    let turn = figure("facing")?.to_radians();
    let hand = match asked["hand"].as_str() {
        Some("left") => Some(Hand::Left),
        Some("right") => Some(Hand::Right),
        _ => None,
    };
    let wall = asked["wall"].as_u64().and_then(|wall| usize::try_from(wall).ok()).map(WallId);
    let wall = wall.filter(|wall| brief.room.wall(*wall).is_some());
    let placed = Placed {
        piece,
        at_wall: wall,
        anchor: Point::new(figure("x")?, -figure("y")?),
        // What stands square stays so to the last digit.
        facing: wall
            .and_then(|wall| brief.room.wall(wall))
            .map_or_else(|| square(Point::new(turn.cos(), turn.sin())), elbowroom_model::Wall::inward),
        hand,
        size: Size {
            width: size("width")?,
            return_length: size("return"),
            second_return: size("second_return"),
            depth: size("depth")?,
            return_depth: size("return_depth"),
        },
    };
    Some((placed, asked["moved"].as_bool().unwrap_or(false)))
}

/// A way that is square to within what figures carry, made so.
fn square(way: Point) -> Point {
    let near = |figure: f64| if figure.abs() < 1e-9 { 0.0 } else { figure };
    Point::new(near(way.x), near(way.y))
}

/// The brief in which each piece stands so, and the placement: what was moved finds the wall behind it anew.
fn stood(brief: &Brief, placed: &[(Placed, bool)]) -> (Brief, Placement) {
    let mut stood = brief.clone();
    for piece in brief.piece_ids() {
        match placed.iter().find(|(one, _)| one.piece == piece) {
            Some((one, _)) => hold(&mut stood, one),
            None => {
                if let Some(piece) = stood.piece_mut(piece) {
                    (piece.needed, piece.stands) = (false, None);
                }
            }
        }
    }
    let found = Placement::of(&stood).map(|placement| placement.placed).unwrap_or_default();
    let each = |(one, moved): &(Placed, bool)| {
        let anew = found.iter().find(|found| found.piece == one.piece).filter(|_| *moved);
        anew.unwrap_or(one).clone()
    };
    let placement = Placement { placed: placed.iter().map(each).collect() };
    (stood, placement)
}

/// Has a piece stand there in the size that it has.
fn hold(brief: &mut Brief, placed: &Placed) {
    let left = placed.facing.left();
    // The back's middle of a corner sofa lies half its width from the outer corner.
    let back = match placed.hand {
        Some(Hand::Left) if placed.size.return_length.is_some() => placed.anchor - left * (placed.size.width / 2.0),
        Some(Hand::Right) if placed.size.return_length.is_some() => placed.anchor + left * (placed.size.width / 2.0),
        _ => placed.anchor,
    };
    let Some(piece) = brief.piece_mut(placed.piece) else { return };
    let fixed = |size: f64| SizeRange { least: size, usual: size, most: size };
    piece.width = fixed(placed.size.width);
    piece.depth = fixed(placed.size.depth);
    piece.return_length = placed.size.return_length.map(fixed);
    piece.second_return = placed.size.second_return.map(fixed);
    piece.return_depth = placed.size.return_depth.map(fixed);
    piece.aim = None;
    if let Some(hand) = placed.hand {
        piece.hands = vec![hand];
    }
    piece.stands = Some(StandsAt::Place { back, facing: placed.facing });
    piece.held = true;
}

/// How the room then is, as the script draws and tells it.
fn told(answer: &Answer, room: &JudgedRoom, moved: &[(Placed, bool)], asked: &Value) -> Value {
    let brief = &room.brief;
    let piece = |placed: &Placed| {
        let size = placed.size;
        json!({
            "piece": placed.piece.0,
            "name": safe(brief.piece_name(placed.piece)),
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
            "moved": moved.iter().any(|(one, moved)| *moved && one.piece == placed.piece),
            "parts": corners_of(placed).iter().map(|part| ring(part)).collect::<Vec<_>>(),
        })
    };
    let breach = |breach: &elbowroom_solver::verify::Breach| {
        let pieces: Vec<usize> = breach
            .between
            .iter()
            .filter_map(|thing| match thing {
                Thing::Piece(piece) => Some(piece.0),
                _ => None,
            })
            .collect();
        json!({ "told": safe(&broken(brief, breach)), "pieces": pieces })
    };
    let before = asked["before"].as_f64().or_else(|| answer.keyed(asked["key"].as_str()?).map(|option| option.score));
    let way = |route: &elbowroom_solver::routes::Route| safe(&trial_words::way(brief, route));
    let items = brief.room.items.iter().filter_map(|item| {
        let (from, to) = brief.room.ends(item)?;
        Some(ring(&[from, to]))
    });
    let unit = shop_unit(brief.units);
    json!({
        "unit": { "sign": sign(unit), "mm": unit.millimetres() },
        "pieces": room.layout.placed.iter().map(piece).collect::<Vec<_>>(),
        "outline": ring(&brief.room.outline()),
        "items": items.collect::<Vec<_>>(),
        "fixed": brief.room.fixed.iter().map(|fixed| ring(&fixed.corners)).collect::<Vec<_>>(),
        "broken": room.broken.iter().map(breach).collect::<Vec<_>>(),
        "ways": room.routes.iter().map(way).collect::<Vec<_>>(),
        "before": before,
        "score": trial_words::score(room.score, before.unwrap_or(room.score)),
    })
}

/// Places as the script has them: y runs down.
fn ring(places: &[Point]) -> Vec<[f64; 2]> {
    places.iter().map(|place| [place.x, -place.y]).collect()
}
