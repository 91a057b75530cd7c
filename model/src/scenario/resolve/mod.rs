//! From the file's own types to the vocabulary: names, defaults, ranges, the closed outline. Faults are collected as they
//! turn up; what hangs on something that was at fault is left alone.

mod aims;
mod at_seats;
mod by_places;
mod diagonals;
mod dining;
mod entrances;
mod fixed;
mod focus;
mod groups;
mod held_to;
mod hung;
mod instead;
mod items;
mod kept_at_walls;
mod latches;
pub(in crate::scenario) mod names;
mod outline;
mod pairs;
mod piece_row;
mod pieces;
mod places;
mod plausible;
mod rules;
mod sizes;
mod slopes;
mod stairs;

use crate::brief::Brief;
use crate::fault::Fault;
use crate::length::Measure;
use crate::piece::Piece;
use crate::quote::{is_control, quoted};
use crate::report::{Of, Report, Taken};
use crate::room::{KeptFree, Room, WallId};
use crate::rules::Rules;
use crate::scenario::check;
use crate::scenario::document::Document;
use crate::scenario::document::{PieceRow, WallRow};
use crate::tables::{Profile, Tables};
use crate::way_in;
use crate::yaml::{Node, Trail};
use names::Names;

/// How far off a measured length may be where the file does not say, mm.
const MEASURED_WITHIN: f64 = 5.0;
/// The most that a measurement may be off, mm: more is no measurement.
const MOST_MEASURED_WITHIN: f64 = 250.0;

/// The brief, where the document is sound, and its faults.
pub(super) fn resolve(document: &Document, tree: &Node, tables: &Tables) -> (Option<Brief>, Vec<Fault>) {
    let units = document.units.unwrap_or_default();
    let mut report = Report::new(tree, units);
    if !check::limits::within(document, &mut report) {
        return (None, report.into_faults());
    }
    let names = names::name_all(document, &mut report);
    let rules = rules::rules(document, tables, &mut report);
    let wishes = rules::wishes(document, &mut report);
    let within = measured_within(document.measured_within.as_ref(), &mut report);
    let walls = outline::outline(document, &names, within.unwrap_or(MEASURED_WITHIN), &mut report);
    let room = room(document, &names, within, walls, &rules, &mut report);
    let mut pieces = pieces::pieces(document, &names, &rules, tables, &mut report);
    at_seats::resolve(document, &names, &mut pieces, &mut report);
    groups::resolve(document, &names, &mut pieces, &mut report);
    at_seats::go_with_seats(&mut pieces, &mut report);
    instead::StandIns { document, names: &names, rules: &rules, tables }.resolve(&mut pieces, &mut report);
    dining::tell(&pieces, &rules, &mut report);
    places::Places { document, names: &names, room: room.as_ref() }.resolve(&mut pieces, &mut report);
    plausible::tell(document, &names, tables, &mut report);
    if let Some(room) = &room {
        plausible::tell_slopes(room, &mut report);
        kept_at_walls::tell(room, &mut report);
        stairs::tell(room, &mut report);
    }
    let way = document.way.as_ref().map(|rows| {
        let items = room.as_ref().map_or(&[][..], |room| &room.items);
        way_in::resolve::way(rows, items, within.unwrap_or(MEASURED_WITHIN), &mut report)
    });
    let wanted = held_to::wanted(document, room.as_ref(), &pieces, &mut report);
    let household = held_to::household(document, &mut report);
    let order = held_to::order(document, &mut report);
    let rules = match &room {
        Some(room) => focus::widened(document, room, &wishes, rules, &mut report),
        None => rules,
    };
    let notices = report.take_notices();
    let brief = room.map(|room| Brief {
        room,
        pieces,
        sizes: document.sizes.unwrap_or_default(),
        rules,
        wishes,
        notices,
        only: Vec::new(),
        wanted,
        household,
        order,
        units,
        way,
    });
    (brief, report.into_faults())
}

fn room(
    document: &Document,
    names: &Names,
    within: Option<f64>,
    walls: outline::Found,
    rules: &Rules,
    report: &mut Report<'_>,
) -> Option<Room> {
    let root = Trail::default();
    let name = named(document.name.as_deref(), "room", report);
    let ceiling = one_length(&document.ceiling, &root, "ceiling", report);
    let latitude = latitude(document, report);
    let bearing = bearing(document, names, report);
    let mut items = items::Items { document, names, rules, ceiling }.resolve(&walls, report);
    let slopes = slopes::slopes(document, names, report);
    let fixed = fixed::fixed(document, names, walls.outline.as_ref(), rules.are_for_a_wheelchair(), report);
    if latitude.is_some() != bearing.is_some() {
        let (given, missing) =
            if latitude.is_some() { ("latitude", "bearing of a wall") } else { ("bearing of a wall", "latitude") };
        report.notice(format!("The {given} is given and no {missing}: the sun is left out."));
    }
    let outline = walls.outline?;
    items::clip(&mut items, &outline.walls);
    for notice in outline.notices {
        report.notice(notice);
    }
    let corrected = outline.survey.corrections.iter().copied().fold(0.0, f64::max);
    let measured_within = within?.max(corrected);
    let about = items::About { walls: &outline.walls, fixed: &fixed, within: measured_within, survey: &outline.survey };
    items::tell_swings(&items, about, report);
    latches::tell(items.iter().map(|(item, _)| item), &outline.walls, rules, report);
    let room = Room {
        name: name?,
        walls: outline.walls,
        items: items.into_iter().map(|(item, _)| item).collect(),
        fixed,
        ceiling,
        latitude,
        bearing,
        measured_within,
        survey: outline.survey,
        kept_free: kept_free(document),
        slopes,
    };
    check::at_hand::tell(&room, report);
    Some(room)
}

