//! Pieces as a page tells them: those that matter most first, a pair that is alike in one row.

use elbowroom_model::Brief;
use elbowroom_solver::outcome::{OptionFound, PieceFound};

/// Pieces of one size, told together.
#[derive(Debug, Clone)]
pub(crate) struct Group<'a> {
    /// Their names in one: `armchair 1, 2`.
    pub label: String,
    /// How many they are.
    pub count: usize,
    /// The first of them.
    pub piece: &'a PieceFound,
}

/// The pieces of `option`, heaviest in the size value first, else in the file's order.
pub(crate) fn groups<'a>(brief: &Brief, option: &'a OptionFound) -> Vec<Group<'a>> {
    let mut kept: Vec<(f64, Option<usize>, Group<'a>)> = Vec::new();
    for piece in &option.pieces {
        let (weight, row) = row_of(brief, piece);
        let alike =
            kept.iter_mut().find(|(_, kept, group)| row.is_some() && *kept == row && group.piece.size == piece.size);
        match alike {
            Some((_, _, group)) => {
                group.label = joined(&group.label, &piece.name);
                group.count += 1;
            }
            None => kept.push((weight, row, Group { label: piece.name.clone(), count: 1, piece })),
        }
    }
    kept.sort_by(|a, b| b.0.total_cmp(&a.0));
    kept.into_iter().map(|(_, _, group)| group).collect()
}

/// How much a piece counts, and which row of the file it belongs to.
fn row_of(brief: &Brief, piece: &PieceFound) -> (f64, Option<usize>) {
    let asked = brief.pieces.iter().enumerate().find(|(_, asked)| asked.name == piece.name);
    asked.map_or((0.0, None), |(place, asked)| (asked.weight, Some(asked.alike.unwrap_or(place))))
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
