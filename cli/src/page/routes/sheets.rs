//! Sheets, by the very commands that make them elsewhere: the bytes are the same.

use std::ffi::OsString;
use std::path::Path as File;

use axum::extract::{Path, State};
use axum::http::StatusCode;
use axum::response::Response;

use super::asked::Asked;
use super::beside::{beside, missing};
use super::command::made;
use crate::page::desk::Desk;
use crate::page::reply;
use crate::words::page as words;

/// A sheet: the file as the page calls it, the command, the form where it takes one, which options it is of, what it is sent as.
struct Sheet {
    file: &'static str,
    command: &'static str,
    form: Option<&'static str>,
    of: Of,
    kind: &'static str,
}

/// Which options a sheet is of.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Of {
    /// One.
    One,
    /// Several, side by side.
    Several,
    /// Those that rank best.
    Best,
    /// None: it is of the room and a list of pieces.
    List,
}

const HTML: &str = "text/html; charset=utf-8";
const TEXT: &str = "text/plain; charset=utf-8";
const PDF: &str = "application/pdf";
const CSV: &str = "text/csv; charset=utf-8";

const SHEETS: [Sheet; 16] = [
    Sheet { file: "plan.pdf", command: "draw", form: Some("pdf"), of: Of::One, kind: PDF },
    Sheet { file: "plan.svg", command: "draw", form: Some("svg"), of: Of::One, kind: "image/svg+xml" },
    Sheet { file: "plan.png", command: "draw", form: Some("png"), of: Of::One, kind: "image/png" },
    Sheet { file: "tape.pdf", command: "tape", form: Some("pdf"), of: Of::One, kind: PDF },
    Sheet { file: "tape.html", command: "tape", form: Some("html"), of: Of::One, kind: HTML },
    Sheet { file: "tape.txt", command: "tape", form: Some("text"), of: Of::One, kind: TEXT },
    Sheet { file: "card.pdf", command: "card", form: Some("pdf"), of: Of::One, kind: PDF },
    Sheet { file: "card.html", command: "card", form: Some("html"), of: Of::One, kind: HTML },
    Sheet { file: "card.txt", command: "card", form: Some("text"), of: Of::One, kind: TEXT },
    Sheet { file: "compare.pdf", command: "compare", form: Some("pdf"), of: Of::Several, kind: PDF },
    Sheet { file: "compare.html", command: "compare", form: Some("html"), of: Of::Several, kind: HTML },
    Sheet { file: "compare.txt", command: "compare", form: Some("text"), of: Of::Several, kind: TEXT },
    Sheet { file: "share.html", command: "share", form: Some("html"), of: Of::Several, kind: HTML },
    Sheet { file: "report.html", command: "report", form: None, of: Of::Best, kind: HTML },
    Sheet { file: "shop.txt", command: "shop", form: None, of: Of::List, kind: TEXT },
    Sheet { file: "shop.csv", command: "shop", form: None, of: Of::List, kind: CSV },
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
        let list = asked.one("list").map(|list| desk.shelf.list(list));
        let list = match (list, sheet.of) {
            (Some(Some(list)), _) => Some(list),
            (None, of) if of != Of::List => None,
            _ => return missing(),
        };
        match made(&line(sheet, room.path(), list.as_deref(), &asked), &mut std::io::empty()) {
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

/// What would stand on the command line.
fn line(sheet: &Sheet, path: &File, list: Option<&File>, asked: &Asked) -> Vec<OsString> {
    let mut line: Vec<OsString> = vec!["elbowroom".into(), sheet.command.into()];
    if let Some(form) = sheet.form {
        line.extend(["--format".into(), form.into()]);
        if let Some(paper) = asked.one("paper").filter(|_| sheet.command != "share") {
            line.push(format!("--paper={paper}").into());
        }
    }
    if let Some(option) = asked.one("option").filter(|_| sheet.of == Of::One) {
        line.push(format!("--option={option}").into());
    }
    if let Some(units) = asked.units {
        line.push(format!("--units={}", units.key()).into());
    }
    if let Some(list) = list.filter(|_| sheet.command == "share") {
        line.extend(["--prices".into(), list.into()]);
    }
    if sheet.kind == CSV {
        line.push("--csv".into());
    }
    line.extend(["--".into(), path.into()]);
    line.extend(list.filter(|_| sheet.of == Of::List).map(OsString::from));
    if sheet.of == Of::Several {
        line.extend(asked.all("option").into_iter().map(OsString::from));
    }
    line
}
