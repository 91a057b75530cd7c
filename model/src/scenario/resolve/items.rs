//! What the walls hold.

use super::entrances;
use super::names::Names;
use super::outline;
use crate::length::Measure;
use crate::opening::{
    Door, FireOpening, Fireplace, Hinge, ItemKind, LeadsTo, Opening, Radiator, Socket, Stance, Swings, View, Window,
};
use crate::quote::{is_control, quoted};
use crate::report::{Of, Report, Taken};
use crate::room::{Fixed, Survey, Wall, WallId, WallItem};
use crate::rules::{Clearance, Rules};
use crate::scenario::check;
use crate::scenario::check::items::Measured;
use crate::scenario::check::plausible::is_far_off;
use crate::scenario::document::{
    CarriesRow, Document, DoorRow, FireplaceRow, HingeRow, ItemRow, OpeningRow, RadiatorRow, StanceRow, SwingsRow,
    ViewRow, WindowRow,
};
use crate::scenario::tolerance::TOUCHING;
use crate::tables::{built, fixture_use};
use crate::used_at::UsedAt;
use crate::yaml::Trail;

/// Sill of a window that is not measured, mm.
const SILL: f64 = 900.0;
/// Head of a window that is not measured, mm, or the ceiling if lower.
const HEAD: f64 = 2100.0;
/// Height of a radiator that is not measured, mm.
const RADIATOR_HEIGHT: f64 = 600.0;

/// All that is needed to read the items.
pub(super) struct Items<'a> {
    pub(super) document: &'a Document,
    pub(super) names: &'a Names,
    pub(super) rules: &'a Rules,
    pub(super) ceiling: Option<f64>,
}

/// An item, and where it stands in the file.
pub(super) type Found = (WallItem, Trail);

impl Items<'_> {
    /// The items that are sound.
    pub(super) fn resolve(&self, walls: &outline::Found, report: &mut Report<'_>) -> Vec<Found> {
        let mut found = Vec::new();
        for (wall, row) in self.document.walls.iter().flatten().enumerate() {
            let Some(row) = row else { continue };
            for (place, item) in row.holds.iter().flatten().enumerate() {
                let at = Trail::default().key("walls").index(wall).key("holds").index(place);
                let name = &self.names.items[wall][place];
                let Some(item) = item else { continue };
                if let Some(item) = self.item(item, WallId(wall), Read { name, at: &at, report: &mut *report }) {
                    found.push((item, at));
                }
            }
        }
        found.retain(|(item, at)| {
            let Some(Some(length)) = walls.lengths.get(item.wall.0) else { return true };
            let wall = Measured { name: &self.names.walls[item.wall.0], length: *length, rounding: walls.rounding };
            check::items::on_its_wall(item, &wall, at, report)
        });
        check::items::tell_overlaps(&found, &self.names.walls, report);
        entrances::settle(&mut found, self.has_stairs(), report);
        found
    }

    /// Whether one may come in by stairs that stand in the room.
    fn has_stairs(&self) -> bool {
        let kinds = self.document.fixed.iter().flatten().flatten().filter_map(|row| row.kind.as_deref());
        kinds.filter_map(fixture_use).any(|used| used.at == UsedAt::Shortest)
    }

    fn item(&self, row: &ItemRow, wall: WallId, mut read: Read<'_, '_>) -> Option<WallItem> {
        let (place, width, kind) = match row {
            ItemRow::Window(row) => (&row.at, read.width(&row.width), self.window(row, &mut read)),
            ItemRow::Door(row) => (&row.at, read.width(&row.width), door(row, &mut read)),
            ItemRow::Opening(row) => (&row.at, read.width(&row.width), opening(row, &mut read)),
            ItemRow::Radiator(row) => (&row.at, read.width(&row.width), self.radiator(row, &mut read)),
            ItemRow::Fireplace(row) => (&row.at, read.width(&row.width), self.fireplace(row, &mut read)),
            ItemRow::Socket(row) => (&row.at, Some(0.0), Some(socket(row.carries))),
        };
        let place = read.given(place, "at", Taken::Any);
        Some(WallItem { name: read.name.to_owned(), wall, at: place?, width: width?, kind: kind? })
    }

    fn window(&self, row: &WindowRow, read: &mut Read<'_, '_>) -> Option<ItemKind> {
        let sill = read.or(&row.sill, "sill", Taken::FromZero, SILL);
        // A ceiling that no room has is told by itself, and says nothing of windows.
        let is_one = |ceiling: &f64| !built("room", "ceiling").is_some_and(|built| is_far_off(*ceiling, built));
        let default = self.ceiling.filter(is_one).map_or(HEAD, |ceiling| ceiling.min(HEAD));
        let head = read.or(&row.head, "head", Taken::AboveZero, default);
        let (sill, head) = (sill?, head?);
        if !check::items::sill_below_head(read.name, sill, head, read.at, read.report) {
            return None;
        }
        let view = match row.view {
            Some(ViewRow::Liked) => View::Liked,
            Some(ViewRow::Avoided) => View::Avoided,
            Some(ViewRow::Plain) | None => View::Plain,
        };
        let (opens, must_reach) = (row.opens.unwrap_or(true), row.must_reach.unwrap_or(false));
        Some(ItemKind::Window(Window { sill, head, view, opens, must_reach }))
    }

    fn radiator(&self, row: &RadiatorRow, read: &mut Read<'_, '_>) -> Option<ItemKind> {
        let depth = read.given(&row.depth, "depth", Taken::AboveZero);
        let height = read.or(&row.height, "height", Taken::AboveZero, RADIATOR_HEIGHT);
        let clear = read.or(&row.keep_clear, "keep_clear", Taken::FromZero, self.rules.get(Clearance::RadiatorClear));
        if row.height.is_none() {
            read.report.notice(format!("{} is taken as {} high.", read.name, read.report.words(RADIATOR_HEIGHT)));
        }
        Some(ItemKind::Radiator(Radiator { depth: depth?, height: height?, keep_clear: clear? }))
    }

    fn fireplace(&self, row: &FireplaceRow, read: &mut Read<'_, '_>) -> Option<ItemKind> {
        let depth = read.given(&row.depth, "depth", Taken::AboveZero);
        let height = match &row.height {
            Some(_) => read.given(&row.height, "height", Taken::AboveZero).map(Some),
            None => Some(None),
        };
        let clear = read.or(&row.keep_clear, "keep_clear", Taken::FromZero, self.rules.get(Clearance::FireClear));
        let opening = opening_of_fire(row, read)?;
        Some(ItemKind::Fireplace(Fireplace { depth: depth?, opening, height: height?, keep_clear: clear? }))
    }
}

