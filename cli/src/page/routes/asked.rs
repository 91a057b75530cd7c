//! What a request asks for beside its path, and what it brings.

use axum::extract::{FromRequest, FromRequestParts, Query, Request};
use axum::http::StatusCode;
use axum::http::request::Parts;
use axum::response::{IntoResponse, Response};
use elbowroom_model::Unit;

use crate::page::desk::Desk;
use crate::page::guard::Right;
use crate::page::reply;
use crate::words::page as words;

/// What a request asks for beside its path.
pub(super) struct Asked {
    chosen: Vec<(String, String)>,
    /// The unit that lengths are to be told in, where it is not the file's.
    pub(super) units: Option<Unit>,
    /// What whoever asks may do.
    pub(super) right: Right,
}

impl Asked {
    /// What is chosen by this name; an empty choice is none.
    pub(super) fn one(&self, name: &str) -> Option<&str> {
        self.each(name).next()
    }

    /// All that is chosen by this name, in the order given.
    pub(super) fn all(&self, name: &str) -> Vec<String> {
        self.each(name).map(str::to_owned).collect()
    }

    fn each(&self, name: &str) -> impl Iterator<Item = &str> {
        self.chosen.iter().filter(move |(own, value)| own == name && !value.is_empty()).map(|(_, value)| value.as_str())
    }
}

impl FromRequestParts<Desk> for Asked {
    type Rejection = std::convert::Infallible;

    async fn from_request_parts(parts: &mut Parts, desk: &Desk) -> Result<Self, Self::Rejection> {
        let chosen = Query::try_from_uri(&parts.uri).map(|Query(chosen)| chosen).unwrap_or_default();
        // Whoever shows no token has not come so far.
        let right = desk.guard.right(&parts.headers).unwrap_or(Right::Look);
        Ok(Self { chosen, units: desk.guard.units(&parts.headers), right })
    }
}

/// The text that a request brings; what is too much, and what is none, is told in our words.
pub(super) struct Text(pub(super) String);

impl FromRequest<Desk> for Text {
    type Rejection = Response;

    async fn from_request(request: Request, desk: &Desk) -> Result<Self, Self::Rejection> {
        String::from_request(request, desk).await.map(Self).map_err(|why| {
            let status = why.into_response().status();
            let told = if status == StatusCode::PAYLOAD_TOO_LARGE { words::TOO_LARGE } else { words::NO_TEXT };
            reply::json(status, &serde_json::json!({ "told": told, "look": false }))
        })
    }
}
