//! Which files there are: the one that was named, or those of the folder that was. Nothing else is ever read or written.

use std::path::{Path, PathBuf};
use std::{fs, io};

use crate::process::destination::{Destination, UNDER_WAY};
use crate::process::failure::Failure;
use crate::process::outlet::Outlet;
use crate::process::source::{self, Unreadable};

/// How lists of pieces end.
const LISTS: [&str; 2] = ["csv", "xlsx"];
/// Letters of a file's name at most.
const LONGEST_NAME: usize = 80;

/// The files that may be opened.
#[derive(Debug, Clone)]
pub(super) enum Shelf {
    /// One file.
    File(PathBuf),
    /// Those of a folder, not of folders in it.
    Folder(PathBuf),
}

impl Shelf {
    /// What was named.
    ///
    /// # Errors
    /// It is not there, or it is neither.
    pub(super) fn at(place: &Path) -> Result<Self, Failure> {
        let unreadable = |why| Failure::Unreadable { name: source::name(place), why };
        let whole = fs::canonicalize(place).map_err(|why| match why.kind() {
            std::io::ErrorKind::NotFound => unreadable(Unreadable::Missing),
            _ => unreadable(Unreadable::System(why)),
        })?;
        match fs::metadata(&whole) {
            Ok(found) if found.is_dir() => Ok(Self::Folder(whole)),
            Ok(found) if found.is_file() => Ok(Self::File(whole)),
            _ => Err(unreadable(Unreadable::NoFile)),
        }
    }

    /// The names of the files, in order.
    pub(super) fn names(&self) -> Vec<String> {
        match self {
            Self::File(path) => name_of(path).into_iter().collect(),
            Self::Folder(folder) => named_in(folder, source::is_scenario),
        }
    }

    /// The names of the lists of pieces beside the rooms, in order; none beside one file.
    pub(super) fn lists(&self) -> Vec<String> {
        match self {
            Self::File(_) => Vec::new(),
            Self::Folder(folder) => named_in(folder, |path| source::ends_in(path, &LISTS)),
        }
    }

    /// The list of this name, as [`Self::path`] finds rooms.
    pub(super) fn list(&self, name: &str) -> Option<PathBuf> {
        let Self::Folder(folder) = self else { return None };
        self.lists().into_iter().find(|known| known == name).map(|known| folder.join(known))
    }

    /// The file of this name; none where the shelf has none, whatever else the name may lead to.
    pub(super) fn path(&self, name: &str) -> Option<PathBuf> {
        let known = self.names().into_iter().find(|known| known == name)?;
        Some(match self {
            Self::File(path) => path.clone(),
            Self::Folder(folder) => folder.join(known),
        })
    }

    /// Whether files can be put on it.
    pub(super) const fn is_folder(&self) -> bool {
        matches!(self, Self::Folder(_))
    }

    /// Puts a new file on it, whole or not at all, and says under which name.
    ///
    /// # Errors
    /// The name is none for a file of this folder; a file of that name is there; it cannot be written.
    pub(super) fn put(&self, name: &str, text: &str) -> Result<String, NotPut> {
        let Self::Folder(folder) = self else { return Err(NotPut::NoFolder) };
        let name = new_name(name).ok_or(NotPut::NoName)?;
        let destination = Destination::at(&folder.join(&name), false).map_err(NotPut::Failed)?;
        destination.write(text.as_bytes(), &mut Outlet::plain(&mut std::io::sink())).map_err(NotPut::Failed)?;
        Ok(name)
    }
}

impl Shelf {
    /// Calls a file of it something else, and says what; a name with no ending keeps that of the old one.
    ///
    /// # Errors
    /// There is no such file; the name is none for a file of this folder; a file of that name is there; the system will not.
    pub(super) fn rename(&self, old: &str, name: &str) -> Result<String, NotPut> {
        let Self::Folder(folder) = self else { return Err(NotPut::NoFolder) };
        let path = self.path(old).ok_or(NotPut::NotThere)?;
        let name = new_name(&with_ending_of(old, name)).ok_or(NotPut::NoName)?;
        let place = folder.join(&name);
        let failed = |why: io::Error| match why.kind() {
            io::ErrorKind::AlreadyExists => NotPut::Failed(Failure::AlreadyThere(name.clone())),
            _ => NotPut::Failed(Failure::Uncreatable { name: name.clone(), why }),
        };
        // The name is taken first, so that a file which comes there meanwhile is not moved over.
        fs::File::create_new(&place).map_err(failed)?;
        if let Err(why) = fs::rename(&path, &place) {
            let _ = fs::remove_file(&place);
            return Err(failed(why));
        }
        Ok(name)
    }
}

/// Why a file was not put on the shelf.
#[derive(Debug)]
pub(super) enum NotPut {
    /// The shelf is one file.
    NoFolder,
    /// There is no file of the old name.
    NotThere,
    /// The name is none for a file of a folder.
    NoName,
    /// It could not be written, or is there.
    Failed(Failure),
}

