//! Every figure of the file beside what is built and sold.

use super::names::Names;
use crate::article::the;
use crate::kind::PieceKind;
use crate::length::Measure;
use crate::report::Report;
use crate::room::Room;
use crate::scenario::check::plausible::{Figure, tell as tell_figure, tell_screen_in_doubt, tell_screen_of_no_size};
use crate::scenario::document::{Document, ItemRow, PieceRow};
use crate::scenario::tolerance::TOUCHING;
use crate::tables::{Built, KindSizes, TableRange, Tables, built};
use crate::yaml::Trail;

/// The figures that a row gives, by their names.
type Given<'a> = Vec<(&'static str, &'a Option<Measure>)>;

/// Tells figures that nothing has, and asks back what a screen without a unit is.
pub(super) fn tell(document: &Document, names: &Names, tables: &Tables, report: &mut Report<'_>) {
    tell_all("room", "room", &vec![("ceiling", &document.ceiling)], report);
    for (wall, names) in document.walls.iter().flatten().zip(&names.items) {
        let items = wall.iter().flat_map(|wall| wall.holds.iter().flatten());
        for (item, name) in items.zip(names) {
            if let Some(item) = item {
                tell_all(item.kind(), name, &figures_of(item), report);
            }
        }
    }
    for (place, (row, names)) in document.pieces.iter().flatten().zip(&names.pieces).enumerate() {
        let (Some(row), Some(name)) = (row, names.first()) else { continue };
        let Some(kind) = row.kind else { continue };
        tell_piece(row, name, &tables.sizes(kind), report);
        tell_screen(row, name, &Trail::default().key("pieces").index(place), report);
    }
}

/// Tells a ceiling that begins to fall further out than the room is deep.
pub(super) fn tell_slopes(room: &Room, report: &mut Report<'_>) {
    for slope in &room.slopes {
        let Some(wall) = room.wall(slope.wall) else { continue };
        let out = room.walls.iter().map(|corner| (corner.start - wall.start).dot(wall.inward()));
        let deep = out.fold(0.0, f64::max);
        if slope.over > deep + TOUCHING {
            report.notice(format!(
                "The ceiling falls toward {} over {}, and the room is {} deep before it: check `ceiling_over`.",
                the(&wall.name),
                report.words(slope.over),
                report.words(deep)
            ));
        }
    }
}

fn tell_all(kind: &str, item: &str, given: &Given<'_>, report: &mut Report<'_>) {
    for (figure, measure) in given {
        if let (Some(measure), Some(built)) = (measure, built(kind, figure)) {
            tell_figure(&Figure { item, figure, measure, built }, report);
        }
    }
}

/// The figures of an item that something is known of.
fn figures_of(item: &ItemRow) -> Given<'_> {
    match item {
        ItemRow::Window(row) => vec![("width", &row.width), ("sill", &row.sill), ("head", &row.head)],
        ItemRow::Door(row) => vec![("width", &row.width)],
        ItemRow::Opening(row) => vec![("width", &row.width)],
        ItemRow::Radiator(row) => vec![("width", &row.width), ("depth", &row.depth), ("height", &row.height)],
        ItemRow::Fireplace(row) => vec![("width", &row.width), ("depth", &row.depth), ("height", &row.height)],
        ItemRow::Socket(_) => Vec::new(),
    }
}

fn tell_piece(row: &PieceRow, item: &str, sizes: &KindSizes, report: &mut Report<'_>) {
    let range = |range: &TableRange| Built { least: range.least, most: range.most };
    let of_u = sizes.u_width.as_ref().filter(|_| row.second_return.is_some());
    let given = [
        ("width", &row.width, Some(range(of_u.unwrap_or(&sizes.width)))),
        ("return", &row.return_length, sizes.return_length.as_ref().map(range)),
        ("second return", &row.second_return, sizes.return_length.as_ref().map(range)),
        ("depth", &row.depth, Some(range(&sizes.depth))),
        ("depth of the return", &row.return_depth, Some(range(&sizes.depth))),
        ("height", &row.height, Some(Built { least: sizes.height, most: sizes.height })),
    ];
    for (figure, measure, built) in given {
        if let (Some(measure), Some(built)) = (measure, built.filter(|built| built.most > 0.0)) {
            tell_figure(&Figure { item, figure, measure, built }, report);
        }
    }
}

fn tell_screen(row: &PieceRow, item: &str, at: &Trail, report: &mut Report<'_>) {
    if let (Some(measure), Some(built)) = (&row.screen, built("screen", "diagonal"))
        && row.kind.is_some_and(PieceKind::carries_screen)
    {
        let screen = Figure { item, figure: "screen", measure, built };
        tell_screen_in_doubt(&screen, &at.key("screen"), report);
        tell_screen_of_no_size(&screen, report);
        tell_figure(&screen, report);
    }
}
