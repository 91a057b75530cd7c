//! Pages to look at: each room with a small plan of its first option, links to its files, and a small script of its own that
//! finds and orders rooms. They need no network, and all stands there without the script too.

use elbowroom_model::Unit;

use super::{OfRoom, Summary, largest, reason, size};
use crate::drawing::faces_of;
use crate::render::batch::room_line::{Fate, LineOption, RoomLine};
use crate::text::digest::digest;
use crate::text::markup::escaped;
use crate::words::batch::{called, tally};
use crate::words::index as words;
use crate::words::lengths::{shop_unit, sign};

/// Rooms on one page.
pub(crate) const ROOMS_A_PAGE: usize = 200;

/// Looks of the pages.
const STYLE: &str = include_str!("index.css");
/// What finds and orders the rooms of a page.
const SCRIPT: &str = include_str!("index.js");

/// How each page starts: what it is known again by.
pub(crate) const PAGE_START: &str = "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n\
    <meta name=\"generator\" content=\"elbowroom batch\">\n";

/// Whether a file of this name could be a page.
pub(crate) fn is_page_name(name: &str) -> bool {
    let number = name.strip_prefix("index-").and_then(|rest| rest.strip_suffix(".html"));
    let number = number.and_then(|number| number.parse().ok());
    name == page_name(1) || number.is_some_and(|number: usize| name == page_name(number))
}

/// The file name of page `number`, from 1.
pub(crate) fn page_name(number: usize) -> String {
    if number == 1 { "index.html".to_owned() } else { format!("index-{number}.html") }
}

/// Which of the pages one is, and which of the rooms it shows.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Part {
    /// Its number, from 1.
    pub number: usize,
    /// How many pages there are.
    pub pages: usize,
    /// The place of its first room, from 0.
    pub first: usize,
    /// How many rooms there are.
    pub all: usize,
    /// Each room has its report.
    pub reports: bool,
}

/// A page: these rooms.
pub(crate) fn page(rooms: &[RoomLine], part: &Part) -> String {
    let mut summary = Summary::default();
    rooms.iter().for_each(|room| summary.count(room));
    let items: String = rooms.iter().map(|room| item(room, part.reports)).collect();
    let title = words::index_title(part.first + 1, part.first + rooms.len(), part.all);
    let body = format!(
        "<h1>{title}</h1>\n<p>{}</p>\n{}{}<ol id=\"rooms\">\n{items}</ol>\n{}<p class=\"note\">{}</p>\n",
        escaped(&tally(&summary.tally)),
        links(part.number, part.pages),
        if rooms.len() > 1 { tools() } else { String::new() },
        links(part.number, part.pages),
        words::INDEX_CAUTION,
    );
    let style = format!("{}\n{STYLE}", faces_of(std::iter::empty(), &body));
    format!(
        "{PAGE_START}<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; img-src 'self' file:; \
         font-src data:; style-src {}; script-src {}; base-uri 'none'; form-action 'none'\">\n\
         <meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n\
         <title>{title}</title>\n<style>{style}</style>\n</head>\n<body>\n<main>\n{body}</main>\n\
         <script>{SCRIPT}</script>\n</body>\n</html>\n",
        digest(&style),
        digest(SCRIPT),
    )
}

/// What finds and orders rooms, shown once the script runs.
fn tools() -> String {
    let choices = |all: &[(&str, &str)]| -> String {
        all.iter().map(|(key, words)| format!("<option value=\"{key}\">{words}</option>")).collect()
    };
    format!(
        "<form id=\"tools\" hidden>\n<label>{} <input type=\"search\" name=\"find\" autocomplete=\"off\"></label>\n\
         <label>{} <select name=\"fate\">{}</select></label>\n<label>{} <select name=\"by\">{}</select></label>\n\
         <output name=\"count\" data-of=\"{}\" aria-live=\"polite\"></output>\n</form>\n",
        words::FIND,
        words::SHOW,
        choices(&words::FATES),
        words::ORDER,
        choices(&words::ORDERS),
        words::SHOWN_OF,
    )
}