/// What must not stand at which wall.
fn kept_free(document: &Document) -> Vec<KeptFree> {
    let rows = document.walls.iter().flatten().enumerate();
    let of = |(place, row): (usize, &Option<WallRow>)| {
        let kinds = row.iter().flat_map(|row| row.keep_free.iter().flatten());
        kinds.map(|kind| KeptFree { wall: WallId(place), kind: *kind }).collect::<Vec<_>>()
    };
    rows.flat_map(of).collect()
}

/// The pieces of a file that has no room: what a room would ask of them is left out.
pub(crate) fn pieces_alone(
    rows: Option<Vec<Option<PieceRow>>>,
    tables: &Tables,
    report: &mut Report<'_>,
) -> Vec<Piece> {
    let Some(rows) = rows.filter(|rows| !rows.is_empty()) else { return Vec::new() };
    let document = Document { pieces: Some(rows), ..Document::default() };
    if !check::limits::within(&document, report) {
        return Vec::new();
    }
    let names = names::name_all(&document, report);
    let rules = tables.rules(Profile::default());
    pieces::rows(&document, &names, &rules, tables, report)
}

/// The name of a room or a house; `otherwise`, where it has none.
pub(crate) fn named(given: Option<&str>, otherwise: &str, report: &mut Report<'_>) -> Option<String> {
    let name = given.map_or("", str::trim);
    if name.chars().any(is_control) {
        let message = format!("The name of the {otherwise}, `{}`, holds control characters.", quoted(name));
        let remedy = "Write it with plain characters alone.".to_owned();
        report.add(&Trail::default().key("name"), "control_character", "", message, remedy);
        return None;
    }
    Some(if name.is_empty() { otherwise.to_owned() } else { name.to_owned() })
}

fn one_length(measure: &Option<Measure>, root: &Trail, key: &str, report: &mut Report<'_>) -> Option<f64> {
    let of = Of { item: "the room", figure: key };
    report.length(measure.as_ref()?, &root.key(key), of, Taken::AboveZero)
}

/// How far off a measured length may be, mm, by default where nothing is given.
pub(crate) fn measured_within(given: Option<&Measure>, report: &mut Report<'_>) -> Option<f64> {
    let Some(measure) = given else { return Some(MEASURED_WITHIN) };
    let at = Trail::default().key("measured_within");
    let of = Of { item: "the room", figure: "measured_within" };
    let length = report.length(measure, &at, of, Taken::FromZero)?;
    if length <= MOST_MEASURED_WITHIN {
        return Some(length);
    }
    let message = format!(
        "`measured_within` is {}; more than {} is no measurement.",
        report.words(length),
        report.words(MOST_MEASURED_WITHIN)
    );
    report.add(&at, "measured_within_too_large", "", message, "Check its unit, or measure again.".to_owned());
    None
}

fn latitude(document: &Document, report: &mut Report<'_>) -> Option<f64> {
    let latitude = document.latitude?;
    if (-90.0..=90.0).contains(&latitude) {
        return Some(latitude);
    }
    let message = format!("The latitude is {latitude}; it must lie between -90 and 90 degrees.");
    let remedy = "Give degrees north of the equator; south is below 0.".to_owned();
    report.add(&Trail::default().key("latitude"), "latitude_out_of_range", "", message, remedy);
    None
}

fn bearing(document: &Document, names: &Names, report: &mut Report<'_>) -> Option<(WallId, f64)> {
    let mut found = None;
    for (place, wall) in document.walls.iter().flatten().enumerate() {
        let Some(bearing) = wall.as_ref().and_then(|wall| wall.bearing) else { continue };
        let at = Trail::default().key("walls").index(place).key("bearing");
        let name = &names.walls[place];
        if !(0.0..=360.0).contains(&bearing) {
            let message = format!("The bearing of {name} is {bearing}; it must lie between 0 and 360 degrees.");
            let remedy = "Give degrees clockwise from north: 90 is east.".to_owned();
            report.add(&at, "bearing_out_of_range", name, message, remedy);
        } else if let Some((WallId(first), _)) = found {
            let message = format!("{name} has a bearing, and {} has one already.", names.walls[first]);
            report.add(
                &at,
                "two_bearings",
                name,
                message,
                "Keep one of the two: the others follow from it.".to_owned(),
            );
        } else {
            found = Some((WallId(place), bearing.rem_euclid(360.0)));
        }
    }
    found
}
