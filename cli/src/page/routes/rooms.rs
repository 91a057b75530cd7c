//! The rooms of a folder, and new ones.

use axum::extract::State;
use axum::http::StatusCode;
use axum::response::Response;
use elbowroom_model::filed::{Change, Filed, Unchanged};
use elbowroom_model::scenario::starter;
use serde_json::{Value, json};

use super::asked::{Asked, Text};
use super::beside::beside;
use crate::page::desk::Desk;
use crate::page::room::{Room, Seen};
use crate::page::screens::{self, Filter, On};
use crate::page::shelf::NotPut;
use crate::page::{ranked, reply};
use crate::process::failure::Failure;
use crate::words::failure;
use crate::words::page as words;

/// Four walls to be measured, clockwise.
const EMPTY: &str = "name: Room\nunits: cm\n\nwalls:\n  - length: null\n  - length: null\n  - length: null\n  - length: null\n\npieces:\n  - kind: sofa\n";

/// The list, or the one room.
pub(super) async fn shelf(State(desk): State<Desk>, asked: Asked) -> Response {
    beside(move || {
        let names = desk.shelf.names();
        if !desk.shelf.is_folder() {
            return reply::to(&screens::options_of(names.first().map_or("", String::as_str)));
        }
        let glimpse = |name: &String| Some((name.clone(), Room::glimpsed(&desk.shelf.path(name)?).ok()?));
        let rooms: Vec<(String, Seen)> = names.iter().filter_map(glimpse).collect();
        let (filter, right, units) = (Filter::default(), asked.right, asked.units);
        let on = rooms.iter().map(|(file, seen)| On {
            file,
            seen,
            wall: 0,
            option: None,
            pinned: &[],
            right,
            units,
            lists: &[],
            filter: &filter,
        });
        let known = ranked::rooms(&desk.shelf);
        let all = screens::Ranked { rooms: &known, run: &desk.ranked.run(), far: desk.ranked.far() };
        reply::html(screens::rooms(&on.collect::<Vec<_>>(), &all, right, units))
    })
    .await
}

/// Starts a room as an example, or as another one of the folder is.
pub(super) async fn new(State(desk): State<Desk>, Text(body): Text) -> Response {
    beside(move || {
        let asked: Value = serde_json::from_str(&body).unwrap_or_default();
        let Some(name) = asked["name"].as_str() else { return told(StatusCode::BAD_REQUEST, words::NOT_UNDERSTOOD) };
        let like = asked["like"].as_str().map(|like| desk.shelf.path(like).and_then(|path| Room::glimpsed(&path).ok()));
        let is_empty = asked["from"] == "empty";
        let text = match &like {
            None if is_empty => empty(name),
            None => Ok(starter().to_owned()),
            Some(Some(seen)) => Ok(seen.text.clone()),
            Some(None) => return told(StatusCode::NOT_FOUND, words::NOT_HERE),
        };
        let Ok(text) = text else { return told(StatusCode::UNPROCESSABLE_ENTITY, words::NO_NAME) };
        let to = if is_empty { screens::measure_of } else { screens::options_of };
        put(desk.shelf.put(name, &text).map(|name| to(&name)))
    })
    .await
}

/// A room of this name with four walls that are not measured yet, and a sofa to find a place for.
fn empty(name: &str) -> Result<String, Unchanged> {
    let name = name.trim().trim_end_matches(".yaml").trim_end_matches(".yml");
    let change = Change::Set { at: "name".to_owned(), to: name.into() };
    Filed::read(EMPTY).map_err(|_| Unchanged::NotKept)?.changed(&change)
}

/// Calls a room of the folder something else.
pub(super) async fn rename(State(desk): State<Desk>, Text(body): Text) -> Response {
    beside(move || {
        let asked: Value = serde_json::from_str(&body).unwrap_or_default();
        let (Some(old), Some(name)) = (asked["of"].as_str(), asked["name"].as_str()) else {
            return told(StatusCode::BAD_REQUEST, words::NOT_UNDERSTOOD);
        };
        put(desk.rename(old, name).map(|_| "/".to_owned()))
    })
    .await
}

/// Where a browser goes once a file was put on the shelf, or why it was not.
fn put(put: Result<String, NotPut>) -> Response {
    match put {
        Ok(to) => reply::json(StatusCode::OK, &json!({ "to": to })),
        Err(NotPut::NotThere) => told(StatusCode::NOT_FOUND, words::NOT_HERE),
        Err(NotPut::NoFolder | NotPut::NoName) => told(StatusCode::UNPROCESSABLE_ENTITY, words::NO_NAME),
        Err(NotPut::Failed(Failure::AlreadyThere(_))) => told(StatusCode::CONFLICT, words::IS_THERE),
        Err(NotPut::Failed(why)) => told(StatusCode::INTERNAL_SERVER_ERROR, &failure::message(&why)),
    }
}

/// A sentence, as the script takes it.
fn told(status: StatusCode, sentence: &str) -> Response {
    reply::json(status, &json!({ "told": sentence }))
}
