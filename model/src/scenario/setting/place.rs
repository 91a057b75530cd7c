//! Where in the file a path of a setting leads: the item by its name in the room's own words, then its key.

use super::super::document::Document;
use super::super::resolve::names::Names;
use crate::nearest::{nearest, same};
use crate::rules::Clearance;
use crate::wishes::Criterion;
use crate::yaml::Trail;

/// Keys of the room itself that can be set; the unit is not among them, for every bare number hangs on it.
const ROOM: [&str; 5] = ["name", "measured_within", "ceiling", "latitude", "sizes"];
/// Keys of who lives in the room.
const HOUSEHOLD: [&str; 2] = ["people", "children"];
/// The key of the clearances that names the table they start from.
const PROFILE: &str = "profile";

/// Where a setting leads.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) enum Place {
    /// To a key, there already or not.
    Key(Trail),
    /// To a whole row: something on a wall, a fixed thing, a piece.
    Row(Trail),
    /// To one of several pieces alike: so many stay.
    OneOf {
        /// The row.
        row: Trail,
        /// How many stay.
        left: u32,
    },
}

/// Why a path leads nowhere.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) enum Unplaced {
    /// Nothing is named so.
    Unknown {
        /// What may have been meant.
        nearest: Option<String>,
    },
    /// The thing is there, and no key of it is named.
    NoKey {
        /// A key that it has.
        example: &'static str,
    },
    /// A wall cannot be left out.
    Wall,
}

/// Finds where `path` leads; `leaves_out`: a thing may be named without a key.
pub(super) fn find(document: &Document, names: &Names, path: &str, leaves_out: bool) -> Result<Place, Unplaced> {
    if let Some(at) = single_key(path) {
        return Ok(Place::Key(at));
    }
    if let Some(thing) = thing(document, names, path) {
        return match thing {
            Thing::Wall(_) if leaves_out => Err(Unplaced::Wall),
            Thing::Row { one_of: Some(count), at } if leaves_out => Ok(Place::OneOf { row: at, left: count - 1 }),
            Thing::Row { at, .. } if leaves_out => Ok(Place::Row(at)),
            Thing::Wall(_) => Err(Unplaced::NoKey { example: "length" }),
            Thing::Row { .. } => Err(Unplaced::NoKey { example: "width" }),
        };
    }
    let unknown = |word: &str, rest: &str| {
        let mut known: Vec<&str> = names.all().collect();
        for key in single_keys() {
            known.push(key);
        }
        Unplaced::Unknown { nearest: nearest(word, known.into_iter()).map(|near| format!("{near}{rest}")) }
    };
    let Some((item, key)) = path.rsplit_once('.') else { return Err(unknown(path, "")) };
    let (item, key) = (item.trim(), plain_key(key));
    match thing(document, names, item) {
        Some(Thing::Wall(at) | Thing::Row { at, .. }) => Ok(Place::Key(at.key(&key))),
        None => match plain_key(item).as_str() {
            section @ ("clearances" | "wishes" | "household" | "only" | "exclude" | "room") => {
                Ok(Place::Key(Trail::default().key(section).key(&key)))
            }
            _ => Err(unknown(item, &format!(".{key}"))),
        },
    }
}

/// A thing of the room by its name.
enum Thing {
    Wall(Trail),
    Row {
        at: Trail,
        /// Of one of several pieces alike: how many there are.
        one_of: Option<u32>,
    },
}

fn thing(document: &Document, names: &Names, name: &str) -> Option<Thing> {
    let root = Trail::default();
    let walls = root.key("walls");
    if let Some(wall) = names.walls.iter().position(|one| same(one, name)) {
        return Some(Thing::Wall(walls.index(wall)));
    }
    for (wall, items) in names.items.iter().enumerate() {
        if let Some(item) = items.iter().position(|one| same(one, name)) {
            return Some(Thing::Row { at: walls.index(wall).key("holds").index(item), one_of: None });
        }
    }
    if let Some(fixed) = names.fixed.iter().position(|one| same(one, name)) {
        return Some(Thing::Row { at: root.key("fixed").index(fixed), one_of: None });
    }
    let pieces = root.key("pieces");
    let count = |row: usize| u32::try_from(names.pieces.get(row).map_or(0, Vec::len)).ok().filter(|count| *count > 1);
    if let Some(row) = names.pieces.iter().position(|row| row.iter().any(|one| same(one, name))) {
        return Some(Thing::Row { at: pieces.index(row), one_of: count(row) });
    }
    // `armchairs` of one row: what their names share.
    let given = |row: usize| document.pieces.as_ref()?.get(row)?.as_ref()?.name.as_deref();
    let shares = |(row, all): (usize, &Vec<String>)| {
        let stem = all.first().and_then(|first| first.strip_suffix(" 1"));
        (all.len() > 1 && (given(row).is_some_and(|one| same(one, name)) || stem.is_some_and(|one| same(one, name))))
            .then_some(row)
    };
    let row = names.pieces.iter().enumerate().find_map(shares)?;
    Some(Thing::Row { at: pieces.index(row), one_of: None })
}

/// The place of a key that stands for itself: a clearance, the profile, a wish, a figure of the room.
fn single_key(path: &str) -> Option<Trail> {
    let (root, key) = (Trail::default(), plain_key(path));
    if ROOM.contains(&key.as_str()) {
        return Some(root.key(&key));
    }
    if HOUSEHOLD.contains(&key.as_str()) {
        return Some(root.key("household").key(&key));
    }
    if key == PROFILE || key.parse::<Clearance>().is_ok() {
        return Some(root.key("clearances").key(&key));
    }
    key.parse::<Criterion>().is_ok().then(|| root.key("wishes").key(&key))
}

fn single_keys() -> impl Iterator<Item = &'static str> {
    let wishes = Criterion::ALL.iter().map(|criterion| criterion.key());
    ROOM.into_iter()
        .chain(HOUSEHOLD)
        .chain([PROFILE])
        .chain(Clearance::ALL.iter().map(|clearance| clearance.key()))
        .chain(wishes)
}

/// A key as files write it: `off wall` is `off_wall`.
fn plain_key(key: &str) -> String {
    key.trim().chars().map(|c| if matches!(c, ' ' | '-') { '_' } else { c.to_ascii_lowercase() }).collect()
}
