//! Sheets, by the very commands that make them elsewhere: the bytes are the same.

use std::ffi::OsString;
use std::path::Path as File;

use axum::extract::{Path, State};
use axum::http::StatusCode;
use axum::response::Response;

use super::beside::{beside, missing};
use super::parts::Asked;
use crate::args::{self, Asked as Run};
use crate::commands;
use crate::page::desk::Desk;
use crate::page::reply;
use crate::process::outlet::Outlet;
use crate::words::{failure, page as words};

/// A sheet: the file as the page calls it, the command, the form where it takes one, whether it is of one option on paper, what
/// it is sent as.
struct Sheet {
    file: &'static str,
    command: &'static str,
    form: Option<&'static str>,
    kind: &'static str,
}

const HTML: &str = "text/html; charset=utf-8";
const TEXT: &str = "text/plain; charset=utf-8";
const PDF: &str = "application/pdf";

const SHEETS: [Sheet; 10] = [
    Sheet { file: "plan.pdf", command: "draw", form: Some("pdf"), kind: PDF },
    Sheet { file: "plan.svg", command: "draw", form: Some("svg"), kind: "image/svg+xml" },
    Sheet { file: "plan.png", command: "draw", form: Some("png"), kind: "image/png" },
    Sheet { file: "tape.pdf", command: "tape", form: Some("pdf"), kind: PDF },
    Sheet { file: "tape.html", command: "tape", form: Some("html"), kind: HTML },
    Sheet { file: "tape.txt", command: "tape", form: Some("text"), kind: TEXT },
    Sheet { file: "card.pdf", command: "card", form: Some("pdf"), kind: PDF },
    Sheet { file: "card.html", command: "card", form: Some("html"), kind: HTML },
    Sheet { file: "card.txt", command: "card", form: Some("text"), kind: TEXT },
    Sheet { file: "report.html", command: "report", form: None, kind: HTML },
];

/// A sheet as a file to keep.
pub(super) async fn sheet(
    State(desk): State<Desk>,
    Path((name, file)): Path<(String, String)>,
    asked: Asked,
) -> Response {
    beside(move || {
        let sheet = SHEETS.iter().find(|sheet| sheet.file == file);
        let (Some(room), Some(sheet)) = (desk.room(&name), sheet) else { return missing() };
        let stem = File::new(&name).file_stem().map(|stem| stem.to_string_lossy().into_owned()).unwrap_or_default();
        match made(sheet, room.path(), asked.get("option"), asked.get("paper")) {
            Ok(bytes) => reply::file(sheet.kind, &format!("{stem}-{file}"), bytes),
            Err(why) => reply::html_of(
                StatusCode::UNPROCESSABLE_ENTITY,
                crate::page::screens::page(
                    &name,
                    maud::html! { main id="main" { h1 { (why) } p { a href="/" { (words::ALL_ROOMS) } } } },
                ),
            ),
        }
    })
    .await
}

/// What the command line makes of the file; or what it says of why it makes nothing.
fn made(sheet: &Sheet, path: &File, option: Option<&String>, paper: Option<&String>) -> Result<Vec<u8>, String> {
    let mut line: Vec<OsString> = vec!["elbowroom".into(), sheet.command.into()];
    if let Some(form) = sheet.form {
        line.extend(["--format".into(), form.into()]);
        let chosen = [("--option", option), ("--paper", paper)];
        for (name, value) in chosen.into_iter().filter_map(|(name, value)| Some((name, value?))) {
            line.push(format!("{name}={value}").into());
        }
    }
    line.extend(["--".into(), path.into()]);
    let (mut found, mut told) = (Vec::new(), Vec::new());
    let asked = args::parse(line).map_err(|why| failure::message(&why))?.asked;
    let Run::Command(command) = asked else { return Err(words::NOT_UNDERSTOOD.to_owned()) };
    let (mut out, mut err) = (Outlet::plain(&mut found), Outlet::plain(&mut told));
    commands::run(command, &mut std::io::empty(), &mut out, &mut err).map_err(|why| failure::message(&why))?;
    Ok(found)
}
