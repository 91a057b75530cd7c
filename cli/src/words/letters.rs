//! What is said of letters that no font at hand has.

use std::collections::BTreeSet;

/// So many are named at most.
const NAMED: usize = 12;

/// Letters that sheets leave as boxes, and what helps.
pub(crate) fn lacking(letters: &BTreeSet<char>) -> String {
    let named: Vec<String> = letters.iter().take(NAMED).map(char::to_string).collect();
    let more = letters.len() - named.len();
    let more = if more == 0 { String::new() } else { format!(" and {more} more") };
    format!(
        "Our font has no {}{more}: boxes stand for them on the sheet. `--font FILE` takes them from a font that has them.\n",
        named.join(" ")
    )
}

#[cfg(test)]
mod tests {
    use super::lacking;

    #[test]
    fn a_dozen_letters_are_named_and_the_rest_counted() {
        let told = lacking(&('\u{4e00}'..'\u{4e14}').collect());
        assert!(told.starts_with("Our font has no \u{4e00} \u{4e01}") && told.contains(" and 8 more: boxes"), "{told}");
        assert!(lacking(&['\u{5ba2}'].into()).starts_with("Our font has no \u{5ba2}: boxes"));
    }
}
