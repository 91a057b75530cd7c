//! Pieces as a page tells them: those that matter most first, a pair that is alike in one row.

use elbowroom_model::{Brief, PieceId};
use elbowroom_solver::answer::{OptionPiece, RankedOption};

/// Pieces of one size, told together.
#[derive(Debug, Clone)]
pub(crate) struct Group<'a> {
    /// Their names in one: `armchair 1, 2`.
    pub label: String,
    /// How many they are.
    pub count: usize,
    /// The first of them.
    pub piece: OptionPiece<'a>,
}

/// The pieces of `option`, heaviest in the size value first, else in the file's order.
pub(crate) fn groups<'a>(brief: &'a Brief, option: &'a RankedOption) -> Vec<Group<'a>> {
    let mut kept: Vec<(PieceId, Group<'a>)> = Vec::new();
    for piece in option.pieces(brief) {
        let row = piece.piece.alike.unwrap_or(piece.placed.piece);
        let sizes = (piece.sizes.planned(), piece.sizes.together());
        match kept
            .iter_mut()
            .find(|(kept, group)| *kept == row && (group.piece.sizes.planned(), group.piece.sizes.together()) == sizes)
        {
            Some((_, group)) => {
                group.label = joined(&group.label, &piece.piece.name);
                group.count += 1;
            }
            None => kept.push((row, Group { label: piece.piece.name.clone(), count: 1, piece })),
        }
    }
    let mut groups: Vec<Group<'a>> = kept.into_iter().map(|(_, group)| group).collect();
    groups.sort_by(|one, other| other.piece.piece.weight.total_cmp(&one.piece.piece.weight));
    groups
}

/// `armchair 1` and `armchair 2` in one: `armchair 1, 2`.
fn joined(label: &str, name: &str) -> String {
    match (label.split_once(' '), name.rsplit_once(' ')) {
        (Some(_), Some((stem, number))) if label.starts_with(stem) => format!("{label}, {number}"),
        _ => format!("{label}, {name}"),
    }
}

#[cfg(test)]
mod tests {
    use super::joined;

    #[test]
    fn a_pair_shares_its_name() {
        assert_eq!(joined("armchair 1", "armchair 2"), "armchair 1, 2");
        assert_eq!(joined("green", "blue"), "green, blue");
    }
}
