//! Families of options in words: the best of each, and those like it.

use elbowroom_solver::answer::Family;

use super::figures::counted;

/// Options of one family that are told by their places; of more only the number is.
const TOLD: usize = 6;

/// How many more are like an option; the mark is filled in.
pub(crate) const LIKE_IT: &str = "and {count} like it";

/// `and 3 like it`.
pub(crate) fn and_like_it(count: usize) -> String {
    LIKE_IT.replace("{count}", &count.to_string())
}

/// `and 3 like it: options 4, 7 and 9`; nothing where there are none.
pub(crate) fn like_it(family: &Family<'_>) -> Option<String> {
    let places: Vec<String> = family.others.iter().take(TOLD).map(|option| option.rank.to_string()).collect();
    let beyond = family.others.len() - places.len();
    let told = match places.as_slice() {
        [] => return None,
        [one] => format!("option {one}"),
        all if beyond > 0 => format!("options {} and {beyond} more", all.join(", ")),
        [all @ .., last] => format!("options {} and {last}", all.join(", ")),
    };
    Some(format!("{}: {told}", and_like_it(family.others.len())))
}

/// Options that are not told; `told`: so many of `all` are. `one_by_one`: they were counted so, and not by families.
pub(crate) fn more(told: usize, all: usize, one_by_one: bool) -> String {
    let more = all - told;
    if one_by_one {
        return format!("and {more} more: --all without --top tells them, --json has them all");
    }
    let ways = counted(more, "other way", "other ways");
    format!("and {ways} to put the main seat: --top {all} tells the best of each, --all every option, --json has all")
}

#[cfg(test)]
mod tests {
    use super::more;

    #[test]
    fn what_is_not_told_says_how_it_would_be() {
        assert!(more(3, 8, false).starts_with("and 5 other ways to put the main seat: --top 8"));
        assert!(more(3, 8, true).starts_with("and 5 more: --all"));
    }
}
