//! A value as it is written into a file, on one line.

use serde_json::Value;

use crate::yaml::{Node, NodeValue};

/// Keys that stand first in a row, as files have them; the others follow.
const FIRST: [&str; 6] = ["kind", "name", "from", "to", "at", "width"];

/// The value: a number or word as it is, what would read as something else in quotes, rows between braces.
pub(super) fn written(value: &Value) -> String {
    match value {
        Value::Null => "null".to_owned(),
        Value::Bool(_) | Value::Number(_) => value.to_string(),
        Value::String(text) => text_of(text),
        Value::Array(rows) => format!("[{}]", rows.iter().map(written).collect::<Vec<_>>().join(", ")),
        Value::Object(keys) if keys.is_empty() => "{}".to_owned(),
        Value::Object(keys) => {
            let mut keys: Vec<(&String, &Value)> = keys.iter().collect();
            keys.sort_by_key(|(key, _)| FIRST.iter().position(|first| key == first).unwrap_or(FIRST.len()));
            let each: Vec<String> = keys.iter().map(|(key, value)| format!("{key}: {}", written(value))).collect();
            format!("{{ {} }}", each.join(", "))
        }
    }
}

fn text_of(text: &str) -> String {
    if stays_plain(text) { text.to_owned() } else { quoted(text) }
}

/// Whether a text reads as itself without quotes, between braces too.
fn stays_plain(text: &str) -> bool {
    let plain =
        |letter: char| letter.is_alphanumeric() || matches!(letter, ' ' | '.' | '-' | '_' | '/' | '(' | ')' | '+');
    let starts = text.chars().next().is_some_and(|letter| letter.is_alphanumeric() || letter == '.');
    starts
        && text.trim() == text
        && text.chars().all(plain)
        && matches!(Node::read(&format!("[{text}]")), Ok(Node { value: NodeValue::List(rows), .. })
            if matches!(rows.as_slice(), [Node { value: NodeValue::Text(read), .. }] if read == text))
}

/// In double quotes, what cannot stand there by its number.
fn quoted(text: &str) -> String {
    let mut written = String::from("\"");
    for letter in text.chars() {
        match letter {
            '"' => written.push_str("\\\""),
            '\\' => written.push_str("\\\\"),
            '\n' => written.push_str("\\n"),
            '\t' => written.push_str("\\t"),
            letter if letter.is_control() || matches!(letter, '\u{2028}' | '\u{2029}' | '\u{feff}') => {
                written.push_str(&format!("\\u{:04x}", u32::from(letter)));
            }
            letter => written.push(letter),
        }
    }
    written.push('"');
    written
}

#[cfg(test)]
mod tests {
    use serde_json::{Value, json};

    use super::written;
    use crate::yaml::Node;

    #[test]
    fn what_is_written_reads_as_it_was() {
        let texts = [
            "bay", "200..260", "3.52 m", "11'6\"", "true", "null", "12", "a: b", "# x", "- y", "é ½", "{", "a\nb", "~",
            "<b>&", "1e3", "", " x",
        ];
        for text in texts {
            let value = json!({ "name": text, "row": [text, 1, 2.5, true] });
            let read = Node::read(&format!("a: {}", written(&value))).unwrap();
            assert_eq!(crate::filed::values::of(&read), json!({ "a": value }), "{text}");
        }
        assert_eq!(written(&json!({ "kind": "sofa", "width": "200..240" })), "{ kind: sofa, width: 200..240 }");
        assert_eq!(written(&Value::from("3.52 m")), "3.52 m");
    }
}
