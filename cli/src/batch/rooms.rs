//! Where many rooms come from: a folder, a list of files, lines of JSON. They are read one by one.

use std::fs::{self, File};
use std::io::{BufReader, Read};
use std::path::{Path, PathBuf};

use super::given::{Given, fault};
use super::line::of_line;
use super::lines::Lines;
use crate::args::BatchArgs;
use crate::process::failure::Failure;
use crate::process::source::{self, Unreadable, ends_in, is_scenario};

/// How the names of files end that hold a scenario on each line.
const LINES: [&str; 2] = ["ndjson", "jsonl"];

/// Rooms, and how many there are where that is known before they are read.
pub(crate) struct Rooms<'a> {
    /// One by one.
    pub given: Box<dyn Iterator<Item = Given> + Send + 'a>,
    /// How many.
    pub count: Option<usize>,
    /// Files that they are read from, beside the one that the user names.
    pub files: Vec<PathBuf>,
}

impl Rooms<'_> {
    /// Every file that a run with these arguments reads.
    pub(crate) fn inputs<'a>(&'a self, args: &'a BatchArgs) -> impl Iterator<Item = &'a Path> {
        args.files().chain(self.files.iter().map(PathBuf::as_path))
    }
}

/// The rooms of what the user names: a folder (every scenario in it and in the folders below, by name; links to folders
/// are not followed), one scenario, lines of JSON, `-` for such lines on standard input, or else a list of files.
pub(crate) fn rooms<'a>(named: &Path, stdin: &'a mut (dyn Read + Send)) -> Result<Rooms<'a>, Failure> {
    let unreadable = |why| Failure::Unreadable { name: named.display().to_string(), why };
    if source::is_standard_input(named) {
        let given = Lines::of(BufReader::new(stdin)).filter_map(of_line);
        return Ok(Rooms { given: Box::new(given), count: None, files: Vec::new() });
    }
    if fs::metadata(named).is_ok_and(|there| there.is_dir()) {
        return Ok(of_folder(named, scenarios_in(named).map_err(|why| unreadable(why.into()))?));
    }
    if is_scenario(named) {
        return Ok(of_files(vec![(named.to_owned(), named.display().to_string())]));
    }
    let file = source::open(named).map_err(unreadable)?;
    if ends_in(named, &LINES) {
        let given = Lines::of(BufReader::new(file)).filter_map(of_line);
        return Ok(Rooms { given: Box::new(given), count: None, files: Vec::new() });
    }
    listed(file, named.parent().unwrap_or(Path::new("")))
}

/// A scenario as named from its folder, or a folder below with why it cannot be looked into. A name need not be text: it
/// is turned into text only where it is told.
type Found = (PathBuf, Option<std::io::Error>);

/// Scenarios in a folder and below, in the order of their names. What is hidden is passed over.
fn scenarios_in(folder: &Path) -> std::io::Result<Vec<Found>> {
    let (mut found, mut open) = (Vec::new(), vec![PathBuf::new()]);
    while let Some(below) = open.pop() {
        let entries = match fs::read_dir(folder.join(&below)) {
            Ok(entries) => entries,
            Err(why) if below.as_os_str().is_empty() => return Err(why),
            Err(why) => {
                found.push((below, Some(why)));
                continue;
            }
        };
        for entry in entries {
            let entry = entry?;
            let place = below.join(entry.file_name());
            if entry.file_name().to_string_lossy().starts_with('.') {
                continue;
            }
            match entry.file_type() {
                Ok(kind) if kind.is_dir() => open.push(place),
                _ if is_scenario(&place) => found.push((place, None)),
                _ => {}
            }
        }
    }
    found.sort_by(|(one, _), (other, _)| one.as_os_str().cmp(other.as_os_str()));
    Ok(found)
}

/// The rooms of what was found in `folder`.
fn of_folder<'a>(folder: &Path, found: Vec<Found>) -> Rooms<'a> {
    let (folder, count) = (folder.to_owned(), Some(found.len()));
    let files = found.iter().map(|(name, _)| folder.join(name)).collect();
    let given = found.into_iter().map(move |(name, unreadable)| {
        let text = match unreadable {
            Some(why) => Err(Unreadable::System(why)),
            None => text_at(&folder.join(&name)),
        };
        Given { source: Some(name.display().to_string()), text: text.map_err(|why| fault(&why)) }
    });
    Rooms { given: Box::new(given), count, files }
}

/// The rooms of files: where each is, and what it is called.
fn of_files<'a>(files: Vec<(PathBuf, String)>) -> Rooms<'a> {
    let count = Some(files.len());
    let paths = files.iter().map(|(path, _)| path.clone()).collect();
    let given = files.into_iter().map(|(path, name)| {
        let text = text_at(&path).map_err(|why| fault(&why));
        Given { source: Some(name), text }
    });
    Rooms { given: Box::new(given), count, files: paths }
}

/// The rooms of these files, each called by its path.
pub(crate) fn of_paths<'a>(paths: Vec<PathBuf>) -> Rooms<'a> {
    of_files(paths.into_iter().map(|path| (path.clone(), path.display().to_string())).collect())
}

/// The text of an ordinary file: a pipe or a device could keep a run waiting for ever.
fn text_at(path: &Path) -> Result<String, Unreadable> {
    if fs::metadata(path).is_ok_and(|there| !there.is_file() && !there.is_dir()) {
        return Err(Unreadable::NoFile);
    }
    source::file(path)
}

/// A list of files, one a line, as named from the list's own folder; empty lines and lines that start with # are passed over.
fn listed<'a>(list: File, folder: &Path) -> Result<Rooms<'a>, Failure> {
    let mut rooms = Vec::new();
    for line in Lines::of(BufReader::new(list)) {
        match line {
            Ok(line) if line.trim().is_empty() || line.trim_start().starts_with('#') => {}
            line => rooms.push(line),
        }
    }
    let count = Some(rooms.len());
    let folder = folder.to_owned();
    let files = rooms.iter().flatten().map(|name| folder.join(name.trim())).collect();
    let given = rooms.into_iter().map(move |line| match line {
        Ok(name) => {
            let text = text_at(&folder.join(name.trim())).map_err(|why| fault(&why));
            Given { source: Some(name.trim().to_owned()), text }
        }
        Err(why) => Given { source: None, text: Err(fault(&why)) },
    });
    Ok(Rooms { given: Box::new(given), count, files })
}

#[cfg(test)]
mod tests {
    use super::{Given, of_folder};

    #[test]
    fn a_folder_that_cannot_be_looked_into_is_a_fault_in_its_place() {
        let folder = tempfile::tempdir().unwrap();
        std::fs::write(folder.path().join("z.yaml"), "units: cm\n").unwrap();
        let locked = std::io::Error::from(std::io::ErrorKind::PermissionDenied);
        let found = vec![("locked".into(), Some(locked)), ("z.yaml".into(), None)];
        let given: Vec<Given> = of_folder(folder.path(), found).given.collect();
        let fault = given[0].text.as_ref().unwrap_err();
        assert!(fault.code == "unreadable" && fault.message.contains("permission denied"), "{fault:?}");
        assert_eq!((given[0].source.as_deref(), given[1].text.as_deref().unwrap()), (Some("locked"), "units: cm\n"));
    }
}
