//! What is wrong with a value, in words.

use crate::nearest::nearest;
use crate::quote::quoted;
use crate::tables::{Meaning, key_meant, meaning};
use crate::yaml::tree::NodeValue;

/// Words that stand for yes and for no in files of this notation.
const YES: [&str; 4] = ["yes", "true", "on", "y"];
const NO: [&str; 4] = ["no", "false", "off", "n"];

pub(super) fn did_you_mean(word: &str, known: &[String]) -> String {
    if let Some(answer) = answer_meant(word, known) {
        return format!("Write `{answer}`. {}", known_here(known));
    }
    let near = nearest(word, known.iter().map(String::as_str));
    near.map_or_else(|| known_here(known), |near| format!("Did you mean `{near}`?"))
}

/// Yes or no, where these are known and the word is another for one of them.
fn answer_meant(word: &str, known: &[String]) -> Option<&'static str> {
    let said = |words: &[&str]| words.iter().any(|one| one.eq_ignore_ascii_case(word));
    let answer = [("yes", said(&YES)), ("no", said(&NO))].into_iter().find(|(_, is_said)| *is_said)?.0;
    known.iter().any(|one| one == answer).then_some(answer)
}

/// The key that is meant. Another word for a key that the thing does not have is near to none that it has.
pub(super) fn key_remedy(word: &str, known: &[String]) -> String {
    match key_meant(word) {
        Some(key) if known.iter().any(|known| known == key) => format!("Did you mean `{key}`?"),
        Some(_) => known_here(known),
        None => did_you_mean(word, known),
    }
}

fn known_here(known: &[String]) -> String {
    format!("Known here: {}.", known.join(", "))
}

/// The kind that another word for one comes near, and what to give besides.
pub(super) fn kind_meant(word: &str, known: &[String]) -> String {
    match meaning(word, known.iter().map(String::as_str)) {
        Some(Meaning::Like { like, but }) => format!("Did you mean `{like}`? {}.", sentence(&but)),
        Some(Meaning::Same { means }) => format!("Did you mean `{means}`?"),
        None => did_you_mean(word, known),
    }
}

pub(super) fn type_words(name: &str) -> &'static str {
    match name {
        "object" => "a set of keys with values",
        "array" => "a list",
        "string" => "a text",
        "number" => "a number",
        "integer" => "a whole number, 0 or more",
        "boolean" => "true or false",
        _ => "a value",
    }
}

pub(super) fn found_words(value: &NodeValue) -> (&'static str, String) {
    match value {
        NodeValue::Null => ("empty", String::new()),
        NodeValue::Bool(one) => ("the truth value", one.to_string()),
        NodeValue::Integer(one) => ("the number", one.to_string()),
        NodeValue::Float(one) => ("the number", one.to_string()),
        NodeValue::Text(one) => ("the text", quoted(one)),
        NodeValue::List(_) => ("a list", String::new()),
        NodeValue::Map(_) => ("a set of keys", String::new()),
    }
}

pub(super) fn shown(text: &str) -> String {
    if text.is_empty() { String::new() } else { format!(" `{text}`") }
}

pub(super) fn sentence(text: &str) -> String {
    let mut chars = text.chars();
    chars.next().map_or_else(String::new, |first| first.to_uppercase().chain(chars).collect())
}

pub(super) fn lower_first(text: &str) -> String {
    let mut chars = text.chars();
    chars.next().map_or_else(String::new, |first| first.to_lowercase().chain(chars).collect())
}