/// Reads the lengths of one item.
struct Read<'a, 'b> {
    name: &'a str,
    at: &'a Trail,
    report: &'a mut Report<'b>,
}

impl Read<'_, '_> {
    fn width(&mut self, measure: &Option<Measure>) -> Option<f64> {
        self.given(measure, "width", Taken::AboveZero)
    }

    /// A length that the schema asks for: without one the fault is told already.
    fn given(&mut self, measure: &Option<Measure>, key: &str, taken: Taken) -> Option<f64> {
        self.report.length(measure.as_ref()?, &self.at.key(key), Of { item: self.name, figure: key }, taken)
    }

    fn or(&mut self, measure: &Option<Measure>, key: &str, taken: Taken, default: f64) -> Option<f64> {
        if measure.is_some() { self.given(measure, key, taken) } else { Some(default) }
    }
}

/// The mouth of a fire: none of its own where the file does not tell it, so that it is as wide as the breast.
fn opening_of_fire(row: &FireplaceRow, read: &mut Read<'_, '_>) -> Option<Option<FireOpening>> {
    if row.opening.is_none() && row.opening_at.is_none() {
        return Some(None);
    }
    if row.opening.is_none() {
        let name = read.name;
        let message = format!("{name} has an `opening_at` and no `opening`.");
        let remedy = "Give `opening`: how wide the fire's mouth is; or leave `opening_at` out.".to_owned();
        read.report.add(read.at, "missing_key", name, message, remedy);
        return None;
    }
    // A breast without a width is told already.
    let breast = read.width(&row.width)?;
    let width = read.or(&row.opening, "opening", Taken::AboveZero, breast)?;
    let at = read.or(&row.opening_at, "opening_at", Taken::FromZero, (breast - width) / 2.0)?;
    let mouth = FireOpening { at, width };
    check::items::in_its_breast(read.name, mouth, breast, read.at, read.report).then_some(Some(mouth))
}

