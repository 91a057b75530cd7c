//! One wall: how long, its corner, what is on it.

use maud::{Markup, html};
use serde_json::{Value, json};

use super::field::{Field, Takes, typed};
use super::item;
use super::lengths::Units;
use super::shown::shown;
use crate::words::page::measure as words;

/// A wall that is measured.
pub(super) struct Measured<'a> {
    /// Its place, from 0.
    pub(super) place: usize,
    /// Its row in the file.
    pub(super) wall: &'a Value,
    /// The names of all walls.
    pub(super) names: &'a [String],
    /// Walls are given by the coordinates of their ends.
    pub(super) by_places: bool,
    /// How lengths are read and told.
    pub(super) units: Units,
}

/// The name of a wall.
pub(super) fn name(place: usize, wall: &Value) -> String {
    wall["name"].as_str().map_or_else(|| words::wall(place), str::to_owned)
}

/// Its fields.
pub(super) fn put(measured: &Measured<'_>) -> Markup {
    let Measured { place, wall, names, by_places, units } = measured;
    let at = |key: &str| format!("walls.{place}.{key}");
    let count = names.len();
    html! {
        section.card.wall aria-labelledby="h-wall" data-wall-of=(place) {
            h2 id="h-wall" tabindex="-1" { (names[*place]) span.soft { " " (words::wall_of(*place, count)) } }
            @if !by_places {
                div.sketch-and-field {
                    (length_sketch())
                    (typed(&Field { at: &at("length"), label: words::LENGTH, takes: Takes::Length(*units), value: &wall["length"], hint: "" }))
                }
                (corner(&at("corner"), &wall["corner"]))
            }
            div.fields {
                (typed(&Field { at: &at("name"), label: words::NAME, takes: Takes::Text, value: &wall["name"], hint: "" }))
                (typed(&Field { at: &at("bearing"), label: words::BEARING, takes: Takes::Figure, value: &wall["bearing"], hint: "" }))
            }
            (holds(*place, wall, *units))
            div.turn {
                button type="button" data-wall=((place + count - 1) % count.max(1)) { (words::BEFORE) }
                button.main type="button" data-wall=((place + 1) % count.max(1)) { (words::NEXT) }
            }
            @if !by_places {
                div.turn {
                    button type="button" data-add-to="walls" data-before=(place + 1) data-row=(json!({ "length": Value::Null })) { (words::ADD_WALL) }
                    @if count > 3 { button type="button" data-remove=(format!("walls.{place}")) { (words::REMOVE_WALL) } }
                }
            }
        }
    }
}

/// What is on it, and what can be put there by a tap.
fn holds(place: usize, wall: &Value, units: Units) -> Markup {
    let items: Vec<&Value> = wall["holds"].as_array().into_iter().flatten().collect();
    html! {
        h3 { (words::HOLDS) }
        @for (which, row) in items.iter().enumerate() { (item::put(&format!("walls.{place}.holds.{which}"), row, units)) }
        p.soft { (if items.is_empty() { words::HOLDS_NOTHING } else { words::HOLDS_MORE }) }
        div.turn {
            @for (kind, _) in item::kinds() {
                button type="button" id=(format!("add-{kind}")) data-draft=(kind) aria-expanded="false" { (words::add(kind)) }
            }
        }
        @for (kind, row) in item::kinds() { (item::draft(&format!("walls.{place}.holds"), kind, &row, units)) }
    }
}

/// The corner by a tap, or its angle.
fn corner(at: &str, value: &Value) -> Markup {
    let angle = value.as_f64().unwrap_or(90.0);
    let is_other = !matches!(shown(value).as_str(), "" | "90" | "90.0" | "270" | "270.0");
    html! {
        fieldset.choices {
            legend { (words::CORNER) }
            @for (figure, label) in [(90.0, words::SQUARE), (270.0, words::OUTWARD)] {
                label {
                    input type="radio" name=(at) id=(format!("{at}-{figure}")) checked[angle == figure]
                        data-changes=(json!([{ "do": "set", "at": at, "to": figure as i64 }]));
                    span { (label) }
                }
            }
            label.other {
                span { (words::OTHER) }
                input type="text" id=(at) data-at=(at) data-as="figure" autocomplete="off" size="5"
                    value=(if is_other { shown(value) } else { String::new() });
            }
        }
    }
}

/// What is measured: a wall from corner to corner.
fn length_sketch() -> Markup {
    html! {
        svg.small viewBox="0 0 60 40" aria-hidden="true" {
            path.room d="M6 30 V10 H54 V30" {}
            path.figure d="M6 4 H54 M6 1 V7 M54 1 V7" {}
        }
    }
}
