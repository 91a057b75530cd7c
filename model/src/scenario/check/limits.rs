//! How many of each a scenario may have.

use crate::report::Report;
use crate::scenario::document::Document;
use crate::yaml::Trail;

/// Walls of one room.
pub(crate) const MOST_WALLS: usize = 64;
/// Items on all walls and fixed things together.
pub(crate) const MOST_ITEMS: usize = 64;
/// Pieces, rows with a count spread out.
pub(crate) const MOST_PIECES: usize = 24;
/// Ways to furnish a room with what may stand in: each is solved as a room of its own.
pub(crate) const MOST_FURNISHINGS: usize = 12;
/// Corners of one fixed thing.
pub(crate) const MOST_CORNERS: usize = 64;

/// Whether three walls or more are there.
pub(crate) fn enough_walls(count: usize, report: &mut Report<'_>) -> bool {
    if count < 3 {
        let message = format!("The room has {count} walls; an outline needs 3 at least.");
        let remedy = "List every wall, clockwise as seen from above.".to_owned();
        report.add(&Trail::default().key("walls"), "too_few_walls", "", message, remedy);
    }
    count >= 3
}

/// Whether the document keeps within the limits.
pub(crate) fn within(document: &Document, report: &mut Report<'_>) -> bool {
    let before = report.count();
    let root = Trail::default();
    let walls = document.walls.iter().flatten().count();
    too_many(walls, MOST_WALLS, "walls", &root.key("walls"), report);
    let held = document.walls.iter().flatten().flatten().flat_map(|wall| wall.holds.iter().flatten()).count();
    too_many(held, MOST_ITEMS, "items on walls", &root.key("walls"), report);
    let fixed = document.fixed.iter().flatten().count();
    too_many(fixed, MOST_ITEMS, "fixed things", &root.key("fixed"), report);
    let count = |row: &Option<_>| {
        row.as_ref().and_then(|row: &crate::scenario::document::PieceRow| row.count).map_or(1, |count| count as usize)
    };
    let pieces = document.pieces.iter().flatten().map(count).fold(0_usize, usize::saturating_add);
    too_many(pieces, MOST_PIECES, "pieces", &root.key("pieces"), report);
    report.count() == before
}

fn too_many(count: usize, most: usize, what: &str, at: &Trail, report: &mut Report<'_>) {
    if count > most {
        let message = format!("The file has {count} {what}, {} more than the {most} it may have.", count - most);
        report.add(at, "too_many", "", message, format!("Keep {most} {what} at most; leave out what matters least."));
    }
}
