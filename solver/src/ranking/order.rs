//! The order of the options, and how each is rated.

use elbowroom_model::{Criterion, Wishes};

use super::best_first::best_first;
use super::table::Table;
use super::turn::{Turn, turns};
use super::{dominance, share};

/// How one option is rated among all.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Rating {
    /// The criteria's scores, each times its wish, over the sum of the wishes; 0 to 100.
    pub score: f64,
    /// Share of the ways to weigh it that put it first, in millionths; the shares sum to 1.
    pub share: f64,
    /// The best of the options that are at least as good in every criterion and better in one.
    pub dominated_by: Option<usize>,
    /// No weights at all put it strictly first.
    pub never_first: bool,
    /// The least change of one wish that takes the first option from its place, or puts this one first. `None` where
    /// no change does, and where the order is that of one criterion alone.
    pub turns_if: Option<Turn>,
}

/// The options, best first: by their score under the wishes, or by one criterion alone where it applies.
///
/// A tie goes to the option that was handed in earlier: hand them in the order that size and geometry give.
#[must_use]
pub fn order(scores: &[Vec<(Criterion, f64)>], wishes: &Wishes, by: Option<Criterion>) -> Vec<usize> {
    let table = Table::of(scores);
    match column_of(&table, by) {
        Some(column) => best_first(&table.rows.iter().map(|row| row[column]).collect::<Vec<_>>()),
        None => best_first(&table.scores(&table.wishes(wishes))),
    }
}

/// How each option is rated, in the order handed in. Scores, shares and dominance are those of the wishes even where the
/// order is that of one criterion.
#[must_use]
pub fn ratings(scores: &[Vec<(Criterion, f64)>], wishes: &Wishes, by: Option<Criterion>) -> Vec<Rating> {
    let table = Table::of(scores);
    let wishes = table.wishes(wishes);
    let under_wishes = table.scores(&wishes);
    let best = best_first(&under_wishes);
    let first = share::first_places(&table, &wishes);
    let dominated = dominance::dominated_by(&table, &best);
    let never_first = dominance::never_first(&table, &dominated, &first.strictly);
    let turns = match column_of(&table, by) {
        Some(_) => vec![None; table.rows.len()],
        None => turns(&table, &wishes, &best),
    };
    let rating = |option: usize| Rating {
        score: under_wishes[option],
        share: first.shares[option],
        dominated_by: dominated[option],
        never_first: never_first[option],
        turns_if: turns[option],
    };
    (0..table.rows.len()).map(rating).collect()
}

fn column_of(table: &Table, by: Option<Criterion>) -> Option<usize> {
    by.and_then(|by| table.criteria.iter().position(|criterion| *criterion == by))
}
