//! From the rows of a way to its points.

use super::row::{LandingRow, LiftRow, PointRow, StairsRow, TurnRow, WayDoorRow};
use super::{PointKind, Way, WayPoint};
use crate::length::Measure;
use crate::nearest::nearest;
use crate::opening::{ItemKind, LeadsTo};
use crate::quote::{is_control, quoted};
use crate::report::{Of, Report, Taken};
use crate::room::WallItem;
use crate::yaml::Trail;

/// Most points of one way.
const MOST_POINTS: usize = 64;
/// Clear height of a doorway that gives none, mm: the leaf of 78 in that is usual in Britain (C).
const DOOR_HEIGHT: f64 = 1981.0;
/// Pitch of stairs that give none, degrees: the steepest of a private stair, Approved Document K (P).
const PITCH: f64 = 42.0;

/// The way of `rows` through the doors among `items`; its faults and what was assumed go to `report`.
pub(crate) fn way(rows: &[Option<PointRow>], items: &[WallItem], measured_within: f64, report: &mut Report<'_>) -> Way {
    let root = Trail::default().key("way");
    if rows.len() > MOST_POINTS {
        let message = format!("The way has {} points; at most {MOST_POINTS} are read.", rows.len());
        report.add(&root, "too_many", "way", message, "Keep the narrow ones.".to_owned());
        return Way::default();
    }
    let names = names(rows);
    let (mut points, mut assumed): (Vec<WayPoint>, Vec<String>) = (Vec::new(), Vec::new());
    for (place, (row, name)) in rows.iter().zip(names).enumerate() {
        let Some(row) = row else { continue };
        let mut reader = Reader { at: root.index(place), name, items, report: &mut *report, assumed: &mut assumed };
        reader.tell_name(&points);
        let kinds = reader.kinds(row);
        let name = reader.name;
        points.extend(kinds.into_iter().enumerate().map(|(place, kind)| {
            let name = if place == 0 { name.clone() } else { format!("{name}, landing") };
            WayPoint { name, kind }
        }));
    }
    let mut way = Way { points, measured_within, assumed: Vec::new(), capped: Vec::new() };
    add_own_door(&mut way, rows, items, &mut assumed);
    for assumption in &assumed {
        report.notice(assumption.clone());
    }
    way.assumed = assumed;
    way
}

/// The name that a row gives.
fn own_name(row: &Option<PointRow>) -> Option<&str> {
    row.as_ref().and_then(given).map(str::trim).filter(|name| !name.is_empty())
}

/// The names of the points: given, or the kind, numbered where several have none.
fn names(rows: &[Option<PointRow>]) -> Vec<String> {
    let own = own_name;
    let kind = |row: &Option<PointRow>| row.as_ref().map_or("", key);
    let mut seen: Vec<&str> = Vec::new();
    let mut names = Vec::new();
    for row in rows {
        let name = own(row).map_or_else(
            || {
                let word = kind(row);
                seen.push(word);
                let number = seen.iter().filter(|one| **one == word).count();
                let alike = rows.iter().filter(|other| own(other).is_none() && kind(other) == word).count();
                if alike > 1 { format!("{word} {number}") } else { word.to_owned() }
            },
            str::to_owned,
        );
        names.push(name);
    }
    names
}

fn given(row: &PointRow) -> Option<&str> {
    match row {
        PointRow::Door(row) => row.name.as_deref().or(row.room_door.as_deref()),
        PointRow::Hall(row) => row.name.as_deref(),
        PointRow::Turn(row) => row.name.as_deref(),
        PointRow::Stairs(row) => row.name.as_deref(),
        PointRow::Lift(row) => row.name.as_deref(),
    }
}

const fn key(row: &PointRow) -> &'static str {
    match row {
        PointRow::Door(_) => "door",
        PointRow::Hall(_) => "hall",
        PointRow::Turn(_) => "turn",
        PointRow::Stairs(_) => "stairs",
        PointRow::Lift(_) => "lift",
    }
}

