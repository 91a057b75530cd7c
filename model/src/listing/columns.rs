//! The columns a list may have, and which of them a header means.

use crate::unit::Unit;

/// A column that every list may have.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Column {
    Kind,
    Name,
    Width,
    Return,
    SecondReturn,
    Depth,
    ReturnDepth,
    Height,
    Hand,
    Chaise,
    Screen,
    Seats,
    Price,
    Count,
    Score,
    Units,
    LegsOff,
    DiagonalDepth,
    SeatHeight,
    ArmHeight,
    BackThickness,
    LegHeight,
    Parts,
}

/// A column of one command's own, handed on as text.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Extra {
    /// What its header says.
    pub key: &'static str,
    /// What else its header may say.
    pub also: &'static [&'static str],
}

/// What a header means.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Meant {
    pub(super) which: Which,
    /// Unit of the bare numbers under it.
    pub(super) unit: Option<Unit>,
    /// Currency of the prices under it.
    pub(super) currency: Option<String>,
}

/// A column, of all lists or of one command.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Which {
    Usual(Column),
    Extra(usize),
}

/// Each usual column: its header, and what else the header may say.
const USUAL: [(Column, &str, &[&str]); 23] = [
    (Column::Kind, "kind", &["type"]),
    (Column::Name, "name", &["piece", "model", "article", "title"]),
    (Column::Width, "width", &["w"]),
    (Column::Return, "return", &["return length"]),
    (Column::SecondReturn, "second return", &[]),
    (Column::Depth, "depth", &["d"]),
    (Column::ReturnDepth, "return depth", &[]),
    (Column::Height, "height", &["h"]),
    (Column::Hand, "hand", &["side"]),
    (Column::Chaise, "chaise", &[]),
    (Column::Screen, "screen", &[]),
    (Column::Seats, "seats", &[]),
    (Column::Price, "price", &["cost"]),
    (Column::Count, "count", &["quantity", "qty", "in stock", "in hand", "pieces"]),
    (Column::Score, "score", &["rating"]),
    (Column::Units, "units", &["unit"]),
    (Column::LegsOff, "legs off", &["legs"]),
    (Column::DiagonalDepth, "diagonal depth", &[]),
    (Column::SeatHeight, "seat height", &[]),
    (Column::ArmHeight, "arm height", &[]),
    (Column::BackThickness, "back thickness", &[]),
    (Column::LegHeight, "leg height", &[]),
    (Column::Parts, "parts", &["comes in", "boxes"]),
];

/// Headers that lists often have and that say nothing here, however near they are to one that does.
const OF_NO_USE: [&str; 16] = [
    "weight",
    "colour",
    "color",
    "material",
    "fabric",
    "finish",
    "link",
    "url",
    "note",
    "notes",
    "remarks",
    "maker",
    "code",
    "id",
    "room",
    "seat depth",
];

/// How alike a header must be to a column to be taken for a slip of it, 0 to 1.
const ALIKE: f64 = 0.6;

/// What the header means; `None` where it is no column that is known.
pub(super) fn meant(header: &str, extra: &[Extra]) -> Option<Meant> {
    let header = plain(header);
    if let Some(which) = named(&header, extra) {
        return Some(Meant { which, unit: None, currency: None });
    }
    let (name, suffix) = parted(&header)?;
    let which = named(name, extra).or_else(|| named(name.strip_suffix(" in")?, extra))?;
    match which {
        Which::Usual(Column::Price) => Some(Meant { which, unit: None, currency: Some(suffix.to_uppercase()) }),
        Which::Usual(column) if column.is_length() => Some(Meant { which, unit: Some(unit(suffix)?), currency: None }),
        Which::Extra(_) => Some(Meant { which, unit: unit(suffix), currency: Some(suffix.to_uppercase()) }),
        Which::Usual(_) => None,
    }
}

/// Whether the header means a column.
pub(super) fn is_known(header: &str, extra: &[Extra]) -> bool {
    meant(header, extra).is_some()
}

/// The column that someone who wrote `header` will have meant, among those not `taken`.
pub(super) fn nearest(header: &str, extra: &[Extra], taken: &[Which]) -> Option<&'static str> {
    let header = plain(header);
    if OF_NO_USE.contains(&header.as_str()) {
        return None;
    }
    // The name of a column is 14 characters at most; what is far longer is near to none.
    let short: String = header.chars().take(40).collect();
    let word = parted(&short).map_or(short.as_str(), |(name, _)| name);
    let alike = |name: &str| strsim::normalized_damerau_levenshtein(name, word);
    let usual = USUAL.iter().map(|(column, name, _)| (Which::Usual(*column), *name));
    let own = extra.iter().enumerate().map(|(place, own)| (Which::Extra(place), own.key));
    let free = usual.chain(own).filter(|(which, _)| !taken.contains(which));
    let best = free.map(|(_, name)| (alike(name).max(strsim::normalized_damerau_levenshtein(name, &short)), name));
    let best = best.reduce(|best, one| if one.0 > best.0 { one } else { best })?;
    (best.0 >= ALIKE).then_some(best.1)
}

/// Every column's header, as a remedy lists them.
pub(super) fn all(extra: &[Extra]) -> String {
    let names: Vec<&str> = USUAL.iter().map(|(_, name, _)| *name).chain(extra.iter().map(|own| own.key)).collect();
    names.join(", ")
}

impl Column {
    /// Its header.
    pub(super) fn key(self) -> &'static str {
        USUAL.iter().find(|(column, _, _)| *column == self).map_or("", |(_, name, _)| name)
    }

    /// Its cells are lengths.
    pub(super) const fn is_length(self) -> bool {
        matches!(
            self,
            Self::Width
                | Self::Return
                | Self::SecondReturn
                | Self::Depth
                | Self::ReturnDepth
                | Self::Height
                | Self::Screen
                | Self::LegsOff
                | Self::DiagonalDepth
                | Self::SeatHeight
                | Self::ArmHeight
                | Self::BackThickness
                | Self::LegHeight
                | Self::Parts
        )
    }
}

fn named(name: &str, extra: &[Extra]) -> Option<Which> {
    let own = |one: &Extra| one.key == name || one.also.contains(&name);
    if let Some(place) = extra.iter().position(own) {
        return Some(Which::Extra(place));
    }
    let usual = USUAL.iter().find(|(_, key, also)| *key == name || also.contains(&name));
    usual.map(|(column, _, _)| Which::Usual(*column))
}

/// Lower case, words parted by one space.
fn plain(header: &str) -> String {
    let spaced: String = header.chars().map(|c| if matches!(c, '_' | '-') { ' ' } else { c }).collect();
    spaced.to_lowercase().split_whitespace().collect::<Vec<_>>().join(" ")
}

/// `width (cm)`, `width [cm]`, `width, cm`, `width cm`: the name and what stands after it.
fn parted(header: &str) -> Option<(&str, &str)> {
    let brackets = [('(', ')'), ('[', ']')];
    for (opens, closes) in brackets {
        if let Some((name, rest)) = header.split_once(opens)
            && let Some(suffix) = rest.strip_suffix(closes)
        {
            return Some((name.trim(), suffix.trim()));
        }
    }
    let (name, suffix) = header.rsplit_once([' ', ',', '/'])?;
    Some((name.trim_end_matches([',', '/']).trim(), suffix.trim()))
}

fn unit(word: &str) -> Option<Unit> {
    match word {
        "inch" | "inches" | "\"" => Some(Unit::Inch),
        "feet" | "foot" => Some(Unit::Foot),
        word => Unit::of(word),
    }
}