/// The names of such files in a folder, in order. A link may lead out of it: it is left out.
fn named_in(folder: &Path, is_such: impl Fn(&Path) -> bool) -> Vec<String> {
    let entries = fs::read_dir(folder).into_iter().flatten().flatten();
    let files = entries.filter(|entry| entry.file_type().is_ok_and(|kind| kind.is_file()));
    let paths = files.map(|entry| entry.path()).filter(|path| is_such(path));
    let mut names: Vec<String> = paths.filter_map(|path| name_of(&path)).collect();
    names.retain(|name| !name.starts_with(UNDER_WAY));
    names.sort();
    names
}

fn name_of(path: &Path) -> Option<String> {
    path.file_name()?.to_str().map(str::to_owned)
}

/// The name with the ending that the old one has, where it has none of its own.
fn with_ending_of(old: &str, name: &str) -> String {
    let name = name.trim();
    match Path::new(old).extension() {
        Some(ending) if !source::is_scenario(Path::new(name)) => format!("{name}.{}", ending.to_string_lossy()),
        _ => name.to_owned(),
    }
}

/// A name for a file of the folder itself: letters, figures, spaces and plain marks, ending as a scenario does.
fn new_name(given: &str) -> Option<String> {
    let given = given.trim();
    let plain = |letter: char| letter.is_alphanumeric() || matches!(letter, ' ' | '-' | '_' | '.' | '(' | ')' | ',');
    let is_fit = !given.is_empty() && given.chars().all(plain) && !given.starts_with('.');
    if !is_fit || given.chars().count() > LONGEST_NAME {
        return None;
    }
    let name = if source::is_scenario(Path::new(given)) { given.to_owned() } else { format!("{given}.yaml") };
    (name.starts_with(|letter: char| letter.is_alphanumeric())).then_some(name)
}

#[cfg(test)]
mod tests {
    use std::fs;

    use super::{NotPut, Shelf, new_name};

    #[test]
    fn nothing_outside_the_folder_is_found() {
        let outer = tempfile::tempdir().unwrap();
        let folder = outer.path().join("rooms");
        fs::create_dir_all(folder.join("more")).unwrap();
        for file in
            ["secret.yaml", "secret.csv", "rooms/shop.csv", "rooms/one.yaml", "rooms/more/two.yaml", "rooms/notes.txt"]
        {
            fs::write(outer.path().join(file), "units: cm").unwrap();
        }
        #[cfg(unix)]
        std::os::unix::fs::symlink(outer.path().join("secret.yaml"), folder.join("link.yaml")).unwrap();
        let shelf = Shelf::at(&folder).unwrap();
        assert_eq!(shelf.names(), ["one.yaml"]);
        let secret = outer.path().join("secret.yaml").display().to_string();
        for name in ["../secret.yaml", "link.yaml", "more/two.yaml", "notes.txt", "", ".", "..", "./one.yaml", &secret]
        {
            assert_eq!(shelf.path(name), None, "{name}");
        }
        assert!(shelf.path("one.yaml").is_some());
        assert_eq!(shelf.lists(), ["shop.csv"]);
        assert!(shelf.list("shop.csv").is_some());
        for name in ["../secret.csv", "one.yaml", "", "..", "./shop.csv"] {
            assert_eq!(shelf.list(name), None, "{name}");
        }
        for name in ["../three", "more/three", "/tmp/three", ".hidden", "", "a\u{0}b", "c:\\three"] {
            assert!(shelf.put(name, "units: cm").is_err(), "{name}");
        }
        assert_eq!(shelf.put("three", "units: cm").unwrap(), "three.yaml");
        assert!(shelf.put("three", "units: in").is_err(), "what is there is not written over");
        assert_eq!(shelf.names(), ["one.yaml", "three.yaml"]);
        for old in ["../secret.yaml", "link.yaml", "more/two.yaml", "notes.txt", "four.yaml"] {
            assert!(matches!(shelf.rename(old, "five"), Err(NotPut::NotThere)), "{old}");
        }
        for name in ["../five", "more/five", "/tmp/five", ".hidden", "", "..", "a\u{0}b", "a\nb"] {
            assert!(matches!(shelf.rename("three.yaml", name), Err(NotPut::NoName)), "{name}");
        }
        for there in ["one", "link.yaml"] {
            assert!(shelf.rename("three.yaml", there).is_err(), "what is there is not written over");
        }
        assert_eq!(fs::read_to_string(folder.join("one.yaml")).unwrap(), "units: cm");
        assert_eq!(shelf.rename("three.yaml", "Quay 4").unwrap(), "Quay 4.yaml");
        assert_eq!(shelf.names(), ["Quay 4.yaml", "one.yaml"]);
        assert_eq!(fs::read_dir(outer.path()).unwrap().count(), 3);
    }

    #[test]
    fn names_are_those_of_files_in_the_folder() {
        assert_eq!(new_name(" Quay 4, front ").as_deref(), Some("Quay 4, front.yaml"));
        assert_eq!(new_name("quay.yml").as_deref(), Some("quay.yml"));
        assert_eq!(new_name("a/b"), None);
        assert_eq!(new_name(".."), None);
    }
}
