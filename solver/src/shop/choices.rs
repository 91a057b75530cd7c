//! What each row of the room may be bought from the list.

use super::asked::{Order, SetsAsked};
use super::sets_context::SetsContext;

/// One row's choices.
#[derive(Debug)]
pub(super) struct Choices {
    /// By its place.
    pub row: usize,
    /// Candidates, by their place; `None`: the row is left out.
    pub of: Vec<Option<usize>>,
}

/// The choices of each row that has any, and the candidates that are left aside since they have no price.
pub(super) fn choices(context: &SetsContext<'_>, asked: &SetsAsked) -> (Vec<Choices>, Vec<usize>) {
    let priced = asked.budget.is_some() || asked.order == Order::Price;
    let (mut choices, mut unpriced) = (Vec::new(), Vec::new());
    for (row, of) in context.rows.iter().enumerate() {
        let all = context.candidates_for(row);
        let known = |place: &usize| !priced || context.candidates.get(*place).is_some_and(|one| one.price.is_some());
        unpriced.extend(all.iter().copied().filter(|place| !known(place)));
        let mut of_row: Vec<Option<usize>> = all.into_iter().filter(known).map(Some).collect();
        if of_row.is_empty() && !of.needed {
            continue;
        }
        if !of.needed {
            of_row.push(None);
        }
        if !of_row.is_empty() {
            choices.push(Choices { row, of: of_row });
        }
    }
    unpriced.sort_unstable();
    unpriced.dedup();
    // Rows with few choices first: what they rule out is ruled out early.
    choices.sort_by_key(|choice| (choice.of.len(), choice.row));
    (choices, unpriced)
}