/// One room, with what it is found and ordered by.
fn item(told: &RoomLine, reports: bool) -> String {
    let fate = if told.fate() == Fate::Fits { "fits" } else { "without" };
    let source = escaped(&called(told.source.as_deref()));
    let result = told.result.as_ref();
    let name = result.map_or_else(|| source.clone(), |result| escaped(&result.room.name));
    let area = result.map_or(0.0, |result| result.room.area);
    let (score, fits) = (told.best().map_or(0.0, |best| best.score), result.map_or(0, |result| result.options.len()));
    let facts = result.map_or_else(String::new, |result| {
        let counts = words::fit_of(result.options.len(), result.refused.len());
        format!(", {}, {}", escaped(&words::floor(result.room.area)), escaped(&counts))
    });
    let answer = told.best().map_or_else(
        || format!("<p>{}</p>", escaped(&reason(told).unwrap_or_default())),
        |best| answer(best, told.unit()),
    );
    format!(
        "<li data-fate=\"{fate}\" data-name=\"{name}\" data-area=\"{area:.2}\" data-score=\"{score:.1}\" data-fits=\"{fits}\">\n\
         {}<h2>{name}</h2>\n<p class=\"soft\">{source}{facts}</p>\n{answer}{}</li>\n",
        plan(told),
        files(told, reports),
    )
}

/// The first option in words.
fn answer(best: &LineOption, unit: Unit) -> String {
    let set_aside = best.set_aside.as_ref().map(|aside| aside.why.as_str());
    let score = escaped(&words::scored(best.score, best.first_place_share, set_aside));
    let sizes = best.pieces.iter().map(|piece| {
        let size = words::sizes(&size(piece, unit), &largest(piece, unit), sign(shop_unit(unit)));
        format!("<li>{} <b>{}</b></li>", escaped(&piece.name), escaped(&size))
    });
    let sizes: String = sizes.collect();
    format!("<p>{}</p>\n<p class=\"soft\">{score}</p>\n<ul>{sizes}</ul>\n", escaped(&best.title))
}

/// The picture of the first option.
fn plan(told: &RoomLine) -> String {
    let drawn = told.best().map(|best| {
        let plan = OfRoom::Plan.name(told.source.as_deref(), &told.content);
        format!("<img src=\"{plan}\" alt=\"{}\" loading=\"lazy\">\n", escaped(&words::plan_of(&best.title)))
    });
    drawn.unwrap_or_default()
}

/// Links to the files of a room.
fn files(told: &RoomLine, reports: bool) -> String {
    let room = told.result.as_ref().map_or("", |result| result.room.name.as_str());
    let link = |kind: OfRoom, words: &str| {
        let name = kind.name(told.source.as_deref(), &told.content);
        format!("<a href=\"{name}\">{words}<span class=\"unseen\"> {}</span></a>", escaped(&words::of(room)))
    };
    let plan = told.best().map(|_| link(OfRoom::Plan, words::PLAN));
    let report = told.result.as_ref().filter(|_| reports).map(|_| link(OfRoom::Report, words::REPORT));
    let all: Vec<String> = plan.into_iter().chain(report).collect();
    if all.is_empty() { String::new() } else { format!("<p class=\"files\">{}</p>\n", all.join(" ")) }
}

/// Links to the other pages.
fn links(number: usize, pages: usize) -> String {
    if pages < 2 {
        return String::new();
    }
    let link = |page: usize| match page {
        page if page == number => format!("<b aria-current=\"page\">{page}</b>"),
        page => format!("<a href=\"{}\">{page}</a>", page_name(page)),
    };
    let all: Vec<String> = (1..=pages).map(link).collect();
    format!("<nav aria-label=\"{}\">{}</nav>\n", words::PAGES, all.join(" "))
}
