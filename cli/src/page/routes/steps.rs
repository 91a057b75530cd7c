//! Steps: changes to the file, taking one back, taking it again; stopping the work and having it go on.

use std::sync::Arc;

use axum::extract::{Path, State};
use axum::http::StatusCode;
use axum::response::Response;
use elbowroom_model::filed::{Change, Unchanged};
use serde_json::{Value, json};

use super::asked::Text;
use super::beside::beside;
use crate::page::desk::Desk;
use crate::page::reply;
use crate::page::room::{By, NotTaken, Room, Step, Taken};
use crate::page::screens;
use crate::words::failure;
use crate::words::page as words;

/// Takes a step and says how the room stands then.
pub(super) async fn step(State(desk): State<Desk>, Path(name): Path<String>, Text(body): Text) -> Response {
    beside(move || {
        let Some(room) = desk.room(&name) else { return told(StatusCode::NOT_FOUND, words::NOT_HERE, false) };
        let Some((from, step)) = read(&body) else {
            return told(StatusCode::BAD_REQUEST, words::NOT_UNDERSTOOD, false);
        };
        match room.step(from, &step) {
            Ok(Taken { seen, beside }) => {
                let mut told = screens::told(&seen).0;
                told["beside"] = beside.into();
                reply::json(StatusCode::OK, &told)
            }
            Err(why) => not_taken(&room, &why),
        }
    })
    .await
}

/// Stops the work on a room, or has it go on.
pub(super) async fn work(State(desk): State<Desk>, Path(name): Path<String>, Text(body): Text) -> Response {
    let Some(room) = desk.room(&name) else { return told(StatusCode::NOT_FOUND, words::NOT_HERE, false) };
    match body.as_str() {
        "halt" => room.halt(),
        "go-on" => room.go_on(),
        _ => return told(StatusCode::BAD_REQUEST, words::NOT_UNDERSTOOD, false),
    }
    match room.seen() {
        Ok(seen) => reply::json(StatusCode::OK, &screens::told(&seen).0),
        Err(_) => told(StatusCode::GONE, &words::unreadable(&name), false),
    }
}

/// The step that a script asks for, and from which text.
fn read(body: &str) -> Option<(u64, Step)> {
    let asked: Value = serde_json::from_str(body).ok()?;
    let from = asked["from"].as_u64()?;
    let step = match asked["step"].as_str() {
        Some("undo") => Step::Undo,
        Some("redo") => Step::Redo,
        Some(_) => return None,
        None => {
            let changes: Option<Vec<Change>> = asked["changes"].as_array()?.iter().map(change).collect();
            Step::Changes(changes.filter(|changes| !changes.is_empty())?)
        }
    };
    Some((from, step))
}

fn change(asked: &Value) -> Option<Change> {
    let at = asked["at"].as_str().filter(|at| !at.is_empty())?.to_owned();
    match asked["do"].as_str()? {
        "set" => Some(Change::Set { at, to: asked["to"].clone() }),
        "remove" => Some(Change::Remove { at }),
        "add" => {
            let before = asked["before"].as_u64().and_then(|before| usize::try_from(before).ok());
            Some(Change::Add { at, row: asked["row"].clone(), before })
        }
        _ => None,
    }
}

fn not_taken(room: &Arc<Room>, why: &NotTaken) -> Response {
    match why {
        NotTaken::Unreadable => told(StatusCode::GONE, &words::unreadable(room.name()), false),
        NotTaken::Behind => told(StatusCode::CONFLICT, words::BEHIND, true),
        NotTaken::OnDisk => told(StatusCode::CONFLICT, words::ON_DISK, true),
        NotTaken::Crossed { by, there } => {
            let Ok(now) = room.seen() else { return told(StatusCode::GONE, &words::unreadable(room.name()), false) };
            let there: Vec<String> = there.iter().map(screens::shown).collect();
            let sentence = words::crossed(*by == By::Other, &there);
            let now = screens::told(&now).0;
            let told = crate::text::safe::safe(&sentence);
            reply::json(
                StatusCode::CONFLICT,
                &json!({ "told": told, "look": true, "there": there, "step": now["step"], "now": now }),
            )
        }
        NotTaken::Nothing => told(StatusCode::UNPROCESSABLE_ENTITY, words::NOTHING_TO_TAKE, false),
        NotTaken::Unchanged(Unchanged::NoPlace | Unchanged::NotKept) => {
            told(StatusCode::UNPROCESSABLE_ENTITY, words::NOT_KEPT, false)
        }
        NotTaken::NoYaml(fault) => told(StatusCode::UNPROCESSABLE_ENTITY, &fault.message, false),
        NotTaken::Failed(why) => {
            told(StatusCode::INTERNAL_SERVER_ERROR, &words::not_saved(&failure::message(why)), false)
        }
    }
}

/// A sentence, and whether what is there now should be looked at.
fn told(status: StatusCode, sentence: &str, look: bool) -> Response {
    reply::json(status, &json!({ "told": crate::text::safe::safe(sentence), "look": look }))
}