/// Ends the way at the room's own entrance, where it has one and no point says that it is one of the room's doors.
fn add_own_door(way: &mut Way, rows: &[Option<PointRow>], items: &[WallItem], notices: &mut Vec<String>) {
    let is_said = |row: &Option<PointRow>| matches!(row, Some(PointRow::Door(door)) if door.room_door.is_some());
    let doors = items.iter().filter(|item| matches!(item.kind.leads_to(), Some(LeadsTo::Entrance)));
    let doors: Vec<&WallItem> = doors.collect();
    if rows.iter().any(is_said) || items.is_empty() {
        return;
    }
    let [door] = doors.as_slice() else {
        notices.push("The way does not say by which of the room's doors it ends: none of them is checked.".to_owned());
        return;
    };
    if way.points.iter().any(|point| point.name == door.name) {
        return;
    }
    let height = own_height(door).unwrap_or(DOOR_HEIGHT);
    way.points
        .push(WayPoint { name: door.name.clone(), kind: PointKind::Door { width: door.width, height, from: None } });
    notices.push(format!(
        "The way in is taken to end at {}, straight through, as wide as it stands in the plan.",
        door.name
    ));
}

/// An opening without a leaf has no head of its own here: it stops nothing upward.
fn own_height(item: &WallItem) -> Option<f64> {
    matches!(item.kind, ItemKind::Opening(_)).then_some(f64::INFINITY)
}

/// Reads one point.
struct Reader<'a, 'b> {
    at: Trail,
    name: String,
    items: &'a [WallItem],
    report: &'a mut Report<'b>,
    assumed: &'a mut Vec<String>,
}

impl Reader<'_, '_> {
    fn tell_name(&mut self, before: &[WayPoint]) {
        let at = self.at.key("name");
        if self.name.chars().any(is_control) {
            let message = format!("The name `{}` holds control characters.", quoted(&self.name));
            let remedy = "Write it with plain characters alone.".to_owned();
            self.report.add(&at, "control_character", &self.name, message, remedy);
        }
        if before.iter().any(|point| point.name == self.name) {
            let message = format!("Two points of the way are called {}.", quoted(&self.name));
            self.report.add(&at, "name_twice", &self.name, message, "Give each a name of its own.".to_owned());
        }
    }

    /// The points that a row is: stairs and the landing that they end on are two.
    fn kinds(&mut self, row: &PointRow) -> Vec<PointKind> {
        let (first, second) = match row {
            PointRow::Stairs(row) => {
                let stairs = self.stairs(row);
                (stairs, row.landing.as_ref().and_then(|landing| self.landing(landing, row)))
            }
            row => (self.kind(row), None),
        };
        first.into_iter().chain(second).collect()
    }

    fn kind(&mut self, row: &PointRow) -> Option<PointKind> {
        match row {
            PointRow::Door(row) => self.door(row),
            PointRow::Hall(row) => {
                let (width, ceiling) = (self.length(&row.width, "width"), self.length(&row.ceiling, "ceiling"));
                Some(PointKind::Hall { width: width?, ceiling })
            }
            PointRow::Turn(row) => self.turn(row),
            PointRow::Stairs(row) => self.stairs(row),
            PointRow::Lift(row) => self.lift(row),
        }
    }

    fn door(&mut self, row: &WayDoorRow) -> Option<PointKind> {
        let (height, from) = (self.length(&row.height, "height"), self.length(&row.from, "from"));
        let own = match &row.room_door {
            Some(name) => self.items.get(self.own_door(name)?),
            None => None,
        };
        let width = match own {
            Some(item) if row.width.is_none() => Some(item.width),
            _ => self.width_of_door(row),
        };
        let height = height.or_else(|| own.and_then(own_height)).unwrap_or_else(|| self.assumed_height());
        Some(PointKind::Door { width: width?, height, from })
    }

