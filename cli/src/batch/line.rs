//! The room on a line of JSON: a scenario by itself, or one with the place that it came from beside it.

use std::fmt;

use elbowroom_model::Fault;
use serde::de::{MapAccess, Visitor};
use serde::{Deserialize, Deserializer};
use serde_json::value::RawValue;

use super::given::{Given, fault};
use crate::process::source::Unreadable;
use crate::words::batch as words;

/// The keys of a line around a scenario. No scenario has them, so either tells such a line.
const SOURCE: &str = "source";
const SCENARIO: &str = "scenario";

/// The room on a line: a scenario as JSON, or `{"source": ..., "scenario": ...}` around one or around the text of a
/// scenario file. An empty line holds none.
pub(super) fn of_line(line: Result<String, Unreadable>) -> Option<Given> {
    let line = match line {
        Ok(line) if line.trim().is_empty() => return None,
        Ok(line) => line,
        Err(why) => return Some(Given { source: None, text: Err(fault(&why)) }),
    };
    let keys = serde_json::from_str(&line).map_or_else(|_| Vec::new(), |Keys(keys)| keys);
    Some(if keys.iter().any(|(key, _)| [SOURCE, SCENARIO].contains(&key.as_str())) {
        Given { source: source_of(&keys).unwrap_or_default(), text: scenario_of(&keys) }
    } else {
        Given { source: None, text: of_json(&line) }
    })
}

/// Every key of an object with its value, as they stand.
struct Keys<'a>(Vec<(String, &'a RawValue)>);

impl<'de: 'a, 'a> Deserialize<'de> for Keys<'a> {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_map(KeysOfObject)
    }
}

struct KeysOfObject;

impl<'de> Visitor<'de> for KeysOfObject {
    type Value = Keys<'de>;

    fn expecting(&self, formatter: &mut fmt::Formatter<'_>) -> fmt::Result {
        formatter.write_str("an object")
    }

    fn visit_map<A: MapAccess<'de>>(self, mut object: A) -> Result<Self::Value, A::Error> {
        let mut keys = Vec::new();
        while let Some(entry) = object.next_entry()? {
            keys.push(entry);
        }
        Ok(Keys(keys))
    }
}

/// Where a line says that its scenario came from; `None` where that is no text.
fn source_of(keys: &[(String, &RawValue)]) -> Option<Option<String>> {
    let source = keys.iter().find(|(key, _)| key == SOURCE).map(|(_, value)| value.get());
    source.map_or(Some(None), |source| serde_json::from_str(source).ok())
}

/// The text of the scenario in a line that has one of the two keys, or what is wrong with its keys.
fn scenario_of(keys: &[(String, &RawValue)]) -> Result<String, Box<Fault>> {
    let others: Vec<&str> =
        keys.iter().map(|(key, _)| key.as_str()).filter(|key| ![SOURCE, SCENARIO].contains(key)).collect();
    if !others.is_empty() {
        return Err(words::no_keys_of_a_line(&others));
    }
    if let Some(twice) = [SOURCE, SCENARIO].into_iter().find(|key| keys.iter().filter(|(it, _)| it == key).count() > 1)
    {
        return Err(words::key_of_a_line_twice(twice));
    }
    if source_of(keys).is_none() {
        return Err(words::source_is_no_text());
    }
    let Some((_, scenario)) = keys.iter().find(|(key, _)| key == SCENARIO) else { return Err(words::no_scenario()) };
    serde_json::from_str::<String>(scenario.get()).or_else(|_| of_json(scenario.get()))
}

/// A scenario written as JSON: what the scenario reader takes, as long as it is JSON at all.
fn of_json(text: &str) -> Result<String, Box<Fault>> {
    match serde_json::from_str::<serde::de::IgnoredAny>(text) {
        Ok(_) => Ok(joined(text)),
        Err(error) => Err(words::not_json(&error.to_string())),
    }
}

