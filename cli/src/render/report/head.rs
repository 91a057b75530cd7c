//! What stands before and behind the page's content: what it may do, how it looks, its scripts and their data.

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use sha2::{Digest, Sha256};

use super::ReportPage;
use crate::drawing::faces_of;
use crate::render::plan::Alone;
use crate::text::markup::Markup;
use crate::words::report as words;

const STYLE: &str = include_str!("report.css");
const RANKING: &str = include_str!("ranking.js");
const PAGE: &str = include_str!("page.js");

/// The head: everything is forbidden but this page's own style, scripts and letters, each by what it holds.
pub(super) fn put(page: &mut Markup, told: &ReportPage<'_>, plans: &[Alone]) {
    let style = format!("{}{STYLE}", faces_of(plans.iter().map(|plan| &plan.sheet)));
    let policy = format!(
        "default-src 'none'; style-src {}; script-src {} {}; font-src data:; base-uri 'none'; form-action 'none'",
        digest(&style),
        digest(RANKING),
        digest(PAGE)
    );
    page.open("head", &[]);
    page.void("meta", &[("charset", "utf-8")]);
    page.void("meta", &[("http-equiv", "Content-Security-Policy"), ("content", &policy)]);
    page.void("meta", &[("name", "viewport"), ("content", "width=device-width, initial-scale=1")]);
    page.void("meta", &[("name", "referrer"), ("content", "no-referrer")]);
    page.element("title", &[], &words::title(&told.answer.brief.room.name));
    page.open("style", &[]).raw(&style).end().end();
}

/// The scores, and the scripts that weigh them anew.
pub(super) fn put_scripts(page: &mut Markup, told: &ReportPage<'_>) {
    page.open("script", &[("type", "application/json"), ("id", "scores")]).raw(&data(told)).end();
    page.open("script", &[("id", "ranking")]).raw(RANKING).end();
    page.open("script", &[]).raw(PAGE).end();
}

/// Rows of scores in the order that settles ties, and the rank that each option has on the page.
fn data(told: &ReportPage<'_>) -> String {
    let mut options: Vec<_> = told.answer.options.iter().collect();
    options.sort_by_key(|option| option.by_size);
    let scores: Vec<Vec<f64>> =
        options.iter().map(|option| option.judgements.iter().map(|judgement| judgement.score).collect()).collect();
    let ranks: Vec<usize> = options.iter().map(|option| option.rank).collect();
    // Figures alone: nothing in it that could end the script.
    serde_json::json!({ "scores": scores, "options": ranks }).to_string()
}

/// What a policy calls a script or a style by.
fn digest(text: &str) -> String {
    format!("'sha256-{}'", STANDARD.encode(Sha256::digest(text.as_bytes())))
}
