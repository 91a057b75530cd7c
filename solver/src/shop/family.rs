//! Sets that are one choice to whoever buys: they differ in a lamp, a rug, a plant, a pouf, a bench or a small table alone. The
//! best of each such family is told.

use std::collections::BTreeSet;

use elbowroom_model::PieceKind;

use super::found::SetPiece;
use super::rows::Row;

/// The pieces of a set that make it another one.
pub(super) type Family = Vec<SetPiece>;

/// What tells a set apart from others: its seats, its tables, its storage and what carries the screen; all of it, where the room
/// has none of these.
pub(super) fn family(rows: &[Row], pieces: &[SetPiece]) -> Family {
    let weighs = |row: usize| rows.get(row).is_some_and(|row| tells_apart(row.kind));
    let all_small = !pieces.iter().any(|piece| weighs(piece.row));
    pieces.iter().filter(|piece| all_small || weighs(piece.row)).copied().collect()
}

/// The first of each family, in their order.
pub(super) fn first_of_each<T>(sets: &[T], family: impl Fn(&T) -> Family) -> Vec<&T> {
    let mut seen = BTreeSet::new();
    sets.iter().filter(|set| seen.insert(family(set))).collect()
}

/// The least key in each family, in order.
pub(super) fn least_of_each<K: Ord>(keyed: impl Iterator<Item = (Family, K)>) -> Vec<K> {
    let mut keyed: Vec<(Family, K)> = keyed.collect();
    keyed.sort_unstable();
    keyed.dedup_by(|later, first| later.0 == first.0);
    let mut keys: Vec<K> = keyed.into_iter().map(|(_, key)| key).collect();
    keys.sort_unstable();
    keys
}

const fn tells_apart(kind: PieceKind) -> bool {
    kind.is_seat() || kind.carries_screen() || kind.is_storage() || kind.is_sat_at() || kind.stands_before_seat()
}

#[cfg(test)]
mod tests {
    use super::{Family, first_of_each, least_of_each};
    use crate::shop::found::SetPiece;

    fn family(candidate: usize) -> Family {
        vec![SetPiece { row: 0, candidate: Some(candidate) }]
    }

    #[test]
    fn of_each_family_one_is_left() {
        assert_eq!(first_of_each(&[3, 1, 3, 2, 1], |candidate| family(*candidate)), [&3, &1, &2]);
        let keyed = [(3, 20), (1, 50), (3, 10), (2, 30), (1, 60)];
        assert_eq!(least_of_each(keyed.into_iter().map(|(of, key)| (family(of), key))), [10, 30, 50]);
    }
}
