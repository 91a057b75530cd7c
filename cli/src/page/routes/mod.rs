//! What may be asked for: screens and their parts, steps, plans, sheets, what a moved piece breaks.

mod asked;
mod assets;
mod beside;
mod closer;
mod command;
mod parts;
mod ranked;
mod rooms;
mod sheets;
mod shop;
mod steps;
mod trial;

use axum::Router;
use axum::extract::{DefaultBodyLimit, Path, State};
use axum::http::StatusCode;
use axum::middleware::from_fn_with_state;
use axum::response::Response;
use axum::routing::{get, post};

use super::desk::Desk;
use super::screens::LARGEST_LIST;
use super::{gate, reply};
use crate::words::page as words;
use beside::missing;

/// Where a page that lies open looks whether something else has changed its file.
const NEWS: &str = "/room/{room}/news";

/// Most bytes that a request may bring, but for a list of pieces.
const LARGEST_REQUEST: usize = 1 << 16;

/// Everything that is answered.
pub(super) fn all(desk: Desk) -> Router {
    Router::new()
        .route("/", get(rooms::shelf))
        .route("/new", post(rooms::new))
        .route("/rename", post(rooms::rename))
        .route("/rank-all", post(ranked::rank_all))
        .route("/rank-no-more", post(ranked::stop))
        .route("/ranking", get(ranked::ranking))
        .route("/answer/{plan}", get(ranked::plan))
        .route("/enter/{token}", get(enter))
        .route("/room/{room}/stage", get(parts::stage))
        .route(NEWS, get(parts::news))
        .route("/room/{room}/part/{part}", get(parts::part))
        .route("/room/{room}/plan", get(parts::plan))
        .route("/room/{room}/plan-with", get(closer::plan))
        .route("/room/{room}/closer", get(closer::list))
        .route("/room/{room}/outline", get(parts::outline))
        .route("/room/{room}/step", post(steps::step))
        .route("/room/{room}/work", post(steps::work))
        .route("/room/{room}/sheet/{file}", get(sheets::sheet))
        .route("/room/{room}/shop", post(shop::shop).layer(DefaultBodyLimit::max(LARGEST_LIST)))
        .route("/room/{room}/judge", post(trial::judge))
        .route("/room/{room}/settle", post(trial::settle))
        .route("/room/{room}/keep", post(trial::keep))
        .route("/room/{room}/length", get(trial::length))
        .route("/room/{room}/{screen}", get(parts::screen))
        .route("/{asset}", get(assets::asset))
        .fallback(not_here)
        .layer(DefaultBodyLimit::max(LARGEST_REQUEST))
        .layer(from_fn_with_state(desk.clone(), gate::stand))
        .with_state(desk)
}

/// Lets a browser in, and leads it on to where the token is no longer in the address.
async fn enter(State(desk): State<Desk>, Path(token): Path<String>) -> Response {
    match desk.guard.cookie(&token) {
        Some(cookie) => reply::to_with_cookie("/", &cookie),
        None => reply::plain(StatusCode::UNAUTHORIZED, words::NO_TOKEN),
    }
}

async fn not_here() -> Response {
    missing()
}
