//! The rooms of a folder, and new ones.

use axum::extract::State;
use axum::http::StatusCode;
use axum::response::Response;
use elbowroom_model::scenario::starter;
use serde_json::{Value, json};

use super::asked::Asked;
use super::beside::beside;
use crate::page::desk::Desk;
use crate::page::room::{Room, Seen};
use crate::page::screens::{self, Filter, On};
use crate::page::shelf::NotPut;
use crate::page::{ranked, reply};
use crate::process::failure::Failure;
use crate::words::failure;
use crate::words::page as words;

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
        let so_far = ranked::folder(&desk.shelf).map_or(0, |folder| ranked::solved_so_far(&folder));
        let all = screens::Ranked { rooms: &known, run: &desk.ranked.run(), so_far };
        reply::html(screens::rooms(&on.collect::<Vec<_>>(), &all, right, units))
    })
    .await
}

/// Starts a room as an example, or as another one of the folder is.
pub(super) async fn new(State(desk): State<Desk>, body: String) -> Response {
    beside(move || {
        let asked: Value = serde_json::from_str(&body).unwrap_or_default();
        let Some(name) = asked["name"].as_str() else { return told(StatusCode::BAD_REQUEST, words::NOT_UNDERSTOOD) };
        let like = asked["like"].as_str().map(|like| desk.shelf.path(like).and_then(|path| Room::glimpsed(&path).ok()));
        let text = match &like {
            None => starter(),
            Some(Some(seen)) => &seen.text,
            Some(None) => return told(StatusCode::NOT_FOUND, words::NOT_HERE),
        };
        put(desk.shelf.put(name, text).map(|name| screens::options_of(&name)))
    })
    .await
}

/// Calls a room of the folder something else.
pub(super) async fn rename(State(desk): State<Desk>, body: String) -> Response {
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
