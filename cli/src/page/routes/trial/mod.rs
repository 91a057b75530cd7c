//! A piece tried elsewhere: what that breaks, how the room then scores, and the rest settled about it. Nothing is written but by
//! a step, which `kept` works out.

mod kept;
mod told;
mod tried;

use std::sync::Arc;

use axum::extract::{Path, State};
use axum::http::StatusCode;
use axum::response::Response;
use elbowroom_model::Unit;
use elbowroom_model::length::parse;
use elbowroom_solver::answer::Answer;
use elbowroom_solver::judge::{JudgedRoom, NotPlaced, Placement, judge as judged, judge_plan};
use elbowroom_solver::verify::Breach;
use elbowroom_solver::{Limits, Watch, rank};
use serde_json::{Value, json};

use super::asked::{Asked, Text};
use super::beside::{beside, missing, while_waited_for};
use crate::page::desk::Desk;
use crate::page::reply;
use crate::page::room::Solved;
use crate::text::safe::safe;
use crate::words::answer::title;
use crate::words::lengths::shop_unit;
use crate::words::page as words;
use crate::words::page::trial as trial_words;
use told::Shown;
use tried::{FARTHEST, Tried, hold, loosened, placement, tried};

/// How much more must be missing of a rule than before to be told, mm: a tape is read no finer.
const MORE: f64 = 1.0;

/// Says what pieces break where they are put, or how the room is as it stands.
pub(super) async fn judge(State(desk): State<Desk>, Path(name): Path<String>, on: Asked, Text(body): Text) -> Response {
    with_answer(desk, name, on.units, body, |solved, asked, _| {
        let answer = &solved.answer;
        match (asked["stands"].as_bool(), asked["pieces"].as_array()) {
            (Some(true), None) => Some(as_it_stands(answer, asked)),
            (Some(true), Some(pieces)) => {
                let tried = tried(&answer.brief, pieces)?;
                let brief = loosened(&answer.brief, &tried);
                let room = judged(&brief, &placement(&answer.brief, &tried)).ok()?;
                Some(Shown::judged(&room, &tried).told(before(answer, asked)))
            }
            (_, Some(pieces)) => {
                let tried = tried(&answer.brief, pieces)?;
                let room = moved(solved, asked, &tried)?;
                Some(Shown::judged(&room, &tried).told(before(answer, asked)))
            }
            (_, None) => {
                let option = answer.keyed(asked["key"].as_str()?)?;
                Some(Shown::option(&answer.brief, option, &[]).told(Some(option.score)))
            }
        }
    })
    .await
}

/// What is said of a plan in which something was moved, held against the plan from before: what that eases already is broken by
/// nobody, and the score goes on from its score.
fn moved(solved: &Solved, asked: &Value, tried: &[Tried]) -> Option<JudgedRoom> {
    let answer = &solved.answer;
    let mut room = as_plan(answer, tried)?;
    let (base, score) = base(solved, asked)?;
    let is_known = |breach: &Breach| {
        base.broken.iter().any(|known| {
            (known.rule, known.wrong) == (breach.rule, breach.wrong)
                && known.between == breach.between
                && breach.short_by <= known.short_by + MORE
        })
    };
    room.broken.retain(|breach| !is_known(breach));
    room.score = (score + room.score - base.score).clamp(0.0, 100.0);
    Some(room)
}

/// The plan that what is tried began from, and the score that it has: what was settled, or else the option.
fn base(solved: &Solved, asked: &Value) -> Option<(Arc<JudgedRoom>, f64)> {
    let answer = &solved.answer;
    if let (Some(score), Some(pieces)) = (asked["base"]["score"].as_f64(), asked["base"]["pieces"].as_array()) {
        let room =
            solved.judged(&asked["base"]["pieces"].to_string(), || as_plan(answer, &tried(&answer.brief, pieces)?));
        return Some((room?, score));
    }
    let option = answer.keyed(asked["key"].as_str()?)?;
    let placed = || option.layout.placed.iter().cloned().map(Tried::left_alone).collect::<Vec<_>>();
    Some((solved.judged(&option.key, || as_plan(answer, &placed()))?, option.score))
}

fn as_plan(answer: &Answer, tried: &[Tried]) -> Option<JudgedRoom> {
    judge_plan(&loosened(&answer.brief, tried), &placement(&answer.brief, tried)).ok()
}

