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

/// What an address keeps of what is chosen: the option that is looked at, and the pins.
pub(super) fn chosen(on: On<'_>) -> String {
    let option = on.option.map(|key| format!("option={}", encoded(key)));
    let pins = on.pinned.iter().map(|key| format!("pin={}", encoded(key)));
    let all: Vec<String> = option.into_iter().chain(pins).collect();
    if all.is_empty() { String::new() } else { format!("?{}", all.join("&")) }
}
