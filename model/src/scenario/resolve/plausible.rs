//! Every figure of the file beside what is built and sold.

use super::names::Names;
use crate::article::the;
use crate::kind::PieceKind;
use crate::length::Measure;
use crate::report::Report;
use crate::room::Room;
use crate::scenario::check::meant_unit;
use crate::scenario::check::plausible::{Figure, tell as tell_figure, tell_screen_in_doubt, tell_screen_of_no_size};
use crate::scenario::document::{Document, ItemRow, PieceRow};
use crate::scenario::tolerance::TOUCHING;
use crate::tables::{Built, KindSizes, TableRange, Tables, built};
use crate::yaml::Trail;

/// Tells figures that nothing has, and asks back what a screen without a unit is.
pub(super) fn tell(document: &Document, names: &Names, tables: &Tables, report: &mut Report<'_>) {
    let figures = figures(document, names, tables);
    let meant = meant_unit::meant(&figures, report.units());
    let (unit, meant) = meant.map_or((None, Vec::new()), |(unit, figures)| (Some(unit), figures));
    if let Some(unit) = unit {
        let told = meant_unit::told(unit, &meant, report);
        report.slip(told);
    }
    // What speaks for another unit is told once.
    let rest = figures.iter().filter(|figure| !meant.iter().any(|one| std::ptr::eq(*one, *figure)));
    rest.for_each(|figure| tell_figure(figure, report));
    for (place, (row, names)) in document.pieces.iter().flatten().zip(&names.pieces).enumerate() {
        if let (Some(row), Some(name)) = (row, names.first()) {
            tell_screen(row, name, &Trail::default().key("pieces").index(place), report);
        }
    }
}

/// Every figure of the file that something is known of.
fn figures<'a>(document: &'a Document, names: &'a Names, tables: &Tables) -> Vec<Figure<'a>> {
    let mut all = Vec::new();
    let room = document.ceiling.iter().filter_map(|measure| Some(("ceiling", measure, built("room", "ceiling")?)));
    all.extend(room.map(|(figure, measure, built)| Figure { item: "room", figure, measure, built }));
    for (wall, names) in document.walls.iter().flatten().zip(&names.items) {
        let items = wall.iter().flat_map(|wall| wall.holds.iter().flatten());
        for (item, name) in items.zip(names).filter_map(|(item, name)| Some((item.as_ref()?, name))) {
            let given = figures_of(item).into_iter();
            let known =
                given.filter_map(|(figure, measure)| Some((figure, measure.as_ref()?, built(item.kind(), figure)?)));
            all.extend(known.map(|(figure, measure, built)| Figure { item: name, figure, measure, built }));
        }
    }
    for (row, names) in document.pieces.iter().flatten().zip(&names.pieces) {
        if let (Some(row), Some(name)) = (row, names.first())
            && let Some(kind) = row.kind
        {
            all.extend(figures_of_piece(row, name, &tables.sizes(kind)));
        }
    }
    all
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

/// The figures of an item that something is known of.
fn figures_of(item: &ItemRow) -> Vec<(&'static str, &Option<Measure>)> {
    match item {
        ItemRow::Window(row) => vec![("width", &row.width), ("sill", &row.sill), ("head", &row.head)],
        ItemRow::Door(row) => vec![("width", &row.width)],
        ItemRow::Opening(row) => vec![("width", &row.width)],
        ItemRow::Radiator(row) => vec![("width", &row.width), ("depth", &row.depth), ("height", &row.height)],
        ItemRow::Fireplace(row) => vec![("width", &row.width), ("depth", &row.depth), ("height", &row.height)],
        ItemRow::Socket(_) => Vec::new(),
    }
}

fn figures_of_piece<'a>(row: &'a PieceRow, item: &'a str, sizes: &KindSizes) -> Vec<Figure<'a>> {
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
    let known = given.into_iter().filter_map(|(figure, measure, built)| {
        Some(Figure { item, figure, measure: measure.as_ref()?, built: built.filter(|built| built.most > 0.0)? })
    });
    known.collect()
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
