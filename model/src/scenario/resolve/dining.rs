//! What is asked for a dining table of which the file says how many it seats.

use crate::piece::Piece;
use crate::report::Report;
use crate::rules::{Clearance, Rules};

/// Tells once that such a table has a place for each, and what that is.
pub(super) fn tell(pieces: &[Piece], rules: &Rules, report: &mut Report<'_>) {
    let place = rules.figure(Clearance::DiningPlaces);
    let Some(edge) = place.figure.filter(|edge| *edge > 0.0) else { return };
    let tables: Vec<String> =
        pieces.iter().filter_map(|piece| Some(format!("{} {}", piece.name, piece.seats?))).collect();
    if tables.is_empty() {
        return;
    }
    report.notice(format!(
        "So many are to sit at a table, and each has a place of {} at its edge, with a chair's room behind, and a way leads to the table: {}. Ends are used \
         where the long sides are too few. Source: {}. `dining_places: 0` under `clearances` leaves this out.",
        report.words(edge),
        tables.join(", "),
        place.source
    ));
}
