//! Days, each by its number.

/// Days from the first to the last, both included, each by its number.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Days {
    /// The first.
    pub from: i32,
    /// The last.
    pub to: i32,
}

impl Days {
    /// Some day is in both.
    #[must_use]
    pub const fn overlap(self, other: Self) -> bool {
        self.from <= other.to && other.from <= self.to
    }

    /// `day` is one of them.
    #[must_use]
    pub const fn hold(self, day: i32) -> bool {
        self.from <= day && day <= self.to
    }
}

#[cfg(test)]
mod tests {
    use super::Days;

    #[test]
    fn days_overlap_where_one_day_is_in_both() {
        let days = |from, to| Days { from, to };
        assert!(days(1, 3).overlap(days(3, 5)) && days(3, 5).overlap(days(1, 3)) && days(1, 9).overlap(days(4, 5)));
        assert!(!days(1, 3).overlap(days(4, 5)));
    }
}
