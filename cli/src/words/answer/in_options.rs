//! In which options something is so.

use crate::words::list::listed;

/// Options that are named by their places.
const NAMED: usize = 6;

/// Of how many options a page tells.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Told {
    /// So many are shown.
    pub shown: usize,
    /// Of so many.
    pub of: usize,
}

impl Told {
    /// `in option 1`, `in options 1, 3 and 4`, `in every option`; nothing where one option is shown alone, for there it is so.
    pub(super) fn place(self, ranks: &[usize]) -> Option<String> {
        let more = ranks.len().saturating_sub(NAMED);
        let mut named: Vec<String> = ranks.iter().take(NAMED).map(usize::to_string).collect();
        if more > 0 {
            named.push(format!("{more} more"));
        }
        match ranks.len() {
            1 if self.shown == 1 => None,
            all if all == self.of => Some("in every option".to_owned()),
            1 => Some(format!("in option {}", listed(&named))),
            _ => Some(format!("in options {}", listed(&named))),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::Told;

    #[test]
    fn a_sheet_of_one_option_names_none_and_a_page_of_all_says_every() {
        let place = |shown, ranks: &[usize]| Told { shown, of: 9 }.place(ranks);
        assert_eq!(place(1, &[4]), None);
        assert_eq!(place(2, &[4]).as_deref(), Some("in option 4"));
        assert_eq!(place(2, &[4, 5]).as_deref(), Some("in options 4 and 5"));
        let all: Vec<usize> = (1..=9).collect();
        assert_eq!(place(9, &all).as_deref(), Some("in every option"));
        assert_eq!(place(9, &all[..8]).as_deref(), Some("in options 1, 2, 3, 4, 5, 6 and 2 more"));
    }
}
