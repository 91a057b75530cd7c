//! One row of a spreadsheet for each room: what came of it, then a column for each piece and dimension.

use super::columns::Columns;
use super::reason;
use crate::render::batch::room_line::{Fate, LineResult, RoomLine};
use crate::text::cells::Cell;
use crate::words::batch as words;

/// The heads of the columns.
const HEADS: [&str; 14] = [
    "source",
    "room",
    "outcome",
    "area_m2",
    "fit",
    "do_not_fit",
    "arrangement",
    "title",
    "score",
    "first_place_share",
    "size_value",
    "proven",
    "reason",
    "not_decided",
];

/// How the rows start, whatever columns come to stand behind these: what the file is known again by.
pub(crate) const ROWS_START: &str = "\"source\",\"room\",\"outcome\",";

/// The heads of the columns.
pub(crate) fn head(columns: &Columns) -> Vec<Cell> {
    HEADS.map(Cell::text).into_iter().chain(columns.heads()).collect()
}

/// The row of a room.
pub(crate) fn row(told: &RoomLine, columns: &Columns) -> Vec<Cell> {
    let (result, best) = (told.result.as_ref(), told.best());
    let cells = [
        Cell::text(told.source.as_deref().unwrap_or_default()),
        Cell::text(result.map_or("", |result| &result.room.name)),
        Cell::text(fate(told.fate())),
        Cell::maybe(result.map(|result| format!("{:.2}", result.room.area))),
        Cell::maybe(result.map(|result| result.options.len())),
        Cell::maybe(result.map(|result| result.refused.len() - result.undecided())),
        Cell::text(best.map_or("", |best| &best.key)),
        Cell::text(best.map_or("", |best| &best.title)),
        Cell::maybe(best.map(|best| format!("{:.1}", best.score))),
        Cell::maybe(best.map(|best| format!("{:.6}", best.first_place_share))),
        Cell::maybe(best.map(|best| format!("{:.1}", best.size_value))),
        Cell::text(best.map_or("", |best| words::yes_no(best.proven))),
        Cell::text(reason(told).unwrap_or_default()),
        Cell::maybe(result.map(LineResult::undecided)),
    ];
    cells.into_iter().chain(columns.cells(best)).collect()
}

const fn fate(fate: Fate) -> &'static str {
    match fate {
        Fate::Fits => words::FITS,
        Fate::NothingFits => words::NOTHING_FITS,
        Fate::Undecided => words::NOT_KNOWN,
        Fate::Faulty => words::AT_FAULT,
    }
}

#[cfg(test)]
mod tests {
    use super::{Columns, ROWS_START, head};
    use crate::text::cells::line;

    #[test]
    fn the_rows_start_as_they_are_known() {
        assert!(line(&head(&Columns::default())).unwrap().starts_with(ROWS_START));
    }
}