/// The room as the file says that it stands, or what keeps it from being judged.
fn as_it_stands(answer: &Answer, asked: &Value) -> Value {
    let room = Placement::of(&answer.brief).and_then(|placement| judged(&answer.brief, &placement));
    match room {
        Ok(room) => {
            let mut told = Shown::judged(&room, &[]).told(before(answer, asked));
            told["told"] = trial_words::AS_IT_STANDS.into();
            told
        }
        Err(NotPlaced::Pieces(pieces)) => {
            let names: Vec<&str> = pieces.iter().map(|piece| answer.brief.piece_name(*piece)).collect();
            json!({ "told": safe(&trial_words::has_no_place(&names)) })
        }
        Err(NotPlaced::NoSeat) => json!({ "told": trial_words::NO_SEAT }),
    }
}

/// The score that a tried room is held against.
fn before(answer: &Answer, asked: &Value) -> Option<f64> {
    asked["before"].as_f64().or_else(|| answer.keyed(asked["key"].as_str()?).map(|option| option.score))
}

/// Solves the room again with what was moved held there, for as long as somebody waits for it.
pub(super) async fn settle(
    State(desk): State<Desk>,
    Path(name): Path<String>,
    on: Asked,
    Text(body): Text,
) -> Response {
    with_answer(desk, name, on.units, body, |solved, asked, watch| {
        let answer = &solved.answer;
        let moved = tried(&answer.brief, asked["pieces"].as_array()?)?;
        let mut brief = answer.brief.clone();
        for it in moved.iter().filter(|it| it.moved) {
            hold(&mut brief, &it.placed);
        }
        let settled = rank(&brief, &Limits { shown: 0, ..Limits::default() }, watch);
        let Some(option) = settled.options.first() else { return Some(json!({ "told": trial_words::NOT_SETTLED })) };
        let stands = |piece| moved.iter().find(|it| it.moved && it.placed.piece == piece);
        let each = option.layout.placed.iter();
        let tried: Vec<Tried> = each
            .map(|placed| match stands(placed.piece) {
                Some(it) => Tried { placed: placed.clone(), ..it.clone() },
                None => Tried::left_alone(placed.clone()),
            })
            .collect();
        let mut told = Shown::option(&settled.brief, option, &tried).told(before(answer, asked));
        told["base"] = json!({ "score": option.score, "pieces": told["pieces"] });
        told["told"] = trial_words::SETTLED.into();
        told["title"] = safe(&title(&settled.brief, option)).into();
        Some(told)
    })
    .await
}

/// The changes that keep what is tried in the file.
pub(super) async fn keep(State(desk): State<Desk>, Path(name): Path<String>, on: Asked, Text(body): Text) -> Response {
    let Some(room) = desk.room(&name) else { return missing() };
    with_answer(desk, name, on.units, body, move |solved, asked, _| {
        let tried = tried(&solved.answer.brief, asked["pieces"].as_array()?)?;
        let seen = room.seen().ok()?;
        // What was shown may be of an earlier file: its pieces are then others.
        let is_of_file = seen.read.as_ref().is_ok_and(|brief| brief.pieces == solved.answer.asked.pieces);
        let changes = kept::changes(&seen.text, &solved.answer.brief, &tried).filter(|_| is_of_file);
        Some(match changes {
            Some(changes) => json!({ "changes": changes }),
            None => json!({ "told": trial_words::NOT_KEPT }),
        })
    })
    .await
}

/// A length that somebody typed, mm, or why it is none.
pub(super) async fn length(State(desk): State<Desk>, Path(name): Path<String>, on: Asked) -> Response {
    beside(move || {
        let Some(brief) = desk.room(&name).and_then(|room| room.seen().ok()?.read.ok()) else { return missing() };
        let text = on.one("text").unwrap_or_default();
        let units = shop_unit(on.units.unwrap_or(brief.units));
        let is_size = on.one("size").is_some();
        let told = match parse(text, units) {
            Ok(length) if length.abs() < FARTHEST && !(is_size && length <= 0.0) => json!({ "mm": length }),
            Ok(_) => json!({ "told": safe(&trial_words::no_such_length(text)) }),
            Err(why) => json!({ "told": safe(&trial_words::no_length(text, &why.to_string())) }),
        };
        reply::json(StatusCode::OK, &told)
    })
    .await
}

async fn with_answer(
    desk: Desk,
    name: String,
    units: Option<Unit>,
    body: String,
    made: impl FnOnce(&Solved, &Value, &dyn Watch) -> Option<Value> + Send + 'static,
) -> Response {
    while_waited_for(move |watch| {
        let solved = desk.room(&name).and_then(|room| room.seen().ok()?.told_in(units).solved);
        let asked: Value = serde_json::from_str(&body).unwrap_or_default();
        match solved.and_then(|solved| made(&solved, &asked, watch)) {
            Some(value) => reply::json(StatusCode::OK, &value),
            None => reply::json(StatusCode::UNPROCESSABLE_ENTITY, &json!({ "told": words::NOT_UNDERSTOOD })),
        }
    })
    .await
}
