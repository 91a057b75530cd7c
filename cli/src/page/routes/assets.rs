//! What the program brings along for the page: its style, its scripts, its sign, the letters of plans.

use std::sync::LazyLock;

use axum::extract::Path;
use axum::response::Response;

use super::beside::missing;
use crate::drawing::{Letters, Weight, letters_of, plain_tones};
use crate::page::reply;

/// The page's style, after the tones of plans as they are printed.
static STYLE: LazyLock<Vec<u8>> =
    LazyLock::new(|| (plain_tones() + &tight(include_str!("../assets/page.css"))).into_bytes());
/// What no screen of options needs.
static MORE_STYLE: LazyLock<Vec<u8>> = LazyLock::new(|| tight(include_str!("../assets/more.css")).into_bytes());
/// What only a plan that is looked at closely needs.
static CLOSER_STYLE: LazyLock<Vec<u8>> = LazyLock::new(|| tight(include_str!("../assets/closer.css")).into_bytes());
/// The scripts, by name, as they are sent.
static SCRIPTS: LazyLock<Vec<(&str, Vec<u8>)>> =
    LazyLock::new(|| WRITTEN.iter().map(|(name, script)| (*name, as_sent(script))).collect());
/// The letters of plans.
static BOOK: LazyLock<Vec<u8>> = LazyLock::new(|| letters_of(Weight::Book, Letters::Plain));
static BOLD: LazyLock<Vec<u8>> = LazyLock::new(|| letters_of(Weight::Bold, Letters::Plain));
/// The letters of plans that few plans have: a browser asks for them where it meets one.
static MORE_BOOK: LazyLock<Vec<u8>> = LazyLock::new(|| letters_of(Weight::Book, Letters::Further));
static MORE_BOLD: LazyLock<Vec<u8>> = LazyLock::new(|| letters_of(Weight::Bold, Letters::Further));

/// The scripts as they are written.
const WRITTEN: [(&str, &str); 11] = [
    ("page.js", include_str!("../assets/page.js")),
    ("address.js", include_str!("../assets/address.js")),
    ("parts.js", include_str!("../assets/parts.js")),
    ("room.js", include_str!("../assets/room.js")),
    ("fields.js", include_str!("../assets/fields.js")),
    ("options.js", include_str!("../assets/options.js")),
    ("shop.js", include_str!("../assets/shop.js")),
    ("zoom.js", include_str!("../assets/zoom.js")),
    ("trial.js", include_str!("../assets/trial.js")),
    ("trial-plan.js", include_str!("../assets/trial-plan.js")),
    ("trial-rows.js", include_str!("../assets/trial-rows.js")),
];

const SCRIPT: &str = "text/javascript; charset=utf-8";

/// A script as a browser reads it: without what it only holds for people. No line of ours goes on inside a text.
fn as_sent(script: &str) -> Vec<u8> {
    let lines = script.lines().map(str::trim).filter(|line| !line.is_empty() && !line.starts_with("//"));
    lines.flat_map(|line| [line, "\n"]).collect::<String>().into_bytes()
}

/// A style as a browser reads it: without comments, and without the blanks that only people need. No text of ours holds such.
fn tight(style: &str) -> String {
    let lines = style.lines().map(str::trim).filter(|line| !line.is_empty() && !line.starts_with("/*"));
    let mut tight = lines.collect::<Vec<_>>().join("\n");
    for (loose, close) in [(" { ", "{"), (" {", "{"), ("; }", "}"), (" }", "}"), ("; ", ";"), (": ", ":"), (", ", ",")]
    {
        tight = tight.replace(loose, close);
    }
    tight
}

/// A part of the page by its name.
pub(super) async fn asset(Path(name): Path<String>) -> Response {
    if let Some((_, script)) = SCRIPTS.iter().find(|(own, _)| *own == name) {
        return reply::asset(SCRIPT, script);
    }
    match name.as_str() {
        "page.css" => reply::asset("text/css; charset=utf-8", &STYLE),
        "more.css" => reply::asset("text/css; charset=utf-8", &MORE_STYLE),
        "closer.css" => reply::asset("text/css; charset=utf-8", &CLOSER_STYLE),
        "icon.svg" => reply::asset("image/svg+xml", include_bytes!("../assets/icon.svg")),
        "book.ttf" => reply::asset("font/ttf", &BOOK),
        "bold.ttf" => reply::asset("font/ttf", &BOLD),
        "more-book.ttf" => reply::asset("font/ttf", &MORE_BOOK),
        "more-bold.ttf" => reply::asset("font/ttf", &MORE_BOLD),
        _ => missing(),
    }
}

#[cfg(test)]
mod tests {
    use super::{as_sent, tight};

    #[test]
    fn scripts_are_sent_without_what_is_for_people() {
        let script = "// Why.\nif (here) {\n  // How.\n  there(`a${1} // b`);\n\n}\n";
        assert_eq!(as_sent(script), b"if (here) {\nthere(`a${1} // b`);\n}\n");
    }

    #[test]
    fn styles_are_sent_without_what_is_for_people() {
        let style = "/* Why. */\n@media (max-width: 60rem) {\n  a:hover, .b { color: red; margin: 0 1px; }\n}\n";
        assert_eq!(tight(style), "@media (max-width:60rem){\na:hover,.b{color:red;margin:0 1px}\n}");
    }

    /// What is taken from a line would be taken from a text that goes on over it.
    #[test]
    fn no_text_of_a_script_goes_on_over_lines() {
        for (_, script) in super::WRITTEN {
            assert!(script.lines().all(|line| line.matches('`').count() % 2 == 0), "{script}");
        }
    }
}
