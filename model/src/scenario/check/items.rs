//! Items on a wall: past its ends, one on another, a window's heights.

use crate::opening::{FireOpening, ItemKind, Swings};
use crate::report::Report;
use crate::room::WallItem;
use crate::scenario::tolerance::TOUCHING;
use crate::yaml::Trail;

/// A wall as it was measured.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Measured<'a> {
    /// Its name.
    pub(crate) name: &'a str,
    /// mm.
    pub(crate) length: f64,
    /// What its length may be off by rounding, mm.
    pub(crate) rounding: f64,
}

/// Whether the item lies between the ends of its wall as measured; what is rounding is forgiven.
pub(crate) fn on_its_wall(item: &WallItem, wall: &Measured<'_>, at: &Trail, report: &mut Report<'_>) -> bool {
    let slack = wall.rounding + TOUCHING;
    let remedy = || format!("Check `at` and `width` of {}, and the length of {}.", item.name, wall.name);
    if item.at < -slack {
        let message = format!("{} starts {} before the left end of {}.", item.name, report.words(-item.at), wall.name);
        report.add(&at.key("at"), "item_past_wall_end", &item.name, message, remedy());
        return false;
    }
    let past = item.at + item.width - wall.length;
    if past > slack {
        let message = format!(
            "{} runs {} past the right end of {}: it ends at {}, the wall at {}.",
            item.name,
            report.words(past),
            wall.name,
            report.words(item.at + item.width),
            report.words(wall.length)
        );
        report.add(&at.key("at"), "item_past_wall_end", &item.name, message, remedy());
        return false;
    }
    true
}

/// How far a leaf opens, degrees.
const OPENS_TO: std::ops::RangeInclusive<f64> = 90.0..=180.0;

/// How far a leaf opens, as the file says it; `None` where that cannot be.
pub(crate) fn opens_to(
    name: &str,
    given: Option<f64>,
    swings: Swings,
    at: &Trail,
    report: &mut Report<'_>,
) -> Option<Option<f64>> {
    let Some(degrees) = given else { return Some(None) };
    let (code, message, remedy) = if !matches!(swings, Swings::In | Swings::Out) {
        let message = format!("{name} has an `opens_to` and no leaf that swings.");
        ("key_of_another_kind", message, "Leave `opens_to` out: it is for a leaf that swings.")
    } else if OPENS_TO.contains(&degrees) {
        return Some(given);
    } else {
        let message = format!("`opens_to` of {name} is {degrees}; it must lie between 90 and 180 degrees.");
        let remedy =
            "Give the angle between the closed leaf and where it rests: 90 square to the wall, 180 flat against it.";
        ("opens_to_out_of_range", message, remedy)
    };
    report.add(&at.key("opens_to"), code, name, message, remedy.to_owned());
    None
}

/// Tells every two items on one wall that overlap and may not.
pub(crate) fn tell_overlaps(items: &[(WallItem, Trail)], walls: &[String], report: &mut Report<'_>) {
    for (place, (one, _)) in items.iter().enumerate() {
        for (other, at) in items.iter().skip(place + 1).filter(|(other, _)| other.wall == one.wall) {
            let (by, may) = (overlap(one, other), may_overlap(&one.kind, &other.kind));
            if by > TOUCHING && !may {
                let wall = walls.get(one.wall.0).map_or("their wall", String::as_str);
                let message = format!("{} overlaps {} on {wall} by {}.", other.name, one.name, report.words(by));
                let remedy = format!("Check `at` and `width` of {} and {}.", one.name, other.name);
                report.add(&at.key("at"), "items_overlap", &other.name, message, remedy);
            }
        }
    }
}

/// How far the two reach into one another along the wall, mm; a socket counts by how deep it lies in the other.
fn overlap(one: &WallItem, other: &WallItem) -> f64 {
    let (ends, other_ends) = (one.at + one.width, other.at + other.width);
    let points = one.width == 0.0 || other.width == 0.0;
    let by = (ends - other.at).min(other_ends - one.at);
    if points { by } else { by.min(one.width).min(other.width) }
}

/// Radiators and sockets may lie under a window or overlap it, and sockets may be on a chimney breast.
fn may_overlap(one: &ItemKind, other: &ItemKind) -> bool {
    let low = |kind: &ItemKind| matches!(kind, ItemKind::Radiator(_) | ItemKind::Socket(_));
    let socket = |kind: &ItemKind| matches!(kind, ItemKind::Socket(_));
    let window = |kind: &ItemKind| matches!(kind, ItemKind::Window(_));
    let breast = |kind: &ItemKind| matches!(kind, ItemKind::Fireplace(_));
    let may = |one: &ItemKind, other: &ItemKind| (low(one) && window(other)) || (socket(one) && breast(other));
    may(one, other) || may(other, one)
}

/// Whether a fire's mouth lies within its breast; what is rounding is forgiven.
pub(crate) fn in_its_breast(name: &str, mouth: FireOpening, breast: f64, at: &Trail, report: &mut Report<'_>) -> bool {
    let FireOpening { at: from, width } = mouth;
    let (message, key, remedy) = if width > breast + TOUCHING {
        let by = report.words(width - breast);
        let (width, breast) = (report.words(width), report.words(breast));
        let message =
            format!("The opening of {name} is {width} wide and its breast {breast}: the opening is {by} too wide.");
        (
            message,
            "opening",
            format!("Give `width` of {name} as the whole chimney breast and `opening` as the fire's mouth in it."),
        )
    } else if from + width > breast + TOUCHING {
        let by = report.words(from + width - breast);
        let (end, breast) = (report.words(from + width), report.words(breast));
        let message = format!(
            "The opening of {name} ends {end} from the left end of its breast, which is {breast} wide: it runs {by} past it."
        );
        (
            message,
            "opening_at",
            format!(
                "Give `opening_at` of {name} from the breast's left end, or leave it out for an opening in the middle."
            ),
        )
    } else {
        return true;
    };
    report.add(&at.key(key), "opening_past_breast", name, message, remedy);
    false
}

/// Whether a window's sill lies below its head.
pub(crate) fn sill_below_head(name: &str, sill: f64, head: f64, at: &Trail, report: &mut Report<'_>) -> bool {
    if sill < head {
        return true;
    }
    let message = format!(
        "The sill of {name} is {} above the floor and its head {}: the sill is {} too high.",
        report.words(sill),
        report.words(head),
        report.words(sill - head)
    );
    let remedy = "Give `sill` (default 900 mm) and `head` (default 2100 mm or the ceiling) as measured from the floor.";
    report.add(&at.key("sill"), "sill_above_head", name, message, remedy.to_owned());
    false
}
