//! Work beside what else is asked, and what is answered where there is nothing.

use axum::http::StatusCode;
use axum::response::Response;
use maud::html;

use crate::page::{reply, screens};
use crate::words::page as words;

/// A page that says that there is none.
pub(super) fn missing() -> Response {
    let body = html! { main id="main" { h1 { (words::NOT_HERE) } p { a href="/" { (words::ALL_ROOMS) } } } };
    reply::html_of(StatusCode::NOT_FOUND, screens::page(words::NOT_HERE, body))
}

/// Work that takes more than a moment, beside what else is asked.
pub(super) async fn beside(work: impl FnOnce() -> Response + Send + 'static) -> Response {
    match tokio::task::spawn_blocking(work).await {
        Ok(response) => response,
        Err(_) => reply::plain(StatusCode::INTERNAL_SERVER_ERROR, words::FAILED),
    }
}
