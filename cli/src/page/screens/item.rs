//! What a wall holds: its kind, two figures along the wall, and what else counts of such a thing.

use maud::{Markup, html};
use serde_json::{Value, json};

use super::field::{Field, Takes, chosen, typed};
use super::lengths::Units;
use super::shown::shown;
use crate::words::page::measure as words;

/// What can be on a wall, each with what it is said to be until somebody says otherwise.
pub(super) fn kinds() -> [(&'static str, Value); 6] {
    [
        ("window", json!({ "kind": "window" })),
        ("door", json!({ "kind": "door", "leads_to": "entrance" })),
        ("opening", json!({ "kind": "opening" })),
        ("radiator", json!({ "kind": "radiator" })),
        ("fireplace", json!({ "kind": "fireplace" })),
        ("socket", json!({ "kind": "socket", "carries": "power" })),
    ]
}

/// The figures that a thing must have, beside where it begins.
const fn needs(kind: &str) -> Figures {
    match kind.as_bytes() {
        b"socket" => &[],
        b"radiator" | b"fireplace" => &[("width", words::WIDE), ("depth", words::DEEP)],
        _ => &[("width", words::WIDE)],
    }
}

/// A form for something that is new on a wall: it is put there once its figures are in.
pub(super) fn draft(list: &str, kind: &str, row: &Value, units: Units) -> Markup {
    let id = format!("new-{kind}");
    let field = |key: &str, label: &str| {
        let id = format!("{id}-{key}");
        html! {
            div.field {
                label for=(id) { (label) }
                input type="text" id=(id) name=(key) data-as="figure" data-unit=[units.typed()] required autocomplete="off";
            }
        }
    };
    html! {
        form.item id=(id) data-add=(list) data-row=(row) aria-label=(words::new(kind)) hidden {
            h4 { (words::new(kind)) }
            p.soft { (words::NOT_YET_THERE) }
            div.sketch-and-field {
                (along_sketch(kind == "socket"))
                div.fields {
                    (field("at", words::AT))
                    @for (key, label) in needs(kind) { (field(key, label)) }
                }
            }
            @if kind == "door" { (new_door()) }
            div.turn {
                button.main type="submit" { (words::PUT_THERE) }
                button type="button" data-leave=(kind) { (words::LEAVE_OUT) }
            }
        }
    }
}

/// How a new door hangs, by the drawn doors.
fn new_door() -> Markup {
    html! {
        fieldset.choices.doors {
            legend { (words::DOOR) }
            @for (side, way, told) in words::DOORS {
                label {
                    input type="radio" name="merge" value=(json!({ "hinge": side, "swings": way })) required;
                    (door(side == "left", way == "in"))
                    span { (told) }
                }
            }
            label {
                input type="radio" name="merge" value=(json!({ "swings": "slides" })) required;
                (sliding())
                span { (words::SLIDES) }
            }
        }
    }
}

/// A field of an item that takes a figure: its key and what stands over it.
type Figures = &'static [(&'static str, &'static str)];

const fn figures(kind: &str) -> Figures {
    match kind.as_bytes() {
        b"window" => &[("sill", words::SILL), ("head", words::HEAD)],
        b"radiator" => &[("depth", words::DEEP), ("height", words::HIGH), ("keep_clear", words::KEEP_CLEAR)],
        b"fireplace" => &[
            ("depth", words::DEEP),
            ("opening", words::FIRE_OPENING),
            ("opening_at", words::FIRE_OPENING_AT),
            ("keep_clear", words::KEEP_CLEAR),
        ],
        _ => &[],
    }
}

/// Its fields.
pub(super) fn put(place: &str, row: &Value, units: Units) -> Markup {
    let at = |key: &str| format!("{place}.{key}");
    let kind = shown(&row["kind"]);
    let name = row["name"].as_str().unwrap_or(&kind);
    let field =
        |key: &str, label: &str, takes: Takes| typed(&Field { at: &at(key), label, takes, value: &row[key], hint: "" });
    html! {
        fieldset.item id=(place) {
            legend { (name) @if name != kind { span.soft { " " (kind) } } }
            div.sketch-and-field {
                (along_sketch(kind == "socket"))
                div.fields {
                    (field("at", words::AT, Takes::Length(units)))
                    @if kind != "socket" { (field("width", words::WIDE, Takes::Length(units))) }
                }
            }
            @if kind == "door" { (doors(place, row)) }
            div.fields {
                @for (key, label) in figures(&kind) { (field(key, label, Takes::Length(units))) }
                @match kind.as_str() {
                    "window" => { (chosen(&at("view"), words::VIEW, &words::VIEWS, &row["view"], "plain")) }
                    "opening" => { (chosen(&at("stance"), words::STANCE, &words::STANCES, &row["stance"], "none")) }
                    "socket" => { (chosen(&at("carries"), words::CARRIES, &words::CARRIED, &row["carries"], "power")) }
                    _ => {}
                }
                @if matches!(kind.as_str(), "door" | "opening") { (field("leads_to", words::LEADS_TO, Takes::Text)) }
                (field("name", words::NAME, Takes::Text))
            }
            button type="button" data-remove=(place) { (words::remove(name)) }
        }
    }
}

/// The four doors, drawn as one sees them from above with the room below, and the one that slides.
fn doors(place: &str, row: &Value) -> Markup {
    let (hinge, swings) = (shown(&row["hinge"]), shown(&row["swings"]));
    let set = |key: &str, to: &str| json!({ "do": "set", "at": format!("{place}.{key}"), "to": to });
    let slides = if hinge.is_empty() {
        json!([set("swings", "slides")])
    } else {
        json!([set("swings", "slides"), { "do": "set", "at": format!("{place}.hinge"), "to": Value::Null }])
    };
    html! {
        fieldset.choices.doors {
            legend { (words::DOOR) }
            @for (side, way, told) in words::DOORS {
                label {
                    input type="radio" name=(format!("{place}-door")) id=(format!("{place}-{side}-{way}"))
                        checked[hinge == side && swings == way] data-changes=(json!([set("hinge", side), set("swings", way)]));
                    (door(side == "left", way == "in"))
                    span { (told) }
                }
            }
            label {
                input type="radio" name=(format!("{place}-door")) id=(format!("{place}-slides"))
                    checked[swings == "slides"] data-changes=(slides);
                (sliding())
                span { (words::SLIDES) }
            }
            @if !matches!(swings.as_str(), "" | "in" | "out" | "slides") { p.soft { (swings) } }
        }
    }
}

/// A door from above: the wall, the leaf, the quarter that it sweeps.
fn door(left: bool, inward: bool) -> Markup {
    let (hinge, free, down) = (if left { 16 } else { 44 }, if left { 44 } else { 16 }, if inward { 1 } else { -1 });
    let tip = 14 + 24 * down;
    let sweep = i32::from(left == inward);
    html! {
        svg.small viewBox="0 -12 60 52" aria-hidden="true" {
            path.room d="M2 14 H16 M44 14 H58" {}
            path.leaf d=(format!("M{hinge} 14 V{tip}")) {}
            path.swing d=(format!("M{free} 14 A28 24 0 0 {sweep} {hinge} {tip}")) {}
        }
    }
}

/// A door that slides, from above.
fn sliding() -> Markup {
    html! {
        svg.small viewBox="0 0 60 40" aria-hidden="true" {
            path.room d="M2 14 H16 M44 14 H58" {}
            path.leaf d="M16 18 H44" {}
        }
    }
}

/// What is measured: from the wall's left end to the thing, and the thing's width.
fn along_sketch(is_socket: bool) -> Markup {
    html! {
        svg.small viewBox="0 0 60 40" aria-hidden="true" {
            path.room d="M6 34 V22 H54 V34" {}
            path.figure d="M6 10 H28 M6 7 V13 M28 7 V13" {}
            @if is_socket { path.leaf d="M28 18 V26" {} } @else {
                path.leaf d="M28 22 H46" {}
                path.figure d="M28 4 H46 M28 1 V7 M46 1 V7" {}
            }
        }
    }
}
