//! What a browser keeps for this page and sends along.

use axum::http::HeaderMap;
use axum::http::header::COOKIE;

/// The values of the cookies of this name.
pub(super) fn cookies<'h>(headers: &'h HeaderMap, name: &str) -> impl Iterator<Item = &'h str> {
    let all = headers.get_all(COOKIE).iter().filter_map(|cookies| cookies.to_str().ok());
    all.flat_map(|cookies| cookies.split(';'))
        .filter_map(|cookie| cookie.trim().split_once('='))
        .filter(move |(own, _)| *own == name)
        .map(|(_, value)| value)
}
