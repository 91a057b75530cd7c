//! Screens, the parts of them that change, how a room stands, and plans.

use std::sync::Arc;
use std::time::Duration;

use axum::extract::{Path, State};
use axum::http::StatusCode;
use axum::response::Response;
use elbowroom_model::filed::Change;
use maud::html;

use super::asked::Asked;
use super::beside::{beside, missing};
use crate::page::desk::Desk;
use crate::page::reply;
use crate::page::room::{Room, Seen, Stage};
use crate::page::screens::{self, Filter, On, Screen};
use crate::words::page as words;

/// How long a question waits for news of the work.
const WAIT: Duration = Duration::from_millis(400);

/// How long a page of options waits for the first of them before it comes without.
const FIRST_WAIT: Duration = Duration::from_millis(150);

/// The parts of screens that follow each answer: all options, and the first alone.
const ANSWERS: &str = "answers";
const FIRST: &str = "first";

/// A screen of a room, from the file as it is now.
pub(super) async fn screen(
    State(desk): State<Desk>,
    Path((name, screen)): Path<(String, String)>,
    asked: Asked,
) -> Response {
    let (Some(room), Ok(screen)) = (desk.room(&name), screen.parse::<Screen>()) else { return missing() };
    if screen == Screen::Options {
        first_answer(&room).await;
    }
    beside(move || {
        if !screen.is_open_to(asked.right) {
            return reply::to(&screens::options_of(&name));
        }
        match room.opened() {
            Ok(seen) => {
                with(&desk, &room, &seen, &asked, |on| reply::html(screens::screen(screen, on, desk.shelf.is_folder())))
            }
            Err(_) => unreadable(&room),
        }
    })
    .await
}

/// Waits a moment for the first answer there is, so that a page shows it at once.
async fn first_answer(room: &Arc<Room>) {
    let mut news = room.news();
    let Ok(Seen { stage: Stage::Busy { .. }, solved: None, .. }) = room.opened() else { return };
    let _ = tokio::time::timeout(FIRST_WAIT, news.changed()).await;
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
        with(&desk, &room, &seen, &asked, |on| match (part.as_str(), part.parse::<Screen>()) {
            (ANSWERS, _) => reply::html(screens::answers(on)),
            (FIRST, _) => reply::html(screens::first_answer(on)),
            (_, Ok(screen)) if screen.is_open_to(on.right) => reply::html(screens::part(screen, on)),
            _ => missing(),
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

/// How a room stands by what its file says now, which something else may have written.
pub(super) async fn news(State(desk): State<Desk>, Path(name): Path<String>) -> Response {
    beside(move || {
        let Some(room) = desk.room(&name) else { return missing() };
        match room.opened() {
            Ok(seen) => reply::json(StatusCode::OK, &screens::told(&seen).0),
            Err(_) => unreadable(&room),
        }
    })
    .await
}

/// The small plan of an option, or the one for a phone.
pub(super) async fn plan(State(desk): State<Desk>, Path(name): Path<String>, asked: Asked) -> Response {
    beside(move || {
        let solved = desk.room(&name).and_then(|room| room.seen().ok()?.told_in(asked.units).solved);
        let plan = solved.zip(asked.one("option")).and_then(|(solved, key)| {
            if asked.one("hand").is_some() { solved.in_hand(key) } else { solved.small(key) }
        });
        plan.map_or_else(missing, |plan| reply::drawing(&plan))
    })
    .await
}

/// The walls as they would be with what is being typed; nothing of it is saved.
pub(super) async fn outline(State(desk): State<Desk>, Path(name): Path<String>, asked: Asked) -> Response {
    beside(move || {
        let Some(room) = desk.room(&name) else { return missing() };
        let to = asked.one("to").and_then(|to| serde_json::from_str(to).ok());
        let change = asked.one("at").zip(to).map(|(at, to)| Change::Set { at: at.to_owned(), to });
        match change.and_then(|change| room.as_if(&change)) {
            Some(seen) => reply::html(screens::outline(&seen, asked.units)),
            None => reply::plain(StatusCode::UNPROCESSABLE_ENTITY, words::NOT_UNDERSTOOD),
        }
    })
    .await
}

/// What a screen is made from.
fn with(desk: &Desk, room: &Arc<Room>, seen: &Seen, asked: &Asked, made: impl FnOnce(On<'_>) -> Response) -> Response {
    let chosen = |name: &str| asked.one(name).map(str::to_owned);
    let filter = Filter { wall: chosen("wall"), way: chosen("way"), hand: chosen("hand") };
    let wall = asked.one("at").and_then(|wall| wall.parse().ok()).unwrap_or(0);
    let (pinned, lists) = (asked.all("pin"), desk.shelf.lists());
    let seen = &seen.told_in(asked.units);
    let option = asked.one("option");
    made(On {
        file: room.name(),
        seen,
        wall,
        option,
        pinned: &pinned,
        right: asked.right,
        units: asked.units,
        lists: &lists,
        filter: &filter,
    })
}

/// A page that says that the file cannot be read any more.
pub(super) fn unreadable(room: &Room) -> Response {
    let told = words::unreadable(room.name());
    let body = html! { main id="main" { h1 { (told) } p { a href="/" { (words::ALL_ROOMS) } } } };
    reply::html_of(StatusCode::GONE, screens::page(room.name(), body))
}
