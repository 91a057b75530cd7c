//! The known word that someone will have meant.

/// How alike two words must be, 0 to 1, to be taken for one another.
const ALIKE: f64 = 0.5;

/// Endings that say which way: `inwards` is `in`.
const WAYS: [&str; 2] = ["wards", "ward"];

/// The word among `known` that is nearest to `word`; `None` where none is near.
pub(crate) fn nearest<'a>(word: &str, known: impl Iterator<Item = &'a str> + Clone) -> Option<&'a str> {
    // A word of the vocabulary has 20 characters at most; what is far longer is near to none.
    let word = plain(&word.chars().take(64).collect::<String>());
    let root = WAYS.iter().find_map(|ending| word.strip_suffix(ending));
    if let Some(root) = root
        && let Some(same) = known.clone().find(|one| plain(one) == root)
    {
        return Some(same);
    }
    let alike = |one: &'a str| (strsim::normalized_damerau_levenshtein(&plain(one), &word), one);
    let best = known.map(alike).reduce(|best, one| if one.0 > best.0 { one } else { best })?;
    (best.0 >= ALIKE).then_some(best.1)
}

/// Whether a word is another but for one slip: a letter that is missing, too many or another, or two the wrong way round.
///
/// ```
/// use elbowroom_model::is_a_slip;
/// assert!(is_a_slip("form", "from") && is_a_slip("priorty", "priority") && !is_a_slip("notes", "must"));
/// ```
#[must_use]
pub fn is_a_slip(word: &str, meant: &str) -> bool {
    strsim::osa_distance(word, meant) <= 1
}

/// Whether two words are one but for case, underscores, hyphens and spaces.
pub(crate) fn same(one: &str, other: &str) -> bool {
    plain(one.trim()) == plain(other.trim())
}

fn plain(word: &str) -> String {
    word.chars().map(|c| if matches!(c, '_' | ' ') { '-' } else { c.to_ascii_lowercase() }).collect()
}

#[cfg(test)]
mod tests {
    use super::nearest;

    #[test]
    fn a_word_is_near_to_what_it_is_but_for_a_slip_or_an_ending() {
        let near = |word: &str| nearest(word, ["in", "out", "slides", "folds", "pocket"].into_iter());
        assert_eq!([near("inwards"), near("Outward"), near("sliding")], [Some("in"), Some("out"), Some("slides")]);
        assert_eq!([near("upwards"), near("turns")], [None, None]);
    }
}
