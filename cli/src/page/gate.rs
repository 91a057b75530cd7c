//! Stands before every request: what is not let in is told why, and nothing else.

use axum::extract::{Request, State};
use axum::http::header::{CONNECTION, HeaderValue};
use axum::http::{Method, StatusCode};
use axum::middleware::Next;
use axum::response::Response;

use super::desk::Desk;
use super::guard::{ENTER, Right, only_looks};
use super::reply;
use crate::words::page as words;

/// Lets a request through, or says why not.
pub(super) async fn stand(State(desk): State<Desk>, request: Request, next: Next) -> Response {
    let (guard, headers) = (&desk.guard, request.headers());
    let enters = request.uri().path().starts_with(ENTER);
    let refused = if !guard.is_host(headers) {
        Some((StatusCode::MISDIRECTED_REQUEST, words::WRONG_HOST))
    } else if enters && *request.method() == Method::GET {
        // The link may be followed from anywhere; its token speaks for itself.
        None
    } else if !guard.is_from_page(request.method(), headers) {
        Some((StatusCode::FORBIDDEN, words::WRONG_ORIGIN))
    } else {
        match guard.right(headers) {
            None => Some((StatusCode::UNAUTHORIZED, words::NO_TOKEN)),
            Some(Right::Look) if !only_looks(request.method()) => Some((StatusCode::FORBIDDEN, words::ONLY_LOOKS)),
            Some(_) => None,
        }
    };
    reply::sealed(match refused {
        // Whoever may not ask is not kept waiting for: the connection ends with the answer.
        Some((status, why)) => {
            let mut refusal = reply::plain(status, why);
            refusal.headers_mut().insert(CONNECTION, HeaderValue::from_static("close"));
            refusal
        }
        None => {
            // A page that only lies open asks for nothing.
            if !request.uri().path().ends_with("/news") {
                desk.ask();
            }
            next.run(request).await
        }
    })
}