    /// Place of the room's own door of that name.
    fn own_door(&mut self, name: &str) -> Option<usize> {
        let is_way_through = |item: &&WallItem| item.kind.leads_to().is_some();
        if let Some(place) = self.items.iter().position(|item| is_way_through(&item) && item.name == name.trim()) {
            return Some(place);
        }
        let doors = self.items.iter().filter(is_way_through).map(|item| item.name.as_str());
        let remedy = nearest(name, doors).map_or_else(
            || "Name a door or an opening of the room, or give a `width`.".to_owned(),
            |near| format!("Did you mean `{}`?", quoted(near)),
        );
        let message = format!("The room has no door called `{}`.", quoted(name));
        self.report.add(&self.at.key("room_door"), "unknown_name", &self.name, message, remedy);
        None
    }

    fn turn(&mut self, row: &TurnRow) -> Option<PointKind> {
        let (from, to) = (self.length(&row.from, "from"), self.length(&row.to, "to"));
        let ceiling = self.length(&row.ceiling, "ceiling");
        Some(PointKind::Turn { from: from?, to: to?, ceiling })
    }

    fn stairs(&mut self, row: &StairsRow) -> Option<PointKind> {
        let (width, headroom) = (self.length(&row.width, "width"), self.length(&row.headroom, "headroom"));
        let pitch = row.pitch.unwrap_or(PITCH);
        if !(pitch > 0.0 && pitch < 90.0) {
            let message = format!("The pitch of {} is {pitch}; it must lie between 0 and 90 degrees.", self.name);
            let remedy = "Give the slope of the line of the nosings: 30 to 42 is usual.".to_owned();
            self.report.add(&self.at.key("pitch"), "pitch_out_of_range", &self.name, message, remedy);
            return None;
        }
        Some(PointKind::Stairs { width: width?, headroom: headroom?, pitch: pitch.to_radians() })
    }

    /// The landing of `stairs`, whose own width has been told of if it is amiss.
    fn landing(&mut self, row: &LandingRow, stairs: &StairsRow) -> Option<PointKind> {
        let from = stairs.width.as_ref()?.length(self.report.units()).ok()?;
        let pitch = stairs.pitch.unwrap_or(PITCH).to_radians();
        let inner = self.at.key("landing");
        let at = std::mem::replace(&mut self.at, inner);
        let (depth, width) = (self.length(&row.depth, "depth"), self.length(&row.width, "width"));
        let ceiling = self.length(&row.ceiling, "ceiling");
        self.at = at;
        Some(PointKind::Landing { turn: row.turn?, from, pitch, depth: depth?, width: width?, ceiling })
    }

    fn lift(&mut self, row: &LiftRow) -> Option<PointKind> {
        let door = self.length(&row.door, "door");
        let (width, depth) = (self.length(&row.width, "width"), self.length(&row.depth, "depth"));
        let (height, ceiling) = (self.length(&row.height, "height"), self.length(&row.ceiling, "ceiling"));
        let height = height.unwrap_or_else(|| self.assumed_height());
        Some(PointKind::Lift { door: door?, height, width: width?, depth: depth?, ceiling })
    }

    fn assumed_height(&mut self) -> f64 {
        self.assumed.push(format!("{} gives no clear height: 198.1 cm (78 in) is taken.", self.name));
        DOOR_HEIGHT
    }

    /// The width that a door must have which is none of the room's own.
    fn width_of_door(&mut self, row: &WayDoorRow) -> Option<f64> {
        if row.width.is_none() {
            let message = format!("{} has no `width`.", quoted(&self.name));
            let remedy = "Give its clear width, or `room_door` and the name of the room's door that it is.".to_owned();
            self.report.add(&self.at, "missing_key", &self.name, message, remedy);
        }
        self.length(&row.width, "width")
    }

    fn length(&mut self, measure: &Option<Measure>, figure: &str) -> Option<f64> {
        let of = Of { item: &self.name, figure };
        self.report.length(measure.as_ref()?, &self.at.key(figure), of, Taken::AboveZero)
    }
}
