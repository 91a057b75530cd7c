//! What a request asks for beside its path.

use axum::extract::{FromRequestParts, Query};
use axum::http::request::Parts;
use elbowroom_model::Unit;

use crate::page::desk::Desk;
use crate::page::guard::Right;

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