/// JSON with each sign that is escaped in two halves (`\ud83d\udecb`) written as itself: YAML knows no such halves.
fn joined(json: &str) -> String {
    let half =
        |at: usize| json.get(at..at + 6)?.strip_prefix("\\u").and_then(|digits| u16::from_str_radix(digits, 16).ok());
    let (mut text, mut rest) = (String::with_capacity(json.len()), 0);
    while let Some(found) = json[rest..].find('\\') {
        let at = rest + found;
        text.push_str(&json[rest..at]);
        let whole = half(at).zip(half(at + 6)).and_then(|(high, low)| char::decode_utf16([high, low]).next()?.ok());
        // Of other escapes the backslash and the sign after it stay together: the sign may be a backslash too.
        let taken = match whole.filter(|whole| whole.len_utf16() == 2) {
            Some(whole) => {
                text.push(whole);
                12
            }
            None => {
                let escape = json[at..].chars().take(2).map(char::len_utf8).sum();
                text.push_str(&json[at..at + escape]);
                escape
            }
        };
        rest = at + taken;
    }
    text.push_str(&json[rest..]);
    text
}

#[cfg(test)]
mod tests {
    use super::super::given::Given;
    use super::{joined, of_line};

    fn line(text: &str) -> Given {
        of_line(Ok(text.to_owned())).unwrap()
    }

    #[test]
    fn a_line_holds_a_scenario_bare_or_wrapped() {
        assert_eq!(line(r#"{"units": "cm"}"#), Given { source: None, text: Ok(r#"{"units": "cm"}"#.to_owned()) });
        let wrapped = line(r#"{"source": "a/../b", "scenario": {"units":"cm"}}"#);
        assert_eq!(wrapped, Given { source: Some("a/../b".to_owned()), text: Ok(r#"{"units":"cm"}"#.to_owned()) });
        let text = line(r#"{"scenario": "units: cm\nwalls:\n"}"#);
        assert_eq!(text, Given { source: None, text: Ok("units: cm\nwalls:\n".to_owned()) });
        assert_eq!(of_line(Ok("  ".to_owned())), None);
        assert_eq!(line(r#"{"scenario": {}}"#), Given { source: None, text: Ok("{}".to_owned()) });
    }

    #[test]
    fn what_is_wrong_with_the_keys_of_a_line_is_named_and_its_source_is_kept() {
        let cases = [
            (r#"{"source": "a", "scenario": {}, "note": 1, "n\u0065xt": 2}"#, "unknown_key", "`note`, `next`"),
            (r#"{"source": "a", "scenaro": {}}"#, "unknown_key", "`scenaro`"),
            (r#"{"source": "a"}"#, "missing_key", "`scenario`"),
            (r#"{"source": "a", "scenario": {}, "scenario": {}}"#, "key_twice", "`scenario`"),
            (r#"{"source": "a", "source": "b", "scenario": {}}"#, "key_twice", "`source`"),
        ];
        for (text, code, said) in cases {
            let given = line(text);
            let fault = given.text.unwrap_err();
            assert_eq!((given.source.as_deref(), fault.code), (Some("a"), code), "{text}");
            assert!(fault.message.contains(said), "{text}: {}", fault.message);
        }
        let given = line(r#"{"source": 7, "scenario": {}}"#);
        assert_eq!((given.source, given.text.unwrap_err().code), (None, "wrong_type"));
    }

    #[test]
    fn signs_in_two_halves_are_joined() {
        assert_eq!(
            joined(r#"{"a": "\ud83d\udecb \u00e9 \\ud83d\udecb \n"}"#),
            r#"{"a": "\u{1f6cb} \u00e9 \\ud83d\udecb \n"}"#.replace("\\u{1f6cb}", "\u{1f6cb}")
        );
        assert_eq!(joined(r#"["\ud83d", "\"#), r#"["\ud83d", "\"#);
    }

    #[test]
    fn what_is_no_json_is_a_fault_of_its_room() {
        for bad in ["units: cm", "{\"units\": \"cm\"", "[", "\u{0}"] {
            assert_eq!(line(bad).text.unwrap_err().code, "not_json", "{bad}");
        }
    }
}
