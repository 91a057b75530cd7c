//! What stands in addresses: names of files and options, and what is chosen.

use super::on::On;

/// A name as an address has it.
pub(super) fn encoded(name: &str) -> String {
    let mut encoded = String::with_capacity(name.len());
    for byte in name.bytes() {
        if byte.is_ascii_alphanumeric() || matches!(byte, b'-' | b'_' | b'.') {
            encoded.push(char::from(byte));
        } else {
            encoded.push_str(&format!("%{byte:02X}"));
        }
    }
    encoded
}

/// What an address keeps of what is chosen: the option that is looked at, the pins, the filters.
pub(super) fn chosen(on: On<'_>) -> String {
    with_option(on, on.option)
}

/// The same, looking at this option.
pub(super) fn with_option(on: On<'_>, option: Option<&str>) -> String {
    let one = |name: &str, value: &str| format!("{name}={}", encoded(value));
    let option = option.map(|key| one("option", key));
    let pins = on.pinned.iter().map(|key| one("pin", key));
    let filters = on.filter.each().into_iter().filter_map(|(name, value)| Some(one(name, value.as_deref()?)));
    let all: Vec<String> = option.into_iter().chain(pins).chain(filters).collect();
    if all.is_empty() { String::new() } else { format!("?{}", all.join("&")) }
}