fn door(row: &DoorRow, read: &mut Read<'_, '_>) -> Option<ItemKind> {
    let leads_to = leads_to(row.leads_to.as_deref(), read)?;
    let swings = match row.swings? {
        SwingsRow::In => Swings::In,
        SwingsRow::Out => Swings::Out,
        SwingsRow::Slides => Swings::Slides,
        SwingsRow::Folds => Swings::Folds,
        SwingsRow::Pocket => Swings::Pocket,
    };
    let opens_to = check::items::opens_to(read.name, row.opens_to, swings, read.at, read.report)?;
    if !matches!(swings, Swings::In | Swings::Out) {
        return Some(ItemKind::Door(Door { hinge: None, swings, opens_to, leads_to }));
    }
    let hinge = match row.hinge {
        Some(HingeRow::Left) => Hinge::Left,
        Some(HingeRow::Right) => Hinge::Right,
        None => {
            if read.report.was_told(&read.at.key("hinge")) {
                return None;
            }
            let message = format!("{} swings and has no `hinge`.", read.name);
            let remedy = "Give `hinge`: left or right, as you face the door from inside the room.".to_owned();
            read.report.add(read.at, "missing_key", read.name, message, remedy);
            return None;
        }
    };
    Some(ItemKind::Door(Door { hinge: Some(hinge), swings, opens_to, leads_to }))
}

fn opening(row: &OpeningRow, read: &mut Read<'_, '_>) -> Option<ItemKind> {
    let leads_to = leads_to(row.leads_to.as_deref(), read)?;
    let stance = match row.stance {
        Some(StanceRow::Open) => Stance::Open,
        Some(StanceRow::Away) => Stance::Away,
        Some(StanceRow::None) | None => Stance::None,
    };
    Some(ItemKind::Opening(Opening { leads_to, stance }))
}

fn leads_to(given: Option<&str>, read: &mut Read<'_, '_>) -> Option<LeadsTo> {
    let Some(given) = given else {
        read.report
            .notice(format!("{} does not say where it leads to; it is taken as a way to another space.", read.name));
        return Some(LeadsTo::Space("another space".to_owned()));
    };
    if given.trim().is_empty() || given.chars().any(is_control) {
        let message = format!("`leads_to` of {} is empty or holds control characters: `{}`.", read.name, quoted(given));
        let remedy = "Write `entrance`, or the name of the space behind it.".to_owned();
        read.report.add(&read.at.key("leads_to"), "control_character", read.name, message, remedy);
        return None;
    }
    let given = given.trim();
    Some(if given.eq_ignore_ascii_case("entrance") { LeadsTo::Entrance } else { LeadsTo::Space(given.to_owned()) })
}

fn socket(carries: Option<CarriesRow>) -> ItemKind {
    ItemKind::Socket(match carries {
        Some(CarriesRow::Aerial) => Socket::Aerial,
        Some(CarriesRow::Data) => Socket::Data,
        Some(CarriesRow::Power) | None => Socket::Power,
    })
}

/// Items stay where they were measured; what closing took off a wall's end is clipped.
pub(super) fn clip(items: &mut [Found], walls: &[Wall]) {
    for (item, _) in items {
        let length = walls.get(item.wall.0).map_or(0.0, Wall::length);
        let end = (item.at + item.width).min(length);
        item.at = item.at.clamp(0.0, length);
        item.width = if item.width > 0.0 { end - item.at } else { 0.0 };
    }
}

/// What stands about doors for good.
#[derive(Debug, Clone, Copy)]
pub(super) struct About<'a> {
    pub(super) walls: &'a [Wall],
    pub(super) fixed: &'a [Fixed],
    /// How far off a measured length may be, mm.
    pub(super) within: f64,
    pub(super) survey: &'a Survey,
}

/// Tells the doors whose swing a wall is in the way of, and those that something else stops.
pub(super) fn tell_swings(items: &[Found], about: About<'_>, report: &mut Report<'_>) {
    let About { walls, fixed, within, survey } = about;
    let turned = (survey.corner_misfit / walls.len().max(1) as f64).to_radians().abs();
    let bodies = check::stopped::bodies(items.iter().map(|(item, _)| item), walls, fixed);
    for (item, at) in items {
        if let ItemKind::Door(door) = &item.kind {
            let leaf = check::swing::Leaf { item, door, walls, slack: within + item.width * turned + TOUCHING };
            if !leaf.tell_hit(at, report) {
                check::stopped::tell(&leaf, &bodies, report);
            }
        }
    }
}
