//! What should stand in the room: a card for each row of the file, the clearances, who lives there; the answer beside it.

use elbowroom_model::filed::Filed;
use elbowroom_model::tables::Tables;
use elbowroom_model::{Clearance, PieceKind, Stands};
use maud::{Markup, html};
use serde_json::{Value, json};

use super::field::{Field, Takes, chosen, typed};
use super::lengths::Units;
use super::on::On;
use super::shown::shown;
use super::{options, shop};
use crate::words::page::furnish as words;

/// The screen's own part.
pub(super) fn part(on: On<'_>) -> Markup {
    let values = Filed::read(&on.seen.text).map(|filed| filed.values()).unwrap_or_default();
    let units = Units::of(&values, on.units);
    html! {
        div.beside {
            div id="fields" {
                section aria-labelledby="h-pieces" {
                    h2 id="h-pieces" { (words::PIECES) }
                    p.soft { (words::about(units.told)) }
                    @for (place, row) in values["pieces"].as_array().into_iter().flatten().enumerate() {
                        (piece(units, place, row))
                    }
                    (add())
                }
                (clearances(on, &values, units))
                (household(&values))
                (shop::put())
            }
            div.answer-beside data-live="answers" { (options::first_answer(on)) }
        }
    }
}

fn kind_of(row: &Value) -> Option<PieceKind> {
    row["kind"].as_str()?.parse().ok()
}

fn piece(units: Units, place: usize, row: &Value) -> Markup {
    let at = |key: &str| format!("pieces.{place}.{key}");
    let kind = kind_of(row);
    let sizes = kind.and_then(|kind| Some(Tables::built_in().ok()?.sizes(kind)));
    let hint = |range: Option<&elbowroom_model::tables::TableRange>| {
        range.map(|range| words::usual(units.told, range.range())).unwrap_or_default()
    };
    let title = kind.map_or_else(|| shown(&row["kind"]), PieceKind::words);
    let name = row["name"].as_str().unwrap_or(&title);
    let field = |key: &str, label: &str, takes: Takes, hint: &str| {
        typed(&Field { at: &at(key), label, takes, value: &row[key], hint })
    };
    let (width, depth) =
        sizes.as_ref().map(|sizes| (hint(Some(&sizes.width)), hint(Some(&sizes.depth)))).unwrap_or_default();
    html! {
        fieldset.card id=(format!("pieces.{place}")) {
            legend { (name) @if name != title { span.soft { " " (title) } } }
            div.fields {
                (field("width", words::WIDTH, Takes::Length(units), &width))
                @if kind.is_some_and(PieceKind::has_return) {
                    (field("return", words::RETURN, Takes::Length(units), &hint(sizes.as_ref().and_then(|sizes| sizes.return_length.as_ref()))))
                }
                (field("depth", words::DEPTH, Takes::Length(units), &depth))
                @if kind.is_some_and(PieceKind::has_return) {
                    (chosen(&at("hand"), words::HAND, &words::HANDS, &row["hand"], "either"))
                }
                @if kind.is_some_and(PieceKind::carries_screen) { (field("screen", words::SCREEN, Takes::Length(units), "")) }
                @if !row["seats"].is_null() { (field("seats", words::PLACES, Takes::Figure, "")) }
                (field("count", words::COUNT, Takes::Figure, ""))
                (chosen(&at("needed"), words::NEEDED, &[("true", words::IS_NEEDED), ("false", words::IF_IT_FITS)], &row["needed"], "true"))
                (field("name", words::NAME, Takes::Text, ""))
                @if !row["place"].is_null() { (chosen(&at("hold"), words::HELD, &words::HOLDS, &row["hold"], "false")) }
            }
            (more(units, place, row, kind))
            button type="button" data-remove=(format!("pieces.{place}")) aria-label=(words::remove(name)) { (words::REMOVE) }
        }
    }
}

