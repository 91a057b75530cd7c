//! Pages to look at: each room in a row, with a small plan of its first option. They need no network and run nothing.

use elbowroom_model::Unit;

use super::{Summary, largest, plan_name, reason, size};
use crate::render::batch::room_line::{Fate, LineOption, RoomLine};
use crate::text::markup::escaped;
use crate::words::batch as words;
use crate::words::lengths::{shop_unit, sign};

/// Rooms on one page.
pub(crate) const ROOMS_A_PAGE: usize = 200;

/// Looks of the pages.
const STYLE: &str = include_str!("index.css");

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
}

/// A page: these rooms.
pub(crate) fn page(rooms: &[RoomLine], part: &Part) -> String {
    let mut summary = Summary::default();
    rooms.iter().for_each(|room| summary.count(room));
    let rows: String = rooms.iter().map(row).collect();
    let head = |head: &&str| format!("<th role=\"columnheader\" scope=\"col\">{head}</th>");
    let heads: String = words::INDEX_HEADS.iter().map(head).collect();
    let title = words::index_title(part.first + 1, part.first + rooms.len(), part.all);
    format!(
        "{PAGE_START}<meta http-equiv=\"Content-Security-Policy\" \
         content=\"default-src 'none'; img-src 'self' file:; style-src 'unsafe-inline'\">\n\
         <meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n\
         <title>{title}</title>\n<style>\n{STYLE}</style>\n</head>\n<body>\n<main>\n<h1>{title}</h1>\n<p>{}</p>\n{}\
         <table role=\"table\">\n<thead><tr role=\"row\">{heads}</tr></thead>\n<tbody>\n{rows}</tbody>\n</table>\n{}\
         <p class=\"note\">{} {}</p>\n</main>\n</body>\n</html>\n",
        escaped(&words::tally(&summary.tally)),
        links(part.number, part.pages),
        links(part.number, part.pages),
        words::INDEX_PLANS,
        words::INDEX_CAUTION,
    )
}

fn row(told: &RoomLine) -> String {
    let class = if told.fate() == Fate::Fits { "" } else { " class=\"without\"" };
    let source = escaped(&words::called(told.source.as_deref()));
    let (name, area) = told.result.as_ref().map_or_else(
        || (source.clone(), String::new()),
        |result| (escaped(&result.room.name), format!("{:.1}&nbsp;m<sup>2</sup>", result.room.area)),
    );
    let counts = told.result.as_ref().map_or_else(String::new, |it| words::fit_of(it.options.len(), it.refused.len()));
    let answer =
        told.best().map_or_else(|| escaped(&reason(told).unwrap_or_default()), |best| answer(best, told.unit()));
    let [_, _, floor, options, _] = words::INDEX_HEADS;
    // Narrow screens show the cells below each other, each with its head; the roles keep it a table there.
    format!(
        "<tr role=\"row\"{class}><td role=\"cell\" class=\"plan\">{}</td>\
         <th role=\"rowheader\" scope=\"row\">{name}<br><small>{source}</small></th>\
         <td role=\"cell\" data-head=\"{floor}\">{area}</td><td role=\"cell\" data-head=\"{options}\">{counts}</td>\
         <td role=\"cell\" class=\"answer\">{answer}</td></tr>\n",
        plan(told),
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
    format!("{}<br><small>{score}</small><ul>{sizes}</ul>", escaped(&best.title))
}

/// The picture of the first option.
fn plan(told: &RoomLine) -> String {
    let drawn = told.best().map(|best| {
        let plan = plan_name(&told.content);
        format!("<img src=\"{plan}\" alt=\"{}\" loading=\"lazy\">", escaped(&words::plan_of(&best.title)))
    });
    drawn.unwrap_or_default()
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
