//! What if: one figure of the scenario set otherwise, or one thing left out, without touching the file.
//!
//! A setting is `PATH=VALUE`: `coffee table.width=120cm`, `passage=70cm`, `view=5`, `armchair=none`. It changes the tree of
//! the file before that is held to the schema, so whatever is wrong with it is told as if it stood in the file.

mod place;
mod unnumbered;

use place::{Place, Unplaced};

use super::document::Document;
use super::resolve::names::{self, Names};
use crate::fault::Fault;
use crate::quote::quoted;
use crate::report::Report;
use crate::yaml::{Node, Trail, TrailStep, shape, typed};

/// The value that takes a thing or a key out of the file.
const NONE: &str = "none";
/// A key for which `none` is a value.
const STANCE: &str = "stance";

/// Changes the tree as `setting` says.
///
/// # Errors
/// What keeps the setting from being understood. What is wrong with its value shows when the tree is read.
pub(super) fn apply(tree: &mut Node, setting: &str, schema: &serde_json::Value) -> Result<(), Box<Fault>> {
    let Some((path, value)) = setting.split_once('=') else { return Err(not_a_setting(setting)) };
    let (path, value) = (path.trim(), value.trim());
    if path.is_empty() || value.is_empty() {
        return Err(not_a_setting(setting));
    }
    // A file that cannot be read as far as its names has faults of its own, which are told.
    let Some((document, names)) = named(tree, schema) else { return Ok(()) };
    let leaves_out = value == NONE;
    match place::find(&document, &names, path, leaves_out) {
        Ok(Place::Key(at)) if leaves_out && !ends_in(&at, STANCE) => tree.remove(&at),
        Ok(Place::Key(at)) => tree.set(&at, read(setting, value)?),
        Ok(Place::OneOf { row, left }) => tree.set(&row.key("count"), Node::integer(left)),
        Ok(Place::Row(row)) => {
            unnumbered::pin(tree, &names, &row);
            tree.remove(&row);
        }
        Err(unplaced) => return Err(unknown(path, unplaced)),
    }
    Ok(())
}

/// What a result must tell of the settings that it rests on.
pub(super) fn notice(setting: &str) -> String {
    format!("As if the file said otherwise: {}.", quoted(setting.trim()))
}

/// The document and the names in it, where it can be read so far.
fn named(tree: &Node, schema: &serde_json::Value) -> Option<(Document, Names)> {
    let (held, _) = shape::hold_to(tree.clone(), schema);
    let document: Document = typed::typed(&held).ok()?;
    let mut report = Report::new(&held, document.units.unwrap_or_default());
    let names = names::name_all(&document, &mut report);
    Some((document, names))
}

/// The value as the file would have it.
fn read(setting: &str, value: &str) -> Result<Node, Box<Fault>> {
    let node = Node::read(value).map_err(|_| not_a_setting(setting))?;
    Ok(node.without_places())
}

fn ends_in(at: &Trail, key: &str) -> bool {
    matches!(at.steps().last(), Some(TrailStep::Key(last)) if last == key)
}

fn not_a_setting(setting: &str) -> Box<Fault> {
    fault(
        "not_a_setting",
        format!("`{}` sets nothing: it needs a path, `=` and a value.", quoted(setting)),
        "Write it as in `coffee table.width=120cm`, `passage=70cm`, `view=5` or `armchair=none`.".to_owned(),
    )
}

fn unknown(path: &str, unplaced: Unplaced) -> Box<Fault> {
    let path = quoted(path);
    match unplaced {
        Unplaced::Unknown { nearest: Some(nearest) } => fault(
            "unknown_setting",
            format!("The scenario has nothing named `{path}` to set."),
            format!("Did you mean `{}`?", quoted(&nearest)),
        ),
        Unplaced::Unknown { nearest: None } => fault(
            "unknown_setting",
            format!("The scenario has nothing named `{path}` to set."),
            "Name a thing and its key (`coffee table.width`), a clearance (`passage`) or a wish (`view`).".to_owned(),
        ),
        Unplaced::NoKey { example } => fault(
            "unknown_setting",
            format!("`{path}` says no key of it that is to be set."),
            format!("Write `{path}.{example}=...`, or `{path}=none` to leave it out."),
        ),
        Unplaced::Wall => fault(
            "unknown_setting",
            format!("`{path}` is a wall, and a room cannot do without one of its walls."),
            format!("Set its length: `{path}.length=...`."),
        ),
    }
}

fn fault(code: &'static str, message: String, remedy: String) -> Box<Fault> {
    Box::new(Fault { code, item: None, message, remedy, place: None })
}
