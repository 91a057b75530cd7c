//! The known word that someone will have meant.

/// How alike two words must be, 0 to 1, to be taken for one another.
const ALIKE: f64 = 0.5;

/// The word among `known` that is nearest to `word`; `None` where none is near.
pub(crate) fn nearest<'a>(word: &str, known: impl Iterator<Item = &'a str>) -> Option<&'a str> {
    // A word of the vocabulary has 20 characters at most; what is far longer is near to none.
    let word = plain(&word.chars().take(64).collect::<String>());
    let alike = |one: &'a str| (strsim::normalized_damerau_levenshtein(&plain(one), &word), one);
    let best = known.map(alike).reduce(|best, one| if one.0 > best.0 { one } else { best })?;
    (best.0 >= ALIKE).then_some(best.1)
}

/// Whether two words are one but for case, underscores, hyphens and spaces.
pub(crate) fn same(one: &str, other: &str) -> bool {
    plain(one.trim()) == plain(other.trim())
}

fn plain(word: &str) -> String {
    word.chars().map(|c| if matches!(c, '_' | ' ') { '-' } else { c.to_ascii_lowercase() }).collect()
}
