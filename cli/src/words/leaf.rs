//! Prose of sheets of words and tables on paper.

/// At the foot of a page.
pub(crate) fn foot(title: &str, page: usize, pages: usize) -> String {
    format!("{title}, page {page} of {pages}")
}
