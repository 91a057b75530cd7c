//! Fields that stand for a value of the file: each knows its place there, and says at itself what is wrong with it.

use maud::{Markup, html};
use serde_json::Value;

use super::lengths::Units;
use super::shown::shown;

/// What a field takes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Takes {
    /// A length, with its unit or without; a range.
    Length(Units),
    /// A number.
    Figure,
    /// A text.
    Text,
}

/// A field.
pub(super) struct Field<'a> {
    /// The place in the file: `walls.0.length`.
    pub(super) at: &'a str,
    /// What stands over it.
    pub(super) label: &'a str,
    /// What it takes.
    pub(super) takes: Takes,
    /// What stands in the file.
    pub(super) value: &'a Value,
    /// What would stand there otherwise.
    pub(super) hint: &'a str,
}

/// A field to type in. A length that is cleared is not known yet: its line stays, with what is noted beside it.
pub(super) fn typed(field: &Field<'_>) -> Markup {
    let Field { at, label, takes, value, hint } = field;
    let (told, unit) = match takes {
        Takes::Length(units) => (units.shown(value), units.typed()),
        Takes::Figure | Takes::Text => (shown(value), None),
    };
    let hint_id = format!("hint-{at}");
    html! {
        div.field {
            label for=(at) { (label) }
            input type="text" id=(at) data-at=(at) value=(told) autocomplete="off"
                data-keeps[at.ends_with(".length")] data-as=(if *takes == Takes::Text { "text" } else { "figure" }) data-unit=[unit]
                aria-describedby=[(!hint.is_empty()).then_some(&hint_id)];
            @if !hint.is_empty() { p.hint id=(hint_id) { (hint) } }
        }
    }
}

/// A field for a text of several lines.
pub(super) fn long(at: &str, label: &str, value: &Value, hint: &str) -> Markup {
    let hint_id = format!("hint-{at}");
    html! {
        div.field.long {
            label for=(at) { (label) }
            textarea id=(at) data-at=(at) data-as="text" rows="3" aria-describedby=(hint_id) { (shown(value)) }
            p.hint id=(hint_id) { (hint) }
        }
    }
}

/// A field of a few choices; `usual`: the one that holds where the file says nothing.
pub(super) fn chosen(at: &str, label: &str, choices: &[(&str, &str)], value: &Value, usual: &str) -> Markup {
    let now = shown(value);
    let now = if now.is_empty() { usual.to_owned() } else { now };
    html! {
        div.field {
            label for=(at) { (label) }
            select id=(at) data-at=(at) data-as=(if is_flag(choices) { "flag" } else { "text" }) data-usual=(usual) {
                @for (key, told) in choices { option value=(key) selected[*key == now] { (told) } }
            }
        }
    }
}

fn is_flag(choices: &[(&str, &str)]) -> bool {
    choices.iter().all(|(key, _)| matches!(*key, "true" | "false"))
}
