//! What is sent back: pages, parts of pages, data, files; each with what a browser may do with it.

use axum::body::Body;
use axum::http::header::{
    CACHE_CONTROL, CONTENT_DISPOSITION, CONTENT_SECURITY_POLICY, CONTENT_TYPE, HeaderName, LOCATION, REFERRER_POLICY,
    SET_COOKIE, X_CONTENT_TYPE_OPTIONS, X_FRAME_OPTIONS,
};
use axum::http::{HeaderValue, StatusCode};
use axum::response::Response;
use maud::Markup;
use serde_json::Value;

use crate::text::safe::is_obeyed;

/// Everything is forbidden but what this page itself sends.
const POLICY: &str = "default-src 'none'; script-src 'self'; style-src 'self'; font-src 'self'; img-src 'self'; \
                      connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

/// An answer of this kind.
fn of(status: StatusCode, kind: &'static str, body: impl Into<Body>) -> Response {
    let mut response = Response::new(body.into());
    *response.status_mut() = status;
    response.headers_mut().insert(CONTENT_TYPE, HeaderValue::from_static(kind));
    response
}

/// A page or a part of one. Text in it was escaped where it was put in; what a reader's machine would obey goes here.
pub(super) fn html(markup: Markup) -> Response {
    of(StatusCode::OK, "text/html; charset=utf-8", shown(&markup.into_string()))
}

/// A page that tells of something amiss.
pub(super) fn html_of(status: StatusCode, markup: Markup) -> Response {
    of(status, "text/html; charset=utf-8", shown(&markup.into_string()))
}

/// A drawing for a page.
pub(super) fn drawing(svg: &str) -> Response {
    of(StatusCode::OK, "image/svg+xml; charset=utf-8", shown(svg))
}

/// Data for a script of the page.
pub(super) fn json(status: StatusCode, value: &Value) -> Response {
    of(status, "application/json", value.to_string())
}

/// A line of text.
pub(super) fn plain(status: StatusCode, text: &'static str) -> Response {
    of(status, "text/plain; charset=utf-8", text)
}

/// A part of the program: a style, a script, a font. It stays the same while the program runs.
pub(super) fn asset(kind: &'static str, bytes: &'static [u8]) -> Response {
    let mut response = of(StatusCode::OK, kind, bytes);
    response.headers_mut().insert(CACHE_CONTROL, HeaderValue::from_static("private, max-age=3600"));
    response
}

/// A file to keep, under this name.
pub(super) fn file(kind: &'static str, name: &str, bytes: Vec<u8>) -> Response {
    let mut response = of(StatusCode::OK, kind, bytes);
    // Letters of other scripts are told by number, quotes and controls not at all.
    let plain: String = name.chars().map(|letter| if is_plain(letter) { letter } else { '-' }).collect();
    if let Ok(value) = HeaderValue::from_str(&format!("attachment; filename=\"{plain}\"")) {
        response.headers_mut().insert(CONTENT_DISPOSITION, value);
    }
    response
}

fn is_plain(letter: char) -> bool {
    letter.is_ascii_alphanumeric() || matches!(letter, '.' | '-' | '_' | ' ')
}

/// Leads on.
pub(super) fn to(place: &str) -> Response {
    let mut response = of(StatusCode::SEE_OTHER, "text/plain; charset=utf-8", "");
    if let Ok(place) = HeaderValue::from_str(place) {
        response.headers_mut().insert(LOCATION, place);
    }
    response
}

/// The same, leaving a cookie.
pub(super) fn to_with_cookie(place: &str, cookie: &str) -> Response {
    let mut response = to(place);
    if let Ok(cookie) = HeaderValue::from_str(cookie) {
        response.headers_mut().insert(SET_COOKIE, cookie);
    }
    response
}

/// With what a browser may do with it.
pub(super) fn sealed(mut response: Response) -> Response {
    let headers = response.headers_mut();
    let fixed: [(HeaderName, &'static str); 6] = [
        (CONTENT_SECURITY_POLICY, POLICY),
        (X_CONTENT_TYPE_OPTIONS, "nosniff"),
        (X_FRAME_OPTIONS, "DENY"),
        (REFERRER_POLICY, "no-referrer"),
        (HeaderName::from_static("cross-origin-resource-policy"), "same-origin"),
        (HeaderName::from_static("cross-origin-opener-policy"), "same-origin"),
    ];
    for (name, value) in fixed {
        headers.insert(name, HeaderValue::from_static(value));
    }
    headers.entry(CACHE_CONTROL).or_insert(HeaderValue::from_static("no-store"));
    response
}

/// The text without what a screen would obey; lines stay.
fn shown(text: &str) -> String {
    if !text.contains(is_hidden) {
        return text.to_owned();
    }
    text.replace(is_hidden, "\u{fffd}")
}

fn is_hidden(letter: char) -> bool {
    is_obeyed(letter) && letter != '\n' && letter != '\t'
}
