//! Cheap bounds: an arrangement that cannot hold, whatever the layout, goes before any program is built, with its reason.

use elbowroom_model::{Brief, Clearance, ItemKind, Piece, PieceId, Point, Rule, WallId, WallItem};

use super::cast::Cast;
use super::direction::face;
use super::media::ScreenPlace;
use super::seating::Seating;
use super::stand::Role;
use super::stretch::{Keeper, Obstacle, longest, obstacles, taped};
use super::tolerance::{ALONG, BESIDE, ROUNDING};
use crate::site::{Site, SiteWall, WIDEST_OPENING_WITH_LANDING};

/// Why an arrangement cannot hold, whatever the layout: there is less room than its pieces need at their least.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct NoRoom {
    /// The rule that fails.
    pub rule: Rule,
    /// Where the room is wanting.
    pub place: NoRoomAt,
    /// What there is, mm; below 0 where what is behind the seat and what is before it lie past each other.
    pub has: f64,
    /// What is needed at the least, mm.
    pub needs: f64,
}

/// Where room is wanting.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum NoRoomAt {
    /// Along a wall, for the width of a piece.
    Along {
        /// The piece.
        piece: PieceId,
        /// The wall.
        wall: WallId,
        /// The longest free stretch as a tape measures it, with nothing past its ends and nothing off the wall, mm.
        free: f64,
        /// What ends that stretch; `None`: the wall's own ends and corners.
        beside: Option<Obstacle>,
    },
    /// Before a seat, for it and what stands before it.
    Before {
        /// The seat.
        seat: PieceId,
    },
    /// Between what is behind a seat and what is behind another piece, for both and the distance between them.
    Between {
        /// The seat.
        seat: PieceId,
        /// What faces it.
        other: PieceId,
    },
}

impl NoRoom {
    /// What is missing, mm.
    #[must_use]
    pub fn short_by(&self) -> f64 {
        self.needs - self.has
    }
}

/// What is known of a room before anything is solved.
pub(super) struct Bounds<'a> {
    brief: &'a Brief,
    site: &'a Site,
    /// For each piece and each wall: why the piece cannot stand along it, `None` where it may.
    along: Vec<Vec<Option<NoRoom>>>,
    /// For each wall: how deep the room is before it at most, mm.
    depths: Vec<f64>,
}

impl<'a> Bounds<'a> {
    pub(super) fn of(brief: &'a Brief, site: &'a Site) -> Self {
        let obstacles = obstacles(brief, site);
        let row = |piece| site.walls.iter().map(|wall| along(brief, site, &obstacles, piece, wall)).collect();
        let along = brief.piece_ids().map(row).collect();
        let depths = site.walls.iter().map(|wall| deepest_before(site, wall)).collect();
        Self { brief, site, along, depths }
    }

    /// How deep the room is before a wall at most, mm.
    pub(super) fn depth_before(&self, wall: WallId) -> f64 {
        self.depths.get(wall.0).copied().unwrap_or(0.0)
    }

    /// Why the piece cannot stand along the wall; `None` where it may.
    pub(super) fn along(&self, piece: PieceId, wall: WallId) -> Option<&NoRoom> {
        self.along.get(piece.0)?.get(wall.0)?.as_ref()
    }

    /// Why the group of main seat, screen and seats opposite cannot hold; `None` where it may.
    pub(super) fn group(
        &self,
        cast: &Cast,
        seating: &Seating,
        screen: Option<ScreenPlace>,
        opposite: &[PieceId],
    ) -> Option<NoRoom> {
        let seat = self.brief.piece(cast.main)?;
        let along = seating.back.and_then(|back| self.along(cast.main, back)).copied();
        let screen_along = || screen.and_then(|place| self.along(cast.screen?, place.wall)).copied();
        along
            .or_else(screen_along)
            .or_else(|| self.room_before(cast, seat, seating))
            .or_else(|| self.to_screen(cast, seat, seating, screen))
            .or_else(|| self.to_opposite(cast, seat, seating, opposite))
    }

    /// From the nearest that the seat's back can come to what lies behind it to the furthest place before it.
    fn room_for(&self, seating: &Seating, seat: &Piece, furthest: f64) -> f64 {
        let behind = match seating.back.and_then(|back| self.site.wall(back)) {
            Some(back) => back.start.dot(seating.facing) + seat.off_wall,
            None => -self.reach(-seating.facing) + self.way_behind(seating),
        };
        furthest - behind
    }

    /// What a free-standing seat leaves behind its back: a passage, unless some of what lies behind is open or askew.
    fn way_behind(&self, seating: &Seating) -> f64 {
        let behind = |wall: &&SiteWall| wall.inward.dot(seating.facing) > ALONG;
        let open = |wall: &SiteWall| {
            let opening = |item: &WallItem| matches!(item.kind, ItemKind::Opening(_)) && item.wall == wall.id;
            let mut items = self.brief.room.items.iter();
            items.any(|item| opening(item) && item.width > WIDEST_OPENING_WITH_LANDING)
        };
        let plain = |wall: &SiteWall| face(wall.inward, -seating.facing) && !open(wall);
        let closed = self.site.walls.iter().filter(behind).all(plain);
        if closed { self.brief.rules.get(Clearance::Passage) } else { 0.0 }
    }

    /// Furthest that the room reaches in a direction.
    fn reach(&self, direction: Point) -> f64 {
        self.site.walls.iter().map(|wall| wall.start.dot(direction)).fold(f64::NEG_INFINITY, f64::max)
    }