/// What is seldom said of a piece.
fn more(units: Units, place: usize, row: &Value, kind: Option<PieceKind>) -> Markup {
    let at = |key: &str| format!("pieces.{place}.{key}");
    let length = |key: &str, label: &str| {
        typed(&Field { at: &at(key), label, takes: Takes::Length(units), value: &row[key], hint: "" })
    };
    let yes_or_no = [("false", words::NO), ("true", words::YES)];
    html! {
        details id=(format!("more-{place}")) {
            summary { (words::MORE) }
            div.fields {
                @if kind.is_some_and(PieceKind::has_return) {
                    (length("second_return", words::SECOND_RETURN))
                    (length("return_depth", words::RETURN_DEPTH))
                    (chosen(&at("chaise"), words::CHAISE, &yes_or_no, &row["chaise"], "false"))
                }
                @if row["count"] == 2 && kind.is_some_and(PieceKind::is_seat) {
                    (chosen(&at("pair"), words::PAIR, &words::PAIRS, &row["pair"], "either"))
                }
                (aim(units, &at("aim"), row, kind))
                @if kind.is_some_and(|kind| matches!(kind.traits().stands, Stands::BesideSeats)) {
                    (typed(&Field { at: &at("at"), label: words::SERVES, takes: Takes::Text, value: &row["at"], hint: words::ANY_SEAT }))
                }
            }
        }
    }
}

/// What the plan aims at: a word for all sides, or a figure for each.
fn aim(units: Units, at: &str, row: &Value, kind: Option<PieceKind>) -> Markup {
    let aim = &row["aim"];
    let figure = |key: &str, label: &str| {
        let at = format!("{at}.{key}");
        typed(&Field { at: &at, label, takes: Takes::Length(units), value: &aim[key], hint: "" })
    };
    html! {
        @if !aim.is_object() { (chosen(at, words::AIM, &words::AIMS, aim, "")) }
        @if !aim.is_string() {
            (figure("width", words::AIM_WIDTH))
            @if kind.is_some_and(PieceKind::has_return) { (figure("return", words::AIM_RETURN)) }
            (figure("depth", words::AIM_DEPTH))
        }
    }
}

/// Another piece: its kind is chosen, and its usual sizes hold until a figure is typed.
fn add() -> Markup {
    html! {
        form.add data-add="pieces" aria-label=(words::ADD) {
            label for="add-kind" { (words::ADD) }
            select id="add-kind" name="row" {
                @for kind in PieceKind::ALL {
                    option value=(json!({ "kind": kind.key() })) { (kind.words()) }
                }
            }
            button type="submit" { (words::ADD_THIS) }
        }
    }
}

fn clearances(on: On<'_>, values: &Value, units: Units) -> Markup {
    let rules = on.seen.read.as_ref().ok().map(|brief| &brief.rules);
    let now = |clearance: Clearance| {
        let figure = rules.and_then(|rules| rules.figure(clearance).figure);
        figure.map(|figure| units.told.words(figure, elbowroom_model::Rounding::Nearest)).unwrap_or_default()
    };
    let set = &values["clearances"];
    html! {
        section aria-labelledby="h-clear" {
            h2 id="h-clear" { (words::CLEARANCES) }
            (chosen("clearances.profile", words::PROFILE, &words::PROFILES, &set["profile"], "easy"))
            details id="each-clearance" {
                summary { (words::EACH) }
                div.fields {
                    @for clearance in Clearance::ALL {
                        (typed(&Field {
                            at: &format!("clearances.{}", clearance.key()),
                            label: &words::clearance(clearance.key()),
                            takes: Takes::Length(units),
                            value: &set[clearance.key()],
                            hint: &now(*clearance),
                        }))
                    }
                }
            }
        }
    }
}

fn household(values: &Value) -> Markup {
    let household = &values["household"];
    html! {
        section aria-labelledby="h-house" {
            h2 id="h-house" { (words::HOUSEHOLD) }
            div.fields {
                (typed(&Field { at: "household.people", label: words::PEOPLE, takes: Takes::Figure, value: &household["people"], hint: "" }))
                (chosen("household.children", words::CHILDREN, &[("false", words::NO), ("true", words::YES)], &household["children"], "false"))
            }
        }
    }
}
