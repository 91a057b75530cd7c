//! A room solved for what a store has.

use elbowroom_model::{Fault, scenario};
use elbowroom_solver::stock::{Owned, StockRoom, room_for};

use crate::batch::content::Terms;
use crate::batch::record::guarded;
use crate::words::batch as words;

/// The room of a scenario as it is solved for a store, or every fault of it.
pub(crate) fn solved(text: &str, terms: &Terms, owned: &[Owned]) -> Result<StockRoom, Vec<Fault>> {
    let solve = || {
        let mut brief = scenario::read(text, terms.table.as_deref())?;
        brief.units = terms.units.unwrap_or(brief.units);
        Ok(room_for(&brief, owned, &terms.limits))
    };
    guarded(solve).unwrap_or_else(|| Err(vec![words::broke_off()]))
}