    /// The seat itself, its return and the table before it.
    fn room_before(&self, cast: &Cast, seat: &Piece, seating: &Seating) -> Option<NoRoom> {
        let tables = self.brief.pieces.iter().filter(|piece| piece.is_table_of_main_group() && piece.needed);
        let table = tables.map(|table| table.depth.least + self.brief.rules.get(Clearance::SeatToTable));
        let deep = seat.depth.least + table.fold(0.0, f64::max);
        let returns = [seat.return_length, seat.second_return];
        let needs = returns.into_iter().flatten().fold(deep, |deep, length| deep.max(length.least));
        let has = self.room_for(seating, seat, self.reach(seating.facing));
        short(NoRoom { rule: Rule::Room, place: NoRoomAt::Before { seat: cast.main }, has, needs })
    }

    /// The seat, the way before the screen and the media unit, one behind the other.
    fn to_screen(&self, cast: &Cast, seat: &Piece, seating: &Seating, place: Option<ScreenPlace>) -> Option<NoRoom> {
        let place = place.filter(|place| place.role == Role::Screen)?;
        let unit = self.brief.piece(cast.screen?)?;
        let wall = self.site.wall(place.wall)?;
        let tables = self.brief.pieces.iter().any(Piece::is_table_of_main_group);
        let passage = if tables { 0.0 } else { self.brief.rules.get(Clearance::Passage) };
        let screen = self.brief.rules.get(Clearance::ScreenToSeat);
        let rule = if passage > screen { Clearance::Passage } else { Clearance::ScreenToSeat };
        let unit_takes = (unit.depth.least + unit.off_wall) * -wall.inward.dot(seating.facing);
        let furthest = wall.start.dot(seating.facing).max(wall.end.dot(seating.facing));
        let has = self.room_for(seating, seat, furthest);
        let needs = seat.depth.least + screen.max(passage) + unit_takes;
        // A free-standing seat also has to find its depth before this very wall.
        let has = seating.faced.map_or(has, |faced| has.min(self.depth_before(faced) - self.way_behind(seating)));
        let place = NoRoomAt::Between { seat: cast.main, other: cast.screen? };
        short(NoRoom { rule: rule.into(), place, has, needs })
    }

    /// Two seats that face each other.
    fn to_opposite(&self, cast: &Cast, seat: &Piece, seating: &Seating, opposite: &[PieceId]) -> Option<NoRoom> {
        let seats = opposite.iter().filter_map(|id| Some((*id, self.brief.piece(*id)?)));
        let needed = seats.filter(|(_, second)| second.needed);
        let (id, second) = needed.max_by(|(_, one), (_, other)| one.depth.least.total_cmp(&other.depth.least))?;
        let has = self.room_for(seating, seat, self.reach(seating.facing));
        let needs = seat.depth.least + self.brief.rules.get(Clearance::FacingSeats) + second.depth.least;
        let place = NoRoomAt::Between { seat: cast.main, other: id };
        short(NoRoom { rule: Clearance::FacingSeats.into(), place, has, needs })
    }
}

/// That there is less than is needed; `None` where there is enough.
fn short(reason: NoRoom) -> Option<NoRoom> {
    (reason.short_by() > ROUNDING).then_some(reason)
}

/// Why a piece cannot stand along a wall.
fn along(brief: &Brief, site: &Site, obstacles: &[Keeper], id: PieceId, wall: &SiteWall) -> Option<NoRoom> {
    let piece = brief.piece(id)?;
    if brief.room.keeps_free(wall.id, piece.kind) {
        let place = NoRoomAt::Along { piece: id, wall: wall.id, free: 0.0, beside: None };
        return Some(NoRoom { rule: Rule::KeepFree, place, has: 0.0, needs: piece.width.least });
    }
    let stretch = longest(brief, site, obstacles, piece, wall);
    let rule = stretch.held_by.map_or(Rule::Room, |by| by.rule);
    let at_wall = taped(brief, site, obstacles, piece, wall);
    let told = if at_wall.length < stretch.length { at_wall } else { stretch.clone() };
    let beside = told.held_by.map(|by| by.obstacle);
    let place = NoRoomAt::Along { piece: id, wall: wall.id, free: told.length, beside };
    short(NoRoom { rule, place, has: stretch.length, needs: piece.width.least })
}

/// The furthest that one can look straight out from a wall, mm.
fn deepest_before(site: &Site, wall: &SiteWall) -> f64 {
    let along = |place: Point| (place - wall.start).dot(wall.along);
    let length = along(wall.end);
    // Between two corners the depth changes evenly, so it is greatest just beside one.
    let corners = site.walls.iter().flat_map(|corner| [along(corner.start) - BESIDE, along(corner.start) + BESIDE]);
    let places = corners.filter(|at| (0.0..=length).contains(at));
    places.map(|at| depth_at(site, wall, wall.start + wall.along * at)).fold(0.0, f64::max)
}

/// How far one can look straight out from a place on a wall, mm.
fn depth_at(site: &Site, wall: &SiteWall, place: Point) -> f64 {
    let crossing = |other: &SiteWall| {
        let side = |end: Point| (end - place).dot(wall.along);
        let (one, two) = (side(other.start), side(other.end));
        if other.id == wall.id || (one > 0.0) == (two > 0.0) {
            return None;
        }
        let at = other.start + (other.end - other.start) * (one / (one - two));
        Some((at - place).dot(wall.inward)).filter(|depth| *depth > ROUNDING)
    };
    site.walls.iter().filter_map(crossing).reduce(f64::min).unwrap_or(0.0)
}
