//! One row of a spreadsheet for each room: what came of it, then a column for each piece and dimension.

use super::columns::Columns;
use super::reason;
use crate::process::failure::Failure;
use crate::render::batch::room_line::{Fate, LineOption, RoomLine};
use crate::text::cells::{cell, line};
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

/// The heads of the columns, as a line.
pub(crate) fn head(columns: &Columns) -> Result<String, Failure> {
    let heads = HEADS.map(str::to_owned).into_iter().chain(columns.heads());
    line(&heads.collect::<Vec<_>>()).map_err(Failure::Unwritable)
}

/// The row of a room, as a line.
pub(crate) fn row(told: &RoomLine, columns: &Columns) -> Result<String, Failure> {
    let of_result = |figure: fn(&crate::render::batch::room_line::LineResult) -> String| {
        told.result.as_ref().map_or_else(String::new, figure)
    };
    let of_best = |figure: fn(&LineOption) -> String| told.best().map_or_else(String::new, figure);
    let cells = [
        cell(told.source.as_deref().unwrap_or_default()),
        cell(&of_result(|result| result.room.name.clone())),
        fate(told.fate()).to_owned(),
        of_result(|result| format!("{:.2}", result.room.area)),
        of_result(|result| result.options.len().to_string()),
        of_result(|result| (result.refused.len() - result.undecided()).to_string()),
        cell(&of_best(|best| best.key.clone())),
        cell(&of_best(|best| best.title.clone())),
        of_best(|best| format!("{:.1}", best.score)),
        of_best(|best| format!("{:.6}", best.first_place_share)),
        of_best(|best| format!("{:.1}", best.size_value)),
        of_best(|best| words::yes_no(best.proven).to_owned()),
        cell(&reason(told).unwrap_or_default()),
        of_result(|result| result.undecided().to_string()),
    ];
    let cells = cells.into_iter().chain(columns.cells(told.best()));
    line(&cells.collect::<Vec<_>>()).map_err(Failure::Unwritable)
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

    #[test]
    fn the_rows_start_as_they_are_known() {
        assert!(head(&Columns::default()).unwrap().starts_with(ROWS_START));
    }
}
