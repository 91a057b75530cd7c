//! The index of many rooms: what is looked for, how it is ordered, what each room tells.

use super::firm::{OF_SHIFTS, share};

/// Over the words that are looked for.
pub(crate) const FIND: &str = "Find";
/// Over which rooms are shown.
pub(crate) const SHOW: &str = "Show";
/// Which may be.
pub(crate) const FATES: [(&str, &str); 3] =
    [("", "all rooms"), ("fits", "where something fits"), ("without", "where nothing does, or is at fault")];
/// Over what rooms are ordered by.
pub(crate) const ORDER: &str = "Order";
/// What they may be ordered by.
pub(crate) const ORDERS: [(&str, &str); 5] = [
    ("", "as given"),
    ("name", "by name"),
    ("area", "largest floor first"),
    ("score", "highest score first"),
    ("fits", "most options first"),
];
/// How many rooms of a page are shown; the script puts the figures in.
pub(crate) const SHOWN_OF: &str = "{seen} of {all} rooms";
/// To the plan of a room.
pub(crate) const PLAN: &str = "Plan";
/// To its report.
pub(crate) const REPORT: &str = "Report";

/// Of which room a link leads to a file.
pub(crate) fn of(room: &str) -> String {
    format!("of {room}")
}

/// How large its floor is, m2.
pub(crate) fn floor(area: f64) -> String {
    format!("{area:.1} m\u{b2}")
}
/// What the links to other pages are.
pub(crate) const PAGES: &str = "Pages";
/// At the foot of the index.
pub(crate) const INDEX_CAUTION: &str = "Sizes are as planned and drawn, then the most that all pieces may have together. Set a plan out full size on the floor before \
    anything is bought. Left and right are as one sits on the main seat. Keep exits and escape windows free, and three feet between heaters or fires and anything that burns; fix \
    tall storage and televisions to the wall. Local codes come before any of this.";

/// Over a page of the index.
pub(crate) fn index_title(first: usize, last: usize, all: usize) -> String {
    match all {
        0 => "No rooms".to_owned(),
        all if last - first + 1 == all => "What fits in the rooms".to_owned(),
        all => format!("Rooms {first} to {last} of {all}"),
    }
}

/// How many arrangements fit.
pub(crate) fn fit_of(fit: usize, refused: usize) -> String {
    match refused {
        0 => format!("all {fit} arrangements fit"),
        _ => format!("{fit} of {} arrangements fit", fit + refused),
    }
}

/// How an option stands.
pub(crate) fn scored(score: f64, share_of_first: f64, set_aside: Option<&str>) -> String {
    match set_aside {
        Some(why) => format!("score {score:.0}. {why}"),
        None => format!("score {score:.0}, stays first in {} {OF_SHIFTS}", share(share_of_first)),
    }
}

/// A size as planned and at most, with their unit.
pub(crate) fn sizes(planned: &str, most: &str, unit: &str) -> String {
    if planned == most { format!("{planned} {unit}") } else { format!("{planned}, at most {most} {unit}") }
}

/// What a picture shows.
pub(crate) fn plan_of(title: &str) -> String {
    format!("Plan: {title}")
}
