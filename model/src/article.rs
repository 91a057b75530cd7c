//! Articles before names: `the sofa`, but `armchair 2`, `p0`, `Anna's chair`.

/// Words that say already which one is meant.
const DETERMINERS: [&str; 10] = ["the", "a", "an", "my", "your", "his", "her", "our", "their", "its"];

/// The name with its definite article, where it takes one: `the canal wall`, but `wall 2` and `wall c`.
///
/// ```
/// use elbowroom_model::article::the;
/// assert_eq!([the("sofa"), the("TV unit"), the("armchair 2"), the("p0"), the("her desk")],
///     ["the sofa", "the TV unit", "armchair 2", "p0", "her desk"]);
/// ```
#[must_use]
pub fn the(name: &str) -> String {
    if takes_article(name) { format!("the {name}") } else { name.to_owned() }
}

/// The name with its indefinite article, where it takes one: `a sofa`, `an armchair`, but `p0`.
///
/// ```
/// use elbowroom_model::article::a;
/// assert_eq!([a("sofa"), a("armchair"), a("p0")], ["a sofa", "an armchair", "p0"]);
/// ```
#[must_use]
pub fn a(name: &str) -> String {
    match takes_article(name) {
        true if name.starts_with(['a', 'e', 'i', 'o', 'A', 'E', 'I', 'O']) => format!("an {name}"),
        true => format!("a {name}"),
        false => name.to_owned(),
    }
}

/// What several things of one row are called together, by the name of the first: its words less the number, and an s.
///
/// ```
/// assert_eq!(elbowroom_model::article::several("armchair 1"), "armchairs");
/// ```
#[must_use]
pub fn several(name: &str) -> String {
    format!("{}s", name.trim_end_matches(|c: char| c.is_ascii_digit()).trim_end())
}

/// The text with a capital at its head, where it starts with a word: a name such as `p0` stays as its owner wrote it.
#[must_use]
pub fn capital(text: &str) -> String {
    let word = text.split(|letter: char| letter.is_whitespace() || letter == ',').next().unwrap_or_default();
    if word.chars().any(|letter| letter.is_ascii_digit()) {
        return text.to_owned();
    }
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}

/// A name takes an article where it is made of words, the first of them no name of its own nor one that says already
/// which is meant, the last no letter that counts.
fn takes_article(name: &str) -> bool {
    let first = name.split_whitespace().next().unwrap_or_default();
    let is_letter = |letter: char| letter.is_alphabetic() || matches!(letter, '-' | '\'' | '\u{2019}' | '.' | '&');
    let words = name.split_whitespace().all(|word| word.chars().all(is_letter));
    let is_short = first.len() > 1 && first.chars().all(char::is_uppercase);
    let own = first.starts_with(char::is_uppercase) && !is_short;
    let last = name.split_whitespace().skip(1).last();
    let is_counted = last.is_some_and(|last| last.len() == 1 && last.is_ascii());
    !name.is_empty() && words && !own && !is_counted && !DETERMINERS.contains(&first)
}

#[cfg(test)]
mod tests {
    use super::{a, capital, the};

    #[test]
    fn names_that_are_no_words_or_are_whole_by_themselves_take_none() {
        for name in ["p0", "wall 3", "wall c", "Anna's chair", "Heron 240", "the stove", "our bench", "B", "Ofen", ""] {
            assert_eq!((the(name), a(name)), (name.to_owned(), name.to_owned()), "{name}");
        }
        for name in ["sofa", "coffee table", "side-table", "children's corner", "poêle", "沙发"] {
            assert_eq!(the(name), format!("the {name}"));
        }
    }

    #[test]
    fn capitals_stand_at_the_head_of_words_alone() {
        let told = ["the sofa stands", "p0 stands", "écran", ""].map(capital);
        assert_eq!(told, ["The sofa stands", "p0 stands", "Écran", ""]);
    }
}
