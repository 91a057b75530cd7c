//! The order of the options, and how each is rated.

use elbowroom_model::{Criterion, Wishes};

use super::best_first::best_first;
use super::set_aside::SetAside;
use super::table::Table;
use super::tier::{Entrant, Tier, by_tier, contestants};
use super::tolerance::TIE;
use super::turn::{Turn, turns};
use super::{dominance, share};

/// How one option is rated among all.
#[derive(Debug, Clone, PartialEq)]
pub struct Rating {
    /// The criteria's scores, each times its wish, over the sum of the wishes; 0 to 100.
    pub score: f64,
    /// Share of the shifts of the wishes by up to one step that put it first, in millionths. The shares of those that may be
    /// first sum to 1; all others, which stand behind them whatever the weights, have none: what eases rules while something
    /// eases fewer, and what is set aside.
    pub share: f64,
    /// The best of the options that are at least as good in every criterion, better in one, and ease no more rules; `None` for
    /// what is set aside.
    pub dominated_by: Option<usize>,
    /// No weights at all put it strictly first.
    pub never_first: bool,
    /// The least change of one wish that takes the first option from its place, or puts this one first. `None` where
    /// no change does, where others stand before it whatever the weights, and where the order is that of one criterion alone.
    pub turns_if: Option<Turn>,
    /// What sets it aside.
    pub set_aside: Option<SetAside>,
    /// All that could set it aside, each from a wish on.
    pub lapses: Vec<SetAside>,
}

/// The options, best first: those that ease no rule, then by how few they ease, then what is set aside; within each by their
/// score under the wishes, or by one criterion alone where it applies.
///
/// A tie goes to the option that was handed in earlier: hand them in the order that size and geometry give.
#[must_use]
pub fn order(entrants: &[Entrant], wishes: &Wishes, by: Option<Criterion>) -> Vec<usize> {
    let table = Table::of(entrants);
    let figures = match column_of(&table, by) {
        Some(column) => table.rows.iter().map(|row| row[column]).collect(),
        None => table.scores(&table.wishes(wishes)),
    };
    by_tier(&figures, &tiers(entrants, wishes))
}

/// The options by their scores under the wishes, in the order handed in.
pub(crate) fn scores(entrants: &[Entrant], wishes: &Wishes) -> Vec<f64> {
    let table = Table::of(entrants);
    table.scores(&table.wishes(wishes))
}

/// Of each option whether it ties with another, so that its place hangs on the order that they are handed in.
pub(crate) fn tied(entrants: &[Entrant], wishes: &Wishes) -> Vec<bool> {
    let (scores, tiers) = (scores(entrants, wishes), tiers(entrants, wishes));
    let ties = |one: usize, other: usize| {
        one != other && tiers[one] == tiers[other] && (scores[one] - scores[other]).abs() <= TIE
    };
    (0..entrants.len()).map(|one| (0..entrants.len()).any(|other| ties(one, other))).collect()
}

/// How each option is rated, in the order handed in. Scores, shares and dominance are those of the wishes even where the
/// order is that of one criterion. What is set aside is so under the wishes as they stand, and stays so where they are
/// shifted.
#[must_use]
pub fn ratings(entrants: &[Entrant], wishes: &Wishes, by: Option<Criterion>) -> Vec<Rating> {
    let table = Table::of(entrants);
    let tiers = tiers(entrants, wishes);
    let weighed = table.wishes(wishes);
    let scores = table.scores(&weighed);
    let dominated = dominance::dominated_by(&table, &tiers, &by_tier(&scores, &tiers));
    let rating = |(option, entrant): (usize, &Entrant)| Rating {
        score: scores[option],
        share: 0.0,
        dominated_by: dominated[option],
        never_first: true,
        turns_if: None,
        set_aside: entrant.set_aside(wishes),
        lapses: entrant.lapses.clone(),
    };
    let mut ratings: Vec<Rating> = entrants.iter().enumerate().map(rating).collect();
    let contestants = contestants(&tiers);
    let among = table.only(&contestants);
    let first = share::first_places(&among, &weighed);
    let dominated: Vec<Option<usize>> = contestants.iter().map(|option| dominated[*option]).collect();
    let never_first = dominance::never_first(&among, &dominated, &first.strictly);
    let turns = match column_of(&table, by) {
        Some(_) => vec![None; contestants.len()],
        None => turns(&among, &weighed, &best_first(&among.scores(&weighed))),
    };
    for (place, &option) in contestants.iter().enumerate() {
        let of_all = |turn: Turn| Turn { then_first: contestants[turn.then_first], ..turn };
        let rating = &mut ratings[option];
        (rating.share, rating.never_first) = (first.shares[place], never_first[place]);
        rating.turns_if = turns[place].map(of_all);
    }
    ratings
}

fn tiers(entrants: &[Entrant], wishes: &Wishes) -> Vec<Tier> {
    entrants.iter().map(|entrant| Tier::of(entrant, wishes)).collect()
}

fn column_of(table: &Table, by: Option<Criterion>) -> Option<usize> {
    by.and_then(|by| table.criteria.iter().position(|criterion| *criterion == by))
}
