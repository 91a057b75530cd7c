//! All rooms of a folder ranked, how far that is, and the small plans that come of it.

use std::ffi::OsString;

use axum::extract::{Path, State};
use axum::http::StatusCode;
use axum::response::Response;
use serde_json::json;

use super::beside::{beside, missing};
use super::command::made;
use crate::page::desk::Desk;
use crate::page::ranked::{self, Run};
use crate::page::reply;
use crate::words::page as words;

/// Has all rooms ranked, where that is not under way yet.
pub(super) async fn rank_all(State(desk): State<Desk>) -> Response {
    beside(move || {
        let Some(folder) = ranked::folder(&desk.shelf) else { return missing() };
        if desk.ranked.run() == Run::Busy {
            return reply::json(StatusCode::OK, &json!({ "to": "/" }));
        }
        let mut rooms = desk.ranked.lines(ranked::lines(&desk.shelf));
        let line: [OsString; 6] =
            ["elbowroom".into(), "batch".into(), "--output".into(), folder.into(), "--".into(), "-".into()];
        desk.ranked.begin(move || made(&line, &mut rooms).map(drop));
        reply::json(StatusCode::OK, &json!({ "to": "/" }))
    })
    .await
}

/// How far that is.
pub(super) async fn ranking(State(desk): State<Desk>) -> Response {
    beside(move || {
        if !desk.shelf.is_folder() {
            return missing();
        }
        let is_busy = desk.ranked.run() == Run::Busy;
        let told = words::ranking(desk.ranked.far());
        reply::json(StatusCode::OK, &json!({ "busy": is_busy, "told": told }))
    })
    .await
}

/// Has it end after the rooms that it is at.
pub(super) async fn stop(State(desk): State<Desk>) -> Response {
    desk.ranked.stop();
    reply::json(StatusCode::OK, &json!({ "told": words::RANKING_STOPS }))
}

/// The small plan of a room.
pub(super) async fn plan(State(desk): State<Desk>, Path(name): Path<String>) -> Response {
    beside(move || ranked::plan(&desk.shelf, &name).map_or_else(missing, |plan| reply::drawing(&plan))).await
}
