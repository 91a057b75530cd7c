//! The name of every wall, item, fixed thing and piece: as given, or by its kind.

use std::collections::BTreeMap;

use crate::quote::{clean, is_control, quoted};
use crate::report::Report;
use crate::scenario::document::{Document, ItemRow};
use crate::yaml::Trail;

/// Names by place in the file.
#[derive(Debug, Default)]
pub(in crate::scenario) struct Names {
    pub(in crate::scenario) walls: Vec<String>,
    pub(in crate::scenario) items: Vec<Vec<String>>,
    pub(in crate::scenario) fixed: Vec<String>,
    /// One name for each piece of a row.
    pub(in crate::scenario) pieces: Vec<Vec<String>>,
}

impl Names {
    /// Every name.
    pub(in crate::scenario) fn all(&self) -> impl Iterator<Item = &str> {
        let held = self.items.iter().flatten().chain(&self.fixed).chain(self.pieces.iter().flatten());
        self.walls.iter().chain(held).map(String::as_str)
    }

    /// Every row that is named by its kind where the file does not name it, with the names of what it stands for.
    pub(in crate::scenario) fn rows(&self) -> Vec<(Trail, &[String])> {
        let (root, mut rows) = (Trail::default(), Vec::new());
        for (wall, items) in self.items.iter().enumerate() {
            let holds = root.key("walls").index(wall).key("holds");
            rows.extend(items.iter().enumerate().map(|(item, name)| (holds.index(item), std::slice::from_ref(name))));
        }
        let fixed = self.fixed.iter().enumerate();
        rows.extend(fixed.map(|(place, name)| (root.key("fixed").index(place), std::slice::from_ref(name))));
        let pieces = self.pieces.iter().enumerate();
        rows.extend(pieces.map(|(place, all)| (root.key("pieces").index(place), all.as_slice())));
        rows
    }

    /// Names as messages may hold them; a name that cleaning would change is refused.
    fn cleaned(mut self) -> Self {
        let all = self.walls.iter_mut().chain(self.items.iter_mut().flatten()).chain(&mut self.fixed);
        for name in all.chain(self.pieces.iter_mut().flatten()) {
            *name = clean(name);
        }
        self
    }
}

/// What is to be named.
struct Nameless<'a> {
    given: Option<&'a str>,
    kind: String,
    count: usize,
    at: Trail,
}

/// Names everything in the document; names that are not fit or stand twice are told.
pub(in crate::scenario) fn name_all(document: &Document, report: &mut Report<'_>) -> Names {
    let root = Trail::default();
    let mut given = Vec::new();
    for (place, wall) in rows(&document.walls) {
        let at = root.key("walls").index(place);
        let name = wall.and_then(|wall| wall.name.as_deref());
        given.push((name.map_or_else(|| format!("wall {}", place + 1), str::to_owned), name.is_some(), at));
    }
    let walls: Vec<String> = given.iter().map(|one| one.0.clone()).collect();
    let nameless = everything_else(document);
    let mut unnamed: BTreeMap<&str, usize> = BTreeMap::new();
    for one in nameless.iter().filter(|one| one.given.is_none()) {
        *unnamed.entry(&one.kind).or_default() += one.count;
    }
    let mut next: BTreeMap<&str, usize> = BTreeMap::new();
    let mut named = Vec::new();
    for one in &nameless {
        let several = unnamed.get(one.kind.as_str()).is_some_and(|count| *count > 1);
        let next = next.entry(&one.kind).or_default();
        let names: Vec<String> = (1..=one.count).map(|nth| one_name(one, nth, several.then_some(&mut *next))).collect();
        given.extend(names.iter().map(|name| (name.clone(), one.given.is_some(), one.at.clone())));
        named.push(names);
    }
    tell_unfit(&given, report);
    tell_twice(&given, report);
    sorted_out(document, walls, named).cleaned()
}

/// `next`: how many of several alike have a name already; `None` where there is but one.
fn one_name(one: &Nameless<'_>, nth: usize, next: Option<&mut usize>) -> String {
    match (one.given, next) {
        (Some(name), _) if one.count > 1 => format!("{name} {nth}"),
        (Some(name), _) => name.to_owned(),
        (None, Some(next)) => {
            *next += 1;
            format!("{} {next}", one.kind)
        }
        (None, None) => one.kind.clone(),
    }
}

