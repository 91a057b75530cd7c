//! What the pieces of options cost at least, of those on a list that fit there.

use std::collections::BTreeMap;

use elbowroom_model::PieceId;
use elbowroom_model::listing::{Listing, Money};
use elbowroom_solver::shop::ShopFound;

/// The lowest price for each piece of each option, by the option's key; told to a client where somebody asks for that alone.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub(crate) struct Prices {
    /// As the list has it.
    pub currency: Option<String>,
    least: BTreeMap<(String, PieceId), Money>,
}

impl Prices {
    /// Of what was found of a list in the room.
    pub(crate) fn of(found: &ShopFound, listing: &Listing) -> Self {
        let mut least: BTreeMap<(String, PieceId), Money> = BTreeMap::new();
        let candidates = found.candidates.iter().zip(&listing.pieces).filter(|(candidate, _)| candidate.goes());
        for (candidate, listed) in candidates {
            let row = candidate.row.and_then(|row| found.rows.get(row));
            let (Some(price), Some(row)) = (listed.price, row) else { continue };
            for option in &candidate.options {
                for piece in &row.pieces {
                    let known = least.entry((option.key.clone(), *piece)).or_insert(price);
                    *known = price.min(*known);
                }
            }
        }
        Self { currency: listing.currency.clone(), least }
    }

    /// From what one costs for `piece` in an option; `None` where nothing on the list fits there, or has no price.
    pub(super) fn from(&self, option: &str, piece: PieceId) -> Option<Money> {
        self.least.get(&(option.to_owned(), piece)).copied()
    }
}
