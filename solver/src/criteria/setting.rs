//! What several criteria ask of one layout, worked out once.

use elbowroom_model::article::the;
use elbowroom_model::{Brief, Clearance, ItemId, ItemKind, LeadsTo, Piece, PieceId, PieceKind, Point, WallItem};

use super::Scene;
use super::obstacles::obstacles;
use super::seat_places::{SITTING_EYE, SeatPlace, middle_eye, seat_places};
use super::sight::{Barriers, Eye, Seen, Target, seen};
use super::walk_line::walk_line;
use crate::layout::Placed;
use crate::routes::{End, Route};

/// A scene with the places where people sit and all that stands before their eyes.
pub(super) struct Setting<'a> {
    pub(super) scene: Scene<'a>,
    pub(super) places: Vec<SeatPlace>,
    pub(super) barriers: Barriers,
    /// The line one walks on each main route, in the order of the routes; `None` for a lesser one.
    lines: Vec<Option<Vec<Point>>>,
}

impl<'a> Setting<'a> {
    pub(super) fn of(scene: &Scene<'a>) -> Self {
        let Scene { brief, site, layout, .. } = *scene;
        let places = seat_places(brief, layout);
        let barriers = Barriers::new(&brief.room.outline(), obstacles(brief, site, layout));
        let lines = scene.routes.iter().map(|route| line_of(scene, route)).collect();
        Self { scene: *scene, places, barriers, lines }
    }

    pub(super) const fn brief(&self) -> &'a Brief {
        self.scene.brief
    }

    /// The main seat as it stands.
    pub(super) fn main_seat(&self) -> Option<(&'a Piece, &'a Placed)> {
        let placed = self.scene.layout.of(self.scene.main_seat)?;
        Some((self.brief().piece(placed.piece)?, placed))
    }

    /// The pieces that stand and are of such a kind.
    pub(super) fn placed(
        &self,
        is_such: fn(PieceKind) -> bool,
    ) -> impl Iterator<Item = (&'a Piece, &'a Placed)> + use<'a> {
        let brief = self.scene.brief;
        let standing = self.scene.layout.placed.iter();
        standing
            .filter_map(|placed| Some((brief.piece(placed.piece)?, placed)))
            .filter(move |(piece, _)| is_such(piece.kind))
    }

    /// The name of a piece.
    pub(super) fn name(&self, piece: PieceId) -> &'a str {
        self.brief().piece_name(piece)
    }

    /// A length in the brief's own unit.
    pub(super) fn words(&self, length: f64) -> String {
        self.brief().units.words(length, elbowroom_model::Rounding::Nearest)
    }

    /// The line one walks on a main route; `None` for a lesser one.
    pub(super) fn line_of(&self, route: &Route) -> Option<&[Point]> {
        self.main_lines().find(|(main, _)| *main == route).map(|(_, line)| line)
    }

    /// The main routes with the line one walks on each.
    pub(super) fn main_lines(&self) -> impl Iterator<Item = (&'a Route, &[Point])> {
        self.scene.routes.iter().zip(&self.lines).filter_map(|(route, line)| Some((route, line.as_deref()?)))
    }

    /// What the sitter at `place` sees of `target` before them.
    pub(super) fn seen_from(&self, place: &SeatPlace, target: &Target) -> Seen {
        seen(sitting(place.eye), Some(place.facing), target, &self.barriers)
    }

    /// What one who sits in the middle of the main seat sees of `target`.
    pub(super) fn seen_from_middle(&self, target: &Target) -> Seen {
        self.main_seat().map_or_else(Seen::default, |(_, placed)| {
            seen(sitting(middle_eye(placed)), Some(placed.facing), target, &self.barriers)
        })
    }
}

fn line_of(scene: &Scene, route: &Route) -> Option<Vec<Point>> {
    let (End::Item(from), End::Item(to), Clearance::Walkway) = (route.from, route.to, route.rule) else { return None };
    let ends = [middle_of_item(scene.brief, from)?, middle_of_item(scene.brief, to)?];
    Some(walk_line(scene.brief, scene.site, scene.layout, ends, route.needs))
}

/// The middle of what a wall holds.
pub(super) fn middle_of_item(brief: &Brief, id: ItemId) -> Option<Point> {
    let (left, right) = brief.room.ends(brief.room.item(id)?)?;
    Some((left + right) * 0.5)
}

/// The eye of one who sits.
const fn sitting(at: Point) -> Eye {
    Eye { at, height: SITTING_EYE }
}

/// The ways in.
pub(super) fn entrances(brief: &Brief) -> impl Iterator<Item = (ItemId, &WallItem)> {
    brief.room.items().filter(|(_, item)| item.kind.leads_to().is_some_and(LeadsTo::is_entrance))
}

/// The windows.
pub(super) fn windows(brief: &Brief) -> impl Iterator<Item = (&WallItem, &elbowroom_model::Window)> {
    brief.room.items.iter().filter_map(|item| match &item.kind {
        ItemKind::Window(window) => Some((item, window)),
        _ => None,
    })
}

/// `the bay`, `the bay and the roof light`, `the bay, the side light and the roof light`.
pub(super) fn listed<'n>(names: impl IntoIterator<Item = &'n str>) -> String {
    let names: Vec<String> = names.into_iter().map(the).collect();
    match names.split_last() {
        None => String::new(),
        Some((last, [])) => last.clone(),
        Some((last, others)) => format!("{} and {last}", others.join(", ")),
    }
}
