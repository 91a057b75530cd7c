//! A shop's list that is dropped on the page: read where it comes in, tried against the room as `shop` does, kept nowhere.

use std::ffi::OsString;

use axum::body::Bytes;
use axum::extract::{Path, State};
use axum::http::StatusCode;
use axum::response::Response;

use super::asked::Asked;
use super::beside::{beside, missing};
use super::command::tried;
use crate::page::desk::Desk;
use crate::page::{reply, screens};
use crate::process::failure::Failure;
use crate::render::failure;
use crate::text::look::Look;
use crate::words::page::shop as words;

/// What fits of the list that the request brings, and the best sets where they are asked for.
pub(super) async fn shop(
    State(desk): State<Desk>,
    Path(name): Path<String>,
    asked: Asked,
    list: Result<Bytes, axum::extract::rejection::BytesRejection>,
) -> Response {
    let Ok(list) = list else {
        return reply::html_of(StatusCode::PAYLOAD_TOO_LARGE, screens::no_list(words::TOO_LARGE));
    };
    beside(move || {
        let Some(room) = desk.room(&name) else { return missing() };
        let line = line(room.path().into(), &asked);
        let called = asked.one("name").unwrap_or(words::LIST);
        match tried(&line, &mut &list[..]) {
            Ok(Some(told)) => reply::html(screens::shopped(called, &String::from_utf8_lossy(&told))),
            Ok(None) => missing(),
            Err(why) => reply::html(screens::no_list(&failure::text(&named(why, called), Look::PLAIN))),
        }
    })
    .await
}

/// What would stand on the command line, the list on its standard input.
fn line(room: OsString, asked: &Asked) -> Vec<OsString> {
    let mut line: Vec<OsString> = vec!["elbowroom".into(), "shop".into()];
    if let Some(units) = asked.units {
        line.push(format!("--units={}", units.key()).into());
    }
    if asked.one("sets").is_some() {
        line.push("--sets".into());
    }
    line.extend(["--".into(), room, "-".into()]);
    line
}

/// What is wrong, of a list by the name that its file has.
fn named(why: Failure, called: &str) -> Failure {
    let name = called.to_owned();
    match why {
        Failure::ListFaults { faults, .. } => Failure::ListFaults { name, faults },
        Failure::Unreadable { why, .. } => Failure::Unreadable { name, why },
        other => other,
    }
}
