//! The files of single rooms beside the lines: a small plan each and, where they are asked for, a report. Each is named by
//! its room and by the content that it was made from, and by the content it is known again.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::Path;

use super::content::Content;
use super::record::Record;
use crate::process::failure::Failure;
use crate::process::whole::Whole;
use crate::render::batch::{OfRoom, digits};

/// A room of the run: where it came from, and what its result is kept under.
pub(crate) type Ordered = (Option<String>, Content);

/// Makes the folders that a run needs.
///
/// # Errors
/// One cannot be made.
pub(crate) fn make_folders(folder: &Path, reports: bool) -> Result<(), Failure> {
    for kind in OfRoom::ALL.into_iter().filter(|kind| reports || *kind == OfRoom::Plan) {
        let made = fs::create_dir_all(folder.join(kind.folder()));
        made.map_err(|why| Failure::Uncreatable { name: folder.display().to_string(), why })?;
    }
    Ok(())
}

/// Puts what was made of a room in its place.
///
/// # Errors
/// It cannot be written.
pub(crate) fn put(folder: &Path, source: Option<&str>, record: &Record) -> Result<(), Failure> {
    let content = record.content.to_string();
    for (kind, text) in [(OfRoom::Plan, &record.plan), (OfRoom::Report, &record.report)] {
        let Some(text) = text else { continue };
        let mut file = Whole::start(folder.join(kind.name(source, &content)))?;
        file.add(text)?;
        file.put_soon()?;
    }
    Ok(())
}

/// The files of one kind that are there, by the digits of their contents.
pub(super) fn there(folder: &Path, kind: OfRoom) -> BTreeMap<String, Vec<String>> {
    let mut found: BTreeMap<String, Vec<String>> = BTreeMap::new();
    for entry in fs::read_dir(folder.join(kind.folder())).into_iter().flatten().flatten() {
        let name = entry.file_name();
        let Some((name, digits)) = name.to_str().and_then(|name| Some((name, kind.content_of(name)?))) else {
            continue;
        };
        found.entry(digits.to_owned()).or_default().push(name.to_owned());
    }
    found.values_mut().for_each(|names| names.sort());
    found
}

/// Gives every room of a run its files under its own name, also where they were made for a room of the same content; those of
/// other rooms go. Nothing that is not named as such a file is touched.
///
/// # Errors
/// A file cannot be copied.
pub(super) fn settle(folder: &Path, order: &[Ordered], reports: bool) -> Result<(), Failure> {
    for kind in OfRoom::ALL {
        let there = there(folder, kind);
        let mut wanted = BTreeSet::new();
        for (source, content) in order.iter().filter(|_| reports || kind == OfRoom::Plan) {
            let content = content.to_string();
            let Some(has) = there.get(digits(&content)).and_then(|names| names.first()) else { continue };
            let path = folder.join(kind.name(source.as_deref(), &content));
            if wanted.insert(path.clone()) && !path.exists() {
                copied(&folder.join(kind.folder()).join(has), path)?;
            }
        }
        for name in there.values().flatten() {
            let path = folder.join(kind.folder()).join(name);
            if !wanted.contains(&path) {
                // A file too many does no harm.
                let _ = fs::remove_file(path);
            }
        }
        if !reports && kind == OfRoom::Report {
            // Only an empty folder goes.
            let _ = fs::remove_dir(folder.join(kind.folder()));
        }
    }
    Ok(())
}

/// Whether a room of this content has its file.
pub(super) fn has(there: &BTreeMap<String, Vec<String>>, content: Content) -> bool {
    there.contains_key(digits(&content.to_string()))
}

fn copied(from: &Path, to: std::path::PathBuf) -> Result<(), Failure> {
    let text = fs::read_to_string(from).map_err(|why| Failure::NotWritten { name: to.display().to_string(), why })?;
    let mut file = Whole::start(to)?;
    file.add(&text)?;
    file.put_soon()
}
