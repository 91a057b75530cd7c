//! What the program brings along for the page: its style, its scripts, its sign, the letters of plans.

use std::sync::LazyLock;

use axum::extract::Path;
use axum::response::Response;

use super::beside::missing;
use crate::drawing::{Letters, Weight, letters_of, plain_tones};
use crate::page::reply;

/// The page's style, after the tones of plans as they are printed.
static STYLE: LazyLock<Vec<u8>> = LazyLock::new(|| (plain_tones() + include_str!("../assets/page.css")).into_bytes());
/// The letters of plans.
static BOOK: LazyLock<Vec<u8>> = LazyLock::new(|| letters_of(Weight::Book, Letters::Plain));
static BOLD: LazyLock<Vec<u8>> = LazyLock::new(|| letters_of(Weight::Bold, Letters::Plain));
/// The letters of plans that few plans have: a browser asks for them where it meets one.
static MORE_BOOK: LazyLock<Vec<u8>> = LazyLock::new(|| letters_of(Weight::Book, Letters::Further));
static MORE_BOLD: LazyLock<Vec<u8>> = LazyLock::new(|| letters_of(Weight::Bold, Letters::Further));

const SCRIPT: &str = "text/javascript; charset=utf-8";

/// A part of the page by its name.
pub(super) async fn asset(Path(name): Path<String>) -> Response {
    match name.as_str() {
        "page.css" => reply::asset("text/css; charset=utf-8", &STYLE),
        "page.js" => reply::asset(SCRIPT, include_bytes!("../assets/page.js")),
        "room.js" => reply::asset(SCRIPT, include_bytes!("../assets/room.js")),
        "fields.js" => reply::asset(SCRIPT, include_bytes!("../assets/fields.js")),
        "options.js" => reply::asset(SCRIPT, include_bytes!("../assets/options.js")),
        "trial.js" => reply::asset(SCRIPT, include_bytes!("../assets/trial.js")),
        "icon.svg" => reply::asset("image/svg+xml", include_bytes!("../assets/icon.svg")),
        "book.ttf" => reply::asset("font/ttf", &BOOK),
        "bold.ttf" => reply::asset("font/ttf", &BOLD),
        "more-book.ttf" => reply::asset("font/ttf", &MORE_BOOK),
        "more-bold.ttf" => reply::asset("font/ttf", &MORE_BOLD),
        _ => missing(),
    }
}
