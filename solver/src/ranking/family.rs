//! Families: options that put the main seat alike differ little, and a dozen of them say less than the best of each.

use crate::Limits;
use crate::arrangement::Choices;

/// For each option, best first, the place of the first of its family.
pub(crate) fn families(best_first: &[&Choices]) -> Vec<usize> {
    let mut firsts: Vec<usize> = Vec::new();
    let mut family = |(place, choices): (usize, &&Choices)| {
        let known = firsts.iter().copied().find(|first| best_first[*first].seat_as(choices));
        known.unwrap_or_else(|| {
            firsts.push(place);
            place
        })
    };
    best_first.iter().enumerate().map(&mut family).collect()
}

/// Whether the option at `place` is one of those that are shown: the best of so many families, or one of so many options.
pub(crate) fn is_shown(families: &[usize], place: usize, limits: &Limits) -> bool {
    if limits.one_by_one {
        return place < limits.shown;
    }
    let is_first = |place: &usize| families.get(*place) == Some(place);
    is_first(&place) && (0..place).filter(is_first).count() < limits.shown
}

#[cfg(test)]
mod tests {
    use super::is_shown;
    use crate::Limits;

    #[test]
    fn the_best_of_each_family_is_shown() {
        let shown =
            |limits: Limits| (0..6).filter(|place| is_shown(&[0, 1, 0, 3, 1, 5], *place, &limits)).collect::<Vec<_>>();
        assert_eq!(shown(Limits { shown: 3, ..Limits::default() }), [0, 1, 3]);
        assert_eq!(shown(Limits { shown: 3, one_by_one: true, ..Limits::default() }), [0, 1, 2]);
        assert!(shown(Limits { shown: 0, ..Limits::default() }).is_empty());
    }
}
