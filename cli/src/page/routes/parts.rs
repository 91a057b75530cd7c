//! Screens, the parts of them that change, how a room stands, and plans.

use std::collections::HashMap;
use std::sync::Arc;
use std::time::Duration;

use axum::extract::{Path, Query, State};
use axum::http::StatusCode;
use axum::response::Response;
use maud::html;

use super::beside::{beside, missing};
use crate::page::desk::Desk;
use crate::page::reply;
use crate::page::room::{Room, Seen, Stage};
use crate::page::screens::{self, Filter, On, Screen};
use crate::words::page as words;

/// How long a question waits for news of the work.
const WAIT: Duration = Duration::from_millis(400);

/// What a request asks for beside the path.
pub(super) type Asked = Query<HashMap<String, String>>;

/// The part of a screen that follows each answer, apart from the others.
const ANSWERS: &str = "answers";

/// A screen of a room, from the file as it is now.
pub(super) async fn screen(
    State(desk): State<Desk>,
    Path((name, screen)): Path<(String, String)>,
    asked: Asked,
) -> Response {
    beside(move || {
        let (Some(room), Ok(screen)) = (desk.room(&name), screen.parse::<Screen>()) else { return missing() };
        match room.opened() {
            Ok(seen) => {
                with(&room, &seen, &asked, |on| reply::html(screens::screen(screen, on, desk.shelf.is_folder())))
            }
            Err(_) => unreadable(&room),
        }
    })
    .await
}

/// A part of a screen, from the room as it is known.
pub(super) async fn part(
    State(desk): State<Desk>,
    Path((name, part)): Path<(String, String)>,
    asked: Asked,
) -> Response {
    beside(move || {
        let Some(room) = desk.room(&name) else { return missing() };
        let Ok(seen) = room.seen() else { return unreadable(&room) };
        with(&room, &seen, &asked, |on| match (part.as_str(), part.parse::<Screen>()) {
            (ANSWERS, _) => reply::html(screens::answers(on)),
            (_, Ok(screen)) => reply::html(screens::part(screen, on)),
            (_, Err(_)) => missing(),
        })
    })
    .await
}

/// How a room stands; where it is being worked on, once there is news or a moment has passed.
pub(super) async fn stage(State(desk): State<Desk>, Path(name): Path<String>) -> Response {
    let Some(room) = desk.room(&name) else { return missing() };
    let mut news = room.news();
    let Ok(seen) = room.seen() else { return unreadable(&room) };
    let seen = if matches!(seen.stage, Stage::Busy { .. }) {
        // The news may have come since: what is not seen of it yet ends the wait at once.
        let _ = tokio::time::timeout(WAIT, news.changed()).await;
        match room.seen() {
            Ok(seen) => seen,
            Err(_) => return unreadable(&room),
        }
    } else {
        seen
    };
    reply::json(StatusCode::OK, &screens::told(&seen).0)
}

/// The plan of an option.
pub(super) async fn plan(State(desk): State<Desk>, Path(name): Path<String>, asked: Asked) -> Response {
    beside(move || {
        let solved = desk.room(&name).and_then(|room| room.seen().ok()?.solved);
        let plan = solved.zip(asked.get("option")).and_then(|(solved, key)| solved.plan(key));
        plan.map_or_else(missing, |plan| reply::drawing(&plan))
    })
    .await
}

/// What a screen is made from.
fn with(room: &Arc<Room>, seen: &Seen, asked: &Asked, made: impl FnOnce(On<'_>) -> Response) -> Response {
    let chosen = |key: &str| asked.get(key).filter(|value| !value.is_empty()).cloned();
    let filter = Filter { wall: chosen("wall"), hand: chosen("hand") };
    let wall = asked.get("at").and_then(|wall| wall.parse().ok()).unwrap_or(0);
    let option = chosen("option");
    made(On { file: room.name(), seen, wall, option: option.as_deref(), filter: &filter })
}

/// A page that says that the file cannot be read any more.
pub(super) fn unreadable(room: &Room) -> Response {
    let told = words::unreadable(room.name());
    let body = html! { main id="main" { h1 { (told) } p { a href="/" { (words::ALL_ROOMS) } } } };
    reply::html_of(StatusCode::GONE, screens::page(room.name(), body))
}