fn rows<T>(list: &Option<Vec<Option<T>>>) -> impl Iterator<Item = (usize, Option<&T>)> {
    list.iter().flatten().enumerate().map(|(place, row)| (place, row.as_ref()))
}

/// Items, fixed things and pieces, in the file's order.
fn everything_else(document: &Document) -> Vec<Nameless<'_>> {
    let root = Trail::default();
    let mut all = Vec::new();
    for (wall, row) in rows(&document.walls) {
        let Some(row) = row else { continue };
        for (place, item) in rows(&row.holds) {
            let at = root.key("walls").index(wall).key("holds").index(place);
            let (given, kind) = item.map_or((None, "item"), |item| (item.name(), item.kind()));
            all.push(Nameless { given, kind: kind.to_owned(), count: 1, at });
        }
    }
    for (place, row) in rows(&document.fixed) {
        let kind = row.and_then(|row| row.kind.as_deref()).unwrap_or("fixed thing");
        let given = row.and_then(|row| row.name.as_deref());
        all.push(Nameless { given, kind: kind.trim().to_owned(), count: 1, at: root.key("fixed").index(place) });
    }
    for (place, row) in rows(&document.pieces) {
        let kind = row.and_then(|row| row.kind).map_or_else(|| "piece".to_owned(), |kind| kind.words());
        let given = row.and_then(|row| row.name.as_deref());
        let count = row.and_then(|row| row.count).map_or(1, |count| count as usize);
        all.push(Nameless { given, kind, count, at: root.key("pieces").index(place) });
    }
    all
}

fn sorted_out(document: &Document, walls: Vec<String>, named: Vec<Vec<String>>) -> Names {
    let mut named = named.into_iter();
    let mut one = || named.next().and_then(|names| names.into_iter().next()).unwrap_or_default();
    let items = rows(&document.walls)
        .map(|(_, wall)| wall.map_or_else(Vec::new, |wall| rows(&wall.holds).map(|_| one()).collect()))
        .collect();
    let fixed = rows(&document.fixed).map(|_| one()).collect();
    Names { walls, items, fixed, pieces: named.collect() }
}

fn tell_unfit(given: &[(String, bool, Trail)], report: &mut Report<'_>) {
    for (name, is_given, at) in given {
        let at = if *is_given { at.key("name") } else { at.clone() };
        if name.trim().is_empty() {
            let remedy = "Give it a name, or leave `name` out.".to_owned();
            report.add(&at, "empty_name", "", "A name is empty.".to_owned(), remedy);
        } else if name.chars().any(is_control) {
            let message = format!("The name `{}` holds control characters.", quoted(name));
            report.add(&at, "control_character", name, message, "Write it with plain characters alone.".to_owned());
        }
    }
}

fn tell_twice(given: &[(String, bool, Trail)], report: &mut Report<'_>) {
    let mut first: BTreeMap<&str, &(String, bool, Trail)> = BTreeMap::new();
    for one in given {
        let Some(earlier) = first.get(one.0.as_str()) else {
            first.insert(&one.0, one);
            continue;
        };
        // The one that was given is the one to change.
        let (change, other) = if one.1 { (one, *earlier) } else { (*earlier, one) };
        let name = quoted(&change.0);
        let message = if other.1 {
            format!("Two things are named `{name}`.")
        } else {
            format!("`{name}` is the name that another thing has by default.")
        };
        let remedy = format!("Call it something else than `{name}`.");
        report.add(&change.2.key("name"), "name_twice", &change.0, message, remedy);
    }
}

impl ItemRow {
    pub(super) fn name(&self) -> Option<&str> {
        match self {
            Self::Window(row) => row.name.as_deref(),
            Self::Door(row) => row.name.as_deref(),
            Self::Opening(row) => row.name.as_deref(),
            Self::Radiator(row) => row.name.as_deref(),
            Self::Fireplace(row) => row.name.as_deref(),
            Self::Socket(row) => row.name.as_deref(),
        }
    }

    pub(super) const fn kind(&self) -> &'static str {
        match self {
            Self::Window(_) => "window",
            Self::Door(_) => "door",
            Self::Opening(_) => "opening",
            Self::Radiator(_) => "radiator",
            Self::Fireplace(_) => "fireplace",
            Self::Socket(_) => "socket",
        }
    }
}
